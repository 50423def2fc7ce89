// One second of the wall: each cell is looked at every eighth second, all of them when the stem is pulled.
import { bedTop_m, type HoleState } from '../hole';
import { LOOK_TICKS } from '../loss/front';
import { DRAINED_kPa, type WallGround } from '../wallGround';
import { clayCell } from './clay';
import { SWAB, clearFailures, note } from './failures';
import { clearFallen } from './fallen';
import { restingPressure_Pa, type WallInput } from './input';
import { looseCell } from './loose';
import { readNeed } from './need';
import { pathOf } from './path';
import { openHeight_m, takeOff, wanting_ratio } from './slough';
import { MOST_ratio, supportShare_frac } from './support';
import { readStream } from './wash';
import type { WallWork } from './work';

/** The pull takes pressure off cell i: what that adds to its fall in this tick. */
function pressCell(hole: HoleState, ground: WallGround, work: WallWork, input: WallInput, i: number): void {
  const lost_Pa = -input.surge_Pa[i];
  readNeed(work.need, i, hole.radius_m[i]);
  const friction_Pa = work.need.friction_Pa[i];
  const F = hole.wall.stability_ratio[i];
  // The whole of the pressure lost would not bring it down.
  if (!(friction_Pa > 0) || F - lost_Pa / friction_Pa >= 1) return;
  pathOf(hole, ground, work, i, restingPressure_Pa(input, i) - input.ground_Pa[i]);
  const falling = hole.wall.sloughing[i] > 0;
  const pressed = F - (supportShare_frac(work.path) * lost_Pa) / friction_Pa;
  const more = wanting_ratio(pressed, falling) - wanting_ratio(F, falling);
  if (!(more > 0)) return;
  const depth_m = work.retreat_ms[i] * more * input.dt_s;
  const volume_m3 = takeOff(hole, ground, work.fallen, i, depth_m, input.bitWidth_m);
  note(work.failures, SWAB, i, volume_m3, !falling);
  hole.wall.sloughing[i] = 1;
}

/**
 * Carries the wall one tick on: radii, time open, stability, what has come in; what fell is in work.fallen, why in work.failures, how many
 * cells fall or have closed in work.sloughing and work.closed.
 * In a tick: surgeInto before the loss, this after it (same turn, same cells), then dropFallen. Walls below the top of the bed lean on it and stand.
 */
export function wallInto(hole: HoleState, ground: WallGround, work: WallWork, input: WallInput): void {
  clearFallen(work.fallen);
  clearFailures(work.failures);
  const { wall } = hole;
  const bedTop = bedTop_m(hole, input.stem);
  const pressed = work.swab.pulls;
  if (input.flow_m3s > 0) readStream(work, input);
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) {
    const before_s = wall.open_s[i];
    wall.open_s[i] = before_s + input.dt_s;
    const turn = before_s === 0 || (i + input.tick) % LOOK_TICKS === 0;
    if (!turn && !pressed) continue;
    // Judged at the middle of what is open of it.
    const standing = hole.radius_m[i] > 0 && i * hole.dz_m + 0.5 * openHeight_m(hole, i) < bedTop;
    if (!standing) {
      if (turn) {
        wall.stability_ratio[i] = MOST_ratio;
        wall.sloughing[i] = 0;
      }
      continue;
    }
    const loose = ground.su_kPa[i] === DRAINED_kPa;
    if (turn) {
      const dt_s = before_s === 0 ? input.dt_s : Math.min(LOOK_TICKS * input.dt_s, before_s);
      if (loose) looseCell(hole, ground, work, input, i, dt_s);
      else clayCell(hole, ground, work, input, i, dt_s);
    }
    if (pressed && loose) pressCell(hole, ground, work, input, i);
  }
  countModes(hole, work);
}

function countModes(hole: HoleState, work: WallWork): void {
  work.sloughing = 0;
  work.closed = 0;
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) {
    if (hole.wall.sloughing[i] > 0) work.sloughing += 1;
    if (hole.radius_m[i] === 0) work.closed += 1;
  }
}
