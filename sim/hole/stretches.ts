// The column in a few stretches of one fluid each, and the speed of each class in every cell.
import { createMakeup, makeupInto } from '../fluid/makeup';
import { rheologyOf } from '../fluid/rheology';
import { BENTONITE, SALT, SOAKED, SWELLING } from '../fluid/substances';
import { CLASS_COUNT, CLAY_CLASS } from '../materials/sizes';
import { HINDERED_COUNT, hinderedInto, hinderedPlace, hinderedShare } from './hindered';
import type { HoleState } from './hole';
import { suspensionDensity_kgm3 } from './load';
import { slipInto } from './slip';
import { STRETCHES, type HoleWork } from './work';

/** A crowd is reckoned with up to this grain volume fraction: beyond it the cell packs. */
const MOST_CROWDED_frac = 0.6;
/** A cell that closes may be left with next to no water: below so much of it only the fines count, and no fluid is heavier than this. */
const NO_WATER_m3 = 1e-9;
const HEAVIEST_kgm3 = 2000;

// Fluid of one stretch: scratch of one reading.
const makeup = createMakeup();

/** Fills slip and hindering exponent of every stretch from the fluid in it; volume_m3, solids_frac, grains_m3 and fines_m3 must be set. */
export function readStretches(hole: HoleState, work: HoleWork, temperature_C: number, ambient_1s: number): void {
  const { from } = work.column;
  const n = hole.used - from;
  const stretches = Math.min(STRETCHES, n);
  const { cells, dissolved_kg, solids_m3 } = hole;
  // Taken out of work once: the loops below are run often.
  const { volume_m3, grains_m3, fines_m3, solids_frac, rheology, oneSlip_ms, oneHinder } = work;
  const { slip_ms, hinder, powers, stretchPlace } = work;
  work.stretches = stretches;
  for (let s = 0; s < stretches; s++) {
    const first = from + Math.floor((s * n) / stretches);
    const end = from + Math.floor(((s + 1) * n) / stretches);
    let room = 0;
    let grains = 0;
    let fines = 0;
    let clay = 0;
    let soaked_kg = 0;
    let bentonite_kg = 0;
    let swelling_kg = 0;
    let salt_kg = 0;
    for (let i = first; i < end; i++) {
      room += volume_m3[i];
      grains += grains_m3[i];
      fines += fines_m3[i];
      clay += solids_m3[CLAY_CLASS * cells + i];
      soaked_kg += dissolved_kg[SOAKED * cells + i];
      bentonite_kg += dissolved_kg[BENTONITE * cells + i];
      swelling_kg += dissolved_kg[SWELLING * cells + i];
      salt_kg += dissolved_kg[SALT * cells + i];
    }
    const water_m3 = room - grains > NO_WATER_m3 ? room - grains : 0;
    const fines_frac = room > 0 ? Math.min(MOST_CROWDED_frac, fines / room) : 0;
    const clay_frac = room > 0 ? Math.min(MOST_CROWDED_frac, clay / room) : 0;
    makeupInto(makeup, soaked_kg, bentonite_kg, swelling_kg, salt_kg, water_m3, fines_frac, clay_frac);
    rheologyOf(rheology, makeup, temperature_C);
    // A grain falls through the fluid with the fines in it; coarser neighbours hinder it instead.
    const weight_kgm3 = suspensionDensity_kgm3(fines_frac, makeup.bentonite_gL, makeup.salt_gL);
    const density_kgm3 = Math.min(HEAVIEST_kgm3, weight_kgm3);
    const { K_Pasn, n_ratio } = rheology;
    slipInto(oneSlip_ms, oneHinder, K_Pasn, n_ratio, density_kgm3, ambient_1s);
    for (let k = 0; k < CLASS_COUNT; k++) {
      slip_ms[s * CLASS_COUNT + k] = oneSlip_ms[k];
      hinder[s * CLASS_COUNT + k] = oneHinder[k];
    }
  }
  for (let i = 0; i < n; i++) {
    const place = ((i + 0.5) * stretches) / n - 0.5;
    stretchPlace[from + i] = place <= 0 ? 0 : place >= stretches - 1 ? stretches - 1 : place;
    hinderedInto(powers, (from + i) * HINDERED_COUNT, Math.min(MOST_CROWDED_frac, solids_frac[from + i]));
  }
}

/** Upward way of class k in the tick in the cells lo to hi-1, in heights of a whole cell, into work.field.way: the mixture's less the hindered slip. */
export function classWays(work: HoleWork, k: number, perCell: number, lo: number, hi: number): void {
  const { flow, powers, stretchPlace, slip_ms, hinder } = work;
  const { way } = work.field;
  const last = work.stretches - 1;
  let i = Math.max(lo, work.column.from);
  while (i < hi) {
    const above = Math.min(last, Math.floor(stretchPlace[i]));
    const a = above * CLASS_COUNT + k;
    const b = Math.min(last, above + 1) * CLASS_COUNT + k;
    const slip = slip_ms[a] * perCell;
    const slipRise = slip_ms[b] * perCell - slip;
    const power = hinderedPlace(hinder[a]);
    const powerRise = hinderedPlace(hinder[b]) - power;
    for (; i < hi; i++) {
      const share = stretchPlace[i] - above;
      if (share >= 1 && above < last) break;
      const kept = hinderedShare(powers, i * HINDERED_COUNT, power + share * powerRise);
      way[i] = flow[i] - (slip + share * slipRise) * kept;
    }
  }
}
