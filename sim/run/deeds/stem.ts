// Acts on the stem: turning, feeding, lifting, adding and taking off rods, working it free.

import { DURATION_s } from '../../materials/durations';
import { ASIDE_frac, ASIDE_MPa } from '../../materials/faults';
import { emptyParcel } from '../../hole/parcel';
import { countOut } from '../boundary';
import { flowing, stemFlow_m3s } from '../flowing';
import { tell } from '../tell';
import { groundOf } from '../ground';
import { handsFree } from '../hands';
import { freeingChance, freeingChanceOver } from '../../drilling/pull';
import { buriedNow_m, liftRoom_m, lowerRoom_m, rodBore_m3, stemLength_m } from '../stem';
import type { RefusalKey } from '../names';
import type { Run } from '../run';
import { lengthenStem, shortenStem } from '../../hole/stemFill';
import type { Deeds } from './deed';

/** A rod counts as drilled down when no more than this is left above the mouth, m: room to lift the bit while the hole is cleared. ASSUMED. */
export const ROD_DOWN_LEFT_m = 0.5;

/** How far above the fill, or out of clay that grips it, a freed stem is drawn, m, and how fast, m/s. ASSUMED. */
const CLEAR_OF_FILL_m = 0.1;
const FREED_PULL_ms = 0.05;

/** A bit within this of the bottom reaches what lies there, m. ASSUMED: the stroke of a worked stem. */
const NEAR_BOTTOM_m = 0.3;

/** A rod comes off when at least this share of it is out of the mouth. ASSUMED: the clamp takes the rest. */
export const HALF_OUT_frac = 0.5;

/** How far the stem must still come up until its top rod is out of the mouth, m. */
export function rodToDraw_m(run: Run): number {
  const out_m = stemLength_m(run) - run.state.stem.bit_m;
  return Math.min(run.state.stem.bit_m, Math.max(0, run.kit.rodLength_m - out_m));
}

const stuck = (run: Run): RefusalKey | null => (run.state.machine.stem === 'stuck' ? 'stemStuck' : null);

/** Rods are screwed only on a still stem without pressure in it. */
export function rodHandling(run: Run): RefusalKey | null {
  if (run.state.stem.turning) return 'turningOn';
  if (flowing(run.state) || run.state.pump.throttle_frac > 0) return 'flowOn';
  if (run.state.stem.motion_m !== 0) return 'stemMoving';
  return stuck(run);
}

/** Worked up and down over it, a bit pushes a tool into the wall in the end, if the ground is soft enough. */
function pushAside(run: Run, time_s: number): void {
  const { faults, stem, hole } = run.state;
  if (!faults.tool || hole.depth_m - stem.bit_m > NEAR_BOTTOM_m) return;
  const { E_MPa } = groundOf(run).layers[stem.layerIndex];
  const chance = E_MPa === null ? 0 : ASIDE_frac * Math.min(1, ASIDE_MPa / E_MPa);
  if (run.streams.luck.uniform() >= freeingChanceOver(chance, time_s)) return;
  faults.tool = false;
  tell(run, 'toolGone', { how: 'aside' });
}

