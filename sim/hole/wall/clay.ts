// One look at a cell in ground that undrained strength holds: it comes in by squeeze and swelling, and wears off.
import type { HoleState } from '../hole';
import type { WallGround } from '../wallGround';
import { SQUEEZE, SWELLING, note } from './failures';
import { openHeight_m } from './slough';
import { closure_ratio, comesIn_frac, overload_ratio } from './squeeze';
import { MOST_ratio } from './support';
import { inhibition_ratio, swollenAfter_m } from './swelling';
import { restingPressure_Pa, type WallInput } from './input';
import { washCell } from './wash';
import type { WallWork } from './work';

/** Between clay and rods a flow keeps this much open, m; at rest what is left is a smear, m. ASSUMED. */
const FLOW_KEEPS_m = 0.002;
const SMEAR_m = 0.0005;
/** Without rods a hole narrower than this is closed, m in radius. ASSUMED. */
const CLOSED_m = 0.005;
/** The hole counts as tight when this much narrower than the bit, m in radius. ASSUMED. */
const TIGHT_m = 0.001;

export function clayCell(
  hole: HoleState,
  ground: WallGround,
  work: WallWork,
  input: WallInput,
  i: number,
  dt_s: number,
): void {
  const { wall } = hole;
  wall.stability_ratio[i] = MOST_ratio;
  wall.sloughing[i] = 0;
  comeIn(hole, ground, work, input, i, dt_s);
  if (hole.radius_m[i] > 0) washCell(hole, ground, work, input, i, dt_s, 0, 0);
}

function comeIn(hole: HoleState, ground: WallGround, work: WallWork, input: WallInput, i: number, dt_s: number): void {
  const { wall } = hole;
  const fluid_Pa = restingPressure_Pa(input, i);
  const wet = fluid_Pa > 0;
  const before_m = hole.radius_m[i];
  const cut_m = before_m + wall.squeezed_m[i] + wall.swollen_m[i];
  const inEnd_m = closure_ratio(overload_ratio(ground.total_Pa[i], fluid_Pa, ground.su_kPa[i])) * cut_m;
  const squeeze_m = inEnd_m > wall.squeezed_m[i] ? (inEnd_m - wall.squeezed_m[i]) * comesIn_frac(dt_s) : 0;
  const swell_m =
    wet && ground.swell_ratio[i] > 0
      ? swollenAfter_m(
          wall.swollen_m[i],
          ground.swell_ratio[i],
          inhibition_ratio(input.soaked_gL, input.bentonite_gL),
          dt_s,
        ) - wall.swollen_m[i]
      : 0;
  const wanted_m = squeeze_m + swell_m;
  if (!(wanted_m > 0)) return;
  const rods = i * hole.dz_m < input.stem.bit_m;
  const kept_m = input.flow_m3s > 0 ? FLOW_KEEPS_m : SMEAR_m;
  let after_m = before_m - wanted_m;
  if (rods) after_m = Math.min(before_m, Math.max(after_m, input.stem.rodOutside_m / 2 + kept_m));
  else if (after_m < CLOSED_m) after_m = 0;
  const share = (before_m - after_m) / wanted_m;
  wall.squeezed_m[i] += squeeze_m * share;
  wall.swollen_m[i] += swell_m * share;
  hole.radius_m[i] = after_m;
  const tight_m = input.bitWidth_m / 2 - TIGHT_m;
  if (after_m < tight_m && after_m < before_m) {
    const lost_m3 = Math.PI * (before_m * before_m - after_m * after_m) * openHeight_m(hole, i);
    const cause = wall.squeezed_m[i] >= wall.swollen_m[i] ? SQUEEZE : SWELLING;
    note(work.failures, cause, i, lost_m3, before_m >= tight_m);
  }
}
