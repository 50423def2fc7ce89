// Serves a built folder over http: right types, compressed text, and no other origin allowed to the page.
import { createReadStream, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { gzipSync } from 'node:zlib';

/** @type {Record<string, string>} */
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.md': 'text/plain; charset=utf-8',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.wasm': 'application/wasm',
};
const COMPRESSED = /^(text\/|application\/(json|manifest)|image\/svg)/;

// Everything comes from this server: a class without internet must lose nothing, and nothing may leave the page.
// Inline code is for the self-contained file.
const POLICY = "default-src 'self' 'unsafe-inline' data: blob:; form-action 'self'; base-uri 'self'";

/**
 * @param {string} folder
 * @returns {import('node:http').Server}
 */
export function createAppServer(folder) {
  /** @type {Map<string, {tag: string, body: Buffer}>} */
  const compressed = new Map();
  return createServer((request, response) => {
    response.setHeader('X-Content-Type-Options', 'nosniff');
    response.setHeader('Content-Security-Policy', POLICY);
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.setHeader('Allow', 'GET, HEAD');
      return endWith(response, 405, 'This server only gives out files.');
    }
    const path = filePath(folder, request.url ?? '/');
    const stat = path === null ? null : statSync(path, { throwIfNoEntry: false });
    if (path === null || !stat?.isFile()) return endWith(response, 404, 'There is no such page here.');

    const type = TYPES[extname(path).toLowerCase()] ?? 'application/octet-stream';
    const tag = `"${stat.size.toString(36)}-${Math.round(stat.mtimeMs).toString(36)}"`;
    response.setHeader('Content-Type', type);
    response.setHeader('ETag', tag);
    // Built scripts and styles carry a hash in their names and never change; pages are asked for anew.
    const lasting = path.includes(`${sep}assets${sep}`);
    response.setHeader('Cache-Control', lasting ? 'public, max-age=31536000, immutable' : 'no-cache');
    if (request.headers['if-none-match'] === tag) {
      response.statusCode = 304;
      return response.end();
    }

    if (COMPRESSED.test(type)) {
      response.setHeader('Vary', 'Accept-Encoding');
      if (/\bgzip\b/.test(request.headers['accept-encoding'] ?? '')) {
        let kept = compressed.get(path);
        if (kept?.tag !== tag) {
          const whole = read(path);
          if (whole === null) return endWith(response, 404, 'There is no such page here.');
          kept = { tag, body: gzipSync(whole) };
          compressed.set(path, kept);
        }
        response.setHeader('Content-Encoding', 'gzip');
        response.setHeader('Content-Length', kept.body.length);
        return response.end(request.method === 'HEAD' ? undefined : kept.body);
      }
    }
    response.setHeader('Content-Length', stat.size);
    if (request.method === 'HEAD') return response.end();
    createReadStream(path)
      .on('error', () => response.destroy())
      .pipe(response);
  });
}

/**
 * Listens on every network of this computer, on the first free port from the wanted one up.
 * @param {import('node:http').Server} server
 * @param {{host?: string, port: number, tries?: number}} wanted
 * @returns {Promise<number>}
 */
export function listen(server, { host = '0.0.0.0', port, tries = 20 }) {
  return new Promise((resolve, reject) => {
    let left = tries;
    let next = port;
    server.on('listening', () => {
      const address = server.address();
      resolve(address !== null && typeof address === 'object' ? address.port : next);
    });
    server.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code !== 'EADDRINUSE' || left-- <= 0) return reject(error);
      next += 1;
      server.listen(next, host);
    });
    server.listen(next, host);
  });
}

/**
 * The file that an address asks for, or null where it asks for one outside the folder or is not an address.
 * @param {string} folder
 * @param {string} url
 * @returns {string | null}
 */
function filePath(folder, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return null;
  }
  if (path.includes('\0') || path.split(/[/\\]/).some((part) => part.startsWith('.'))) return null;
  const full = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
  return full.startsWith(normalize(folder) + sep) ? full : null;
}

/**
 * A file's content, or null where it cannot be read: a new build may take it away just after it was found.
 * @param {string} path
 * @returns {Buffer | null}
 */
function read(path) {
  try {
    return readFileSync(path);
  } catch {
    return null;
  }
}

/**
 * @param {import('node:http').ServerResponse} response
 * @param {number} status
 * @param {string} sentence
 */
function endWith(response, status, sentence) {
  response.statusCode = status;
  response.removeHeader('ETag');
  response.setHeader('Cache-Control', 'no-store');
  response.setHeader('Content-Type', 'text/plain; charset=utf-8');
  response.end(`${sentence}\n`);
}
