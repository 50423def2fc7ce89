// The verb play: a crew plays a lesson; the score, the balances and, if asked for, the run file.

import {
  CREWS,
  format,
  grade,
  isCrewName,
  isScored,
  LESSONS,
  lessonById,
  playCrew,
  PRACTICES,
  scoreOf,
  writeRunFile,
} from '$lessons';
import { hashRun, ledgerOf } from '$sim';
import { asAsked } from './asked';
import { Complaint, readArguments, readSeed } from './arguments';
import { EXIT_DONE, type IO } from './io';

export function playVerb(words: readonly string[], io: IO): number {
  const { options } = readArguments(words, {
    verb: 'play',
    needed: ['lesson', 'crew', 'seed'],
    optional: ['out', 'depth', 'setting'],
    file: false,
  });
  const found = lessonById(options.lesson!);
  if (found === null) {
    throw new Complaint('cli.unknownLesson', {
      lesson: options.lesson!,
      lessons: [...LESSONS, ...PRACTICES].map(({ id }) => id).join(', '),
    });
  }
  const lesson = asAsked(found, options);
  const crew = options.crew!;
  if (!isCrewName(crew)) throw new Complaint('cli.unknownCrew', { crew, crews: CREWS.join(', ') });
  const seed = readSeed(options.seed!);
  const started_ms = io.now_ms();
  const run = playCrew(lesson, crew, seed);
  const wall_ms = io.now_ms() - started_ms;
  if (options.out !== undefined) {
    try {
      io.write(options.out, writeRunFile(run, lesson, { name: `${lesson.id} ${crew} ${seed}` }));
    } catch {
      throw new Complaint('cli.cannotWrite', { file: options.out });
    }
  }
  const { categories, outcome } = grade(run, lesson);
  const ledger = ledgerOf(run);
  io.out(
    JSON.stringify({
      lesson: lesson.id,
      seed,
      crew,
      ticks: run.state.tick,
      hash: hashRun(run),
      score: scoreOf(run, lesson),
      categories: Object.fromEntries(categories.map(({ id, points, max }) => [id, { points, max }])),
      outcome: { key: outcome.key, text: format(outcome.key, outcome.data) },
      ...(isScored(lesson) ? {} : { depth_m: Math.round(run.state.hole.depth_m * 100) / 100 }),
      ledger: { water: ledger.water, solids: ledger.solids, polymer: ledger.polymer },
      wall_ms: Math.round(wall_ms * 10) / 10,
    }),
  );
  return EXIT_DONE;
}
