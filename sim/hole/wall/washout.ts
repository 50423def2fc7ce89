// Wash-out: where the stream pulls harder at the wall than its grains hold, they go with it.
import { apparentViscosity_Pas } from '../../fluid/apparent';
import { setAnnulus, slotWallRate_1s, slotWallShear_Pa } from '../../hydraulics/annulus';
import { conduitLoss_Pa, type Conduit, type LineFluid } from '../../hydraulics/pipe';
import { exp, ln, pow } from '../../numeric/functions';
import { GRAVITY_MS2 } from '../../numeric/units';
import { DRAINED_kPa, type WallGround } from '../wallGround';

/** Grains of quartz in water: (s - 1). */
const EXCESS_ratio = 1.65;
/** A full cake adds this shear stress, Pa; it is full at this thickness, m; and cohesion adds a hundredth of itself. ASSUMED. */
const CAKE_Pa = 5;
const FULL_CAKE_m = 3e-4;
const COHESION_share = 0.01;

/** What the ground decides of wash-out, by cell. */
export interface WashTable {
  /** Outward gradient that doubles the weight of a grain: (s - 1)(1 - n). */
  heavy_ratio: Float64Array;
  /** Retreat of clean ground at a transport stage of 1 in water, m/s; 0 where the ground is cohesive. */
  pickUp_ms: Float64Array;
  /** Erodibility of cohesive ground, m3/(N s); 0 where it is clean. */
  erodibility_m3Ns: Float64Array;
}

/**
 * Pick-up of clean sand as retreat of a wall, m/s, at transport stage T = 1 in water of 1e-6 m2/s:
 * .00033 D*^.3 sqrt((s-1) g d)/(1 - n), D* = d ((s-1) g/nu^2)^(1/3); times T^1.5 elsewhere.
 * d50_mm .1 to 2; porosity_frac n. Source: van Rijn 1984, J. Hydraul. Eng. 110:1494 (from memory), measured on flat beds: that it holds on a wall is ASSUMED.
 * Worked value: .15 mm, n .42 -> 4.2e-5.
 */
export function pickUp_ms(d50_mm: number, porosity_frac: number): number {
  const d = d50_mm / 1000;
  const logDStar = ln(d) + ln((EXCESS_ratio * GRAVITY_MS2) / 1e-12) / 3;
  return (0.00033 * exp(0.3 * logDStar) * Math.sqrt(EXCESS_ratio * GRAVITY_MS2 * d)) / (1 - porosity_frac);
}

/** Coefficient of Hanson & Simon, m3/(N s) at 1 Pa. */
const ERODIBILITY_m3Ns = 2e-7;

/** Erodibility of cohesive ground, m3/(N s): .2e-6 tau_c^-.5 (Hanson & Simon 2001, Hydrol. Process. 15:23, from memory). Worked value: tau_c 1 Pa -> 2e-7. */
export const erodibility_m3Ns = (tauC_Pa: number): number => ERODIBILITY_m3Ns / Math.sqrt(tauC_Pa);

/** From this cohesion on ground wears by excess shear instead of grain by grain, kPa. ASSUMED. */
const WEARS_kPa = 0.2;

export function createWashTable(ground: WallGround): WashTable {
  const table: WashTable = {
    heavy_ratio: new Float64Array(ground.cells),
    pickUp_ms: new Float64Array(ground.cells),
    erodibility_m3Ns: new Float64Array(ground.cells),
  };
  for (let i = 0; i < ground.cells; i++) {
    table.heavy_ratio[i] = EXCESS_ratio * (1 - ground.porosity_frac[i]);
    if (ground.su_kPa[i] !== DRAINED_kPa || ground.cohesion_kPa[i] > WEARS_kPa)
      table.erodibility_m3Ns[i] = erodibility_m3Ns(ground.tauC_Pa[i]);
    else table.pickUp_ms[i] = pickUp_ms(ground.d50_mm[i], ground.porosity_frac[i]);
  }
  return table;
}

