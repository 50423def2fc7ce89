// Installs the packages, but only when what lies in node_modules is not what the lock file asks for.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** @typedef {{version?: string, integrity?: string, optional?: boolean}} LockedPackage */

/**
 * npm writes down what it installed in node_modules/.package-lock.json, as its last act; an install that was cut
 * short leaves none. Packages for other kinds of computer are marked optional and may be missing.
 * @param {string} root
 */
export function isInstalled(root) {
  const wanted = lockedPackages(join(root, 'package-lock.json'));
  const present = lockedPackages(join(root, 'node_modules', '.package-lock.json'));
  if (!wanted || !present) return false;
  for (const [path, entry] of Object.entries(wanted)) {
    if (path === '') continue;
    const found = present[path];
    if (!found) {
      if (entry.optional) continue;
      return false;
    }
    if (found.version !== entry.version || found.integrity !== entry.integrity) return false;
  }
  return Object.keys(present).every((path) => path in wanted);
}

/**
 * Throws with a plain sentence where npm fails.
 * @param {string} root
 */
export function installIfNeeded(root) {
  if (isInstalled(root)) return;
  console.error('Installing packages. This takes about a minute the first time.');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const run = spawnSync(npm, ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    // What npm says goes to standard error: a command's standard output belongs to its result.
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (run.error) throw new Error(`npm could not be started: ${run.error.message}`);
  if (run.status !== 0) {
    throw new Error('Installing the packages failed. npm says why above. The first install needs a network.');
  }
}

/**
 * @param {string} path
 * @returns {Record<string, LockedPackage> | null}
 */
function lockedPackages(path) {
  if (!existsSync(path)) return null;
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages ?? null;
  } catch {
    return null;
  }
}
