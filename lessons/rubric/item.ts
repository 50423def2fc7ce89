// What an item sees of a run and what it gives back. An item is a pure function of this view and its bands.

import type { Contamination, LogEntry, OwnLayer, RunEvent, Senses, Site, Trace, Verdict, WellPlan } from '$sim';
import type { Said } from '../words/index';

/** What a well lesson adds: the site plan as everybody sees it, the crew's own plan and book, and what came of it. */
export interface WellView {
  readonly handedOver: boolean;
  readonly site: Site;
  readonly contamination: readonly Contamination[];
  /** The spot chosen; '' where none was: then it is the first. */
  readonly spot: string;
  readonly plan: WellPlan | null;
  readonly ownLog: readonly OwnLayer[];
  /** Measured at the end; null until the casing is set. */
  readonly verdict: Verdict | null;
}

/** Log, events and trace are the learner's own part: what a crew did before it was relieved is neither credited nor blamed. */
export interface RunView {
  readonly ticks: number;
  /** Second at which the learner began, how deep the hole was then, m, and the powder put in before, kg; 0 where no crew worked before. */
  readonly start_tick: number;
  readonly startDepth_m: number;
  readonly powderBefore_kg: number;
  readonly log: readonly LogEntry[];
  readonly events: readonly RunEvent[];
  readonly trace: Trace;
  /** All samples as the learner sees them, those of a crew before too (`time_s` tells), with their names. */
  readonly tray: Senses['tray'];
  /** Used since the learner began. */
  readonly powderUsed_kg: number;
  readonly waterUsed_L: number;
  /** What the whole job has cost, marks: hands, petrol, additives, water, what the well is made of. */
  readonly cost_marks: number;
  /** Deepest reach of the bit, m. */
  readonly depth_m: number;
  readonly bitDiameter_m: number;
  /** Depth at which the lesson's job counts as done, m. */
  readonly goal_m: number;
  /** Cautions that the lesson shows. */
  readonly hazards: readonly string[];
  /** null where the job is a hole only. */
  readonly well: WellView | null;
}

/** What an item rests on: a moment, a depth, a figure with its unit. */
export interface Evidence {
  readonly tick?: number;
  readonly depth_m?: number;
  readonly value?: number;
  readonly unit?: string;
}

export interface Judged {
  /** Share of the item's weight that was earned, 0 to 1. */
  readonly share_frac: number;
  readonly reason: Said;
  readonly evidence: readonly Evidence[];
}

export type Bands = Readonly<Record<string, number>>;
export type ItemFunction = (view: RunView, bands: Bands) => Judged;

/** The figure of that name; a lesson without it is wrong and is told so. */
export function bandOf(bands: Bands, name: string): number {
  const figure = bands[name];
  if (figure === undefined) throw new Error(`The rubric lacks the figure "${name}".`);
  return figure;
}

/** 1 at `full` or better, 0 at `none` or worse, straight between; `full` may be the larger or the smaller of the two. */
export function shareBetween(value: number, full: number, none: number): number {
  if (full === none) return value === full ? 1 : 0;
  return Math.min(1, Math.max(0, (value - none) / (full - none)));
}

/** How much of the way down the learner has drilled: from the take-over, or from the ground, to the goal. */
export const ownDepthShare = ({ depth_m, startDepth_m, goal_m }: RunView): number =>
  goal_m <= startDepth_m ? 1 : Math.min(1, Math.max(0, (depth_m - startDepth_m) / (goal_m - startDepth_m)));

/** Rounds to so many decimals, for a figure that is to be shown. */
export function shown(value: number, decimals: number): number {
  let scale = 1;
  for (let i = 0; i < decimals; i++) scale *= 10;
  return Math.round(value * scale) / scale;
}
