// A store of learning records, started from its package for the length of a test: in memory, on this computer alone.
import { execFile, spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { promisify } from 'node:util';

const HERE = dirname(fileURLToPath(import.meta.url));
const INSTALL_ms = 150_000;
const START_ms = 20_000;

/** Brings the packages, the first time from the registry; rejects with what npm says where it cannot. */
export async function install(): Promise<void> {
  await promisify(execFile)(process.execPath, [join(HERE, 'install.mjs')], { timeout: INSTALL_ms });
}

/** What the validator says against a statement; empty where it is well formed. */
export function complaints(statement: unknown): readonly unknown[] {
  const require = createRequire(join(HERE, 'package.json'));
  const { default: check } = require('xapi-validation') as {
    default: (data: unknown) => { warnings?: [] } & unknown[];
  };
  return check(statement);
}

export interface Store {
  /** The status of the answer, and the answer. */
  post(statements: unknown): Promise<{ readonly status: number; readonly answer: unknown }>;
  get(id: string): Promise<{ readonly status: number; readonly answer: unknown }>;
  close(): Promise<void>;
}

/** The first message of the process is the port that it listens on. */
function portOf(child: ChildProcess): Promise<number> {
  return new Promise((resolve, reject) => {
    const late = setTimeout(() => reject(new Error('the store did not start in time')), START_ms);
    child.once('message', (told) => {
      clearTimeout(late);
      resolve((told as { port: number }).port);
    });
    child.once('exit', (code) => {
      clearTimeout(late);
      reject(new Error(`the store ended with code ${code} before it listened`));
    });
  });
}

export async function openStore(): Promise<Store> {
  const folder = mkdtempSync(join(tmpdir(), 'records-'));
  const child = spawn(
    process.execPath,
    [
      '--import',
      pathToFileURL(join(HERE, 'loopback.mjs')).href,
      join(HERE, 'node_modules', 'xapi-statements', 'dist', 'index.js'),
    ],
    {
      cwd: folder,
      // Its own stand-ins for databases, and no environment of whoever runs the tests.
      env: {
        PATH: process.env['PATH'],
        AUTH_REPO: 'test',
        EVENTS_REPO: 'test',
        MODELS_REPO: 'memory',
        STORAGE_REPO: 'local',
        FS_LOCAL_STORAGE_DIR: folder,
        EXPRESS_MORGAN_DIRECTORY: join(folder, 'access'),
        SERVICE_AWAIT_UPDATES: 'true',
      },
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    },
  );
  const port = await portOf(child);
  const ask = async (method: string, query: string, body?: string): Promise<{ status: number; answer: unknown }> => {
    const headers = {
      'Content-Type': 'application/json',
      'X-Experience-API-Version': '1.0.3',
      Authorization: `Basic ${Buffer.from('test:test').toString('base64')}`,
    };
    const init = { method, headers, ...(body === undefined ? {} : { body }) };
    const response = await fetch(`http://127.0.0.1:${port}/xAPI/statements${query}`, init);
    return { status: response.status, answer: await response.json() };
  };
  return {
    post: (statements) => ask('POST', '', typeof statements === 'string' ? statements : JSON.stringify(statements)),
    get: (id) => ask('GET', `?statementId=${id}`),
    async close() {
      const ended = new Promise((resolve) => child.once('exit', resolve));
      child.kill('SIGKILL');
      await ended;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