export const stemDeeds: Deeds = {
  setTurning: {
    refusal: (run, payload) => {
      if (payload.on !== true || run.state.stem.turning) return null;
      if (run.state.stem.driveTripped) return 'driveHot';
      return stuck(run) ?? (handsFree(run) < 1 ? 'handsBusy' : null);
    },
    begin: (run, payload) => {
      run.state.stem.turning = payload.on === true;
    },
  },
  setFeed: {
    refusal: (run, payload) => {
      if (payload.feed_frac === 0 || run.state.stem.feed_frac > 0) return null;
      return stuck(run) ?? (handsFree(run) < 1 ? 'handsBusy' : null);
    },
    begin: (run, payload) => {
      run.state.stem.feed_frac = payload.feed_frac as number;
    },
  },
  lift: {
    refusal: (run) =>
      stuck(run) ?? (run.state.stem.motion_m !== 0 ? 'stemMoving' : liftRoom_m(run) < 0.01 ? 'atTop' : null),
    time_s: (run, payload) =>
      Math.ceil(Math.min(payload.distance_m as number, liftRoom_m(run)) / (payload.speed_ms as number)),
    begin: (run, payload) => {
      const { stem } = run.state;
      stem.feed_frac = 0;
      stem.motion_m = -Math.min(payload.distance_m as number, liftRoom_m(run));
      stem.motion_ms = payload.speed_ms as number;
    },
  },
  lower: {
    refusal: (run) =>
      stuck(run) ?? (run.state.stem.motion_m !== 0 ? 'stemMoving' : lowerRoom_m(run) < 0.01 ? 'atBottom' : null),
    time_s: (run, payload) =>
      Math.ceil(Math.min(payload.distance_m as number, lowerRoom_m(run)) / (payload.speed_ms as number)),
    begin: (run, payload) => {
      const { stem } = run.state;
      stem.motion_m = Math.min(payload.distance_m as number, lowerRoom_m(run));
      stem.motion_ms = payload.speed_ms as number;
    },
  },
  addRod: {
    refusal: (run) => {
      const handling = rodHandling(run);
      if (handling) return handling;
      const { stem } = run.state;
      if (stem.rods >= run.state.rodsInAll) return 'noMoreRods';
      return stem.rods * run.kit.rodLength_m - stem.bit_m > ROD_DOWN_LEFT_m ? 'rodNotDown' : null;
    },
    end: (run) => {
      run.state.stem.rods += 1;
      lengthenStem(run.state.fill, rodBore_m3(run.kit));
      tell(run, 'rodAdded', { rods: run.state.stem.rods, buried_m: buriedNow_m(run), depth_m: run.state.hole.depth_m });
    },
  },
  removeRod: {
    refusal: (run) => rodHandling(run) ?? (run.state.stem.rods <= 1 ? 'onlyOneRod' : null),
    time_s: (run, payload) => DURATION_s.removeRod + Math.ceil(rodToDraw_m(run) / (payload.speed_ms as number)),
    begin: (run, payload) => {
      const { stem } = run.state;
      stem.feed_frac = 0;
      stem.motion_m = -rodToDraw_m(run);
      stem.motion_ms = payload.speed_ms as number;
    },
    end: (run) => {
      const { state } = run;
      // A stem that was held on the way up has not come far enough for the rod to be taken off.
      const clear_m = stemLength_m(run) - state.stem.bit_m;
      if (clear_m < run.kit.rodLength_m * HALF_OUT_frac) return;
      state.stem.rods -= 1;
      emptyParcel(run.work.spilled);
      shortenStem(state.fill, rodBore_m3(run.kit), run.work.spilled);
      countOut(state.boundary, run.work.spilled);
      tell(run, 'rodRemoved', { rods: state.stem.rods });
    },
  },
  workStem: {
    time_s: (_run, payload) => payload.time_s as number,
    refusal: (run) => (run.state.stem.motion_m !== 0 ? 'stemMoving' : null),
    begin: (_run, payload, task) => {
      if (task) task.data.time_s = payload.time_s as number;
    },
    end: (run, task) => {
      const { state, kit, work } = run;
      if (state.machine.stem !== 'stuck') {
        pushAside(run, task.data.time_s);
        return;
      }
      const buried_m = buriedNow_m(run);
      const chance = freeingChance(stemFlow_m3s(state), kit.nominalFlow_m3s, buried_m);
      if (run.streams.luck.uniform() >= freeingChanceOver(chance, task.data.time_s)) return;
      // It gives: the crew draws it up through the fill, or out of the clay that held the bit.
      const up_m = Math.max(buried_m, work.grip.length_m) + CLEAR_OF_FILL_m;
      state.stem.motion_m = -Math.min(liftRoom_m(run), up_m);
      state.stem.motion_ms = FREED_PULL_ms;
      state.stem.freeing = state.stem.motion_m < 0;
      tell(run, 'freed', { buried_m });
    },
  },
};
