// The verb lessons: the list of them, and of the practices, which have no score.

import { format, LESSONS, PRACTICES, type Lesson } from '$lessons';
import { readArguments } from './arguments';
import { EXIT_DONE, type IO } from './io';

export function lessonsVerb(words: readonly string[], io: IO): number {
  readArguments(words, { verb: 'lessons', needed: [], optional: [], file: false });
  const listed = (lessons: readonly Lesson[]) => lessons.map(({ id, title }) => ({ id, title: format(title) }));
  io.out(JSON.stringify({ lessons: listed(LESSONS), practices: listed(PRACTICES) }));
  return EXIT_DONE;
}
