// The crews play first-rods over a range of seeds: their scores, their medians, who did not end by an act of its own.

import { ledgerOf, type Run } from '$sim';
import { grade, lessonById, outcomeOf, playCrew } from '$lessons';

const lesson = lessonById('first-rods')!;

export interface Calibration {
  readonly careful: readonly number[];
  readonly steady: readonly number[];
  readonly green: readonly number[];
  readonly carefulMedian: number;
  readonly steadyMedian: number;
  readonly greenMedian: number;
  /** Runs in which steady or careful did not reach the goal. */
  readonly short: readonly string[];
  /** Runs that ended by the clock instead of by the crew. */
  readonly unfinished: readonly string[];
  readonly worstLedger: number;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

function ledgerError(run: Run): number {
  const { water, solids, polymer } = ledgerOf(run);
  return Math.max(Math.abs(water), Math.abs(solids), Math.abs(polymer));
}

export function calibrate(firstSeed: number, lastSeed: number): Calibration {
  const scores: Record<'careful' | 'steady' | 'green', number[]> = { careful: [], steady: [], green: [] };
  const unfinished: string[] = [];
  const short: string[] = [];
  let worstLedger = 0;
  for (let seed = firstSeed; seed <= lastSeed; seed++) {
    for (const crew of ['careful', 'steady', 'green'] as const) {
      const run = playCrew(lesson, crew, seed);
      scores[crew].push(grade(run, lesson).score);
      worstLedger = Math.max(worstLedger, ledgerError(run));
      const { key } = outcomeOf(run, lesson);
      if (key === 'outcome.timeUp' || key === 'outcome.running') unfinished.push(`${crew} ${seed}`);
      if (crew !== 'green' && key !== 'outcome.reached') short.push(`${crew} ${seed}`);
    }
  }
  const { careful, steady, green } = scores;
  return {
    careful,
    steady,
    green,
    carefulMedian: median(careful),
    steadyMedian: median(steady),
    greenMedian: median(green),
    short,
    unfinished,
    worstLedger,
  };
}
