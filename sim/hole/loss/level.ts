// The level at the end of the tick: what stands below it is what was there, and came in, less what the ground took at that level.
import { PACKED_frac } from '../cells';
import { BED_POROSITY, cellVolume_m3, type HoleState, type StemPlace } from '../hole';
import type { WallGround } from '../wallGround';
import { setPressure, weight_Pam } from './pressure';
import type { LossWork } from './work';

/** Missing volume that counts as none, m3: rounding. */
const NONE_m3 = 1e-15;

/** Depth at which volume_m3 stands below, m: in the rooms of the column, and below it in the pores of the bed; 0 when full. */
export function levelOf_m(hole: HoleState, stem: StemPlace, volume_m3: number, work: LossWork): number {
  let missing_m3 = work.room_m3 + work.bed_m3 - volume_m3;
  if (missing_m3 <= NONE_m3) return 0;
  for (let i = 0; i < work.cells; i++) {
    const room_m3 = work.cellRoom_m3[i];
    if (missing_m3 <= room_m3) return i * hole.dz_m + (missing_m3 / room_m3) * work.height_m[i];
    missing_m3 -= room_m3;
  }
  // In the bed only the pores run empty.
  missing_m3 /= BED_POROSITY;
  let top_m = work.bottom_m;
  for (let i = work.cells - 1; i < hole.cells && top_m < hole.depth_m; i++) {
    const end_m = Math.min((i + 1) * hole.dz_m, hole.depth_m);
    if (!(end_m > top_m)) continue;
    const share = (end_m - top_m) / (end_m - i * hole.dz_m);
    const room_m3 = Math.max(0, cellVolume_m3(hole, i, end_m, stem)) * share;
    if (missing_m3 <= room_m3 && room_m3 > 0) return top_m + (missing_m3 / room_m3) * (end_m - top_m);
    missing_m3 -= room_m3;
    top_m = end_m;
  }
  return hole.depth_m;
}

/** Sets pressure_Pa and leave_m3 for a level; returns what leaves in all, less what comes in, m3. */
function leaveAt(hole: HoleState, ground: WallGround, level_m: number, work: LossWork): number {
  const { flow_m3Pa, ground_Pa, leave_m3, pressure_Pa } = work;
  setPressure(level_m, hole.dz_m, work);
  let whole_m3 = 0;
  for (let i = 0; i < work.cells; i++) {
    const over_Pa = pressure_Pa[i] - ground_Pa[i];
    // Ground that is not saturated has no water to give.
    const leaves = over_Pa < 0 && ground.saturation_frac[i] < 1 ? 0 : flow_m3Pa[i] * over_Pa;
    leave_m3[i] = leaves;
    whole_m3 += leaves;
  }
  return whole_m3;
}

/**
 * Level at which volume and flow agree, m, for content_m3 before the ground takes its part. Cell by cell from the mouth down, until at
 * the cell's lower edge no more would be left than stands below it; inside the cell both are quadratic in the wetted share y,
 *   a y^2 + b y + c = 0,  a = g_j w h/2,  b = room_j + w h sum of g below + g_j x added,  c = volume + flow - content at y = 0,
 * g flow per pressure, w weight of a metre of fluid, h height of the cell. Both rise with y, so there is one answer.
 */
function balancedLevel_m(dz_m: number, content_m3: number, work: LossWork): number {
  const { flow_m3Pa, ground_Pa, middle_Pa, bottom_Pa, added_Pa, cellRoom_m3, height_m } = work;
  // Sums over the cells below: flow per pressure, and flow at the pressure of a full column.
  let below_m3Pa = 0;
  let below_m3 = 0;
  for (let i = 0; i < work.cells; i++) {
    below_m3Pa += flow_m3Pa[i];
    below_m3 += flow_m3Pa[i] * (middle_Pa[i] + added_Pa[i] - ground_Pa[i]);
  }
  let standing_m3 = work.room_m3 + work.bed_m3;
  let dry_m3 = 0;
  for (let j = 0; j < work.cells; j++) {
    const flow = flow_m3Pa[j];
    const more_Pa = added_Pa[j];
    below_m3Pa -= flow;
    below_m3 -= flow * (middle_Pa[j] + more_Pa - ground_Pa[j]);
    dry_m3 -= flow * ground_Pa[j];
    standing_m3 -= cellRoom_m3[j];
    const over_m3 = standing_m3 + below_m3 - below_m3Pa * bottom_Pa[j] + dry_m3 - content_m3;
    if (over_m3 > 0) continue;
    const column_Pa = weight_Pam(work, j) * height_m[j];
    const a = 0.5 * flow * column_Pa;
    const b = cellRoom_m3[j] + Math.max(0, below_m3Pa) * column_Pa + flow * Math.max(0, more_Pa);
    const divisor = b + Math.sqrt(b * b - 4 * a * over_m3);
    const wetted = divisor > 0 ? Math.min(1, (-2 * over_m3) / divisor) : 1;
    return j * dz_m + (1 - wetted) * height_m[j];
  }
  return work.bottom_m;
}

/** Takes from what would leave so much that no more than wanted_m3 less is lost in all. Returns what leaves then. */
function holdBack(work: LossWork, whole_m3: number, wanted_m3: number): number {
  let out_m3 = 0;
  for (let i = 0; i < work.cells; i++) if (work.leave_m3[i] > 0) out_m3 += work.leave_m3[i];
  if (!(out_m3 > 0)) return whole_m3;
  const share = Math.max(0, 1 - wanted_m3 / out_m3);
  for (let i = 0; i < work.cells; i++) if (work.leave_m3[i] > 0) work.leave_m3[i] *= share;
  return whole_m3 - out_m3 * (1 - share);
}

/**
 * Level, returns, what leaves each cell and the pressure against it, all at the end of the tick (backward Euler): no time constant of
 * the ground, however short, makes it swing. Conductances are held for the tick. A full hole takes one look at the flow. Grains do not
 * leave, so the fluid stops where only packed grains with their pores would be left.
 */
export function solveLevel(
  hole: HoleState,
  ground: WallGround,
  stem: StemPlace,
  inflow_m3: number,
  work: LossWork,
): void {
  const content_m3 = hole.water_m3 + work.grains_m3 + work.bedGrains_m3 + inflow_m3;
  const capacity_m3 = work.room_m3 + work.bed_m3;
  let left_m3 = content_m3 - leaveAt(hole, ground, 0, work);
  if (left_m3 < capacity_m3 - NONE_m3) {
    const level_m = balancedLevel_m(hole.dz_m, content_m3, work);
    let leaves_m3 = leaveAt(hole, ground, level_m, work);
    const least_m3 = work.bed_m3 + work.grains_m3 / PACKED_frac;
    const short_m3 = least_m3 - (content_m3 - leaves_m3);
    if (short_m3 > 0) leaves_m3 = holdBack(work, leaves_m3, short_m3);
    left_m3 = content_m3 - leaves_m3;
  }
  work.returns_m3 = left_m3 > capacity_m3 + NONE_m3 ? left_m3 - capacity_m3 : 0;
  work.level_m = levelOf_m(hole, stem, left_m3, work);
}
