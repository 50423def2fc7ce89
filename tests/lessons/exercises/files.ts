// The exercises that are kept here as files, read as the app reads them.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readExercise, type Exercise } from '$lessons';

const folder = (name: string): string => fileURLToPath(new URL(`./${name}/`, import.meta.url));

/** Names of the files of a folder, without their ending. */
export const namesIn = (name: 'unsolvable' | 'trivial' | 'pools'): string[] =>
  readdirSync(folder(name)).map((file) => file.replace(/\.json$/, ''));

/** Throws where it is no exercise. */
export function exerciseIn(path: string): Exercise {
  const read = readExercise(readFileSync(`${folder('.')}/${path}.json`, 'utf8'));
  if (!read.ok) throw new Error(`${path}: ${read.problem} ${read.field}`);
  return read.exercise;
}
