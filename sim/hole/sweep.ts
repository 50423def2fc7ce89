// One second in the hole, in this order: what comes in at the bit, transport, settling, bed, mouth.
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';
import { pickUpBed } from './bed';
import { clipToPacked, fitCells } from './cells';
import { BOTTOM, BOTTOM_MOMENT, TOP, TOP_MOMENT, carryField } from './field';
import { cellVolume_m3, holeCapacity_m3, holeContent_m3, steelArea_m2, type HoleState, type StemPlace } from './hole';
import type { MouthFlux } from './mouth';
import { emptyParcel, parcelVolume_m3, type Parcel } from './parcel';
import { cellBottom_m } from './read';
import { classSpeeds, readStretches } from './stretches';
import { STRETCHES, type HoleWork } from './work';

export interface SweepInput {
  /** Length of the tick, s. */
  dt_s: number;
  /** Depth of the bit at the end of this tick, m. */
  bit_m: number;
  rodOutside_m: number;
  temperature_C: number;
  /** What came out of the nozzles in this tick; moment_m4 is taken as given. */
  inflow: Parcel;
  /** Shear rate that stirs the fluid round a falling grain, 1/s: half the wall rate of the annulus, .05 when still. */
  ambient_1s: number;
}

/** Flows below this volume in a tick are rounding, m3. */
const NO_FLOW_m3 = 1e-15;

const place: StemPlace = { bit_m: 0, rodOutside_m: 0 };

/** Sets room, load and flux of every cell; returns the index of the face at the bit. */
function readColumn(hole: HoleState, work: HoleWork, up_m3s: number): number {
  const { column } = work;
  const steel_m2 = steelArea_m2(place);
  let bitFace = 0;
  for (let i = 0; i < hole.used; i++) {
    const top_m = i * hole.dz_m;
    const bottom_m = cellBottom_m(hole, i, column.bottom_m);
    const volume_m3 = cellVolume_m3(hole, i, bottom_m, place);
    let grains_m3 = 0;
    for (let k = 0; k < CLASS_COUNT; k++) grains_m3 += hole.solids_m3[k * hole.cells + i];
    work.volume_m3[i] = volume_m3;
    work.solids_frac[i] = volume_m3 > 0 ? grains_m3 / volume_m3 : 0;
    const inRing = (top_m + bottom_m) / 2 < place.bit_m;
    if (inRing) bitFace = i + 1;
    work.flux_ms[i] = inRing ? up_m3s / (Math.PI * hole.radius_m[i] * hole.radius_m[i] - steel_m2) : 0;
  }
  return bitFace;
}

/** Carries all classes; what reaches the bottom joins the bed. Leaves in work.water_ms the counterflow of the grains. */
function carryClasses(hole: HoleState, work: HoleWork, input: SweepInput): void {
  const { column, entry, field, up_ms, water_ms } = work;
  for (let i = 0; i < hole.used; i++) water_ms[i] = work.flux_ms[i];
  for (let k = 0; k < CLASS_COUNT; k++) {
    const base = k * hole.cells;
    work.mouth_m3[k] = 0;
    work.mouthMoment_m4[k] = 0;
    let present = input.inflow.solids_m3[k];
    for (let i = 0; i < hole.used; i++) present += hole.solids_m3[base + i];
    if (present <= 0) continue;
    classSpeeds(hole, work, k);
    for (let i = 0; i < hole.used; i++) {
      if (work.volume_m3[i] > 0) water_ms[i] -= (hole.solids_m3[base + i] / work.volume_m3[i]) * up_ms[i];
    }
    entry.amount = input.inflow.solids_m3[k];
    entry.moment = input.inflow.moment_m4[k];
    carryField(hole.solids_m3, hole.moment_m4, base, column, up_ms, input.dt_s, entry, field);
    hole.bed_m3[k] += field.ends[BOTTOM];
    hole.bedMoment_m4[k] += field.ends[BOTTOM_MOMENT];
    work.mouth_m3[k] = field.ends[TOP];
    work.mouthMoment_m4[k] = field.ends[TOP_MOMENT];
  }
  for (let i = 0; i < hole.used; i++) water_ms[i] /= Math.max(0.1, 1 - work.solids_frac[i]);
}

