// Flows of the pit: returns into the settling chamber, over the notch, out through the strainer.
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';
import { BED_POROSITY } from '../hole/hole';
import { emptyParcel, type Parcel } from '../hole/parcel';
import { depositGrains_m3, freeVolume_m3, levelBelowRim_m } from './level';
import type { Chamber, PitState } from './pit';
import { SETTLING_TANKS, SUCTION_TANKS, outflowShare } from './settle';
import { floorSlurry_frac, strainerDepth_m } from './strainer';
import type { PitWork } from './work';

export { createPitWork, type PitWork } from './work';

/** Adds a parcel (returns, or water from a bucket) to a chamber. */
export function pourInto(chamber: Chamber, parcel: Parcel): void {
  chamber.water_m3 += parcel.water_m3;
  for (let s = 0; s < SUBSTANCE_COUNT; s++) chamber.dissolved_kg[s] += parcel.dissolved_kg[s];
  for (let k = 0; k < CLASS_COUNT; k++) chamber.solids_m3[k] += parcel.solids_m3[k];
}

/** Takes volume_m3 of suspension out of a chamber into out; each class at the given share of its mean concentration. */
function takeFrom(chamber: Chamber, volume_m3: number, shares: (k: number) => number, out: Parcel): number {
  const free_m3 = freeVolume_m3(chamber);
  const taken_m3 = Math.min(volume_m3, free_m3);
  if (taken_m3 <= 0) return 0;
  const part = taken_m3 / free_m3;
  let grains_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const grains = chamber.solids_m3[k] * part * shares(k);
    chamber.solids_m3[k] -= grains;
    out.solids_m3[k] += grains;
    grains_m3 += grains;
  }
  takeWater(chamber, taken_m3 - grains_m3, out);
  return taken_m3;
}

/** Takes water with what is dissolved in it; the grains stay. */
export function takeWater(chamber: Chamber, water_m3: number, out: Parcel): void {
  const share = chamber.water_m3 > 0 ? Math.min(1, water_m3 / chamber.water_m3) : 0;
  const taken_m3 = Math.min(water_m3, chamber.water_m3);
  chamber.water_m3 -= taken_m3;
  out.water_m3 += taken_m3;
  for (let s = 0; s < SUBSTANCE_COUNT; s++) {
    const taken_kg = chamber.dissolved_kg[s] * share;
    chamber.dissolved_kg[s] -= taken_kg;
    out.dissolved_kg[s] += taken_kg;
  }
}

// What takeFrom asks for each class: set before each use.
let outgoing: Chamber | null = null;
let outgoingSlip: Float64Array | null = null;
let outgoing_m3s = 0;
let outgoingTanks = 1;
const leaner = (k: number): number =>
  outflowShare((outgoingSlip![k] * outgoing!.area_m2) / outgoing_m3s, outgoingTanks);
const alike = (): number => 1;

/** Dips volume_m3 of the fluid out of a chamber by the bucket into out: what is suspended comes with it. Returns the volume, m3. */
export function dipFrom(chamber: Chamber, volume_m3: number, out: Parcel): number {
  return takeFrom(chamber, volume_m3, alike, out);
}

/** What stands above the rim runs off, with all that it carries: added to out. Returns the volume, m3. */
export function spillOver(pit: PitState, out: Parcel): number {
  let spilled_m3 = 0;
  for (const chamber of [pit.settling, pit.suction]) {
    const above_m = -levelBelowRim_m(chamber);
    if (above_m > 0) spilled_m3 += takeFrom(chamber, above_m * chamber.area_m2, alike, out);
  }
  return spilled_m3;
}

/** All that stands and lies in the pit is added to out, lumps of powder left aside; the pit is not changed. */
export function allOf(pit: PitState, out: Parcel): void {
  for (const { water_m3, dissolved_kg, solids_m3, deposit_m3 } of [pit.settling, pit.suction]) {
    out.water_m3 += water_m3;
    for (let s = 0; s < SUBSTANCE_COUNT; s++) out.dissolved_kg[s] += dissolved_kg[s];
    for (let k = 0; k < CLASS_COUNT; k++) out.solids_m3[k] += solids_m3[k] + deposit_m3[k];
  }
}

/** Levels the two chambers out through the notch: a chamber gives down to the notch at most. Call after settlePit. */
export function levelOut(pit: PitState, work: PitWork): void {
  const settling_m = -levelBelowRim_m(pit.settling);
  const suction_m = -levelBelowRim_m(pit.suction);
  const forward = settling_m > suction_m;
  const from = forward ? pit.settling : pit.suction;
  const to = forward ? pit.suction : pit.settling;
  const high_m = Math.max(settling_m, suction_m);
  const over_m = high_m + pit.notch_m;
  if (over_m <= 0) return;
  const a = pit.settling.area_m2;
  const b = pit.suction.area_m2;
  const even_m3 = (Math.abs(settling_m - suction_m) * a * b) / (a + b);
  const volume_m3 = Math.min(even_m3, over_m * from.area_m2, freeVolume_m3(from));
  if (volume_m3 <= 0) return;
  outgoing = from;
  outgoingSlip = forward ? work.slipSettling_ms : work.slipSuction_ms;
  outgoing_m3s = volume_m3 / work.dt_s;
  outgoingTanks = forward ? SETTLING_TANKS : SUCTION_TANKS;
  emptyParcel(work.passing);
  takeFrom(from, volume_m3, leaner, work.passing);
  pourInto(to, work.passing);
}

/**
 * Draws volume_m3 from the suction chamber; out is set to it. Near the floor deposit comes along with its pore water.
 * Returns the volume drawn, m3: less than asked for when the fluid stands too low over the strainer.
 */
export function drawThroughStrainer(pit: PitState, volume_m3: number, out: Parcel): number {
  emptyParcel(out);
  const { suction } = pit;
  const reach_m3 = Math.max(0, strainerDepth_m(pit)) * suction.area_m2;
  const wanted_m3 = Math.min(volume_m3, reach_m3);
  if (wanted_m3 <= 0) return 0;
  let drawn_m3 = 0;
  const grains_m3 = depositGrains_m3(suction);
  if (grains_m3 > 0) {
    // The slurry sucked off the floor: grains with their pore water.
    const floor_m3 = Math.min(floorSlurry_frac(pit) * wanted_m3, grains_m3);
    const part = floor_m3 / grains_m3;
    for (let k = 0; k < CLASS_COUNT; k++) {
      const grains = suction.deposit_m3[k] * part;
      suction.deposit_m3[k] -= grains;
      out.solids_m3[k] += grains;
    }
    const pores_m3 = (floor_m3 * BED_POROSITY) / (1 - BED_POROSITY);
    takeWater(suction, pores_m3, out);
    drawn_m3 += floor_m3 + pores_m3;
  }
  return drawn_m3 + takeFrom(suction, Math.max(0, wanted_m3 - drawn_m3), alike, out);
}
