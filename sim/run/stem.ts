// Where the stem is and how far it can go; moving it by rope or by its own weight.

import { bedHeight_m, buried_m, type StemPlace } from '../hole/hole';
import { passableTo_m } from '../hole/wall/passage';
import type { Kit } from '../materials/kit';
import { dragShare } from '../drilling/pull';
import { hangingWeight_N } from '../drilling/weight';
import { casingInHole, casingPlaceInto } from './casingPlace';
import { flowing } from './flowing';
import type { Run } from './run';
import type { RunState } from './state';

/** The tripod lifts the stem's top this far above the mouth, m. ASSUMED: two rods and a head. */
export const MAST_m = 3.3;
/** The bit counts as standing on the bottom within this, m. */
const TOUCH_m = 0.002;
/** A stem let down by its weight sinks at this speed, m/s; through fill only with flow or turning, and slowly. ASSUMED. */
const LET_DOWN_ms = 0.1;
const THROUGH_FILL_ms = 0.01;

export function rodBore_m3(kit: Kit): number {
  return (Math.PI / 4) * kit.rodBore_m * kit.rodBore_m * kit.rodLength_m;
}

/** Where the steel stands in the hole: the stem, or the casing when that is in. */
export function stemPlace(run: Run): StemPlace {
  const { state } = run;
  const { place } = run.work;
  if (casingInHole(state)) return casingPlaceInto(place, state.completion);
  place.bit_m = state.stem.bit_m;
  place.rodOutside_m = run.kit.rodOutside_m;
  return place;
}

export const buriedNow_m = (run: Run): number => buried_m(run.state.hole, stemPlace(run));

export const stemLength_m = (run: Run): number => run.state.stem.rods * run.kit.rodLength_m;

/** Standing on the bottom of the hole, with nothing but the ground under the bit. */
export const onBottom = ({ stem, hole }: RunState): boolean => stem.bit_m >= hole.depth_m - TOUCH_m;

/** How far the stem can be lifted: up to the mouth, and no higher than the tripod reaches. */
export function liftRoom_m(run: Run): number {
  const above_m = stemLength_m(run) - run.state.stem.bit_m;
  return Math.max(0, Math.min(run.state.stem.bit_m, MAST_m - above_m));
}

/** How far it can be let down: to the bottom, or until the swivel is at the mouth. */
export function lowerRoom_m(run: Run): number {
  return Math.max(0, Math.min(run.state.hole.depth_m, stemLength_m(run)) - run.state.stem.bit_m);
}

/** A bit at rest pushes past clay that has come in by this share of its radius, a turning one wherever a flow can pass its rods, m. ASSUMED. */
const PUSHES_frac = 0.05;
const ROUND_RODS_m = 0.002;

/** How far down the hole is wide enough, m at most wanted_m. */
function wideEnough_m(run: Run, wanted_m: number): number {
  const { stem, hole } = run.state;
  const { bit_m, rodOutside_m } = run.kit;
  const body_m = stem.turning ? rodOutside_m / 2 + ROUND_RODS_m : (bit_m / 2) * (1 - PUSHES_frac);
  return passableTo_m(hole, stem.bit_m, stem.bit_m + wanted_m, body_m) - stem.bit_m;
}

/** One second's descent of at most `wanted_m`: free above the fill, slow in it, none in it while all is still, and none past a tight place. */
function descend(run: Run, wanted_m: number): number {
  const { stem, hole } = run.state;
  const fillTop_m = hole.depth_m - bedHeight_m(hole, stemPlace(run));
  const free_m = Math.max(0, fillTop_m - stem.bit_m);
  const washing = flowing(run.state) || stem.turning;
  const reach_m = free_m + (washing ? THROUGH_FILL_ms : 0);
  return Math.min(wideEnough_m(run, wanted_m), reach_m, lowerRoom_m(run));
}

/** Density of the fluid in which a crew reckons its stem's weight, kg/m3. */
const CLEAN_WATER_kgm3 = 1000;

/** How much of the crew's spare pull the stem's drag takes: 0 hanging free, 1 the limit. */
export function dragShareNow(run: Run): number {
  const { kit } = run;
  const weight_N = hangingWeight_N(kit, stemLength_m(run), CLEAN_WATER_kgm3);
  return dragShare(run.state.stem.pull_N, weight_N, kit.pullLimit_N);
}

/** Moves the stem by one second of its lift, its lowering, or of feed above the bottom. */
export function moveStem(run: Run): void {
  const { stem } = run.state;
  if (stem.motion_m < 0) {
    // What holds it harder than the crew can pull stops the lift; a stem just worked free comes all the way.
    const held = !stem.freeing && dragShareNow(run) > 1;
    const up_m = held ? 0 : Math.min(-stem.motion_m, stem.motion_ms);
    stem.bit_m -= up_m;
    stem.motion_m = held || stem.motion_m + up_m > -1e-9 ? 0 : stem.motion_m + up_m;
    if (stem.motion_m === 0) stem.freeing = false;
  } else if (stem.motion_m > 0) {
    const down_m = descend(run, Math.min(stem.motion_m, stem.motion_ms));
    stem.bit_m += down_m;
    stem.motion_m = down_m <= 0 || stem.motion_m - down_m < 1e-9 ? 0 : stem.motion_m - down_m;
  } else if (stem.feed_frac > 0 && !onBottom(run.state) && run.state.machine.stem !== 'stuck') {
    stem.bit_m += descend(run, LET_DOWN_ms);
  }
}
