// The server gives out the built files, whole and compressed, and nothing from outside their folder.
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer, request, type IncomingMessage, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { lanAddresses } from '../../src/serve/addresses.mjs';
import { createAppServer, listen } from '../../src/serve/server.mjs';

const PAGE = `<!doctype html><title>x</title>${'<p>water</p>'.repeat(200)}`;
let folder: string;
let server: Server;
let port: number;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'serve-'));
  mkdirSync(join(folder, 'dist', 'assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'not for you');
  writeFileSync(join(folder, 'dist', 'index.html'), PAGE);
  writeFileSync(join(folder, 'dist', '.built-from'), 'hash');
  writeFileSync(join(folder, 'dist', 'manifest.webmanifest'), '{}');
  writeFileSync(join(folder, 'dist', 'icon.png'), Buffer.from([1, 2, 3]));
  writeFileSync(join(folder, 'dist', 'assets', 'index-abc.js'), 'export {};');
  server = createAppServer(join(folder, 'dist'));
  port = await listen(server, { host: '127.0.0.1', port: 0 });
});
afterAll(() => {
  server.closeAllConnections();
  server.close();
  rmSync(folder, { recursive: true });
});

interface Answer {
  readonly status: number;
  readonly headers: IncomingMessage['headers'];
  readonly body: Buffer;
}

/** Asks with the path exactly as written, where a tidier client would fold '..' away first. */
function ask(path: string, options: { method?: string; headers?: Record<string, string> } = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port, path, ...options }, (answer) => {
      const parts: Buffer[] = [];
      answer.on('data', (part: Buffer) => parts.push(part));
      answer.on('end', () =>
        resolve({ status: answer.statusCode!, headers: answer.headers, body: Buffer.concat(parts) }),
      );
    });
    sent.on('error', reject);
    sent.end();
  });
}

it('gives the page for the bare address, and asks the browser to check for a newer one', async () => {
  const answer = await ask('/');
  expect(answer.status).toBe(200);
  expect(answer.body.toString()).toBe(PAGE);
  expect(answer.headers['content-type']).toBe('text/html; charset=utf-8');
  expect(answer.headers['cache-control']).toBe('no-cache');
});

it('compresses text for those who can read it', async () => {
  const answer = await ask('/index.html', { headers: { 'Accept-Encoding': 'gzip, br' } });
  expect(answer.headers['content-encoding']).toBe('gzip');
  expect(answer.body.length).toBeLessThan(PAGE.length / 4);
  expect(gunzipSync(answer.body).toString()).toBe(PAGE);
});

it.each([
  ['/assets/index-abc.js', 'text/javascript; charset=utf-8', /immutable/],
  ['/manifest.webmanifest', 'application/manifest+json; charset=utf-8', /no-cache/],
  ['/icon.png', 'image/png', /no-cache/],
])('names the type of %s', async (path, type, caching) => {
  const answer = await ask(path);
  expect(answer.status).toBe(200);
  expect(answer.headers['content-type']).toBe(type);
  expect(answer.headers['cache-control']).toMatch(caching);
});

it('answers 304 where the browser has the file already', async () => {
  const tag = (await ask('/')).headers.etag!;
  const answer = await ask('/', { headers: { 'If-None-Match': tag } });
  expect(answer.status).toBe(304);
  expect(answer.body.length).toBe(0);
});

it('answers HEAD without a body', async () => {
  const answer = await ask('/', { method: 'HEAD' });
  expect(answer.status).toBe(200);
  expect(answer.headers['content-length']).toBe(String(PAGE.length));
  expect(answer.body.length).toBe(0);
});

it('lets the page reach no other origin', async () => {
  const policy = (await ask('/')).headers['content-security-policy'];
  expect(policy).toContain("default-src 'self'");
  expect(policy).not.toMatch(/https?:|\*/);
});

it.each([
  '/../secret.txt',
  '/assets/../../secret.txt',
  '/%2e%2e/secret.txt',
  '/..%2fsecret.txt',
  '/..%5csecret.txt',
  '/.built-from',
  '/nothing.html',
  '/assets',
  '/%00',
  '/%zz',
])('has no page at %s', async (path) => {
  const answer = await ask(path);
  expect(answer.status).toBe(404);
  expect(answer.body.toString()).not.toContain('not for you');
});

it.runIf(process.platform === 'linux')('outlives a file that is found but cannot be read', async () => {
  symlinkSync('/proc/self/mem', join(folder, 'dist', 'gone.css'));
  expect((await ask('/gone.css', { headers: { 'Accept-Encoding': 'gzip' } })).status).toBe(404);
  await expect(ask('/gone.css')).rejects.toThrow();
  expect((await ask('/')).status).toBe(200);
});

it('takes nothing in', async () => {
  expect((await ask('/', { method: 'POST' })).status).toBe(405);
});

it('takes the next port where the wanted one is in use, and says so where none is free', async () => {
  const other = createAppServer(folder);
  const found = await listen(other, { host: '127.0.0.1', port });
  expect(found).toBeGreaterThan(port);
  other.close();
  const busy = createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => busy.once('listening', resolve));
  const wanted = (busy.address() as AddressInfo).port;
  await expect(listen(createServer(), { host: '127.0.0.1', port: wanted, tries: 0 })).rejects.toThrow('EADDRINUSE');
  busy.close();
});

it('lists the addresses of this computer that others can reach, home networks first', () => {
  const entry = (address: string, internal = false, family: 'IPv4' | 'IPv6' = 'IPv4') =>
    ({ address, internal, family, netmask: '', mac: '', cidr: null, scopeid: 0 }) as never;
  const found = lanAddresses({
    lo: [entry('127.0.0.1', true)],
    eth0: [entry('203.0.113.9'), entry('fe80::1', false, 'IPv6'), entry('169.254.3.4')],
    wlan0: [entry('192.168.1.20'), entry('172.20.0.3')],
  });
  expect(found).toEqual(['192.168.1.20', '172.20.0.3', '203.0.113.9']);
});
