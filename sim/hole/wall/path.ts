// The way out of one cell of this hole.
import type { HoleState } from '../hole';
import { WATER_Nm3 } from '../loss/conductance';
import { LOOK_TICKS } from '../loss/front';
import type { WallGround } from '../wallGround';
import { readPath } from './support';
import type { WallWork } from './work';

/**
 * Reads the path out of cell i into work.path, from state and ground, for this much pressure over the ground's; readNeed has been
 * asked for the same radius. The loss reckons with the ring as it will be half way to its next look, and so does this.
 */
export function pathOf(hole: HoleState, ground: WallGround, work: WallWork, i: number, over_Pa: number): void {
  const { pathInput } = work;
  const { wall } = hole;
  pathInput.radius_m = hole.radius_m[i];
  pathInput.logRadius = work.need.logRadius[i];
  pathInput.K_ms = ground.K_ms[i];
  pathInput.porosity_frac = ground.porosity_frac[i];
  pathInput.room_frac = ground.porosity_frac[i] * (1 - ground.saturation_frac[i]);
  pathInput.saturated = ground.saturation_frac[i] >= 1;
  const toCome_m2 = ((0.5 * LOOK_TICKS) / WATER_Nm3) * wall.conductance_ms[i] * over_Pa;
  pathInput.lost_m2 = Math.max(0, wall.lost_m2[i] + toCome_m2);
  pathInput.cakeResistance_s = wall.cakeResistance_s[i];
  pathInput.conductance_ms = wall.conductance_ms[i];
  readPath(work.path, pathInput);
}
