// Giving a hole up and moving on: the old hole is backfilled, what stood in it stays there, a new one is begun in the next ground.

import { createHole } from '../hole/hole';
import { createParcel } from '../hole/parcel';
import { createStemFill } from '../hole/stemFill';
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';
import { countOut } from './boundary';
import { send } from './modes';
import type { Run } from './run';
import { rodBore_m3 } from './stem';
import { tell } from './tell';
import { createWork } from './work';

/** All that stands in hole and stem leaves the circuit: it stays in the ground with the backfill. */
function leaveBehind(run: Run): void {
  const { hole, fill, boundary } = run.state;
  const left = createParcel();
  left.water_m3 = hole.water_m3;
  for (let i = 0; i < fill.cells; i++) left.water_m3 += fill.water_m3[i];
  for (let k = 0; k < CLASS_COUNT; k++) {
    left.solids_m3[k] = hole.bed_m3[k];
    for (let i = 0; i < hole.cells; i++) left.solids_m3[k] += hole.solids_m3[k * hole.cells + i];
    for (let i = 0; i < fill.cells; i++) left.solids_m3[k] += fill.solids_m3[k * fill.cells + i];
  }
  for (let s = 0; s < SUBSTANCE_COUNT; s++) {
    for (let i = 0; i < hole.cells; i++) left.dissolved_kg[s] += hole.dissolved_kg[s * hole.cells + i];
    for (let i = 0; i < fill.cells; i++) left.dissolved_kg[s] += fill.dissolved_kg[s * fill.cells + i];
  }
  countOut(boundary, left);
}

/** Ends the old hole and begins the next one: rods lost with it, fluid and grains left in it, the pit as it is. */
export function beginNewHole(run: Run, rodsLost: number): void {
  const { state, scenario } = run;
  const { kit, opening } = scenario;
  leaveBehind(run);
  state.oldHoles.push({ tick: state.tick, depth_m: state.hole.depth_m, rodsLost, ownLog: state.ownLog });
  state.ownLog = [];
  state.holeNumber += 1;
  state.rodsInAll -= rodsLost;
  state.hole = createHole({
    dz_m: kit.dz_m,
    maxDepth_m: opening.maxDepth_m,
    bit_m: kit.bit_m,
    starter_m: opening.starter_m,
  });
  state.fill = createStemFill(opening.rods * rodBore_m3(kit));
  Object.assign(state.stem, {
    rods: opening.rods,
    bit_m: opening.starter_m,
    turning: false,
    feed_frac: 0,
    motion_m: 0,
    motion_ms: 0,
    balling_frac: 0,
    torque_Nm: 0,
    pull_N: 0,
    sinking_ms: 0,
    layerIndex: 0,
    rodDownTold: false,
    buriedTold: false,
    balledTold: false,
    stalled: false,
    stalledTold: false,
    freeing: false,
    refused_s: 0,
    refusedAt_m: -1,
  });
  Object.assign(state.signs, { returns_frac: 0, grit_frac: 0, fines_frac: 0, cleanTicks: 0, wasLoaded: false });
  state.signs.mouth_frac.fill(0);
  run.work = createWork(scenario, state.hole, state.holeNumber);
  send(run, 'moveOn');
  tell(run, 'newHole', { hole: state.holeNumber, rodsLost, rodsLeft: state.rodsInAll });
}
