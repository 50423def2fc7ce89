// Whole wells for the tests and the sweep: what came of a crew's well, and whether it comes out the same again.

import { hashRun, ledgerOf, verdictOf } from '$sim';
import { grade, lessonById, playCrew, readRunFile, replayFile, writeRunFile } from '$lessons';

export const openWell = lessonById('open-well')!;

export interface Made {
  readonly score: number;
  readonly categories: Readonly<Record<string, number>>;
  readonly outcome: string;
  readonly passed: boolean;
  readonly ticks: number;
  /** Of water, grains, polymer and additives, relative. */
  readonly lost: number;
  /** In the driest month; nothing where no well was handed over. */
  readonly yield_Lmin: number;
  readonly leak_d: number;
  /** null where the well gives no water, or there is none. */
  readonly sand_mgL: number | null;
  readonly hash: string;
  /** From the text of its run file; null where that was not asked. */
  readonly reproduced: boolean | null;
}

/** A crew makes its well; `again` plays its run file once more. */
export function made(crew: string, seed: number, again: boolean): Made {
  const run = playCrew(openWell, crew, seed);
  const { score, categories, outcome, passed } = grade(run, openWell);
  const verdict = outcome.key === 'outcome.handedOver' ? verdictOf(run) : null;
  const hash = hashRun(run);
  let reproduced: boolean | null = null;
  if (again) {
    const read = readRunFile(writeRunFile(run, openWell));
    const replayed = read.ok ? replayFile(read.file) : null;
    reproduced = replayed !== null && replayed.reproduced && replayed.hash === hash;
  }
  return {
    score,
    categories: Object.fromEntries(categories.map(({ id, points }) => [id, points])),
    outcome: outcome.key,
    passed,
    ticks: run.state.tick,
    lost: Math.max(...Object.values(ledgerOf(run)).map(Number)),
    yield_Lmin: verdict?.yield.dry_Lmin ?? 0,
    leak_d: verdict?.leak.annulus_d ?? 0,
    sand_mgL: verdict !== null && verdict.yield.now_Lmin > 0 ? verdict.sand_mgL : null,
    hash,
    reproduced,
  };
}

/** The middle value; of an even number the mean of the two in the middle; NaN of none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

export interface Middle {
  readonly score: number;
  readonly yield_Lmin: number;
  readonly leak_d: number;
  readonly sand_mgL: number;
}

/** Middle values of a crew's wells; sand of those that give water. */
export function middleOf(wells: readonly Made[]): Middle {
  const sand = wells.map(({ sand_mgL }) => sand_mgL).filter((sand_mgL) => sand_mgL !== null);
  return {
    score: median(wells.map(({ score }) => score)),
    yield_Lmin: median(wells.map(({ yield_Lmin }) => yield_Lmin)),
    leak_d: median(wells.map(({ leak_d }) => leak_d)),
    sand_mgL: median(sand),
  };
}