/** Carries one substance with the water; the share `out_frac` of what reaches the mouth leaves, the rest stays. Returns what leaves. */
function carryDissolved(
  hole: HoleState,
  work: HoleWork,
  s: number,
  inflow: number,
  dt_s: number,
  out_frac: number,
): number {
  const { dissolved_kg } = hole;
  const base = s * hole.cells;
  let present = inflow;
  for (let i = 0; i < hole.used; i++) present += dissolved_kg[base + i];
  if (present <= 0) return 0;
  const { entry } = work;
  const { ends } = work.field;
  entry.amount = inflow;
  entry.moment = 0;
  carryField(dissolved_kg, null, base, work.column, work.water_ms, dt_s, entry, work.field);
  const out = ends[TOP] * out_frac;
  dissolved_kg[base] += ends[TOP] - out;
  dissolved_kg[base + hole.used - 1] += ends[BOTTOM];
  return out;
}

/** Lets the share out_frac of the grains at the mouth over the sill, no more than room_m3 in all; the rest stays in the top cell. Returns their volume. */
function passGrains(hole: HoleState, work: HoleWork, out_frac: number, room_m3: number, mouth: MouthFlux): number {
  let arrived_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) arrived_m3 += work.mouth_m3[k];
  if (arrived_m3 <= 0) return 0;
  const share = arrived_m3 * out_frac > room_m3 ? room_m3 / arrived_m3 : out_frac;
  let passed_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) {
    mouth.solids_m3[k] = work.mouth_m3[k] * share;
    mouth.moment_m4[k] = work.mouthMoment_m4[k] * share;
    hole.solids_m3[k * hole.cells] += work.mouth_m3[k] - mouth.solids_m3[k];
    hole.moment_m4[k * hole.cells] += work.mouthMoment_m4[k] - mouth.moment_m4[k];
    passed_m3 += mouth.solids_m3[k];
  }
  return passed_m3;
}

/**
 * Carries the hole one tick on; mouth is set to what left over the sill. What the hole can hold less what it holds is missing
 * at the top: the returns fill that before anything flows over. Steel that goes down pushes fluid up, steel that comes up
 * leaves room; both act through the same balance.
 */
export function sweepHole(hole: HoleState, work: HoleWork, input: SweepInput, mouth: MouthFlux): void {
  emptyParcel(mouth);
  place.bit_m = input.bit_m;
  place.rodOutside_m = input.rodOutside_m;
  const { column, entry } = work;
  column.bottom_m = fitCells(hole, place);
  column.cells = hole.used;
  const capacity_m3 = holeCapacity_m3(hole, place);
  const surplus_m3 = holeContent_m3(hole) + parcelVolume_m3(input.inflow) - capacity_m3;
  const out_m3 = surplus_m3 > NO_FLOW_m3 ? surplus_m3 : 0;
  let up_m3 = surplus_m3 + hole.shortfall_m3;
  if (Math.abs(up_m3) < NO_FLOW_m3) up_m3 = 0;
  const out_frac = up_m3 > 0 ? Math.min(1, out_m3 / up_m3) : 0;
  const bitFace = readColumn(hole, work, up_m3 / input.dt_s);
  entry.face = bitFace;
  readStretches(hole, work, input.temperature_C, input.ambient_1s);

  carryClasses(hole, work, input);
  const grainsOut_m3 = passGrains(hole, work, out_frac, out_m3, mouth);
  for (let s = 0; s < SUBSTANCE_COUNT; s++) {
    mouth.dissolved_kg[s] = carryDissolved(hole, work, s, input.inflow.dissolved_kg[s], input.dt_s, out_frac);
  }
  mouth.water_m3 = out_m3 - grainsOut_m3;
  hole.water_m3 += input.inflow.water_m3 - mouth.water_m3;

  const last = Math.min(STRETCHES, hole.used) - 1;
  for (let k = 0; k < CLASS_COUNT; k++) work.oneSlip_ms[k] = work.slip_ms[last * CLASS_COUNT + k];
  const atBit = Math.min(hole.used, bitFace) - 1;
  if (input.inflow.water_m3 > 0 && atBit >= 0) {
    pickUpBed(hole, place, work.oneSlip_ms, work.flux_ms[atBit], input.dt_s);
  }
  column.bottom_m = fitCells(hole, place);
  readColumn(hole, work, 0);
  if (clipToPacked(hole, work.volume_m3)) fitCells(hole, place);
  hole.shortfall_m3 = Math.max(0, capacity_m3 - holeContent_m3(hole));
}

export { createHoleWork, type HoleWork } from './work';
export { readHole } from './read';
