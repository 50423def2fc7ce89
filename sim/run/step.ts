// One second of job time. The order is the order of cause: what the crew does, the fluid, the flow, the bit, ground and wall, the hole, the pit, what can be sensed, the machine.

import { ageAll } from './ageing';
import { moveCasing } from './casing';
import { comeUp, pumpDown, solveCirculation } from './circulate';
import { watchDaylight } from './daylight';
import { petrol_ratio } from './gear';
import { drill } from './drill';
import { workFaults } from './faults';
import { wander } from './noise';
import type { Run } from './run';
import { stepWell } from './stepWell';
import { tendPit } from './pitWeather';
import { wearPump } from './pumpCare';
import { readSigns } from './signs';
import { moveStem, stemPlace } from './stem';
import { watchStocks } from './stocks';
import { workTasks } from './tasks';
import { forgetOld } from './tell';
import { traceRow } from './trace';
import { tryWall } from './wall';
import { watchWait } from './waiting';
import { watch } from './watch';
import { TICK_s } from './work';

/** Petrol the pump's engine burns at full throttle, L per second. ASSUMED: 1.2 litres an hour, a small four-stroke engine. */
const PETROL_Ls = 1.2 / 3600;

function burnPetrol(run: Run): void {
  const { pump, stocks } = run.state;
  if (pump.throttle_frac <= 0) return;
  pump.running_s += TICK_s;
  stocks.petrol_L = Math.max(
    0,
    stocks.petrol_L - PETROL_Ls * petrol_ratio(run.state.gear) * pump.throttle_frac * TICK_s,
  );
  if (stocks.petrol_L <= 0) pump.throttle_frac = 0;
}

/** Carries the run one second on, in place. */
export function step(run: Run): void {
  const { state } = run;
  if (state.well) {
    stepWell(run);
    return;
  }
  forgetOld(run);
  watchDaylight(run);
  workTasks(run);
  burnPetrol(run);
  run.work.bitBefore_m = state.stem.bit_m;
  run.work.steelBefore_m = stemPlace(run).bit_m;
  moveStem(run);
  ageAll(run);
  solveCirculation(run);
  pumpDown(run);
  wearPump(run);
  drill(run);
  moveCasing(run);
  tryWall(run);
  comeUp(run);
  tendPit(run);
  state.stem.sinking_ms = (state.stem.bit_m - run.work.bitBefore_m) / TICK_s;
  readSigns(run);
  wander(state.noise, run.streams.senses, state.tick);
  watchStocks(run);
  watch(run);
  workFaults(run);
  watchWait(run);
  traceRow(run);
  state.tick += 1;
}
