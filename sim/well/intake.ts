// What ground, ring and slots give a well together: read from how it stands, how its ring is, and where the water is.
import { leftOpen_m2, openPerMetre_m } from '../completion/slots';
import type { Ground } from '../ground/ground';
import type { Layer } from '../ground/layer';
import { layerAt } from '../ground/lookup';
import { aquiferOf, type ScreenedAquifer } from './aquifer';
import { cellSkin_ratio } from './cellSkin';
import { partialSkin_ratio } from './partial';
import type { ScreenRing } from './ring';
import { sharedSkin_ratio } from './skin';
import { screenCells, type Standing } from './standing';
import { slotLoss_s2m5 } from './wellLoss';
import { wayLogOf, type Intake } from './yield';

/** The way that the water comes counts as after so long a pumping, s: a day's work. */
const WAY_s = 8 * 3600;
/** The least open area that counts, m2: a screen without slots gives nothing. */
const LEAST_OPEN_m2 = 1e-7;

/** What a well takes in, and from what. */
export interface WellIntake {
  readonly aquifer: ScreenedAquifer;
  readonly intake: Intake;
  /** By cell of the ring: share of the water that comes in there. */
  readonly flow_frac: Float64Array;
}

/** The layer at the middle of the screen's part in cell i of the ring. */
export const layerOf = (ground: Ground, ring: ScreenRing, i: number): Layer =>
  layerAt(ground, ring.top_m[i] + ring.height_m[i] / 2);

/**
 * Intake of the well with all levels fall_m lower than now: beds and screen by cell, skins in parallel, the bend of the flow into a short
 * screen, the loss in slots half of which stay open. whole: with a ring as no drilling had touched it.
 * A cell whose screen stands above the water gives nothing.
 */
export function readIntake(
  standing: Standing,
  ring: ScreenRing,
  ground: Ground,
  fall_m: number,
  whole: boolean,
): WellIntake {
  const { screenFrom_m, screenTo_m, slots, pipe } = standing;
  const aquifer = aquiferOf(ground.layers, ground.heads, ground.waterTable_m, fall_m, screenFrom_m, screenTo_m);
  const radius_m = pipe.outside_m / 2;
  const { count } = ring;
  const flow_frac = new Float64Array(count);
  const intake: Intake = {
    T_m2s: aquifer.T_m2s,
    S_ratio: aquifer.S_ratio,
    radius_m,
    skin_ratio: 0,
    wellLoss_s2m5: 0,
    freeThickness_m: aquifer.free ? aquifer.thickness_m : 0,
  };
  const open_m2 = leftOpen_m2(openPerMetre_m(slots) * aquifer.wetScreen_m);
  if (!(aquifer.screened_m2s > 0) || !(open_m2 > LEAST_OPEN_m2))
    return { aquifer, intake: { ...intake, T_m2s: 0 }, flow_frac };
  const wayLog = wayLogOf(aquifer.T_m2s, aquifer.S_ratio, radius_m, WAY_s);
  const T_m2s = new Float64Array(count);
  const skin_ratio = new Float64Array(count);
  const { first } = screenCells(standing);
  let whole_m2s = 0;
  for (let i = 0; i < count; i++) {
    const layer = layerOf(ground, ring, i);
    const top_m = Math.max(ring.top_m[i], aquifer.level_m);
    T_m2s[i] = layer.K_ms * Math.max(0, ring.top_m[i] + ring.height_m[i] - top_m);
    skin_ratio[i] = cellSkin_ratio(standing, ring, i, layer, standing.fill[first + i], wayLog, whole);
    flow_frac[i] = T_m2s[i] / Math.max(0.1, wayLog + skin_ratio[i]);
    whole_m2s += flow_frac[i];
  }
  for (let i = 0; i < count; i++) flow_frac[i] /= whole_m2s;
  const bend = partialSkin_ratio(
    Math.min(1, aquifer.wetScreen_m / aquifer.thickness_m),
    aquifer.thickness_m,
    radius_m,
    aquifer.atAnEnd,
    wayLog,
  );
  const shared = sharedSkin_ratio(T_m2s, skin_ratio, count, wayLog);
  // What hinders costs the more, the less of the aquifer the screen is in, for all the water must pass it; what helps does not help more.
  const dearer_ratio = shared > 0 ? aquifer.T_m2s / aquifer.screened_m2s : 1;
  intake.skin_ratio = bend + shared * dearer_ratio;
  intake.wellLoss_s2m5 = slotLoss_s2m5(open_m2);
  return { aquifer, intake, flow_frac };
}
