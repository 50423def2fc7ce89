// One look at a cell in ground that friction and cohesion hold: does it stand, fall, wash out?
import type { HoleState } from '../hole';
import { WATER_Nm3 } from '../loss/conductance';
import type { WallGround } from '../wallGround';
import { GAP, INFLOW, LEVEL, NO_CAKE, note } from './failures';
import { CAPILLARY_s, cohesion_Pa, readNeed } from './need';
import { takeOff, wanting_ratio } from './slough';
import { stability_ratio, supportShare_frac, wallGradient_ratio } from './support';
import { restingPressure_Pa, type WallInput } from './input';
import { pathOf } from './path';
import { washCell } from './wash';
import type { WallWork } from './work';

/** Ground with a d15 beyond this is all gaps as long as no cake closes them, mm. ASSUMED: the loss holds next to nothing back there. */
const OPEN_d15_mm = 1;
/** A cake thinner than this is none, m. */
const NO_CAKE_m = 1e-5;

/** Ground water that stands this much higher than the fluid runs in, Pa. ASSUMED: 5 cm, less is called a level too low. */
const RUNS_IN_Pa = 500;

/** Why a wall falls that has over_Pa more pressure in the hole than in its pores and wants need_Pa. */
function causeOf(over_Pa: number, need_Pa: number, d15_mm: number, cake_m: number): number {
  if (over_Pa < -RUNS_IN_Pa) return INFLOW;
  // A membrane would carry all of the pressure: would it do?
  if (over_Pa < need_Pa) return LEVEL;
  return d15_mm > OPEN_d15_mm && cake_m < NO_CAKE_m ? GAP : NO_CAKE;
}

export function looseCell(
  hole: HoleState,
  ground: WallGround,
  work: WallWork,
  input: WallInput,
  i: number,
  dt_s: number,
): void {
  const { wall } = hole;
  const radius_m = hole.radius_m[i];
  const over_Pa = restingPressure_Pa(input, i) - input.ground_Pa[i];
  // A wall left dry drains, and its capillary water holds again, as fast as it let go.
  if (ground.saturation_frac[i] < 1 && !(input.pressure_Pa[i] > 0))
    wall.wetted_s[i] = Math.max(0, Math.min(CAPILLARY_s, wall.wetted_s[i]) - dt_s);
  readNeed(work.need, i, radius_m);
  pathOf(hole, ground, work, i, over_Pa);
  const gradient_ratio = wallGradient_ratio(work.path, over_Pa / WATER_Nm3, radius_m);
  const friction_Pa = work.need.friction_Pa[i];
  const stuck_Pa = cohesion_Pa(ground, i, wall.wetted_s[i]);
  const spared_Pa = stuck_Pa * work.need.cohesionShare_ratio[i];
  const F = stability_ratio(supportShare_frac(work.path) * over_Pa, friction_Pa, spared_Pa);
  wall.stability_ratio[i] = F;
  const falling = wall.sloughing[i] > 0;
  const wanting = wanting_ratio(F, falling);
  wall.sloughing[i] = wanting > 0 ? 1 : 0;
  if (wanting > 0) {
    const cause = causeOf(over_Pa, friction_Pa - spared_Pa, ground.d15_mm[i], wall.cake_m[i]);
    const fall_m = work.retreat_ms[i] * wanting * dt_s;
    const volume_m3 = takeOff(hole, ground, work.fallen, i, fall_m, input.bitWidth_m);
    note(work.failures, cause, i, volume_m3, !falling);
  }
  washCell(hole, ground, work, input, i, dt_s, gradient_ratio, stuck_Pa);
}
