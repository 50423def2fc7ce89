// The calibration of first-rods by its crews over many seeds, as plain functions: the tests call them with few seeds, the sweep with all.

import { ledgerOf, type Run } from '$sim';
import { grade, lessonById, outcomeOf, playCrew, replayFile, runFileOf, type RunFile } from '$lessons';

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

/** Seeds whose file, written and read again, is not reproduced. */
export function notReproduced(firstSeed: number, lastSeed: number): number[] {
  const seeds: number[] = [];
  for (let seed = firstSeed; seed <= lastSeed; seed++) {
    const run = playCrew(lesson, seed % 2 === 0 ? 'careful' : 'green', seed);
    const file = JSON.parse(JSON.stringify(runFileOf(run, lesson))) as RunFile;
    if (!replayFile(file).reproduced) seeds.push(seed);
  }
  return seeds;
}

export interface SweepCheck {
  readonly name: string;
  /** What was found, and whether it is within the bounds. */
  readonly run: () => { readonly ok: boolean; readonly found: string };
}

export const FIRST_RODS_CHECKS: readonly SweepCheck[] = [
  {
    name: 'first-rods, seeds 1 to 50: careful has 80 points in 45, green is 25 lower in the median',
    run: () => {
      const { careful, carefulMedian, green, greenMedian, unfinished, worstLedger } = calibrate(1, 50);
      const good = careful.filter((score) => score >= 80).length;
      return {
        ok: good >= 45 && carefulMedian - greenMedian >= 25 && unfinished.length === 0 && worstLedger <= 1e-9,
        found:
          `careful: ${good} of ${careful.length} with 80 points, median ${carefulMedian}, least ${Math.min(...careful)}; ` +
          `green: median ${greenMedian}, most ${Math.max(...green)}; ended by the clock: ${unfinished.join(', ') || 'none'}; worst balance ${worstLedger}`,
      };
    },
  },
  {
    name: 'first-rods, seeds 1 to 50: files are reproduced',
    run: () => {
      const seeds = notReproduced(1, 50);
      return { ok: seeds.length === 0, found: `not reproduced: ${seeds.join(', ') || 'none'}` };
    },
  },
];
