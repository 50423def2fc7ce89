// One second of job time once the casing is set: nothing turns and no fluid goes round any more, so only what can still change is worked.

import { tendAnnulus } from './annulus';
import { watchDaylight } from './daylight';
import { workFaults } from './faults';
import { wander } from './noise';
import { tendPit } from './pitWeather';
import type { Run } from './run';
import { watchStocks } from './stocks';
import { workTasks } from './tasks';
import { forgetOld } from './tell';
import { watchWait } from './waiting';
import { wellRow } from './trace';
import { tendWell } from './wellTick';

/** Carries a well one second on, in place. */
export function stepWell(run: Run): void {
  const { state } = run;
  forgetOld(run);
  watchDaylight(run);
  workTasks(run);
  tendPit(run);
  tendAnnulus(run);
  tendWell(run);
  // A hole given up for the next one leaves none.
  if (state.well) state.signs.level_m = state.well.level_m;
  wander(state.noise, run.streams.senses, state.tick);
  watchStocks(run);
  workFaults(run);
  watchWait(run);
  wellRow(run);
  state.tick += 1;
}
