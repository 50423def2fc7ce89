// The column in a few stretches of one fluid each, and the speed of each class in every cell.
import { createMakeup, makeupInto } from '../fluid/makeup';
import { rheologyOf } from '../fluid/rheology';
import { BENTONITE, SALT, SOAKED, SWELLING } from '../fluid/substances';
import { CLASS_COUNT, CLAY_CLASS, FINE_CLASS_COUNT } from '../materials/sizes';
import { HINDERED_COUNT, hinderedInto, hinderedShare } from './hindered';
import type { HoleState } from './hole';
import { suspensionDensity_kgm3 } from './load';
import { slipInto } from './slip';
import { STRETCHES, type HoleWork } from './work';

/** A crowd is reckoned with up to this grain volume fraction: beyond it the cell packs. */
const MOST_CROWDED_frac = 0.6;

// Fluid of one stretch: scratch of one reading.
const makeup = createMakeup();

/** Fills slip and hindering exponent of every stretch from the fluid in it; work.volume_m3 and solids_frac must be set. */
export function readStretches(hole: HoleState, work: HoleWork, temperature_C: number, ambient_1s: number): void {
  const n = hole.used;
  const stretches = Math.min(STRETCHES, n);
  for (let s = 0; s < stretches; s++) {
    const first = Math.floor((s * n) / stretches);
    const end = Math.floor(((s + 1) * n) / stretches);
    let room = 0;
    let grains = 0;
    let fines = 0;
    let clay = 0;
    let soaked_kg = 0;
    let bentonite_kg = 0;
    let swelling_kg = 0;
    let salt_kg = 0;
    for (let i = first; i < end; i++) {
      room += work.volume_m3[i];
      grains += work.solids_frac[i] * work.volume_m3[i];
      soaked_kg += hole.dissolved_kg[SOAKED * hole.cells + i];
      bentonite_kg += hole.dissolved_kg[BENTONITE * hole.cells + i];
      swelling_kg += hole.dissolved_kg[SWELLING * hole.cells + i];
      salt_kg += hole.dissolved_kg[SALT * hole.cells + i];
      for (let k = 0; k < FINE_CLASS_COUNT; k++) fines += hole.solids_m3[k * hole.cells + i];
      clay += hole.solids_m3[CLAY_CLASS * hole.cells + i];
    }
    const fines_frac = room > 0 ? fines / room : 0;
    makeupInto(
      makeup,
      soaked_kg,
      bentonite_kg,
      swelling_kg,
      salt_kg,
      room - grains,
      fines_frac,
      room > 0 ? clay / room : 0,
    );
    rheologyOf(work.rheology, makeup, temperature_C);
    // A grain falls through the fluid with the fines in it; coarser neighbours hinder it instead.
    const density_kgm3 = suspensionDensity_kgm3(fines_frac, makeup.bentonite_gL, makeup.salt_gL);
    const { K_Pasn, n_ratio } = work.rheology;
    slipInto(work.oneSlip_ms, work.oneHinder, K_Pasn, n_ratio, density_kgm3, ambient_1s);
    for (let k = 0; k < CLASS_COUNT; k++) {
      work.slip_ms[s * CLASS_COUNT + k] = work.oneSlip_ms[k];
      work.hinder[s * CLASS_COUNT + k] = work.oneHinder[k];
    }
  }
  for (let i = 0; i < n; i++) {
    const place = ((i + 0.5) * stretches) / n - 0.5;
    work.stretchPlace[i] = place <= 0 ? 0 : place >= stretches - 1 ? stretches - 1 : place;
    hinderedInto(work.powers, i * HINDERED_COUNT, Math.min(MOST_CROWDED_frac, work.solids_frac[i]));
  }
}

/** Upward speed of class k in every cell, m/s, into work.up_ms: flux of the mixture less the hindered slip. */
export function classSpeeds(hole: HoleState, work: HoleWork, k: number): void {
  const last = Math.min(STRETCHES, hole.used) - 1;
  for (let i = 0; i < hole.used; i++) {
    const place = work.stretchPlace[i];
    const above = Math.min(last, Math.floor(place));
    const below = Math.min(last, above + 1);
    const share = place - above;
    const a = above * CLASS_COUNT + k;
    const b = below * CLASS_COUNT + k;
    const slip_ms = work.slip_ms[a] + share * (work.slip_ms[b] - work.slip_ms[a]);
    const hinder = work.hinder[a] + share * (work.hinder[b] - work.hinder[a]);
    const kept = work.solids_frac[i] > 0 ? hinderedShare(work.powers, i * HINDERED_COUNT, hinder) : 1;
    work.up_ms[i] = work.flux_ms[i] - slip_ms * kept;
  }
}
