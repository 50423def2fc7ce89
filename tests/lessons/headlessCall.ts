// Calls the headless command with files of its own instead of the machine's.
import { headless } from '../../lessons/cli/headless';

/** Files by their path. */
export const files = new Map<string, string>();

export function call(...args: string[]): { code: number; out: string; err: string; json: Record<string, unknown> } {
  let out = '';
  let err = '';
  let now = 0;
  const code = headless(args, {
    out: (text) => (out += text),
    err: (text) => (err += text),
    now_ms: () => (now += 5),
    sizeOf: (path) => (path === 'huge.json' ? 100 * 1024 * 1024 : (files.get(path)?.length ?? null)),
    read: (path) => {
      if (path === 'locked.json') throw new Error('no');
      return files.get(path)!;
    },
    write: (path, text) => {
      if (path.startsWith('/nowhere/')) throw new Error('no');
      files.set(path, text);
    },
  });
  return { code, out, err, json: out === '' ? {} : (JSON.parse(out) as Record<string, unknown>) };
}
