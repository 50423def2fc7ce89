// The casing is set where it is: from here on the hole is a well, and its arrays stand still.

import { createAnnulus, type AnnulusState } from '../completion/annulus';
import { offMiddle_frac } from '../completion/centred';
import { layDown, pieceFall_ms } from '../completion/falling';
import { GROUND_FILL } from '../completion/fills';
import { BED_POROSITY } from '../hole/hole';
import { readNeed } from '../hole/wall/need';
import { pathOf } from '../hole/wall/path';
import { supportShare_frac } from '../hole/wall/support';
import { GRAIN_kgm3 } from '../hole/slip';
import { readHole } from '../hole/sweep';
import { CLASS_COUNT } from '../materials/sizes';
import { GRAVITY_MS2 } from '../numeric/units';
import { standpipe } from './annulus';
import { beginWell } from './wellBegin';
import type { Run } from './run';
import { stemPlace } from './stem';
import { tell } from './tell';

/** Grain that stands for ground that falls down the ring, mm. ASSUMED: medium sand. */
const FALLEN_mm = 0.35;

/** All grains in the hole lie on its bottom now, those in suspension too. */
function layBed(run: Run, annulus: AnnulusState): void {
  const { hole } = run.state;
  let grains_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) {
    grains_m3 += hole.bed_m3[k];
    for (let i = 0; i < hole.used; i++) grains_m3 += hole.solids_m3[k * hole.cells + i];
  }
  const pipe = standpipe(run);
  // What of the last cell has not been drilled is ground.
  const last = annulus.used - 1;
  const undrilled_m = annulus.used * hole.dz_m - hole.depth_m;
  const undrilled_m3 = Math.PI * hole.radius_m[last] * hole.radius_m[last] * undrilled_m;
  const bulk_m3 = grains_m3 / (1 - BED_POROSITY) + undrilled_m3;
  annulus.put_m3[GROUND_FILL] += bulk_m3 - layDown(annulus, GROUND_FILL, last, bulk_m3, pipe);
}

/** How the fluid held the wall up to now: what of its pressure acts on the ring of ground. */
function readSupport(run: Run, annulus: AnnulusState): void {
  const { hole, signs } = run.state;
  const { wallGround, wall } = run.work;
  for (let i = 0; i < annulus.used; i++) {
    if (!(hole.radius_m[i] > 0) || !(wallGround.phi_deg[i] > 0)) continue;
    readNeed(wall.need, i, hole.radius_m[i]);
    const depth_m = (i + 0.5) * hole.dz_m;
    const fluid_Pa = annulus.density_kgm3 * GRAVITY_MS2 * Math.max(0, depth_m - signs.level_m);
    pathOf(hole, wallGround, wall, i, fluid_Pa - wallGround.pore_Pa[i]);
    annulus.support_frac[i] = supportShare_frac(wall.path);
  }
}

function createRing(run: Run): AnnulusState {
  const { completion, hole } = run.state;
  const used = Math.max(1, Math.ceil(hole.depth_m / hole.dz_m - 1e-9));
  const annulus = createAnnulus(hole.dz_m, hole.cells, used);
  annulus.radius_m.set(hole.radius_m);
  const { shoe_m } = completion.casing;
  for (let i = 0; i < used; i++)
    annulus.offMiddle_frac[i] = offMiddle_frac((i + 0.5) * hole.dz_m, shoe_m, completion.plan!.centralisers);
  const fluid = run.work.hole;
  const place = stemPlace(run);
  readHole(hole, place.bit_m, place.rodOutside_m, run.kit.temperature_C, fluid);
  annulus.K_Pasn = fluid.K_Pasn;
  annulus.n_ratio = fluid.n_ratio;
  annulus.density_kgm3 = fluid.density_kgm3;
  annulus.salt_gL = fluid.salt_gL;
  annulus.fall_ms[GROUND_FILL] = pieceFall_ms(FALLEN_mm, GRAIN_kgm3, fluid, fluid.density_kgm3);
  layBed(run, annulus);
  readSupport(run, annulus);
  return annulus;
}

/** Closes the hole in round its casing, once. There must be a casing in it. */
export function closeIn(run: Run): void {
  const { state } = run;
  if (state.well) return;
  const { completion } = state;
  completion.annulus = createRing(run);
  completion.casing.look = 'set';
  completion.casing.motion_m = 0;
  completion.casing.filling = false;
  beginWell(run);
  tell(run, 'wellClosed', { shoe_m: completion.casing.shoe_m });
}
