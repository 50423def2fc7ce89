// The casing in the hole: where its steel stands, how it goes down, what stops it, how it fills.

import { boreArea_m2, hanging_N, wholeArea_m2 } from '../completion/buoyancy';
import type { CasingState } from '../completion/casing';
import { RUNNING_GAP_m } from '../completion/planCheck';
import { shoe_m, type WellPlan } from '../completion/plan';
import { openPerMetre_m } from '../completion/slots';
import { apparentViscosity_Pas } from '../fluid/apparent';
import { bedTop_m } from '../hole/hole';
import { parcelVolume_m3 } from '../hole/parcel';
import { passableTo_m } from '../hole/wall/passage';
import { CLOTHS } from '../materials/cloths';
import { CASINGS, type Casing } from '../materials/pipes';
import { waterViscosity_Pas } from '../materials/water';
import { GRAVITY_MS2 } from '../numeric/units';
import { casingPlaceInto } from './casingPlace';
import type { EventName } from './names';
import type { Run } from './run';
import { tell } from './tell';
import { dip } from './topUp';
import { TICK_s } from './work';

/** Two hands hold a light casing down with this, N. ASSUMED: it is slippery and there is nothing to stand on. */
const HELD_N = 100;
/** Fluid poured into the casing by the bucket, m3/s: as fast as a hole is topped up. ASSUMED. */
const BUCKETS_m3s = 0.0005;
/** Discharge coefficient of a sawn slot. ASSUMED: a sharp edge. */
const SLOT_Cd_ratio = 0.6;
/** Shear rate in the openings of a cloth that fills the casing slowly, 1/s. ASSUMED. */
const CLOTH_SHEAR_1s = 10;
/** K and permittivity hold for water of this temperature, C. */
const REFERENCE_C = 20;
/** Lengths below this are none, m: rounding. */
const NO_LENGTH_m = 1e-9;

export const pipeOf = (plan: WellPlan): Casing => CASINGS[plan.casing];

/** How far down the casing shall go with what is joined: to the planned depth, or until its top stands as high as planned. */
export const targetShoe_m = (plan: WellPlan, casing: CasingState): number =>
  Math.min(shoe_m(plan), casing.length_m - plan.stickUp_m);

const holds = (casing: CasingState, look: CasingState['look']): void => {
  casing.look = look;
  casing.motion_m = 0;
};

function stop(run: Run, look: CasingState['look'], event: EventName, cause = ''): void {
  const { casing, plan } = run.state.completion;
  holds(casing, look);
  casing.filling = false;
  const data = { shoe_m: casing.shoe_m, planned_m: shoe_m(plan!) };
  tell(run, event, cause === '' ? data : { ...data, cause });
}

/** Top of what lies in the hole, m: what has been thrown in stands on the bed. */
export function fillTop_m(run: Run, bedTop: number): number {
  const { hole, completion } = run.state;
  let left_m3 = 0;
  for (const volume_m3 of completion.openFill_m3) left_m3 += volume_m3;
  let top_m = bedTop;
  for (let i = Math.ceil(bedTop / hole.dz_m - NO_LENGTH_m) - 1; i >= 0 && left_m3 > 0; i--) {
    const open_m2 = Math.PI * hole.radius_m[i] * hole.radius_m[i];
    const part_m = Math.min(top_m - i * hole.dz_m, open_m2 > 0 ? left_m3 / open_m2 : Infinity);
    left_m3 -= part_m * open_m2;
    top_m -= part_m;
  }
  return top_m;
}

/** Weight of the casing on the hands at this depth, N. */
function weight_N(run: Run, plan: WellPlan, casing: CasingState): number {
  const density_kgm3 = run.work.hole.density_kgm3;
  return hanging_N(pipeOf(plan), {
    length_m: casing.length_m,
    submerged_m: Math.max(0, casing.shoe_m - run.state.signs.level_m),
    plugged: true,
    filled_m: casing.inside_m,
    outside_kgm3: density_kgm3,
    inside_kgm3: density_kgm3,
  });
}

