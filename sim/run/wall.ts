// One second between hole and ground: what the wall drinks and gives, whether it stands, what falls.

import { lossInto } from '../hole/loss/loss';
import { fluidLevel_m } from '../hole/hole';
import { dropFallen } from '../hole/wall/fallen';
import { CAUSES } from '../hole/wall/failures';
import { parcelVolume_m3 } from '../hole/parcel';
import { wallInto } from '../hole/wall/wall';
import { countIn } from './boundary';
import type { Run } from './run';
import { stemPlace } from './stem';
import { tell } from './tell';
import { TICK_s } from './work';

/** The same cause is told again only after this pause, s: a wall falls bit by bit. */
const TOLD_AGAIN_s = 300;

/** Reads loss, inflow and level from the hole as it stands after the cut; leave_m3 goes on to the sweep. */
function drink(run: Run): void {
  const { state, work } = run;
  const { flowResult } = work;
  const input = work.lossInput;
  const flows = state.pump.flow_m3s > 0;
  input.tick = state.tick;
  input.bit_m = state.stem.bit_m;
  input.inflow_m3 = parcelVolume_m3(work.atBit);
  input.turning = state.stem.turning && !state.stem.stalled;
  input.wallShear_Pa = flows ? flowResult.wallShear_Pa : 0;
  input.friction_Pam = flows && state.stem.bit_m > 0 ? flowResult.annulus_Pa / state.stem.bit_m : 0;
  lossInto(state.hole, work.wallGround, input, work.loss);
}

/** Looks at the wall and puts what fell into the hole. */
function stand(run: Run): void {
  const { state, work } = run;
  const { stem, hole } = state;
  const input = work.wallInput;
  const flows = state.pump.flow_m3s > 0;
  input.tick = state.tick;
  input.level_m = work.loss.level_m;
  input.stem = stemPlace(run);
  input.holeWidth_m = work.hole.diameter_m;
  input.lift_ms = (work.bitBefore_m - stem.bit_m) / TICK_s;
  input.flow_m3s = state.pump.flow_m3s;
  input.annulus_Pa = flows ? work.flowResult.annulus_Pa : 0;
  input.fluid.density_kgm3 = work.hole.density_kgm3;
  input.fluid.K_Pasn = work.hole.K_Pasn;
  input.fluid.n_ratio = work.hole.n_ratio;
  input.soaked_gL = work.hole.soaked_gL;
  input.bentonite_gL = work.hole.bentonite_gL;
  input.balling_frac = stem.balling_frac;
  wallInto(hole, work.wallGround, work.wall, input);
  dropFallen(hole, work.wall.fallen, work.loss.level_m, work.fallen);
  countIn(state.boundary, work.fallen);
}

/** Adds up what each cause took and tells when one begins: for the debrief and the instructor; a crew only sees the signs. */
function tellFailures(run: Run): void {
  const { state, work } = run;
  const { failures } = work.wall;
  const { wall } = state;
  for (let f = 0; f < failures.count; f++) {
    const cause = failures.cause[f];
    wall.taken_m3[cause] += failures.volume_m3[f];
    if (failures.begins[f] === 0 || state.tick < wall.toldAgain_tick[cause]) continue;
    wall.toldAgain_tick[cause] = state.tick + TOLD_AGAIN_s;
    tell(run, 'wallFails', {
      cause: CAUSES[cause],
      depth_m: (failures.cell[f] + 0.5) * state.hole.dz_m,
      level_m: fluidLevel_m(state.hole, stemPlace(run)),
    });
  }
}

/** Loss, inflow and the wall: after the cut, before the hole is swept. */
export function tryWall(run: Run): void {
  drink(run);
  stand(run);
  tellFailures(run);
}
