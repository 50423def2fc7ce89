// The verb lint: lets crews play an exercise and says whether it can be given out.

import { EXERCISE_LIMIT, exerciseTooLarge, format, linting, readExercise, type Exercise, type Finding } from '$lessons';
import { Complaint, readArguments } from './arguments';
import { EXIT_DONE, EXIT_NOT_FIT, type IO } from './io';

function exerciseIn(io: IO, file: string): Exercise {
  const size = io.sizeOf(file);
  if (size === null) throw new Complaint('cli.cannotRead', { file });
  const large = size > EXERCISE_LIMIT ? exerciseTooLarge(size) : null;
  if (large) throw new Complaint(large.problem, large.data);
  let text: string;
  try {
    text = io.read(file);
  } catch {
    throw new Complaint('cli.cannotRead', { file });
  }
  const read = readExercise(text);
  if (!read.ok) throw new Complaint(read.problem, read.data);
  return read.exercise;
}

function told({ level, key, data, because, field }: Finding): object {
  const sentence = format(key, data);
  const text = because ? `${sentence} ${format(because.key, because.data)}` : sentence;
  return { level, key, text, ...(field === undefined ? {} : { field }) };
}

/** Largest number of grounds that is taken: so many a pool can hold. */
const MOST_GROUNDS = 200;

function readGrounds(text: string): number {
  const grounds = /^\d{1,3}$/.test(text) ? Number(text) : 0;
  if (grounds < 1 || grounds > MOST_GROUNDS)
    throw new Complaint('cli.badGrounds', { grounds: text, most: MOST_GROUNDS });
  return grounds;
}

export function lintVerb(words: readonly string[], io: IO): number {
  const { file, options } = readArguments(words, { verb: 'lint', needed: [], optional: ['grounds'], file: true });
  const grounds = options.grounds === undefined ? {} : { grounds: readGrounds(options.grounds) };
  const exercise = exerciseIn(io, file);
  const started_ms = io.now_ms();
  const task = linting(exercise, grounds);
  let next = task.next();
  while (!next.done) next = task.next();
  const { fit, findings, seeds, careful_points, green_points } = next.value;
  const { id, edition, title, lesson } = exercise;
  io.out(
    JSON.stringify({
      id,
      edition,
      title,
      lesson,
      fit,
      findings: findings.map(told),
      seeds,
      careful_points,
      green_points,
      wall_ms: Math.round((io.now_ms() - started_ms) * 10) / 10,
    }),
  );
  return fit ? EXIT_DONE : EXIT_NOT_FIT;
}
