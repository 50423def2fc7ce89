// The score of a run: every item of the lesson's rubric, summed by category, with reasons and evidence.

import { costOf, groundOf, sensesOf, verdictOf, type Run, type WellPlan } from '$sim';
import { outcomeOf } from './over';
import { ownEntries, ownEvents, ownTrace, startTick } from './own';
import { CATEGORY_IDS, CATEGORY_OF, type CategoryId, type ItemId } from './rubric/ids';
import { ITEMS } from './rubric/index';
import { acceptedActs } from './rubric/episodes';
import type { Evidence, Judged, RunView, WellView } from './rubric/item';
import type { Lesson } from './schema';
import { isScored } from './practices/index';
import type { Said, WordKey } from './words/index';

export interface GradedItem {
  readonly id: ItemId;
  readonly category: CategoryId;
  readonly points: number;
  readonly max: number;
  readonly reason: Said;
  readonly evidence: readonly Evidence[];
  /** Marked essential in the lesson, and less than half of it earned. */
  readonly failed: boolean;
}

export interface Grade {
  /** 0 to 100, to a tenth. A practice has no items and 0 points; ask scoreOf where that must not pass for a score. */
  readonly score: number;
  readonly passed: boolean;
  readonly categories: readonly { readonly id: CategoryId; readonly points: number; readonly max: number }[];
  readonly items: readonly GradedItem[];
  readonly outcome: Said;
}

/** Less than this of an essential item is a failure, whatever the points. */
const ESSENTIAL_frac = 0.5;

const tenth = (value: number): number => Math.round(value * 10) / 10;

type Acts = Pick<RunView, 'log' | 'events'>;

/** What the rubric may see of a well: the last plan, the chosen spot, the book, and the verdict. */
function wellViewOf(run: Run, acts: Acts): WellView {
  const ground = groundOf(run);
  const last = (action: 'planWell' | 'chooseSite') => acceptedActs(acts, action).at(-1)?.[2];
  return {
    handedOver: run.state.machine.job === 'handedOver',
    site: ground.site,
    contamination: ground.contamination,
    spot: (last('chooseSite')?.spot as string | undefined) ?? '',
    plan: (last('planWell') as WellPlan | undefined) ?? null,
    ownLog: run.state.ownLog,
    verdict: verdictOf(run),
  };
}

/** What the rubric may see of a run: of deeds only the learner's own, of hole and well all there is. */
export function viewOf(run: Run, lesson: Lesson): RunView {
  const { state, record, scenario } = run;
  let depth_m = state.hole.depth_m;
  const depths = record.trace.columns.depth_m;
  for (let row = 0; row < record.trace.length; row++) depth_m = Math.max(depth_m, depths[row]!);
  const before = state.relief;
  return {
    ticks: state.tick,
    start_tick: startTick(run),
    startDepth_m: before?.depth_m ?? 0,
    powderBefore_kg: before?.powderUsed_kg ?? 0,
    log: ownEntries(run),
    events: ownEvents(run),
    trace: ownTrace(run),
    tray: sensesOf(run).tray,
    powderUsed_kg: state.stocks.powderUsed_kg - (before?.powderUsed_kg ?? 0),
    waterUsed_L: state.stocks.waterUsed_L - (before?.waterUsed_L ?? 0),
    cost_marks: costOf(run),
    depth_m,
    bitDiameter_m: scenario.kit.bit_m,
    goal_m: lesson.end.depth_m,
    hazards: lesson.hazards,
    well: lesson.well ? wellViewOf(run, { log: run.log, events: record.events }) : null,
  };
}

/** What is right earns in the measure of what it hangs on; the sentence is of that which lost more. */
function measured(own: Judged, other: Judged): Judged {
  const { reason, evidence } = other.share_frac < own.share_frac ? other : own;
  return { share_frac: own.share_frac * other.share_frac, reason, evidence };
}

/** Judges a view by a lesson's rubric: the part of the grade that needs no run, only its record. */
export function judge(view: RunView, lesson: Lesson): GradedItem[] {
  const alone = new Map(lesson.rubric.map(({ item, bands }) => [item, ITEMS[item](view, bands)]));
  return lesson.rubric.map(({ item, weight, essential, inMeasureOf }) => {
    const own = alone.get(item)!;
    const other = inMeasureOf && alone.get(inMeasureOf);
    const judged = other ? measured(own, other) : own;
    return {
      id: item,
      category: CATEGORY_OF[item],
      // A weight with more decimals than points have is never overdone.
      points: Math.min(weight, tenth(judged.share_frac * weight)),
      max: weight,
      reason: judged.reason,
      evidence: judged.evidence,
      failed: essential === true && judged.share_frac < ESSENTIAL_frac,
    };
  });
}

/** Points by category, in the fixed order; categories that the lesson does not judge are left out. */
export function byCategory(items: readonly GradedItem[]): Grade['categories'] {
  const sums: { id: CategoryId; points: number; max: number }[] = [];
  for (const id of CATEGORY_IDS) {
    const own = items.filter((item) => item.category === id);
    if (own.length === 0) continue;
    sums.push({
      id,
      points: tenth(own.reduce((sum, item) => sum + item.points, 0)),
      max: own.reduce((sum, item) => sum + item.max, 0),
    });
  }
  return sums;
}

const DONE: readonly WordKey[] = ['outcome.reached', 'outcome.drilled', 'outcome.handedOver'];

/** Passing wants the points, the job done, no essential item failed, no hint of level 3 and no going back. Hints cost no points. */
export function grade(run: Run, lesson: Lesson): Grade {
  const items = judge(viewOf(run, lesson), lesson);
  const score = tenth(items.reduce((sum, item) => sum + item.points, 0));
  const outcome = outcomeOf(run, lesson);
  const shownAll = run.state.hints.some((hint) => hint.level === 3);
  const sound = DONE.includes(outcome.key) && !items.some((item) => item.failed);
  const passed = score >= lesson.pass_points && sound && !shownAll && run.state.wentBack === 0;
  return { score, passed, categories: byCategory(items), items, outcome };
}

/** The score, or null where nothing is judged: a practice. */
export const scoreOf = (run: Run, lesson: Lesson): number | null =>
  isScored(lesson) ? grade(run, lesson).score : null;