/** One second of the way down. */
function lower(run: Run, plan: WellPlan, casing: CasingState): void {
  const { hole, pit } = run.state;
  if (weight_N(run, plan, casing) < -HELD_N) {
    // With somebody pouring it only waits until it is heavy enough.
    if (!casing.filling || pit.suction.water_m3 <= 0) stop(run, 'floating', 'casingFloats');
    return;
  }
  const from_m = casing.shoe_m;
  const wanted_m = Math.min(from_m + Math.min(casing.motion_m, casing.motion_ms * TICK_s), hole.depth_m);
  const wide_m = passableTo_m(hole, from_m, wanted_m, pipeOf(plan).outside_m / 2 + RUNNING_GAP_m);
  const place = casingPlaceInto(run.work.place, run.state.completion);
  const reach_m = Math.min(wanted_m, wide_m, Math.max(from_m, fillTop_m(run, bedTop_m(hole, place))));
  casing.shoe_m = reach_m;
  casing.motion_m -= reach_m - from_m;
  casing.look = 'free';
  if (reach_m >= shoe_m(plan) - NO_LENGTH_m) stop(run, 'landed', 'casingLanded');
  else if (casing.motion_m < NO_LENGTH_m) casing.motion_m = 0;
  else if (reach_m - from_m < NO_LENGTH_m) stop(run, 'hung', 'casingHung', wide_m < wanted_m ? 'tight' : 'fill');
}

/** Volume that slots and cloth let in (out: below 0) in a second for so much more fluid outside than inside, m3. */
function throughSlots_m3(run: Run, plan: WellPlan, casing: CasingState, more_m: number): number {
  const { K_Pasn, n_ratio } = run.work.hole;
  const top_m = casing.shoe_m - plan.sump_m - (plan.screenTo_m - plan.screenFrom_m);
  const under_m = casing.shoe_m - plan.sump_m - Math.max(top_m, run.state.signs.level_m);
  const open_m2 = openPerMetre_m(plan) * Math.max(0, under_m);
  const head_m = Math.abs(more_m);
  if (plan.cloth === 'none') return SLOT_Cd_ratio * open_m2 * Math.sqrt(2 * GRAVITY_MS2 * head_m) * TICK_s;
  const thick_ratio = apparentViscosity_Pas({ K_Pasn, n_ratio }, CLOTH_SHEAR_1s) / waterViscosity_Pas(REFERENCE_C);
  return (CLOTHS[plan.cloth].permittivity_1s * open_m2 * head_m * TICK_s) / Math.max(1, thick_ratio);
}

/** Fluid gets in below and is poured in above, up to the level outside. */
function fillInside(run: Run, plan: WellPlan, casing: CasingState): void {
  const outside_m = Math.max(0, casing.shoe_m - run.state.signs.level_m);
  const pipe = pipeOf(plan);
  const bore_m2 = boreArea_m2(pipe);
  const more_m = outside_m - casing.inside_m;
  if (!plan.cap) casing.inside_m = outside_m;
  else {
    const passed_m = Math.min(Math.abs(more_m), throughSlots_m3(run, plan, casing, more_m) / bore_m2);
    casing.inside_m += more_m > 0 ? passed_m : -passed_m;
    const room_m3 = (outside_m - casing.inside_m) * bore_m2;
    if (casing.filling && room_m3 > 0) {
      const before_m3 = parcelVolume_m3(run.work.poured);
      dip(run, Math.min(room_m3, BUCKETS_m3s * TICK_s));
      casing.inside_m += (parcelVolume_m3(run.work.poured) - before_m3) / bore_m2;
    }
  }
  // What stands inside counts as fluid of the hole, so the steel is the less: as a ring of the wall alone where it is as full as the hole.
  const full_frac = outside_m > 0 ? Math.min(1, casing.inside_m / outside_m) : 1;
  const steel_m2 = wholeArea_m2(pipe) - full_frac * bore_m2;
  casing.steel_m = Math.sqrt((4 / Math.PI) * steel_m2);
}

/** Moves the casing by one second of its way down and lets it fill; call it when the hole has been read. */
export function moveCasing(run: Run): void {
  const { plan, casing } = run.state.completion;
  if (!plan || casing.length_m === 0) return;
  if (casing.motion_m > 0) lower(run, plan, casing);
  if (casing.shoe_m > 0) fillInside(run, plan, casing);
}
