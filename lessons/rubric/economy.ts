// Items of the category economy: hours, powder and water. An unfinished hole earns only in the measure of its depth, an unfinished well nothing.

import { bandOf, ownDepthShare, shareBetween, shown, type Bands, type Judged, type RunView } from './item';
import type { WordKey } from '../words/index';

/** How much of the job was done, 0 to 1. */
export function doneShare(view: RunView): number {
  if (view.well !== null) return view.well.handedOver ? 1 : 0;
  return ownDepthShare(view);
}

/** Care of an unfinished hole earns in the measure of its depth: who drills little has risked little. The sentence names what was lost first. */
export function inMeasure(
  view: RunView,
  share_frac: number,
  words: { readonly full: WordKey; readonly lost: WordKey; readonly unfinished: WordKey },
): { share_frac: number; key: WordKey } {
  const done = doneShare(view);
  return { share_frac: share_frac * done, key: share_frac < 1 ? words.lost : done < 1 ? words.unfinished : words.full };
}

/** Bands: full_s, none_s (job seconds). */
export function jobTime(view: RunView, bands: Bands): Judged {
  const full_s = bandOf(bands, 'full_s');
  const took_s = view.ticks - view.start_tick;
  const byTime = shareBetween(took_s, full_s, bandOf(bands, 'none_s'));
  const done = doneShare(view);
  const time_min = shown(took_s / 60, 0);
  return {
    share_frac: byTime * done,
    reason:
      done < 1
        ? { key: 'reason.jobTime.unfinished', data: { time_min } }
        : byTime === 1
          ? { key: 'reason.jobTime.full', data: { time_min } }
          : { key: 'reason.jobTime.lost', data: { time_min, goal_min: shown(full_s / 60, 0) } },
    evidence: [{ tick: view.ticks, value: took_s, unit: 's' }],
  };
}

/** The worse of the two supplies. Bands: powderFull_g, powderNone_g, waterFull_L, waterNone_L. */
export function suppliesUsed(view: RunView, bands: Bands): Judged {
  const powder_g = view.powderUsed_kg * 1000;
  const powderGoal_g = bandOf(bands, 'powderFull_g');
  const waterGoal_L = bandOf(bands, 'waterFull_L');
  const byPowder = shareBetween(powder_g, powderGoal_g, bandOf(bands, 'powderNone_g'));
  const byWater = shareBetween(view.waterUsed_L, waterGoal_L, bandOf(bands, 'waterNone_L'));
  const done = doneShare(view);
  const used = { powder_g: shown(powder_g, 0), water_L: shown(view.waterUsed_L, 0) };
  return {
    share_frac: Math.min(byPowder, byWater) * done,
    reason:
      done < 1
        ? { key: 'reason.suppliesUsed.unfinished', data: {} }
        : byPowder === 1 && byWater === 1
          ? { key: 'reason.suppliesUsed.full', data: used }
          : byPowder <= byWater
            ? { key: 'reason.suppliesUsed.powder', data: { powder_g: used.powder_g, goal_g: powderGoal_g } }
            : { key: 'reason.suppliesUsed.water', data: { water_L: used.water_L, goal_L: waterGoal_L } },
    evidence: [
      { value: used.powder_g, unit: 'g' },
      { value: used.water_L, unit: 'L' },
    ],
  };
}

/** What the whole job cost against what it may cost; an unfinished one earns in the measure of what was done. Bands: full_marks, none_marks. */
export function withinBudget(view: RunView, bands: Bands): Judged {
  const budget_marks = bandOf(bands, 'full_marks');
  const { share_frac, key } = inMeasure(
    view,
    shareBetween(view.cost_marks, budget_marks, bandOf(bands, 'none_marks')),
    {
      full: 'reason.withinBudget.full',
      lost: 'reason.withinBudget.lost',
      unfinished: 'reason.withinBudget.unfinished',
    },
  );
  const cost_marks = shown(view.cost_marks, 0);
  return {
    share_frac,
    reason: { key, data: { cost_marks, budget_marks } },
    evidence: [{ value: cost_marks, unit: 'marks' }],
  };
}
