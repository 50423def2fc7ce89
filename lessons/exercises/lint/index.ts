// The examiner of an exercise: lets crews play it and says whether it can be given out, and what to set right. Door of this folder.

import { costOf } from '$sim';
import type { Lesson } from '../../schema';
import { endsAtStop } from '../../over';
import { startTick } from '../../own';
import type { Exercise } from '../exerciseSchema';
import { lessonOfExercise } from '../lessonOfExercise';
import { beginning, type Begun } from './begun';
import { carefulCautions, cautions } from './cautions';
import { endsReached, seeking, type Seekers } from './ends';
import { faultFindings, FAULT_WORDS } from './faultFindings';
import { lookAtFault, type FaultLook } from './faultLook';
import { byLevel, type Finding, type LintKey, type LintReport, type LintStep } from './finding';
import { mapped } from './mapped';
import { solvable } from './solvable';
import { trivial } from './trivial';
import { unknowable } from './unknowable';
import { wayOf, type Way } from './way';
import type { WordData } from '../../words/index';

export type { Finding, Level, LintKey, LintReport, LintStep } from './finding';

/** Grounds that are played where nothing else is said: a hole takes tenths of a second a crew, a well a second and more. */
const GROUNDS = { hole: 4, well: 2 } as const;

/** Numbers of the grounds to play: of a pool some that lie apart, else the first numbers; the lesson's recipes take turns by them. */
function seedsFor({ pool }: Exercise, grounds: number): number[] {
  if (!pool) return Array.from({ length: grounds }, (_, i) => i + 1);
  const n = Math.min(grounds, pool.seeds.length);
  return Array.from({ length: n }, (_, i) => pool.seeds[Math.floor((i * pool.seeds.length) / n)]!);
}

/** Counts what is done of a whole, so that each part can tell how far the whole is. */
class Steps {
  #done = 0;
  constructor(readonly of: number) {}

  /** One part of the whole. */
  *part<Result>(task: Generator<number | null, Result>, doing: LintKey, data: WordData): Generator<LintStep, Result> {
    const result = yield* mapped(task, (part_frac): LintStep => ({
      share_frac: Math.min(1, (this.#done + (part_frac ?? 0)) / this.of),
      doing,
      data,
    }));
    this.#done++;
    return result;
  }
}

interface Ground {
  readonly seed: number;
  /** null where the crew before never got there. */
  readonly played: { readonly begun: Begun; readonly careful: Way; readonly green: Way } | null;
}

function* playGround(lesson: Lesson, seed: number, data: WordData, steps: Steps): Generator<LintStep, Ground> {
  const begun = yield* steps.part(beginning(lesson, seed), 'lint.doing.before', data);
  if (!begun) return { seed, played: null };
  const careful = yield* steps.part(wayOf(begun, 'careful', true), 'lint.doing.careful', data);
  const green = yield* steps.part(wayOf(begun, 'green'), 'lint.doing.green', data);
  return { seed, played: { begun, careful, green } };
}

/** Whether the crew that works before gets there. */
function before(lesson: Lesson, grounds: readonly Ground[]): Finding[] {
  if (!lesson.prologue) return [];
  const n = grounds.length;
  const failed = grounds.filter(({ played }) => !played).length;
  if (failed === 0) return [{ level: 'good', key: 'lint.before.kept', data: { n } }];
  return [{ level: 'wrong', key: 'lint.before.never', data: { failed, n }, field: 'ground' }];
}

function* faultsLookedAt(lesson: Lesson, ways: readonly Way[], steps: Steps): Generator<LintStep, Finding[]> {
  const found: Finding[] = [];
  if (ways.length === 0) return found;
  for (let i = 0; i < lesson.faults.length; i++) {
    const { id } = lesson.faults[i]!;
    const looks: FaultLook[] = [];
    for (const way of ways)
      looks.push(yield* steps.part(lookAtFault(way, i), 'lint.doing.fault', { fault: FAULT_WORDS[id] }));
    found.push(...faultFindings(id, i, looks, startTick(ways[0]!.run)));
  }
  return found;
}

/**
 * Lets crews play an exercise that checkExercise took: the careful one and beginners on each ground, and on the first who ends at once, gives up, or
 * waits. `grounds`: how many, 1 and more; left out: four of a hole, two of a well. Yields often; never throws.
 */
export function* linting(
  exercise: Exercise,
  options: { readonly grounds?: number } = {},
): Generator<LintStep, LintReport> {
  const lesson = lessonOfExercise(exercise);
  const count = options.grounds ?? (lesson.well && !endsAtStop(lesson) ? GROUNDS.well : GROUNDS.hole);
  const seeds = seedsFor(exercise, Math.max(1, count));
  const of = seeds.length;
  const steps = new Steps(of * (3 + lesson.faults.length) + 1);
  const grounds: Ground[] = [];
  for (const [i, seed] of seeds.entries()) grounds.push(yield* playGround(lesson, seed, { n: i + 1, of }, steps));
  const played = grounds.flatMap(({ played }) => (played ? [played] : []));
  const carefuls = played.map(({ careful }) => careful);
  const greens = played.map(({ green }) => green);
  const first = played[0];
  const seekers: Seekers | null = first ? yield* steps.part(seeking(first.begun), 'lint.doing.ends', {}) : null;
  const sought = seekers ? Object.values(seekers) : [];
  const points = carefuls.map(({ grade }) => grade.score);
  const findings = byLevel([
    ...before(lesson, grounds),
    ...solvable(carefuls, exercise),
    ...trivial(greens, seekers?.hasty ?? null),
    ...(yield* faultsLookedAt(lesson, carefuls, steps)),
    ...(seekers ? endsReached(lesson, [...carefuls, ...greens, ...sought]) : []),
    ...cautions(exercise),
    ...carefulCautions(
      exercise,
      carefuls.map(({ run }) => costOf(run)),
      points,
    ),
    ...unknowable(lesson),
  ]);
  const pointsOf = (crew: 'careful' | 'green') => grounds.map(({ played: one }) => one?.[crew].grade.score ?? 0);
  return {
    findings,
    fit: !findings.some(({ level }) => level === 'wrong'),
    seeds,
    careful_points: pointsOf('careful'),
    green_points: pointsOf('green'),
  };
}
