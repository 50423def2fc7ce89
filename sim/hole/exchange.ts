// What passes between hole and ground in a tick: water that leaves with what it carries, ground water that comes in with its salt.
import { SALT } from '../fluid/substances';
import { firstPresent } from './column';
import { FINE_CLASS_COUNT } from '../materials/sizes';
import type { HoleState } from './hole';
import { emptyParcel, type Parcel } from './parcel';
import type { HoleWork } from './work';

/** What the loss asks of the sweep, by cell of the whole hole. */
export interface ExchangeInput {
  /** Volume that leaves each cell in this tick, m3; negative: ground water that comes in. */
  leave_m3: Float64Array;
  /** Share of the clay and silt in it that goes into the ground with it, 0 to 1; the rest stays in the hole. */
  leaveFines_frac: Float64Array;
  /** Salt of the ground water that comes in, g/L. */
  saltIn_gL: Float64Array;
}

/** A cell's exchange in a tick below this is rounding, m3. */
const NO_EXCHANGE_m3 = 1e-18;

/** Of all water at most this share leaves in a tick: rounding must not make it negative. */
const MOST_LEAVING = 1 - 1e-9;

/**
 * Reads what leaves and comes in, cell by cell, into work.leave_m3 and work.enter_m3; work.came is set to the ground water.
 * Below the bed's top it passes through the last cell in use. No more can leave than there is. Returns the net volume lost.
 */
export function readExchange(hole: HoleState, work: HoleWork, input: ExchangeInput, inflow: Parcel): number {
  const { leave_m3, enter_m3, saltIn_kg, came, left } = work;
  const { used } = hole;
  emptyParcel(left);
  emptyParcel(came);
  work.exchanges = false;
  const from = firstPresent(input.leave_m3, 0, hole.cells);
  if (from === hole.cells) return 0;
  let leaves_m3 = 0;
  for (let i = 0; i < used; i++) {
    leave_m3[i] = 0;
    enter_m3[i] = 0;
    saltIn_kg[i] = 0;
  }
  for (let i = from; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) {
    const asked_m3 = input.leave_m3[i];
    if (Math.abs(asked_m3) < NO_EXCHANGE_m3) continue;
    work.exchanges = true;
    const at = Math.min(i, used - 1);
    if (asked_m3 > 0) {
      leave_m3[at] += asked_m3;
      leaves_m3 += asked_m3;
    } else {
      enter_m3[at] -= asked_m3;
      came.water_m3 -= asked_m3;
      saltIn_kg[at] -= asked_m3 * input.saltIn_gL[i];
      came.dissolved_kg[SALT] -= asked_m3 * input.saltIn_gL[i];
    }
  }
  const most_m3 = Math.max(0, hole.water_m3 + inflow.water_m3 + came.water_m3) * MOST_LEAVING;
  if (leaves_m3 > most_m3) {
    const share = most_m3 / leaves_m3;
    for (let i = 0; i < used; i++) leave_m3[i] *= share;
    leaves_m3 = most_m3;
  }
  return leaves_m3 - came.water_m3;
}

/** Cells above the surface pass nothing: what leaves or comes in there does so in the column's first cell. */
export function lowerExchange(work: HoleWork): void {
  const { column, leave_m3, enter_m3, saltIn_kg } = work;
  for (let i = 0; i < column.to; i++) {
    leave_m3[column.to] += leave_m3[i];
    leave_m3[i] = 0;
  }
  for (let i = 0; i < column.from; i++) {
    enter_m3[column.from] += enter_m3[i];
    saltIn_kg[column.from] += saltIn_kg[i];
    enter_m3[i] = 0;
    saltIn_kg[i] = 0;
  }
}

/** What carries the matter of a cell that takes in or gives off water: what passes the face it leaves by; nothing where both faces bring. */
function throughCell_m3(below_m3: number, above_m3: number): number {
  if (below_m3 >= 0) return above_m3 > 0 ? above_m3 : 0;
  return above_m3 <= 0 ? below_m3 : (below_m3 + above_m3) / 2;
}

