// One second between hole and ground: what the wall drinks and gives, whether it stands, what falls.

import { lossInto } from '../hole/loss/loss';
import { dropFallen } from '../hole/wall/fallen';
import { CAUSES } from '../hole/wall/failures';
import { parcelVolume_m3 } from '../hole/parcel';
import { surgeInto } from '../hole/wall/swab';
import { wallInto } from '../hole/wall/wall';
import { countIn } from './boundary';
import { stemFlow_m3s } from './flowing';
import type { Run } from './run';
import { stemPlace } from './stem';
import { tell } from './tell';
import { pourIntoHole } from './topUp';
import { TICK_s } from './work';

/** The same cause is told again only after this pause, s: a wall falls bit by bit. */
const TOLD_AGAIN_s = 300;

/** What the moving stem adds to the pressure in the hole, or takes off it. */
function swab(run: Run): void {
  const { state, work } = run;
  const input = work.swabInput;
  input.lift_ms = (work.steelBefore_m - work.place.bit_m) / TICK_s;
  input.holeWidth_m = work.hole.diameter_m;
  input.flow_m3s = stemFlow_m3s(state);
  input.balling_frac = state.stem.balling_frac;
  surgeInto(work.loss.surge_Pa, state.hole, work.wall.swab, input);
}

/** Reads loss, inflow and level from the hole as it stands after the cut; leave_m3 goes on to the sweep. */
function drink(run: Run): void {
  const { state, work } = run;
  const { flowResult } = work;
  const input = work.lossInput;
  const flows = state.pump.flow_m3s > 0;
  input.tick = state.tick;
  input.bit_m = work.place.bit_m;
  input.rodOutside_m = work.place.rodOutside_m;
  input.inflow_m3 = parcelVolume_m3(work.atBit) + parcelVolume_m3(work.poured);
  input.turning = state.stem.turning && !state.stem.stalled;
  input.wallShear_Pa = flows ? flowResult.wallShear_Pa : 0;
  input.friction_Pam = flows && state.stem.bit_m > 0 ? flowResult.annulus_Pa / state.stem.bit_m : 0;
  lossInto(state.hole, work.wallGround, input, work.loss);
}

/** Looks at the wall and puts what fell into the hole. */
function stand(run: Run): void {
  const { state, work } = run;
  const input = work.wallInput;
  input.tick = state.tick;
  input.flow_m3s = stemFlow_m3s(state);
  input.soaked_gL = work.hole.soaked_gL;
  input.bentonite_gL = work.hole.bentonite_gL;
  wallInto(state.hole, work.wallGround, work.wall, input);
  dropFallen(state.hole, work.wall.fallen, work.loss.level_m, work.fallen);
  countIn(state.boundary, work.fallen);
}

/** Adds up what each cause took and tells when one begins: for the debrief and the instructor; a crew only sees the signs. */
function tellFailures(run: Run): void {
  const { state, work } = run;
  const { failures } = work.wall;
  const { wall } = state;
  if (failures.count === 0) return;
  const { dz_m } = state.hole;
  for (let cause = 0; cause < CAUSES.length; cause++) {
    wall.taken_m3[cause] += failures.whole_m3[cause];
    if (failures.begun[cause] === 0 || state.tick < wall.toldAgain_tick[cause]) continue;
    wall.toldAgain_tick[cause] = state.tick + TOLD_AGAIN_s;
    tell(run, 'wallFails', {
      cause: CAUSES[cause],
      from_m: failures.first[cause] * dz_m,
      to_m: (failures.last[cause] + 1) * dz_m,
      level_m: work.loss.level_m,
    });
  }
}

/** Loss, inflow and the wall: after the cut, before the hole is swept. */
export function tryWall(run: Run): void {
  const { ringFluid, hole } = run.work;
  stemPlace(run);
  ringFluid.density_kgm3 = hole.density_kgm3;
  ringFluid.K_Pasn = hole.K_Pasn;
  ringFluid.n_ratio = hole.n_ratio;
  swab(run);
  drink(run);
  pourIntoHole(run);
  stand(run);
  tellFailures(run);
}
