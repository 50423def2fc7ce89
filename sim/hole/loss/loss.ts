// Loss and inflow of one tick: the wall is looked at, the level found at which hole and ground agree, and the wall remembers.
import { fitCells } from '../cells';
import type { HoleState, StemPlace } from '../hole';
import type { WallGround } from '../wallGround';
import { readColumn } from './column';
import { WATER_Nm3 } from './conductance';
import { readContents } from './contents';
import { readFluid } from './fluid';
import { LOOK_TICKS } from './front';
import { levelOf_m, solveLevel } from './level';
import { lookAtCell } from './look';
import { setPressure } from './pressure';
import type { LossInput, LossWork } from './work';

/** Ground tighter than this, m/s, takes and gives nothing that a hole would notice: under a tenth of a litre an hour and metre. */
const TIGHT_ms = 1e-9;
/** From this share of a cell under fluid it counts as wetted. */
const WETTED_frac = 0.5;

/** Whether a cell exchanges water with the ground, until its flow is known. */
const OPEN = 1;
const SHUT = 0;

const place: StemPlace = { bit_m: 0, rodOutside_m: 0 };

/** Difference of head that cell i was under at the level of pressure_Pa, m of water; 0 where the wall is dry. */
function headOf_m(ground: WallGround, i: number, work: LossWork): number {
  const head_m = (work.pressure_Pa[i] - work.ground_Pa[i]) / WATER_Nm3;
  return head_m < 0 && ground.saturation_frac[i] < 1 ? 0 : head_m;
}

/** Pressure of the ground water against each cell, and which cells exchange anything. Returns whether one of them was never looked at. */
function readGround(hole: HoleState, ground: WallGround, work: LossWork): boolean {
  const { conductance_ms } = hole.wall;
  const { flow_m3Pa, ground_Pa, height_m, cellRoom_m3, cells } = work;
  const { pore_Pa, saturation_frac, K_ms } = ground;
  const { dz_m } = hole;
  let anyNew = false;
  // Below a cell that has closed the fluid is shut in: what it loses there changes nothing above.
  let open = OPEN;
  for (let i = 0; i < cells; i++) {
    // Ground that is not saturated pushes with nothing. The last cell may be open in its upper part only: hydrostatic inside it.
    const pore = pore_Pa[i] + 0.5 * WATER_Nm3 * (height_m[i] - dz_m);
    ground_Pa[i] = saturation_frac[i] < 1 || pore < 0 ? 0 : pore;
    if (!(cellRoom_m3[i] > 0)) open = SHUT;
    const exchanges = K_ms[i] < TIGHT_ms ? SHUT : open;
    flow_m3Pa[i] = exchanges;
    if (exchanges === OPEN && !(conductance_ms[i] > 0)) anyNew = true;
  }
  return anyNew;
}

/** Looks at the cells whose turn it is and at those never looked at, and sets what the level asks of each: flow_m3Pa. */
function readWall(hole: HoleState, ground: WallGround, input: LossInput, work: LossWork): void {
  const { conductance_ms } = hole.wall;
  const { flow_m3Pa, height_m, cells } = work;
  const anyNew = readGround(hole, ground, work);
  const first = (LOOK_TICKS - (input.tick % LOOK_TICKS)) % LOOK_TICKS;
  for (let i = first; i < cells; i += LOOK_TICKS) {
    if (flow_m3Pa[i] !== OPEN) continue;
    const head_m = headOf_m(ground, i, work);
    // A dry wall keeps what was seen when it was last wet.
    if (head_m !== 0 || !(conductance_ms[i] > 0)) lookAtCell(hole, ground, i, head_m, true, input, work);
  }
  for (let i = 0; anyNew && i < cells; i++) {
    if (flow_m3Pa[i] === OPEN && !(conductance_ms[i] > 0))
      lookAtCell(hole, ground, i, headOf_m(ground, i, work), false, input, work);
  }
  const perLength = input.dt_s / WATER_Nm3;
  for (let i = 0; i < cells; i++) flow_m3Pa[i] *= conductance_ms[i] * height_m[i] * perLength;
}

/** What the wall keeps of this tick. */
function remember(hole: HoleState, ground: WallGround, dt_s: number, work: LossWork): void {
  const { lost_m2, wetted_s } = hole.wall;
  const { leave_m3, height_m, level_m, cells } = work;
  const { saturation_frac } = ground;
  const { dz_m } = hole;
  for (let i = 0; i < cells; i++) {
    const lost = lost_m2[i] + leave_m3[i] / height_m[i];
    lost_m2[i] = lost > 0 ? lost : 0;
    if (saturation_frac[i] < 1 && level_m - i * dz_m <= (1 - WETTED_frac) * height_m[i]) wetted_s[i] += dt_s;
  }
}

/**
 * Brings leave_m3 into line with the cells in use: the last of them reaches down to the bed, and what the wall below its top takes, it
 * takes from there.
 */
function foldLeave(hole: HoleState, leave_m3: Float64Array): void {
  const last = hole.used - 1;
  for (let i = hole.used; i < hole.cells; i++) {
    leave_m3[last] += leave_m3[i];
    leave_m3[i] = 0;
  }
}

/**
 * One tick of loss and inflow: after the cut, before the sweep. Brings the cells in use into line with the bed (fitCells), changes
 * hole.wall (lost_m2, cake_m, cakeResistance_s, wetted_s, conductance_ms) and sets the results in work; moves no water: the sweep
 * takes leave_m3, level_m and returns_m3 from there.
 */
export function lossInto(hole: HoleState, ground: WallGround, input: LossInput, work: LossWork): void {
  place.bit_m = input.bit_m;
  place.rodOutside_m = input.rodOutside_m;
  work.leave_m3.fill(0);
  work.pressure_Pa.fill(0);
  const bottom_m = fitCells(hole, place);
  readContents(hole, work);
  readColumn(hole, bottom_m, input, work);
  readFluid(hole, input, work);
  const content_m3 = hole.water_m3 + work.grains_m3 + work.bedGrains_m3;
  setPressure(levelOf_m(hole, place, content_m3, work), hole.dz_m, work);
  readWall(hole, ground, input, work);
  solveLevel(hole, ground, place, input.inflow_m3, work);
  remember(hole, ground, input.dt_s, work);
  foldLeave(hole, work.leave_m3);
}