/**
 * Upward way of the mixture in every cell in the tick, from the bottom up: what comes in at the bit, what each cell
 * takes in and gives off, and what the surface's rise or fall holds back or sets free. entry_m3: what enters at the bit. Returns
 * the share of the entry that turns upwards; work.pastBit_ms is the velocity just above the bit.
 */
export function setFlow(work: HoleWork, entry_m3: number, fromTop_m3: number, toTop_m3: number, dt_s: number): number {
  const { column, flow, section_m2, volume_m3, leave_m3, enter_m3, exchanges, bitFace } = work;
  const { from, to, dz_m } = column;
  const surface = Math.max(from, to);
  const top = Math.min(from, to);
  let q_m3 = 0;
  let up_frac = 1;
  let longest = 0;
  let least = Infinity;
  work.pastBit_ms = 0;
  for (let i = column.cells - 1; i >= top; i--) {
    let below_m3 = q_m3;
    if (i === bitFace - 1) {
      below_m3 += entry_m3;
      if (q_m3 < 0 && entry_m3 > 0) up_frac = Math.max(0, below_m3) / entry_m3;
      work.pastBit_ms = below_m3 / (section_m2[i] * dt_s);
    }
    q_m3 = below_m3;
    let own_m3 = q_m3;
    if (exchanges) {
      q_m3 += enter_m3[i] - leave_m3[i];
      own_m3 = throughCell_m3(below_m3, q_m3);
    }
    if (i <= surface) {
      // A cell at the surface goes with it: what it holds changes, what passes its lower face is its speed.
      const before_m3 = i < from ? 0 : i === from ? fromTop_m3 : volume_m3[i];
      const after_m3 = i < to ? 0 : i === to ? toTop_m3 : volume_m3[i];
      q_m3 += before_m3 - after_m3;
      if (column.from_m > 0 || column.to_m > 0) own_m3 = below_m3;
    }
    const way = own_m3 / (section_m2[i] * dz_m);
    flow[i] = way;
    if (way < least) least = way;
    if (way > longest) longest = way;
    else if (-way > longest) longest = -way;
  }
  work.longest = longest;
  work.least = least;
  return up_frac;
}

/** Takes the fines that leave with the water out of their cells, at the concentration after the transport. Sets work.left but for what is dissolved in its water. */
export function leaveFines(hole: HoleState, work: HoleWork, input: ExchangeInput, toTop_m3: number): void {
  const { column, leave_m3, leaveWater_m3, grains_m3, volume_m3, left } = work;
  for (let i = column.to; i < column.cells; i++) {
    leaveWater_m3[i] = leave_m3[i];
    if (leave_m3[i] <= 0) continue;
    const held_m3 = i === column.to ? toTop_m3 : volume_m3[i];
    const share = (leave_m3[i] / (held_m3 + leave_m3[i])) * input.leaveFines_frac[i];
    for (let k = 0; k < FINE_CLASS_COUNT; k++) {
      const at = k * hole.cells + i;
      const grains = Math.min(hole.solids_m3[at] * share, leaveWater_m3[i]);
      if (grains <= 0) continue;
      const moment = (hole.moment_m4[at] * grains) / hole.solids_m3[at];
      hole.solids_m3[at] -= grains;
      hole.moment_m4[at] -= moment;
      left.solids_m3[k] += grains;
      left.moment_m4[k] += moment;
      grains_m3[i] -= grains;
      leaveWater_m3[i] -= grains;
    }
    left.water_m3 += leaveWater_m3[i];
  }
}

/** Takes what is dissolved in the water that leaves out of each cell. */
export function leaveDissolved(hole: HoleState, work: HoleWork, s: number): void {
  const { leaveWater_m3, waterAfter_m3, left, column } = work;
  const base = s * hole.cells;
  for (let i = column.to; i < column.cells; i++) {
    if (leaveWater_m3[i] <= 0) continue;
    const kg = hole.dissolved_kg[base + i] * (leaveWater_m3[i] / (leaveWater_m3[i] + waterAfter_m3[i]));
    hole.dissolved_kg[base + i] -= kg;
    left.dissolved_kg[s] += kg;
  }
}