/**
 * Shear stress that the wall of cell i stands, Pa: tau_c (1 + i/((s-1)(1-n))) + 5 min(1, cake/.3 mm) + c'/100.
 * The outward gradient i presses the grains on as weight does (after Cheng & Chiew 1999, J. Hydraul. Res. 37:687, from memory: the
 * threshold follows the effective weight); an inward one lightens them, to nothing at least. The rest ASSUMED.
 * Worked value: fine sand, tau_c .14, n .42, gradient 1, no cake, no cohesion -> .286.
 */
export function washThreshold_Pa(
  ground: WallGround,
  table: WashTable,
  i: number,
  gradient_ratio: number,
  cake_m: number,
  cohesion_Pa: number,
): number {
  const weight_ratio = Math.max(0, 1 + gradient_ratio / table.heavy_ratio[i]);
  return ground.tauC_Pa[i] * weight_ratio + CAKE_Pa * Math.min(1, cake_m / FULL_CAKE_m) + COHESION_share * cohesion_Pa;
}

/** Shear stress at a wall holeWidth_m wide when flow_m3s passes, Pa; 0 without flow. Worked value: water 20 C, .002 m3/s, .1 and .0337 m -> .347. */
export function wallShear_Pa(
  conduit: Conduit,
  flow_m3s: number,
  holeWidth_m: number,
  rodOutside_m: number,
  fluid: LineFluid,
): number {
  if (!(flow_m3s > 0) || holeWidth_m <= rodOutside_m) return 0;
  setAnnulus(conduit, 1, holeWidth_m, rodOutside_m, fluid);
  return slotWallShear_Pa(conduitLoss_Pa(conduit, flow_m3s), holeWidth_m - rodOutside_m);
}

/** Pick-up counts no more than this transport stage: beyond it the sand must dilate before it lets go. ASSUMED. */
const MOST_STAGE = 3;
/** Below this one nothing moves that matters: the wall has stopped. */
const LEAST_STAGE = 0.02;

/**
 * Retreat of the wall of cell i, m/s: clean ground pickUp T^1.5 left, T = (tau - threshold)/threshold up to 3; cohesive ground
 * kd (tau - threshold) left; 0 up to the threshold. left_ratio: what the fluid leaves of it, in sand by its thickness (nu^-.2, from
 * D*^.3), in clay by the skin that it lays on it.
 */
export function washRate_ms(
  table: WashTable,
  i: number,
  shear_Pa: number,
  threshold_Pa: number,
  left_ratio: number,
): number {
  const excess_Pa = shear_Pa - threshold_Pa;
  if (!(excess_Pa > LEAST_STAGE * threshold_Pa)) return 0;
  if (table.erodibility_m3Ns[i] > 0) return table.erodibility_m3Ns[i] * excess_Pa * left_ratio;
  const stage = excess_Pa < MOST_STAGE * threshold_Pa ? excess_Pa / threshold_Pa : MOST_STAGE;
  return table.pickUp_ms[i] * stage * Math.sqrt(stage) * left_ratio;
}

/** What a fluid leaves of the pick-up of water: (nu/1e-6)^-.2 at the shear rate of the ring, at most 1. Worked value: ten times thicker -> .631. */
export function thinness_ratio(fluid: LineFluid, flow_m3s: number, holeWidth_m: number, rodOutside_m: number): number {
  const area_m2 = (Math.PI / 4) * (holeWidth_m * holeWidth_m - rodOutside_m * rodOutside_m);
  const rate_1s = slotWallRate_1s(flow_m3s / area_m2, holeWidth_m - rodOutside_m, fluid.n_ratio);
  const nu_m2s = apparentViscosity_Pas(fluid, rate_1s) / fluid.density_kgm3;
  return nu_m2s <= 1e-6 ? 1 : pow(nu_m2s / 1e-6, -0.2);
}
