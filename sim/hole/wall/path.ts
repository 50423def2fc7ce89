// The way out of one cell of this hole.
import type { HoleState } from '../hole';
import type { WallGround } from '../wallGround';
import { readPath } from './support';
import type { WallWork } from './work';

/** Reads the path out of cell i into work.path, from state and ground; readNeed has been asked for the same radius. */
export function pathOf(hole: HoleState, ground: WallGround, work: WallWork, i: number): void {
  const { pathInput } = work;
  const { wall } = hole;
  pathInput.radius_m = hole.radius_m[i];
  pathInput.logRadius = work.need.logRadius[i];
  pathInput.K_ms = ground.K_ms[i];
  pathInput.porosity_frac = ground.porosity_frac[i];
  pathInput.room_frac = ground.porosity_frac[i] * (1 - ground.saturation_frac[i]);
  pathInput.saturated = ground.saturation_frac[i] >= 1;
  pathInput.lost_m2 = wall.lost_m2[i];
  pathInput.cakeResistance_s = wall.cakeResistance_s[i];
  pathInput.conductance_ms = wall.conductance_ms[i];
  readPath(work.path, pathInput);
}
