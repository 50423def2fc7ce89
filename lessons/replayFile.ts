// A run file played again: whether it comes out as it says. A claimed score is never trusted, only played again.

import { hashOf, hashRun, replayRun, type Run } from '$sim';
import { scoreOf } from './grade';
import { lessonOf, type Problem, type ProblemKey, type RunFile } from './runfile';
import { scenarioOf } from './scenario';
import type { WordData } from './words/index';
import { SIM_VERSION } from '$sim';

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

/** Plays the log again on the ground of the file's seed and compares hash and score. Never throws on a file that readRunFile took. */
export function replayFile(file: RunFile): Replayed {
  const lesson = lessonOf(file);
  if (lesson === null) return failed('problem.file.unknownLesson', { lesson: file.lesson });
  if (file.sim !== SIM_VERSION || file.lessonVersion !== lesson.version) {
    const version = file.sim !== SIM_VERSION ? file.sim : `${file.lesson} ${file.lessonVersion}`;
    return failed('problem.file.otherVersion', { version });
  }
  const scenario = scenarioOf(lesson, file.seed, file.practice);
  if (hashOf(file.ground) !== hashOf(scenario.ground)) return failed('problem.file.otherGround', {});
  let run: Run;
  try {
    run = replayRun(scenario, file.log, file.ticks);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return failed('problem.file.badAct', { tick: file.ticks });
  }
  const hash = hashRun(run);
  const score = scoreOf(run, lesson);
  // A log with acts that the replay did not take in is altered, even where the end is the same.
  if (hash !== file.hash || run.log.length !== file.log.length)
    return failed('problem.file.otherHash', {}, run, hash, score);
  if (score !== file.claimed.score) {
    return failed(
      'problem.file.otherScore',
      { score: score ?? '-', claimed: file.claimed.score ?? '-' },
      run,
      hash,
      score,
    );
  }
  return { reproduced: true, hash, score, run, problem: null };
}
