// Pulling all rods out, one after the other: each is drawn up, taken off and laid aside; where asked, the second man keeps the hole full.

import { DURATION_s } from '../../materials/durations';
import { countOut } from '../boundary';
import type { RefusalKey } from '../names';
import { emptyParcel } from '../../hole/parcel';
import { shortenStem } from '../../hole/stemFill';
import type { Run } from '../run';
import { rodBore_m3, stemLength_m } from '../stem';
import type { Task } from '../state';
import { tell } from '../tell';
import { dip } from '../topUp';
import type { Deeds } from './deed';
import { HALF_OUT_frac, rodHandling, rodToDraw_m } from './stem';

/** A man with a bucket pours so much in a second, m3: as fast as a hole is topped up. ASSUMED. */
const BUCKETS_m3 = 0.0005;

/** Seconds for all rods that hang there. */
function allRods_s(run: Run, speed_ms: number): number {
  const { rodLength_m } = run.kit;
  let { bit_m } = run.state.stem;
  let whole_s = 0;
  for (let rods = run.state.stem.rods; rods > 0; rods--) {
    const draw_m = Math.min(bit_m, Math.max(0, rodLength_m - (rods * rodLength_m - bit_m)));
    whole_s += DURATION_s.removeRod + Math.ceil(draw_m / speed_ms);
    bit_m -= draw_m;
  }
  return whole_s;
}

function refusal(run: Run): RefusalKey | null {
  const { machine, stem } = run.state;
  if (machine.job !== 'pullingOut') return 'stillDrilling';
  return stem.rods === 0 ? 'noStem' : rodHandling(run);
}

/** Begins to draw the next rod. */
function drawNext(run: Run, task: Task): void {
  const { stem } = run.state;
  const draw_m = rodToDraw_m(run);
  stem.feed_frac = 0;
  stem.motion_m = -draw_m;
  stem.motion_ms = task.data.speed_ms;
  task.data.left_s = DURATION_s.removeRod + Math.ceil(draw_m / task.data.speed_ms);
}

/** Takes the top rod off, with what is in it. False when the stem was held on its way up. */
function takeOff(run: Run): boolean {
  const { state, kit, work } = run;
  const { stem, fill } = state;
  const least_m = stem.rods === 1 ? stem.bit_m : stem.bit_m + kit.rodLength_m * HALF_OUT_frac - stemLength_m(run);
  if (least_m > 1e-6) return false;
  stem.rods -= 1;
  emptyParcel(work.spilled);
  shortenStem(fill, rodBore_m3(kit), work.spilled);
  countOut(state.boundary, work.spilled);
  tell(run, 'rodRemoved', { rods: stem.rods });
  return true;
}

export const pullingDeeds: Deeds = {
  pullOut: {
    refusal,
    time_s: (run, payload) => allRods_s(run, payload.speed_ms as number),
    begin: (run, payload, task) => {
      if (!task) return;
      task.data.speed_ms = payload.speed_ms as number;
      task.data.topUp = payload.topUp === true ? 1 : 0;
      drawNext(run, task);
    },
    during: (run, task) => {
      const { state } = run;
      if (task.data.topUp > 0) dip(run, Math.min(BUCKETS_m3, state.hole.shortfall_m3));
      task.data.left_s -= 1;
      // The last rod is taken off when the time is up.
      if (task.data.left_s > 0 || state.stem.rods <= 1) return;
      if (takeOff(run)) drawNext(run, task);
      else task.endTick = state.tick;
    },
    end: (run) => {
      if (run.state.stem.rods !== 1 || !takeOff(run)) return;
      tell(run, 'stemPulled', { depth_m: run.state.hole.depth_m, level_m: run.state.signs.level_m });
    },
  },
};
