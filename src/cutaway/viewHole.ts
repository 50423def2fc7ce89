// The true hole for the view: walls, load of every cell, speed of the fluid, fall of every class, level, bed.

import { bedHeight_m, CLASS_COUNT, fluidLevel_m, SOAKED, type Run } from '$sim';
import type { ShownHole } from './shown';

export function createShownHole({ state }: Run, groundOpen: boolean): ShownHole {
  const { cells } = state.hole;
  return {
    dz_m: state.hole.dz_m,
    cells: 0,
    depth_m: 0,
    radius_m: new Float64Array(cells),
    cake_m: new Float64Array(cells),
    falling: new Float64Array(cells),
    seep_m2s: groundOpen ? new Float64Array(cells) : null,
    up_ms: new Float64Array(cells),
    solids_frac: new Float64Array(CLASS_COUNT * cells),
    stride: cells,
    slip_ms: new Float64Array(CLASS_COUNT * cells),
    level_m: 0,
    bed_m: 0,
    bed_frac: new Float64Array(CLASS_COUNT),
    polymer_gL: 0,
  };
}

const place = { bit_m: 0, rodOutside_m: 0 };

export function fillHole(shown: ShownHole, run: Run): void {
  const { hole, stem } = run.state;
  const { annulus } = run.state.completion;
  place.bit_m = stem.bit_m;
  place.rodOutside_m = run.kit.rodOutside_m;
  shown.depth_m = hole.depth_m;
  shown.cells = Math.min(hole.cells, Math.max(1, Math.ceil(hole.depth_m / hole.dz_m - 1e-9)));
  shown.level_m = fluidLevel_m(hole, place);
  // What lies at the bottom of a set well is told with the rest that stands round the casing.
  shown.bed_m = annulus ? 0 : bedHeight_m(hole, place);
  for (let i = 0; i < shown.cells; i++) {
    shown.radius_m[i] = annulus ? annulus.radius_m[i]! : hole.radius_m[i];
    shown.cake_m[i] = hole.wall.cake_m[i];
    shown.falling[i] = annulus ? 0 : hole.wall.sloughing[i];
    if (shown.seep_m2s) shown.seep_m2s[i] = annulus ? 0 : seepAt(run, i, shown.level_m) / hole.dz_m;
  }
  // Round a set casing the fluid of the hole stands still; what hung in it is no longer followed.
  if (annulus) {
    shown.solids_frac.fill(0);
    shown.up_ms.fill(0);
    shown.polymer_gL = 0;
  } else {
    fillFluid(shown, run);
    fillSlip(shown, run);
  }
  let bed_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) bed_m3 += hole.bed_m3[k];
  for (let k = 0; k < CLASS_COUNT; k++) shown.bed_frac[k] = bed_m3 > 0 ? hole.bed_m3[k] / bed_m3 : 0;
}

/** What went into the ground at a cell in the last second, m3. What the crew poured in at the surface is no ground water. */
function seepAt({ state, work }: Run, i: number, level_m: number): number {
  const leave_m3 = work.loss.leave_m3[i];
  const poured = leave_m3 < 0 && i === Math.floor(level_m / state.hole.dz_m);
  return poured && state.tasks.some(({ action }) => action === 'topUp') ? 0 : leave_m3;
}

/** Load and upward speed by cell. Cells below those in use hold the bed; the last in use may be thicker than the rest. */
function fillFluid(shown: ShownHole, run: Run): void {
  const { hole } = run.state;
  const { flow, column } = run.work.hole;
  const steel_m2 = (Math.PI / 4) * place.rodOutside_m * place.rodOutside_m;
  const bedTop_m = hole.depth_m - shown.bed_m;
  const surface = Math.min(hole.used - 1, Math.round(shown.level_m / hole.dz_m));
  let soaked_kg = 0;
  let fluid_m3 = 0;
  for (let i = 0; i < shown.cells; i++) {
    const top_m = i * hole.dz_m;
    const inUse = i < hole.used;
    const bottom_m = i === hole.used - 1 ? Math.max(top_m, bedTop_m) : top_m + hole.dz_m;
    const open_m2 = Math.PI * hole.radius_m[i] * hole.radius_m[i];
    const steelLength_m = Math.max(0, Math.min(bottom_m, place.bit_m) - top_m);
    const full_m3 = open_m2 * (bottom_m - top_m) - steel_m2 * steelLength_m;
    // The first cell that holds fluid is half a cell to one and a half high.
    const room_m3 = Math.max(1e-9, full_m3 * (i === surface ? (bottom_m - shown.level_m) / (bottom_m - top_m) : 1));
    for (let k = 0; k < CLASS_COUNT; k++) {
      const at = k * hole.cells + i;
      shown.solids_frac[k * shown.stride + i] = inUse ? Math.min(0.6, hole.solids_m3[at] / room_m3) : 0;
    }
    // The way of the last second, in heights of a cell: what is lost on the way up does not arrive.
    shown.up_ms[i] = i >= column.to && i < column.cells ? flow[i] * hole.dz_m : 0;
    if (inUse && i >= surface) {
      soaked_kg += hole.dissolved_kg[SOAKED * hole.cells + i];
      fluid_m3 += room_m3;
    }
  }
  // Kilograms per cubic metre are grams per litre.
  shown.polymer_gL = fluid_m3 > 0 ? soaked_kg / fluid_m3 : 0;
}

/** Fall of each class in each cell, slowed by its neighbours as (1 - c)^m: what the last second reckoned with. */
function fillSlip(shown: ShownHole, run: Run): void {
  const { work } = run;
  const { used } = run.state.hole;
  const last = work.hole.stretches - 1;
  for (let i = 0; i < shown.cells; i++) {
    const at = Math.max(work.hole.column.from, Math.min(i, used - 1));
    const stretch = work.hole.stretchPlace[at];
    const above = Math.min(last, Math.floor(stretch));
    const below = Math.min(last, above + 1);
    const share = stretch - above;
    let solids_frac = 0;
    for (let k = 0; k < CLASS_COUNT; k++) solids_frac += shown.solids_frac[k * shown.stride + i];
    const open = Math.max(0.4, 1 - solids_frac);
    for (let k = 0; k < CLASS_COUNT; k++) {
      const a = above * CLASS_COUNT + k;
      const b = below * CLASS_COUNT + k;
      const lone_ms = work.hole.slip_ms[a] + share * (work.hole.slip_ms[b] - work.hole.slip_ms[a]);
      const exponent = work.hole.hinder[a] + share * (work.hole.hinder[b] - work.hole.hinder[a]);
      shown.slip_ms[k * shown.stride + i] = solids_frac > 1e-4 ? lone_ms * Math.pow(open, exponent) : lone_ms;
    }
  }
}
