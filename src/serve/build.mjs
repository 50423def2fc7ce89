// Builds the hosted app and the one self-contained file, only when a source has changed since the last build.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { argv } from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { licenceNotice } from './licences.mjs';

/** The self-contained form of the app, served beside index.html so that the page can offer it as a file to save. */
export const APP_FILE = 'hand-jetting-trainer.html';

const SOURCES = ['package-lock.json', 'vite.config.ts', 'svelte.config.js', 'tsconfig.json'];
const SOURCE_FOLDERS = ['src', 'sim', 'lessons', 'static'];

/**
 * A hash of every source's path and content: it sees a deleted file and a checkout with old dates, which file dates
 * alone would miss.
 * @param {string} root
 */
export function sourceHash(root) {
  const hash = createHash('sha256');
  const files = [...SOURCES, ...SOURCE_FOLDERS.flatMap((folder) => filesBelow(root, folder))];
  for (const file of files.sort()) {
    const path = join(root, file);
    if (!existsSync(path)) continue;
    const content = readFileSync(path);
    hash.update(`${file}\n${content.length}\n`);
    hash.update(content);
  }
  return hash.digest('hex');
}

/** @param {string} root */
export function isBuilt(root) {
  const stamp = join(root, 'dist', '.built-from');
  return existsSync(stamp) && readFileSync(stamp, 'utf8') === sourceHash(root);
}

/** @param {string} root */
export function buildIfNeeded(root) {
  if (!isBuilt(root)) build(root);
}

/**
 * Throws with a plain sentence where a build fails; then no stamp is left, so the next start builds again.
 * @param {string} root
 */
export function build(root) {
  const hash = sourceHash(root);
  console.log('Building the app.');
  runVite(root, ['build', '--logLevel', 'warn']);
  runVite(root, ['build', '--mode', 'single', '--logLevel', 'warn']);
  // The pictures are for those who read about the project, not for those who use it.
  rmSync(join(root, 'dist', 'pictures'), { recursive: true, force: true });
  writeLicences(join(root, 'dist'));
  writeFileSync(join(root, 'dist', APP_FILE), selfContained(join(root, 'dist-single')));
  writeFileSync(join(root, 'dist', '.built-from'), hash);
}

/**
 * Turns the bundler's list of licences into a text to read beside the page, and returns it.
 * @param {string} folder
 */
function writeLicences(folder) {
  const list = join(folder, 'licences.json');
  const notice = licenceNotice(JSON.parse(readFileSync(list, 'utf8')));
  writeFileSync(join(folder, 'licences.txt'), notice);
  rmSync(list);
  return notice;
}

/**
 * The page as one file, with the licences of what it is built from: whoever passes it on passes those on too.
 * @param {string} folder
 */
function selfContained(folder) {
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  const licences = writeLicences(folder).replace(/<(?=\/|!)/g, '&lt;');
  const end = page.lastIndexOf('</body>');
  return `${page.slice(0, end)}<script type="text/plain" id="licences">\n${licences}</script>\n${page.slice(end)}`;
}

/**
 * @param {string} root
 * @param {string[]} args
 */
function runVite(root, args) {
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const run = spawnSync(process.execPath, [vite, ...args], { cwd: root, stdio: 'inherit' });
  if (run.status !== 0) throw new Error('Building the app failed. The lines above say why.');
}

/**
 * @param {string} root
 * @param {string} folder
 * @returns {string[]}
 */
function filesBelow(root, folder) {
  const at = join(root, folder);
  if (!existsSync(at)) return [];
  return readdirSync(at, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    return entry.isDirectory() ? filesBelow(root, path) : [path];
  });
}

if (argv[1] && import.meta.url === pathToFileURL(argv[1]).href) {
  try {
    build(dirname(dirname(dirname(fileURLToPath(import.meta.url)))));
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
