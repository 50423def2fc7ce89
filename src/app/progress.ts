// What a learner's record says after a run: pure functions from record to record, for the device to keep.
import type { DrillId } from '$lessons';
import type { Learner, Shown, Standing } from './records';

/** True where this learner has stood on the ground of that number in that lesson. */
export function hasSeen(learner: Learner | null, lesson: string, seed: number): boolean {
  return learner?.seen?.[lesson]?.includes(seed) ?? false;
}

export function withSeen(learner: Learner, lesson: string, seed: number): Learner {
  if (hasSeen(learner, lesson, seed)) return learner;
  return { ...learner, seen: { ...learner.seen, [lesson]: [...(learner.seen?.[lesson] ?? []), seed] } };
}

/** A ground's number that this learner has not met in that lesson. */
export function unseenSeed(learner: Learner | null, lesson: string, draw: () => number): number {
  let seed = draw();
  while (hasSeen(learner, lesson, seed)) seed = draw();
  return seed;
}

const sittingName = (exercise: string, classCode: string): string => `${exercise}/${classCode}`;

/** How many attempts this learner has begun at an exercise in a class. */
export function begunBy(learner: Learner | null, exercise: string, classCode: string): number {
  return learner?.begun?.[sittingName(exercise, classCode)] ?? 0;
}

export function withBegun(learner: Learner, exercise: string, classCode: string, attempt: number): Learner {
  const name = sittingName(exercise, classCode);
  return { ...learner, begun: { ...learner.begun, [name]: Math.max(attempt, learner.begun?.[name] ?? 0) } };
}

export interface FinishedRun {
  readonly lesson: string;
  readonly score: number;
  readonly passed: boolean;
  /** Share of the points of each drill's subject that the run judged. */
  readonly shown: Readonly<Partial<Record<DrillId, number>>>;
  readonly finished_ms: number;
}

/** Enters a finished run: best and tries of its lesson, best and last of each subject. */
export function withRun(learner: Learner, run: FinishedRun): Learner {
  const before = learner.best[run.lesson];
  const standing: Standing = {
    score: Math.max(run.score, before?.score ?? 0),
    passed: run.passed || (before?.passed ?? false),
    tries: (before?.tries ?? 0) + 1,
  };
  return {
    ...learner,
    best: { ...learner.best, [run.lesson]: standing },
    shown: withShown(learner.shown ?? {}, run),
  };
}

function withShown(shown: Shown, run: FinishedRun): Shown {
  const after: Partial<Record<DrillId, Shown[DrillId]>> = { ...shown };
  for (const [drill, frac] of Object.entries(run.shown) as [DrillId, number][]) {
    const best_frac = Math.max(frac, shown[drill]?.best_frac ?? 0);
    after[drill] = { best_frac, last_frac: frac, last_ms: run.finished_ms };
  }
  return after;
}

/**
 * Two records of the same learner as one: the better score, every pass, the latest of each subject, every ground seen.
 * Tries are not added up: the same runs may stand in both. Nothing of either is made worse.
 */
export function merged(here: Learner, there: Learner): Learner {
  return {
    ...here,
    made_ms: Math.min(here.made_ms, there.made_ms),
    best: mergedBy(here.best, there.best, (a, b) => ({
      score: Math.max(a.score, b.score),
      passed: a.passed || b.passed,
      tries: Math.max(a.tries, b.tries),
    })),
    shown: mergedBy(here.shown ?? {}, there.shown ?? {}, (a, b) => ({
      ...(b.last_ms > a.last_ms ? b : a),
      best_frac: Math.max(a.best_frac, b.best_frac),
    })) as Shown,
    begun: mergedBy(here.begun ?? {}, there.begun ?? {}, Math.max),
    seen: mergedBy(here.seen ?? {}, there.seen ?? {}, (a, b) => [...new Set([...a, ...b])]),
  };
}

function mergedBy<Value>(
  here: Readonly<Partial<Record<string, Value>>>,
  there: Readonly<Partial<Record<string, Value>>>,
  both: (a: Value, b: Value) => Value,
): Record<string, Value> {
  const all: Record<string, Value> = {};
  for (const key of new Set([...Object.keys(here), ...Object.keys(there)])) {
    const a = here[key];
    const b = there[key];
    all[key] = a !== undefined && b !== undefined ? both(a, b) : (a ?? b)!;
  }
  return all;
}

/** The ids of the lessons a learner has passed. */
export function passedBy(learner: Learner | null): string[] {
  return Object.entries(learner?.best ?? {}).flatMap(([lesson, { passed }]) => (passed ? [lesson] : []));
}
