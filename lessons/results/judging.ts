// A result judged by playing it again on this device: whether it comes out as it says, and what it is worth. What it claims is never trusted.

import { SIM_VERSION } from '$sim';
import { exerciseHash } from '../exercises/exerciseHash';
import type { Exercise } from '../exercises/exerciseSchema';
import { lessonOfExercise } from '../exercises/lessonOfExercise';
import { variantSeed, type Place } from '../exercises/variant';
import { grade, type Grade } from '../grade';
import { isOver } from '../over';
import { playingAgain } from '../replayFile';
import type { Lesson } from '../schema';
import { scenarioOf } from '../scenario';
import type { Said, WordData } from '../words/index';
import type { ResultProblemKey } from './readResult';
import type { Result } from './resultSchema';

/** What the board calls it. */
export const VERDICTS = ['reproduced', 'notReproduced', 'otherVersion'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** Plain data: a worker hands it over. */
export interface Judgement {
  readonly verdict: Verdict;
  /** Why it is not reproduced, or null. */
  readonly problem: { readonly key: ResultProblemKey; readonly data: WordData } | null;
  /** Only of what is reproduced. */
  readonly grade: Grade | null;
  /** How the run ended; only of what is reproduced. */
  readonly outcome: Said | null;
  /** Job seconds of the learner's own part. */
  readonly ticks: number;
  /** Whether the ground is the one that falls to this learner in this class at this attempt; null where there is no class, or no such place in it. */
  readonly ownSeed: boolean | null;
}

/** Job seconds played between two stops. */
const SLICE_s = 20;

type Why = NonNullable<Judgement['problem']>;
const why = (key: ResultProblemKey, data: WordData = {}): Why => ({ key, data });

/** The exercise or the trainer is not the one that it was played with; null where both are. */
function otherVersion(result: Result, exercise: Exercise): Why | null {
  const { exerciseId, edition, sim } = result;
  if (exerciseId !== exercise.id) return why('problem.result.otherExercise');
  if (edition !== exercise.edition) return why('problem.result.otherEdition', { edition, here: exercise.edition });
  if (result.exercise !== exerciseHash(exercise)) return why('problem.result.changedExercise', { edition });
  return sim === SIM_VERSION ? null : why('problem.result.otherVersion', { version: sim });
}

function ownSeed(result: Result, exercise: Exercise, place: Place | null): boolean | null {
  const { classCode, attempt, seed } = result;
  if (place === null || classCode === null || attempt === null) return null;
  return variantSeed(exercise, classCode, place, attempt) === seed;
}

type Played = Pick<Judgement, 'problem' | 'grade' | 'outcome'>;
const unplayed = (problem: Why): Played => ({ problem, grade: null, outcome: null });

function* played(result: Result, lesson: Lesson, slice_s: number): Generator<null, Played> {
  const { start_tick, ticks, finished, altered } = result;
  if ((start_tick !== undefined) !== (lesson.prologue !== undefined)) return unplayed(why('problem.file.otherStart'));
  // Nobody plays on when the time is over: a longer run would only keep this device busy.
  if (ticks > (start_tick ?? 0) + lesson.end.cap_s) return unplayed(why('problem.result.otherEnd'));
  const scenario = scenarioOf(lesson, result.seed, result.practice);
  const written = { ...result, log: [...result.log], ownOnly: true };
  const { reproduced, run, problem } = yield* playingAgain(written, lesson, scenario, slice_s);
  if (!reproduced) return unplayed(why(problem!.problem, problem!.data));
  if (isOver(run!, lesson) !== finished) return unplayed(why('problem.result.otherEnd'));
  // The run is right, so it is something else: whose it is, when, the answers.
  if (altered) return unplayed(why('problem.result.altered'));
  const graded = grade(run!, lesson);
  return { problem: null, grade: graded, outcome: graded.outcome };
}

/**
 * Judges a result that readResult took by an exercise that readExercise took. `place`: that of the learner in the class, null where the sign names none.
 * Stops now and then, so that a page stays alive. Never throws.
 */
export function* judging(
  result: Result,
  exercise: Exercise,
  place: Place | null,
  slice_s: number = SLICE_s,
): Generator<null, Judgement> {
  const ticks = result.ticks - (result.start_tick ?? 0);
  const common = { ticks, ownSeed: ownSeed(result, exercise, place) };
  const other = otherVersion(result, exercise);
  if (other) {
    if (result.altered) return { verdict: 'notReproduced', ...unplayed(why('problem.result.altered')), ...common };
    return { verdict: 'otherVersion', ...unplayed(other), ...common };
  }
  let outcome: Played;
  try {
    outcome = yield* played(result, lessonOfExercise(exercise), slice_s);
  } catch {
    // What nobody foresaw in one result must not keep the others from being judged.
    outcome = unplayed(why('problem.result.unplayable'));
  }
  return { verdict: outcome.problem === null ? 'reproduced' : 'notReproduced', ...outcome, ...common };
}
