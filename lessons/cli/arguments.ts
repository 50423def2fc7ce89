// The words after the verb: options with a value, and a file name. Whatever is wrong is a complaint with its sentence.

import { format, type WordData, type WordKey } from '$lessons';

/** Bad input: it ends the command with a sentence and exit code 2. */
export class Complaint extends Error {
  constructor(key: WordKey, data: WordData = {}) {
    super(format(key, data));
  }
}

export interface Shape {
  readonly verb: string;
  readonly needed: readonly string[];
  readonly optional: readonly string[];
  /** Whether the verb takes the name of a file. */
  readonly file: boolean;
}

export interface Given {
  readonly options: Readonly<Record<string, string>>;
  readonly file: string;
}

export function readArguments(words: readonly string[], shape: Shape): Given {
  const { verb } = shape;
  const options: Record<string, string> = {};
  let file: string | null = null;
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (!word.startsWith('--')) {
      if (!shape.file || file !== null) throw new Complaint('cli.tooMany', { verb, word });
      file = word;
      continue;
    }
    const equals = word.indexOf('=');
    const option = equals < 0 ? word : word.slice(0, equals);
    const name = option.slice(2);
    if (!shape.needed.includes(name) && !shape.optional.includes(name))
      throw new Complaint('cli.unknownOption', { verb, option });
    if (Object.hasOwn(options, name)) throw new Complaint('cli.twice', { option });
    const value = equals < 0 ? words[++i] : word.slice(equals + 1);
    if (value === undefined || value === '' || (equals < 0 && value.startsWith('--')))
      throw new Complaint('cli.missingValue', { option });
    options[name] = value;
  }
  for (const name of shape.needed)
    if (!Object.hasOwn(options, name)) throw new Complaint('cli.missingOption', { verb, option: `--${name}` });
  if (shape.file && file === null) throw new Complaint('cli.missingFile', { verb });
  return { options, file: file ?? '' };
}

const LARGEST_SEED = 4294967295;

export function readSeed(text: string): number {
  const seed = /^\d{1,10}$/.test(text) ? Number(text) : -1;
  if (seed < 0 || seed > LARGEST_SEED) throw new Complaint('cli.badSeed', { seed: text });
  return seed;
}
