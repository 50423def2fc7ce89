// Live figures of a plan: what the board shows while it is being written.
import { CASINGS } from '../materials/pipes';
import { SEALS } from '../materials/seals';
import {
  amountsOf,
  casingCost_marks,
  handsHours_h,
  madeReady_h,
  packCost_marks,
  sealCost_marks,
  waitHours_h,
  type Amounts,
} from './amounts';
import { pipeFigures, type PipeFigures } from './pipeFigures';
import { shoe_m, type WellPlan } from './plan';
import type { PlanFacts } from './planFacts';
import { annulus_m2, leastGap_m, nominalHole, radiusAt_m } from './quantities';
import { ringSeepage_m3s } from './sealRules';
import { screenFigures, type ScreenFigures } from './screenFigures';

export interface PlanFigures {
  readonly screen: ScreenFigures;
  readonly pipe: PipeFigures;
  readonly amounts: Amounts;
  /** Least gap round the casing over all of it, and over the seal. */
  readonly gap_m: number;
  readonly sealGap_m: number;
  /** Water that seeps down the ring with water standing over it: through the seal, or through loose fill where there is none. */
  readonly seepage_m3s: number;
  readonly cost_marks: number;
  /** Sawing and sleeve beforehand; hands busy at the hole; waiting for joints and seal. */
  readonly ready_h: number;
  readonly hands_h: number;
  readonly wait_h: number;
}

/** All figures of a plan that checkPlan has nothing against. */
export function planFigures(plan: WellPlan, facts: PlanFacts): PlanFigures {
  const { outside_m } = CASINGS[plan.casing];
  const hole = facts.hole ?? nominalHole(facts.bit_m);
  const screen = screenFigures(plan, facts);
  const amounts = amountsOf(plan, hole, facts.depth_m);
  const K_ms = plan.seal === 'none' ? SEALS.cuttings.spoiltK_ms : SEALS[plan.seal].K_ms;
  return {
    screen,
    pipe: pipeFigures(plan, facts.lowest_m, screen.sectionLeft_frac),
    amounts,
    gap_m: leastGap_m(hole, outside_m, 0, shoe_m(plan)),
    sealGap_m: plan.seal !== 'none' ? leastGap_m(hole, outside_m, plan.sealFrom_m, plan.sealTo_m) : 0,
    seepage_m3s: ringSeepage_m3s(K_ms, annulus_m2(radiusAt_m(hole, plan.sealFrom_m), outside_m)),
    cost_marks:
      casingCost_marks(plan, amounts) +
      packCost_marks(amounts.packBought_m3) +
      (plan.seal === 'none' ? 0 : sealCost_marks(plan.seal, amounts.seal_kg)),
    ready_h: madeReady_h(amounts),
    hands_h: handsHours_h(amounts),
    wait_h: waitHours_h(plan, amounts.joints),
  };
}
