// Figures of the screen in a plan: openings, entrance of the water, and what the finest ground does behind it.
import { CLOTHS } from '../materials/cloths';
import { PACKS } from '../materials/packs';
import { CASINGS } from '../materials/pipes';
import { held_frac, packFit, type PackFit } from './packFit';
import { passing_frac, screenOpening_mm, staysLoose_frac, type Barrier } from './passing';
import type { WellPlan } from './plan';
import type { PlanBed, PlanFacts } from './planFacts';
import {
  entrance_ms,
  entranceFor_ms,
  leastScreen_m,
  leftOpen_m2,
  openPerMetre_m,
  openShare_frac,
  sectionLeft_frac,
} from './slots';

export interface ScreenFigures {
  readonly length_m: number;
  readonly openShare_frac: number;
  readonly openArea_m2: number;
  /** With all slots open and with half of them; Infinity without slots. */
  readonly entrance_ms: number;
  readonly entranceHalf_ms: number;
  /** What the ground at the screen allows; null without a log. */
  readonly entranceFor_ms: number | null;
  readonly leastLength_m: number;
  readonly sectionLeft_frac: number;
  /** Finest bed at the screen by its d30, as logged. */
  readonly finest: PlanBed | null;
  /** Share of its grains that is let by, and how much of that never stops. */
  readonly passing_frac: number | null;
  readonly loose_frac: number | null;
  readonly packFit: PackFit | null;
  /** Share of the pack that slot or cloth hold back; null without pack. */
  readonly packHeld_frac: number | null;
}

/** What stands between the ground and the bore in a plan. */
export function barrierOf(plan: WellPlan): Barrier {
  return {
    slotWidth_mm: plan.slotRows > 0 ? plan.slotWidth_mm : 0,
    cloth_mm: plan.cloth === 'none' ? undefined : CLOTHS[plan.cloth].O95_mm,
    pack: plan.pack === 'none' ? undefined : PACKS[plan.pack],
  };
}

/** Length of a bed at the screen, m. */
const atScreen_m = (plan: WellPlan, bed: PlanBed): number =>
  Math.max(0, Math.min(bed.bottom_m, plan.screenTo_m) - Math.max(bed.top_m, plan.screenFrom_m));

function finestAt(plan: WellPlan, beds: readonly PlanBed[]): PlanBed | null {
  let finest: PlanBed | null = null;
  for (const bed of beds) if (atScreen_m(plan, bed) > 0 && (!finest || bed.d30_mm < finest.d30_mm)) finest = bed;
  return finest;
}

/** Mean conductivity along the screen by lengths, m/s; null without a log. */
function meanK_ms(plan: WellPlan, beds: readonly PlanBed[]): number | null {
  let length_m = 0;
  let sum = 0;
  for (const bed of beds) {
    const part_m = atScreen_m(plan, bed);
    length_m += part_m;
    sum += part_m * bed.K_ms;
  }
  return length_m > 0 ? sum / length_m : null;
}

/** Figures of the screen. */
export function screenFigures(plan: WellPlan, facts: PlanFacts): ScreenFigures {
  const { outside_m } = CASINGS[plan.casing];
  const length_m = plan.screenTo_m - plan.screenFrom_m;
  const perMetre_m = openPerMetre_m(plan);
  const openArea_m2 = perMetre_m * length_m;
  const K_ms = meanK_ms(plan, facts.beds);
  const barrier = barrierOf(plan);
  const finest = finestAt(plan, facts.beds);
  const passing = finest && passing_frac(finest, barrier);
  return {
    length_m,
    openShare_frac: openShare_frac(plan, outside_m),
    openArea_m2,
    entrance_ms: entrance_ms(facts.rate_m3s, openArea_m2),
    entranceHalf_ms: entrance_ms(facts.rate_m3s, leftOpen_m2(openArea_m2)),
    entranceFor_ms: K_ms === null ? null : entranceFor_ms(K_ms),
    leastLength_m: leastScreen_m(facts.rate_m3s, perMetre_m),
    sectionLeft_frac: sectionLeft_frac(plan, outside_m),
    finest,
    passing_frac: passing,
    loose_frac: passing === null ? null : staysLoose_frac(passing),
    packFit: finest && barrier.pack ? packFit(barrier.pack, finest) : null,
    packHeld_frac: barrier.pack ? held_frac(barrier.pack, screenOpening_mm(barrier)) : null,
  };
}
