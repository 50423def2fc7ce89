// The verb lessons: the list of them.

import { format, LESSONS } from '$lessons';
import { readArguments } from './arguments';
import { EXIT_DONE, type IO } from './io';

export function lessonsVerb(words: readonly string[], io: IO): number {
  readArguments(words, { verb: 'lessons', needed: [], optional: [], file: false });
  io.out(JSON.stringify({ lessons: LESSONS.map((lesson) => ({ id: lesson.id, title: format(lesson.title) })) }));
  return EXIT_DONE;
}
