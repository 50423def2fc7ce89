// Figures of the pipe in a plan: weight, lift, and what it bears.
import { CASINGS } from '../materials/pipes';
import { CEMENT, SEALS } from '../materials/seals';
import { waterDensity_kgm3 } from '../materials/water';
import { GRAVITY_MS2 } from '../numeric/units';
import { boreArea_m2, hanging_N } from './buoyancy';
import { slurryDensity_kgm3 } from './cement';
import { collapse_Pa, collapseCautious_Pa, collapseHead_m, emptied_Pa, slottedCollapse_ratio } from './collapse';
import { casingLength_m, shoe_m, type WellPlan } from './plan';
import { pipeWeight_N, slotted_N, WORKING_N } from './tension';

/** Temperature at which the board reckons, C: that of the tables of pipe and water. */
const BOARD_C = 20;

export interface PipeFigures {
  readonly shoe_m: number;
  readonly length_m: number;
  /** Weight in air; lift of the empty, closed pipe for each metre in water; water to fill it. */
  readonly weight_kg: number;
  readonly lift_kg: number;
  readonly fill_L: number;
  /** Pressure at which it folds: plain by both forms, and at the slots. */
  readonly collapse_Pa: number;
  readonly collapseCautious_Pa: number;
  readonly collapseSlotted_Pa: number;
  /** Water outside that it bears when bailed dry, and the share of strength to load at the screen. */
  readonly collapse_m: number;
  readonly collapse_ratio: number;
  /** Height of fresh cement outside that it bears, filled with water and empty; Infinity without cement. */
  readonly cement_m: number;
  readonly cementEmpty_m: number;
  /** Strength at the slots, and beside a hard working crew and its own weight. */
  readonly strength_N: number;
  readonly working_ratio: number;
}

/** Figures of the pipe for a lowest water level (null: not known, then reckoned full to the ground) and the section left at the slots. */
export function pipeFigures(plan: WellPlan, lowest_m: number | null, section_frac: number): PipeFigures {
  const pipe = CASINGS[plan.casing];
  const length_m = casingLength_m(plan);
  const water_kgm3 = waterDensity_kgm3(BOARD_C);
  const slotted = section_frac < 1 ? slottedCollapse_ratio(plan) : 1;
  const folds_Pa = collapse_Pa(pipe);
  const cemented = plan.seal !== 'none' && SEALS[plan.seal].entersPack;
  const cement_kgm3 = cemented ? slurryDensity_kgm3(CEMENT.water_ratio) : 0;
  const weight_N = pipeWeight_N(pipe, length_m);
  const strength_N = slotted_N(pipe, section_frac);
  const metre = { length_m: 1, submerged_m: 1, plugged: true, filled_m: 0 };
  return {
    shoe_m: shoe_m(plan),
    length_m,
    weight_kg: weight_N / GRAVITY_MS2,
    lift_kg: -hanging_N(pipe, { ...metre, outside_kgm3: water_kgm3, inside_kgm3: 0 }) / GRAVITY_MS2,
    fill_L: boreArea_m2(pipe) * length_m * 1000,
    collapse_Pa: folds_Pa,
    collapseCautious_Pa: collapseCautious_Pa(pipe),
    collapseSlotted_Pa: slotted * folds_Pa,
    collapse_m: collapseHead_m(slotted * folds_Pa, water_kgm3, 0),
    collapse_ratio: (slotted * folds_Pa) / emptied_Pa(plan.screenTo_m, lowest_m ?? 0, water_kgm3),
    cement_m: collapseHead_m(folds_Pa, cement_kgm3, water_kgm3),
    cementEmpty_m: collapseHead_m(folds_Pa, cement_kgm3, 0),
    strength_N,
    working_ratio: strength_N / (WORKING_N + weight_N),
  };
}
