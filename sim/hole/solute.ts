// What the water carries goes where the water goes: one set of origins for all substances.
import { SALT, SUBSTANCE_COUNT } from '../fluid/substances';
import { leaveDissolved } from './exchange';
import { NO_ROOM_m3 } from './field';
import { gather, TOP } from './gather';
import { firstPresent, foldTop } from './column';
import type { HoleState } from './hole';
import type { MouthFlux } from './mouth';
import type { Parcel } from './parcel';
import type { HoleWork } from './work';

/** A share of a cell below this is rounding. */
const NO_SHARE = 1e-12;

/**
 * Traces the faces back along the water. As much water lies above a face after the tick (what ran over, what each cell holds
 * and gives off) as lay above its origin before it (what each cell held, took from the ground, and what entered at the bit), so a
 * column of one strength keeps it. out_m3: water that ran over; in_m3: water that entered at the bit; moved_m3: what steel and
 * cutting displaced there.
 */
function traceWater(
  work: HoleWork,
  face: number,
  bitCell: number,
  out_m3: number,
  in_m3: number,
  moved_m3: number,
): void {
  const { column, waterBefore_m3, waterAfter_m3, leaveWater_m3, enter_m3, exchanges } = work;
  const { cell, part, dilution } = work.field;
  const { entered } = work;
  const n = column.cells;
  let aboveEntry_m3 = 0;
  for (let j = column.from; j < n; j++) {
    let held_m3 = waterBefore_m3[j];
    if (exchanges) held_m3 += enter_m3[j];
    if (j === bitCell) held_m3 = Math.max(0, held_m3 + moved_m3);
    waterBefore_m3[j] = held_m3;
    dilution[j] = held_m3 > NO_ROOM_m3 ? 1 / held_m3 : 0;
    if (j < face) aboveEntry_m3 += held_m3;
  }
  let j = column.from;
  let above_m3 = 0;
  let asked_m3 = out_m3;
  let rising = column.from_m === 0 && column.to_m === 0;
  for (let f = column.to; f < n; f++) {
    let own_m3 = asked_m3;
    entered[f] = 0;
    if (asked_m3 > aboveEntry_m3) {
      const beyond_m3 = asked_m3 - aboveEntry_m3;
      entered[f] = beyond_m3 >= in_m3 ? 1 : beyond_m3 / in_m3;
      own_m3 = beyond_m3 >= in_m3 ? asked_m3 - in_m3 : aboveEntry_m3;
    }
    while (j < n && own_m3 >= above_m3 + waterBefore_m3[j]) above_m3 += waterBefore_m3[j++];
    const share = j < n ? (own_m3 - above_m3) * dilution[j] : 0;
    const whole = share > 1 - NO_SHARE;
    cell[f] = whole ? j + 1 : j;
    if (cell[f] < f) rising = false;
    part[f] = whole || share < NO_SHARE ? 0 : share;
    asked_m3 += waterAfter_m3[f];
    if (exchanges) asked_m3 += leaveWater_m3[f];
  }
  cell[n] = n;
  part[n] = 0;
  work.field.rising = rising;
  entered[n] = 1;
}

/** Adds a substance that entered at the bit where the water it came with is now; what ran over is added to the end of the field. */
function addDissolved(hole: HoleState, work: HoleWork, base: number, face: number, amount_kg: number): void {
  const { dissolved_kg } = hole;
  const { entered } = work;
  const { ends } = work.field;
  const { to, cells } = work.column;
  for (let i = face - 1; i >= to && entered[i + 1] > 0; i--) {
    dissolved_kg[base + i] += amount_kg * (entered[i + 1] - entered[i]);
  }
  for (let i = Math.max(to, face); i < cells; i++) {
    dissolved_kg[base + i] += amount_kg * (entered[i + 1] - entered[i]);
    if (entered[i + 1] >= 1) break;
  }
  ends[TOP] += amount_kg * entered[to];
}

/**
 * Carries all substances with the water. work.waterBefore_m3 and waterAfter_m3 must be set. mouth receives what ran over,
 * work.left what went into the ground.
 */
export function carryDissolved(
  hole: HoleState,
  work: HoleWork,
  inflow: Parcel,
  moved_m3: number,
  mouth: MouthFlux,
): void {
  const { column, field } = work;
  const n = column.cells;
  const face = Math.min(n, Math.max(column.from, work.bitFace));
  const bitCell = Math.min(n - 1, Math.max(column.from, work.bitFace - 1));
  let traced = false;
  for (let s = 0; s < SUBSTANCE_COUNT; s++) {
    const base = s * hole.cells;
    const first = firstPresent(hole.dissolved_kg, base, n);
    const salty = s === SALT && work.came.dissolved_kg[SALT] > 0;
    if (first === n && inflow.dissolved_kg[s] <= 0 && !salty) continue;
    if (!traced) traceWater(work, face, bitCell, mouth.water_m3, inflow.water_m3, moved_m3);
    traced = true;
    if (first < column.from) foldTop(hole.dissolved_kg, base, column, first);
    if (salty) for (let i = column.from; i < n; i++) hole.dissolved_kg[base + i] += work.saltIn_kg[i];
    gather(hole.dissolved_kg, base, work.noMoment, 0, column, column.from, n - 1, column.to, n, field);
    if (inflow.dissolved_kg[s] > 0) addDissolved(hole, work, base, face, inflow.dissolved_kg[s]);
    mouth.dissolved_kg[s] = field.ends[TOP];
    if (work.exchanges) leaveDissolved(hole, work, s);
  }
}
