// One second in the hole, in this order: what passes to and from the ground, transport, mouth, settling, bed.
import { CLASS_COUNT, FINE_CLASS_COUNT } from '../materials/sizes';
import { pickUpBed } from './bed';
import { clipToPacked, fitCells } from './cells';
import {
  capacityOf_m3,
  countGrains,
  findSurface,
  firstPresent,
  foldTop,
  grainsOf_m3,
  lastPresent,
  readRoom,
} from './column';
import { leaveFines, lowerExchange, readExchange, setFlow, type ExchangeInput } from './exchange';
import { NO_ROOM_m3, carryField } from './field';
import { BOTTOM, BOTTOM_MOMENT, TOP, TOP_MOMENT } from './gather';
import type { HoleState, StemPlace } from './hole';
import type { MouthFlux } from './mouth';
import { emptyParcel, parcelVolume_m3, type Parcel } from './parcel';
import { carryDissolved } from './solute';
import { classWays, readStretches } from './stretches';
import type { HoleWork } from './work';

export interface SweepInput extends ExchangeInput {
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

/** Volumes below this in a tick are rounding, m3. */
const NO_FLOW_m3 = 1e-15;

const place: StemPlace = { bit_m: 0, rodOutside_m: 0 };

/** Load of every cell and what its matter is diluted in; fromTop_m3: what the column's first cell holds. */
function readLoad(work: HoleWork, fromTop_m3: number): void {
  const { volume_m3, grains_m3, solids_frac } = work;
  const { dilution } = work.field;
  const { from, cells } = work.column;
  for (let i = from; i < cells; i++) {
    const held_m3 = i === from ? fromTop_m3 : volume_m3[i];
    dilution[i] = held_m3 > NO_ROOM_m3 ? 1 / held_m3 : 0;
    solids_frac[i] = grains_m3[i] * dilution[i];
  }
}

/** Water of every cell below the surface: what its grains leave; top_m3: what the first cell, `top`, holds. */
function readWater(work: HoleWork, top: number, top_m3: number, out_m3: Float64Array): void {
  const { volume_m3, grains_m3 } = work;
  const n = work.column.cells;
  out_m3[top] = Math.max(0, top_m3 - grains_m3[top]);
  for (let i = top + 1; i < n; i++) out_m3[i] = Math.max(0, volume_m3[i] - grains_m3[i]);
}

/** The longest fall of a class in the tick in any stretch, in heights of a cell. */
function longestFall(work: HoleWork, k: number, perCell: number): number {
  const { slip_ms, stretches } = work;
  let most_ms = 0;
  for (let s = 0; s < stretches; s++) most_ms = Math.max(most_ms, slip_ms[s * CLASS_COUNT + k]);
  return most_ms * perCell;
}

/** The finest classes go up as one where the stream is faster than the coarser of them falls by this factor. */
const AS_ONE_ratio = 100;

/** Whether clay and silt can share one set of origins: all of the stream rises, far faster than either of them falls. */
const goAsOne = (work: HoleWork, perCell: number): boolean =>
  work.least > AS_ONE_ratio * longestFall(work, FINE_CLASS_COUNT - 1, perCell);

/** Finds the cells that hold any of class k, those that take in some of it included; matter above the surface joins the first. False when there is none. */
function findRange(hole: HoleState, work: HoleWork, k: number, entry_m3: number): boolean {
  const { column, range } = work;
  const { from, cells: n } = column;
  const base = k * hole.cells;
  let first = firstPresent(hole.solids_m3, base, n);
  let last = first < n ? lastPresent(hole.solids_m3, base, n) : -1;
  if (last < 0 && entry_m3 <= 0) return false;
  if (first < from && last >= 0) {
    foldTop(hole.solids_m3, base, column, first);
    foldTop(hole.moment_m4, base, column, first);
  }
  if (entry_m3 > 0) {
    const bitCell = Math.min(n, work.bitFace) - 1;
    first = Math.min(first, bitCell);
    last = Math.max(last, bitCell);
  }
  range.first = Math.max(from, first);
  range.last = Math.max(from, last);
  return true;
}

/** Carries all classes; what reaches the bottom joins the bed, what reaches the mouth is noted in work. */
function carryClasses(hole: HoleState, work: HoleWork, input: SweepInput): void {
  const { column, entry, field, range } = work;
  const { solids_m3, moment_m4 } = hole;
  const { from, cells: n } = column;
  const perCell = input.dt_s / hole.dz_m;
  const asOne = goAsOne(work, perCell);
  let traced = false;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const base = k * hole.cells;
    work.mouth_m3[k] = 0;
    work.mouthMoment_m4[k] = 0;
    entry.amount = input.inflow.solids_m3[k];
    entry.moment = input.inflow.moment_m4[k];
    if (!findRange(hole, work, k, entry.amount)) continue;
    const fine = asOne && k < FINE_CLASS_COUNT;
    if (fine) {
      range.first = from;
      range.last = n - 1;
    }
    const reach = Math.ceil(Math.min(n, work.longest + longestFall(work, k, perCell))) + 1;
    if (!fine || !traced) {
      const { first, last } = range;
      const slowest = fine ? FINE_CLASS_COUNT - 1 : k;
      classWays(work, slowest, perCell, first - reach - 1, Math.min(n, last + 2 + reach));
    }
    carryField(solids_m3, moment_m4, base, column, entry, field, range.first, range.last, reach, fine && traced);
    traced = fine;
    hole.bed_m3[k] += field.ends[BOTTOM];
    hole.bedMoment_m4[k] += field.ends[BOTTOM_MOMENT];
    work.mouth_m3[k] = field.ends[TOP];
    work.mouthMoment_m4[k] = field.ends[TOP_MOMENT];
  }
}

