// Both crews play first-rods over a range of seeds: their scores, their medians, who did not end by an act of its own.

import { ledgerOf, type Run } from '$sim';
import { grade, lessonById, outcomeOf, playCrew } from '$lessons';

const lesson = lessonById('first-rods')!;

export interface Calibration {
  readonly careful: readonly number[];
  readonly green: readonly number[];
  readonly carefulMedian: number;
  readonly greenMedian: number;
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
  const scores: Record<'careful' | 'green', number[]> = { careful: [], green: [] };
  const unfinished: string[] = [];
  let worstLedger = 0;
  for (let seed = firstSeed; seed <= lastSeed; seed++) {
    for (const crew of ['careful', 'green'] as const) {
      const run = playCrew(lesson, crew, seed);
      scores[crew].push(grade(run, lesson).score);
      worstLedger = Math.max(worstLedger, ledgerError(run));
      const { key } = outcomeOf(run, lesson);
      if (key === 'outcome.timeUp' || key === 'outcome.running') unfinished.push(`${crew} ${seed}`);
    }
  }
  const { careful, green } = scores;
  return { careful, green, carefulMedian: median(careful), greenMedian: median(green), unfinished, worstLedger };
}
