// A hole in even ground for tests of loss and level: full of one fluid, the bit at its bottom.
import { SOAKED } from '../../../../sim/fluid/substances';
import { createHole, type HoleState } from '../../../../sim/hole/hole';
import { holeCapacity_m3, holeContent_m3 } from '../holds';
import { lossInto } from '../../../../sim/hole/loss/loss';
import { createLossWork, type LossInput, type LossWork } from '../../../../sim/hole/loss/work';
import type { WallGround } from '../../../../sim/hole/wallGround';
import { CLASS_COUNT } from '../../../../sim/materials/sizes';

export const DZ_m = 0.25;
export const L_PER_MIN = 60000;

export interface Sand {
  K_ms: number;
  porosity_frac: number;
  Sy_frac: number;
  d15_mm: number;
}
export const FINE: Sand = { K_ms: 6.4e-5, porosity_frac: 0.42, Sy_frac: 0.21, d15_mm: 0.089 };
export const MEDIUM: Sand = { K_ms: 3.24e-4, porosity_frac: 0.39, Sy_frac: 0.26, d15_mm: 0.2 };
export const COARSE: Sand = { K_ms: 9e-4, porosity_frac: 0.37, Sy_frac: 0.27, d15_mm: 0.357 };
export const GRAVEL: Sand = { K_ms: 4e-2, porosity_frac: 0.3, Sy_frac: 0.22, d15_mm: 3.44 };
export const CLAY: Sand = { K_ms: 2e-10, porosity_frac: 0.38, Sy_frac: 0.02, d15_mm: 4e-4 };

/** Ground for each cell, water table at table_m. */
export function groundOf(cells: number, table_m: number, sandAt: (depth_m: number) => Sand): WallGround {
  const array = (at: (i: number, depth_m: number) => number): Float64Array =>
    Float64Array.from({ length: cells }, (_, i) => at(i, (i + 0.5) * DZ_m));
  const none = (): Float64Array => new Float64Array(cells);
  return {
    cells,
    layer: new Int32Array(cells),
    K_ms: array((_, z) => sandAt(z).K_ms),
    porosity_frac: array((_, z) => sandAt(z).porosity_frac),
    saturation_frac: array((_, z) => (z >= table_m ? 1 : 1 - sandAt(z).Sy_frac / sandAt(z).porosity_frac)),
    head_m: array((_, z) => (z >= table_m ? table_m : z)),
    pore_Pa: array((_, z) => (z >= table_m ? 9810 * (z - table_m) : 0)),
    total_Pa: none(),
    effective_Pa: none(),
    unitWeight_Nm3: none(),
    su_kPa: none(),
    cohesion_kPa: none(),
    capillary_kPa: none(),
    phi_deg: none(),
    tauC_Pa: none(),
    swell_ratio: none(),
    d15_mm: array((_, z) => sandAt(z).d15_mm),
    d50_mm: none(),
    fractions: new Float64Array(CLASS_COUNT * cells),
    salt_gL: none(),
  };
}

export interface SandHole {
  hole: HoleState;
  ground: WallGround;
  work: LossWork;
  input: LossInput;
}

export interface SandHoleShape {
  depth_m: number;
  table_m: number;
  sand: Sand | ((depth_m: number) => Sand);
  soaked_gL?: number;
  /** Share of its room that is full at first. */
  full_frac?: number;
}

export function sandHole({ depth_m, table_m, sand, soaked_gL = 0, full_frac = 1 }: SandHoleShape): SandHole {
  const hole = createHole({ dz_m: DZ_m, maxDepth_m: depth_m + 1, bit_m: 0.1, starter_m: depth_m });
  const input: LossInput = {
    dt_s: 1,
    tick: 0,
    bit_m: depth_m,
    rodOutside_m: 0.0337,
    temperature_C: 20,
    inflow_m3: 0,
    turning: false,
    wallShear_Pa: 0,
    friction_Pam: 0,
  };
  hole.water_m3 = holeCapacity_m3(hole, input) * full_frac;
  hole.shortfall_m3 = holeCapacity_m3(hole, input) - hole.water_m3;
  for (let i = 0; i < hole.used; i++)
    hole.dissolved_kg[SOAKED * hole.cells + i] = (soaked_gL * hole.water_m3) / hole.used;
  const sandAt = typeof sand === 'function' ? sand : () => sand;
  return { hole, ground: groundOf(hole.cells, table_m, sandAt), work: createLossWork(hole.cells), input };
}

/** A metre of this sand under clay, at the bottom of a 5 m hole, 1 m of head on it. */
export const oneMetre = (sand: Sand, soaked_gL = 0): SandHole =>
  sandHole({ depth_m: 5, table_m: 1, sand: (z) => (z < 4 ? CLAY : sand), soaked_gL });

export const leaves_m3 = ({ work }: SandHole): number => work.leave_m3.reduce((a, b) => a + b, 0);

/** One tick, with the bookkeeping that the sweep does: water leaves, the rest runs over. The fluid keeps its strength. */
export function tick(bench: SandHole, inflow_m3 = 0): void {
  const { hole, work, input, ground } = bench;
  input.inflow_m3 = inflow_m3;
  lossInto(hole, ground, input, work);
  hole.water_m3 += inflow_m3 - leaves_m3(bench) - work.returns_m3;
  hole.shortfall_m3 = Math.max(0, holeCapacity_m3(hole, input) - holeContent_m3(hole));
  for (let i = 0; i < hole.cells && i * DZ_m < hole.depth_m; i++) hole.wall.open_s[i] += input.dt_s;
  input.tick += 1;
}

/** Ticks with the hole kept full; returns the loss of the last, L/min. */
export function keptFull(bench: SandHole, ticks: number): number {
  for (let t = 0; t < ticks; t++) {
    // What was lost in the tick before is poured in again, and plenty.
    tick(bench, 0.05);
  }
  return leaves_m3(bench) * L_PER_MIN;
}
