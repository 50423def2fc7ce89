// A plan that suits the demo kit, and the facts of an ordinary hole, for tests to change.
import type { WellPlan } from '../../../sim/completion/plan';
import type { PlanFacts } from '../../../sim/completion/planFacts';
import { SOILS } from '../../../sim/materials/soils';

/** 63 mm in 100 mm, 4 m of screen in medium sand with cloth, sealed from 0 to 3 m. */
export const PLAN: WellPlan = {
  casing: 'pvc63',
  screenFrom_m: 14,
  screenTo_m: 18,
  sump_m: 0.5,
  slotWidth_mm: 0.8,
  slotRows: 3,
  slotArc_mm: 30,
  slotSpacing_mm: 12,
  cloth: 'medium',
  cap: true,
  centralisers: 4,
  pack: 'none',
  packTop_m: 0,
  seal: 'bentoniteGranules',
  sealFrom_m: 0,
  sealTo_m: 3,
  stickUp_m: 0.5,
};

export const FACTS: PlanFacts = {
  bit_m: 0.1,
  depth_m: 19,
  beds: [
    { ...SOILS.firmClay, top_m: 0, bottom_m: 12 },
    { ...SOILS.mediumSand, top_m: 12, bottom_m: 20 },
  ],
  lowest_m: 6,
  rate_m3s: 17 / 60000,
};
