// A run of an exercise as a result: what its learner hands in.

import { hashOf, hashRun, SIM_VERSION, type Run } from '$sim';
import { exerciseHash } from '../exercises/exerciseHash';
import { scoreOf } from '../grade';
import { isOver } from '../over';
import { entriesBefore, startTick } from '../own';
import { lessonOf, type RunFile, type Sitting } from '../runfile';
import type { Lesson } from '../schema';
import { RESULT_FORMAT, RESULT_FORMAT_VERSION, type Result } from './resultSchema';

export interface AboutResult {
  readonly who: string;
  /** null where it was not played for a class. */
  readonly sitting: Sitting | null;
  readonly answers?: RunFile['answers'];
  /** Time at the screen, s; where the sitting holds none. */
  readonly spent_s?: number;
}

function headOf(lesson: Lesson, { who, sitting, spent_s = sitting?.spent_s }: AboutResult) {
  const { exercise } = lesson;
  if (!exercise) throw new RangeError(`The lesson ${lesson.id} is not made from an exercise.`);
  return {
    format: RESULT_FORMAT,
    version: RESULT_FORMAT_VERSION,
    exercise: exerciseHash(exercise),
    exerciseId: exercise.id,
    edition: exercise.edition,
    who,
    classCode: sitting?.classCode ?? null,
    attempt: sitting?.attempt ?? null,
    ...(spent_s === undefined ? {} : { spent_s }),
  } as const;
}

const withAnswers = (answers: RunFile['answers']) => (answers === undefined ? {} : { answers });

/** The run as it stands now. Throws a RangeError where the lesson is not made from an exercise. */
export function resultOf(run: Run, lesson: Lesson, about: AboutResult): Result {
  return {
    ...headOf(lesson, about),
    sim: SIM_VERSION,
    practice: run.scenario.practice,
    seed: run.scenario.seed,
    ...(lesson.prologue ? { start_tick: startTick(run) } : {}),
    ticks: run.state.tick,
    hash: hashRun(run),
    claimed: { score: scoreOf(run, lesson) },
    finished: isOver(run, lesson),
    ...withAnswers(about.answers),
    log: run.log.slice(entriesBefore(run)),
  };
}

/** The same of a run file that readRunFile took and that has an exercise in it; what it says of ground and crew before is not needed. */
export function resultOfFile(file: RunFile): Result {
  const { sim, practice, seed, ticks, hash, claimed, finished, start_tick, who, answers } = file;
  const before =
    start_tick === undefined ? 0 : file.log.findIndex(([at, name]) => at === start_tick && name === 'relieveCrew') + 1;
  return {
    ...headOf(lessonOf(file)!, { who, sitting: file.sitting ?? null }),
    sim,
    practice,
    seed,
    ...(start_tick === undefined ? {} : { start_tick }),
    ticks,
    hash,
    claimed,
    finished,
    ...withAnswers(answers),
    log: sim === SIM_VERSION ? file.log.slice(before) : [],
  };
}

/** The fingerprint of a result: two that differ in anything that is handed in differ in it. */
export function resultCheck(result: Omit<Result, 'log' | 'altered'>, log: string): string {
  const { log: _log, altered: _altered, check: _check, ...fields } = result as Result & { check?: string };
  return hashOf({ ...fields, log });
}
