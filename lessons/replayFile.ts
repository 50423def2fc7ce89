// A run file played again: whether it comes out as it says. A claimed score is never trusted, only played again.

import { createRun, hashOf, hashRun, playingLog, SIM_VERSION, type LogEntry, type Run, type Scenario } from '$sim';
import { atOnce } from './atOnce';
import { scoreOf } from './grade';
import { lessonOf, type Problem, type ProblemKey, type RunFile } from './runfile';
import { startTick } from './own';
import { scenarioOf } from './scenario';
import type { Lesson } from './schema';
import { openStart } from './start';
import type { WordData } from './words/index';

export interface Replayed {
  readonly reproduced: boolean;
  /** What the replay came to; null where nothing could be played. */
  readonly hash: string | null;
  readonly score: number | null;
  readonly run: Run | null;
  /** Why it is not reproduced, or null. */
  readonly problem: Problem | null;
}

function failed(
  key: ProblemKey,
  data: WordData,
  run: Run | null = null,
  hash: string | null = null,
  score: number | null = null,
): Replayed {
  return { reproduced: false, hash, score, run, problem: { ok: false, problem: key, data } };
}

/** What was written down of a run, and what should come out of it. */
export interface Written extends Pick<
  RunFile,
  'seed' | 'practice' | 'log' | 'start_tick' | 'ticks' | 'hash' | 'claimed'
> {
  /** The log is the learner's own part only; else it begins with what the crew before did. */
  readonly ownOnly?: boolean;
}

/** The run as the learner found it, or null when what is written begins otherwise: the crew before is played anew, not believed. */
function* startOf(lesson: Lesson, written: Written, scenario: Scenario, slice_s: number): Generator<null, Run | null> {
  if (!lesson.prologue) return createRun(scenario);
  const start = openStart(lesson, written.seed, written.practice);
  while (!start.advance(slice_s)) yield null;
  const { run } = start;
  const begun: readonly LogEntry[] = written.log.slice(0, run.log.length);
  const same = startTick(run) === written.start_tick && written.ticks >= run.state.tick;
  return same && (written.ownOnly === true || hashOf(begun) === hashOf(run.log)) ? run : null;
}

/** Plays what was written down again, with a stop every so many job seconds, and compares hash and score. The version must be right. */
export function* playingAgain(
  written: Written,
  lesson: Lesson,
  scenario: Scenario,
  slice_s: number,
): Generator<null, Replayed> {
  const { log, ticks, claimed, ownOnly } = written;
  let run: Run | null;
  let added = 0;
  try {
    run = yield* startOf(lesson, written, scenario, slice_s);
    if (run !== null) {
      const first = ownOnly ? 0 : run.log.length;
      added = run.log.length - first;
      yield* playingLog(run, log, first, ticks, slice_s);
    }
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return failed('problem.file.badAct', { tick: ticks });
  }
  if (run === null) return failed('problem.file.otherStart', {});
  const hash = hashRun(run);
  const score = scoreOf(run, lesson);
  // A log with acts that the replay did not take in is altered, even where the end is the same.
  if (hash !== written.hash || run.log.length !== added + log.length)
    return failed('problem.file.otherHash', {}, run, hash, score);
  if (score === claimed.score) return { reproduced: true, hash, score, run, problem: null };
  const told = { score: score ?? '-', claimed: claimed.score ?? '-' };
  return failed('problem.file.otherScore', told, run, hash, score);
}

/** Job seconds played in one go where nobody waits. */
const ALL_s = 259200;

/** A ground from a file may hold anything, also records in records without end. */
function isGround(ground: RunFile['ground'], scenario: Scenario): boolean {
  try {
    return hashOf(ground) === hashOf(scenario.ground);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return false;
  }
}

/** Plays the log again on the ground of the file's seed and compares hash and score. Never throws on a file that readRunFile took. */
export function replayFile(file: RunFile, lesson: Lesson | null = lessonOf(file)): Replayed {
  return atOnce(replaying(file, lesson, ALL_s));
}

/** The same with a stop every so many job seconds, so that a page stays alive. */
export function* replaying(file: RunFile, lesson: Lesson | null, slice_s: number): Generator<null, Replayed> {
  if (lesson === null) return failed('problem.file.unknownLesson', { lesson: file.lesson });
  if (file.sim !== SIM_VERSION || file.lessonVersion !== lesson.version) {
    const version = file.sim !== SIM_VERSION ? file.sim : `${file.lesson} ${file.lessonVersion}`;
    return failed('problem.file.otherVersion', { version });
  }
  const scenario = scenarioOf(lesson, file.seed, file.practice);
  if (!isGround(file.ground, scenario)) return failed('problem.file.otherGround', {});
  return yield* playingAgain(file, lesson, scenario, slice_s);
}