/** Lets the grains at the mouth over the sill, no more than room_m3 in all; the rest stays in the top cell. Returns their volume. */
function passGrains(hole: HoleState, work: HoleWork, room_m3: number, mouth: MouthFlux): number {
  let arrived_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) arrived_m3 += work.mouth_m3[k];
  if (arrived_m3 <= 0) return 0;
  const share = arrived_m3 > room_m3 ? room_m3 / arrived_m3 : 1;
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
 * Carries the hole one tick on; mouth is set to what left over the sill, work.left to what went into the ground, work.came to
 * the ground water that came in. The hole holds what it held, takes in and does not lose; what it could hold beyond that is
 * missing at the top. Returns fill that before anything flows over. Steel that goes down pushes fluid up, steel that comes up
 * leaves room; both act through the same balance.
 */
export function sweepHole(hole: HoleState, work: HoleWork, input: SweepInput, mouth: MouthFlux): void {
  emptyParcel(mouth);
  place.bit_m = input.bit_m;
  place.rodOutside_m = input.rodOutside_m;
  const { inflow } = input;
  const { column, entry } = work;
  column.bottom_m = fitCells(hole, place);
  column.cells = hole.used;
  readRoom(hole, work, place, 0);
  countGrains(hole, work, 0);
  const capacity_m3 = capacityOf_m3(hole, work, place);
  const content_m3 = hole.water_m3 + grainsOf_m3(hole, work);
  const lost_m3 = readExchange(hole, work, input, inflow);
  const entered_m3 = parcelVolume_m3(inflow);
  const surplus_m3 = content_m3 + entered_m3 - lost_m3 - capacity_m3;
  const out_m3 = surplus_m3 > NO_FLOW_m3 ? surplus_m3 : 0;
  // What steel, cutting and the wall have displaced since the last tick acts at the bit.
  let moved_m3 = content_m3 - (capacity_m3 - hole.shortfall_m3);
  if (Math.abs(moved_m3) < NO_FLOW_m3) moved_m3 = 0;
  const fromTop_m3 = findSurface(work, hole.shortfall_m3, false);
  const toTop_m3 = findSurface(work, Math.max(0, -surplus_m3), true);
  if (work.exchanges) lowerExchange(work);
  readLoad(work, fromTop_m3);
  entry.face = work.bitFace;
  entry.up_frac = setFlow(work, entered_m3 + moved_m3, fromTop_m3, toTop_m3, input.dt_s);
  readStretches(hole, work, input.temperature_C, input.ambient_1s);
  readWater(work, column.from, fromTop_m3, work.waterBefore_m3);

  carryClasses(hole, work, input);
  const grainsOut_m3 = passGrains(hole, work, out_m3, mouth);
  countGrains(hole, work, 0);
  if (work.exchanges) leaveFines(hole, work, input, toTop_m3);
  readWater(work, column.to, toTop_m3, work.waterAfter_m3);
  // A hole that closes can press out no more water than there is.
  const water_m3 = hole.water_m3 + inflow.water_m3 + work.came.water_m3 - work.left.water_m3;
  mouth.water_m3 = Math.min(out_m3 - grainsOut_m3, Math.max(0, water_m3));
  carryDissolved(hole, work, inflow, moved_m3, mouth);
  hole.water_m3 = Math.max(0, water_m3 - mouth.water_m3);

  for (let k = 0; k < CLASS_COUNT; k++) work.oneSlip_ms[k] = work.slip_ms[(work.stretches - 1) * CLASS_COUNT + k];
  if (inflow.water_m3 > 0 && work.bitFace > 0) pickUpBed(hole, place, work.oneSlip_ms, work.pastBit_ms, input.dt_s);
  settleDown(hole, work, Math.max(0, -surplus_m3));
}

/** Brings cells, packing and level into line with the bed as it lies now. Above the lowest cells nothing has changed since the count. */
function settleDown(hole: HoleState, work: HoleWork, shortfall_m3: number): void {
  const { column } = work;
  const usedBefore = hole.used;
  column.bottom_m = fitCells(hole, place);
  column.cells = hole.used;
  const changed = Math.max(0, Math.min(usedBefore, hole.used) - 1);
  readRoom(hole, work, place, changed);
  countGrains(hole, work, changed);
  if (clipToPacked(hole, work, shortfall_m3)) fitCells(hole, place);
  hole.shortfall_m3 = shortfall_m3;
}

export { createHoleWork, type HoleWork } from './work';
export { readHole } from './read';
