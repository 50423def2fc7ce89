// What becomes of an altered file: it is refused with a sentence, or it is used, and then nothing throws either.
import {
  atOnce,
  format,
  judging,
  lessonOfExercise,
  openStart,
  readExercise,
  readResult,
  type Exercise,
  type WordData,
  type WordKey,
} from '$lessons';
import { step } from '$sim';
import { LAID, type Altered } from './altered';

export interface Looked {
  /** What came of it: refused and why, or used. */
  readonly came: string;
  /** What is wrong with that, or null. */
  readonly fault: string | null;
}

/** Job seconds that a taken exercise is played for. */
const PLAYED_s = 30;

/** A sentence without holes; one about a field names it. */
function toldWell(key: WordKey, data: WordData, field: string): string | null {
  const sentence = format(key, data);
  if (sentence.length < 10 || /[{}]/.test(sentence.replace(field, '')))
    return `no whole sentence: ${sentence.slice(0, 200)}`;
  return /badField/.test(key) && field === '' ? 'the field is not named' : null;
}

function usedExercise(exercise: Exercise): void {
  const { run, advance } = openStart(lessonOfExercise(exercise), 3);
  advance(PLAYED_s);
  for (let i = 0; i < PLAYED_s; i++) step(run);
}

function cameOf({ kind, text }: Altered): Looked {
  if (kind === 'exercise') {
    const read = readExercise(text);
    if (!read.ok) return { came: read.problem, fault: toldWell(read.problem, read.data, read.field) };
    usedExercise(read.exercise);
    return { came: 'taken', fault: null };
  }
  const read = readResult(text);
  if (!read.ok) return { came: read.problem, fault: toldWell(read.problem, read.data, read.field) };
  const { verdict, problem } = atOnce(judging(read.result, LAID, { number: 1 }, 1e6));
  return { came: verdict, fault: problem ? toldWell(problem.key, problem.data, '') : null };
}

/** Whether something of a file was run, or got into what all records share. */
function stray(): string | null {
  if ((globalThis as { ranFromFile?: unknown }).ranFromFile !== undefined) return 'a script was run';
  return ({} as { polluted?: unknown }).polluted !== undefined ? 'all records are changed' : null;
}

export function looked(altered: Altered): Looked {
  try {
    const { came, fault } = cameOf(altered);
    return { came, fault: fault ?? stray() };
  } catch (error) {
    return {
      came: 'thrown',
      fault: error instanceof Error ? `${error.name}: ${error.message}`.slice(0, 300) : String(error),
    };
  }
}
