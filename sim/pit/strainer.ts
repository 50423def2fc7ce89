// The strainer: how it blocks and what it draws near the floor.
import { createMakeup } from '../fluid/makeup';
import { floorRise_m, levelBelowRim_m, readChamber, type ChamberReading } from './level';
import type { PitState } from './pit';

/** Nearer to the floor than this, m, the strainer draws the floor. ASSUMED: a hand's width. */
export const CLEARANCE_m = 0.1;
/** Grain volume fraction of the slurry at the mesh when the strainer lies on the floor. ASSUMED: a stirred-up bed. */
const FLOOR_SLURRY_frac = 0.5;
/** Share of the grains that the mesh holds, and what grass and leaves close in a second. ASSUMED. */
const HELD_frac = 0.02;
const GRASS_1s = 1e-5;

const reading: ChamberReading = { ...createMakeup(), density_kgm3: 0, load_frac: 0 };

/** Height of the strainer over the floor as it is now, deposit counted, m; 0 when it lies on it or in it. */
export const clearance_m = (pit: PitState): number => Math.max(0, pit.strainer_m - floorRise_m(pit.suction));

/** Grain volume fraction that the floor adds to what the mesh sees, 0 with CLEARANCE_m or more beneath it. */
export const floorSlurry_frac = (pit: PitState): number =>
  FLOOR_SLURRY_frac * Math.max(0, 1 - clearance_m(pit) / CLEARANCE_m);

/** Depth of the fluid over the strainer, m; negative when it stands out. */
export const strainerDepth_m = (pit: PitState): number =>
  pit.suction.depth_m - levelBelowRim_m(pit.suction) - pit.strainer_m;

/** With less fluid than this over the strainer a whirl draws air, m; and how much at the surface, as a volume fraction of the flow counted on. ASSUMED. */
const WHIRL_m = 0.05;
const MOST_AIR_frac = 0.1;

/** Air that the strainer draws, volume fraction: .1 (1 - cover/.05 m) at the flow that the crew counts on, less at less. Worked value: .025 m, full flow -> .05. */
export function airDrawn_frac(pit: PitState, flow_m3s: number, nominal_m3s: number): number {
  const bare = 1 - Math.max(0, strainerDepth_m(pit)) / WHIRL_m;
  return bare > 0 ? MOST_AIR_frac * bare * Math.min(1, flow_m3s / nominal_m3s) : 0;
}

/** Is the mouth of the strainer under the fluid? */
export const strainerCovered = (pit: PitState): boolean => strainerDepth_m(pit) > 0;

/**
 * One tick of blocking at a flow: db/dt = .02 c Q / A + 1e-5, A the open area of the clean mesh, c the grain volume fraction at the mesh: that of the
 * chamber and, near the floor, of the stirred-up floor, dug earth or deposit alike. Stays below 1.
 * Worked value: c .5, .002 m3/s, .02 m2, 1 s -> .00101.
 */
export function blockStrainer(pit: PitState, flow_m3s: number, mesh_m2: number, dt_s: number): void {
  if (flow_m3s <= 0) return;
  readChamber(pit.suction, reading);
  const load_frac = reading.load_frac + floorSlurry_frac(pit);
  const rate_1s = (HELD_frac * load_frac * flow_m3s) / mesh_m2 + GRASS_1s;
  pit.blockage_frac = Math.min(1, pit.blockage_frac + rate_1s * dt_s);
}

export function clearStrainer(pit: PitState): void {
  pit.blockage_frac = 0;
}
