// Giving a hole up and moving on: the old hole is backfilled, what stood in it stays there, a new one is begun in the next ground.

import { createCompletion } from '../completion/completion';
import { createParcel } from '../hole/parcel';
import { CHLORINE, SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';
import { countOut } from './boundary';
import { kitInForce } from './gear';
import { send } from './modes';
import { openingFill, openingStem, starterHole } from './opening';
import type { Run } from './run';
import type { Gear } from './state';
import { tell } from './tell';
import { createWork } from './work';

/** All that stands in hole, stem and well leaves the circuit: it stays in the ground with the backfill. */
function leaveBehind(run: Run): void {
  const { hole, fill, boundary, well } = run.state;
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
  if (well) {
    left.water_m3 += well.water_m3;
    left.dissolved_kg[CHLORINE] += well.chlorine_kg;
  }
  countOut(boundary, left);
}

/** Hole and stem as they are before the first turn, for the kit in force. */
function openGround(run: Run): void {
  const { state, scenario } = run;
  leaveBehind(run);
  state.completion = createCompletion();
  state.well = null;
  state.hole = starterHole(scenario, run.kit);
  state.fill = openingFill(scenario, run.kit);
  run.work = createWork(scenario, run.kit, state.hole, state.holeNumber);
}

/** Takes the gear chosen when setting out. The starter hole is dug as wide as the bit; one that the bit has begun to deepen keeps its bit. */
export function takeGear(run: Run, { bit_m, pump }: Gear): void {
  const { state, scenario } = run;
  const fits = bit_m !== state.gear.bit_m && state.hole.depth_m <= scenario.opening.starter_m;
  state.gear = { bit_m: fits ? bit_m : state.gear.bit_m, pump: pump === '' ? state.gear.pump : pump };
  run.kit = kitInForce(scenario, state.gear);
  if (fits) openGround(run);
  else run.work = createWork(scenario, run.kit, state.hole, state.holeNumber);
}

/** Ends the old hole and begins the next one: rods lost with it, fluid and grains left in it, the pit as it is. */
export function beginNewHole(run: Run, rodsLost: number): void {
  const { state, scenario, kit } = run;
  const { casing, openFill_m3 } = state.completion;
  state.oldHoles.push({
    tick: state.tick,
    depth_m: state.hole.depth_m,
    rodsLost,
    casingLost_m: casing.shoe_m > 0 ? casing.length_m : 0,
    backfilled_m3: openFill_m3.reduce((sum, volume_m3) => sum + volume_m3, 0),
    ownLog: state.ownLog,
  });
  state.ownLog = [];
  state.holeNumber += 1;
  state.rodsInAll -= rodsLost;
  state.site.spot = '';
  state.faults.tool = false;
  openGround(run);
  const { drive_C, driveTripped } = state.stem;
  Object.assign(state.stem, openingStem(scenario, kit), { drive_C, driveTripped });
  Object.assign(state.signs, {
    returns_frac: 0,
    grit_frac: 0,
    fines_frac: 0,
    salt_gL: 0,
    cleanTicks: 0,
    wasLoaded: false,
  });
  state.signs.mouth_frac.fill(0);
  send(run, 'moveOn');
  tell(run, 'newHole', { hole: state.holeNumber, rodsLost, rodsLeft: state.rodsInAll });
}
