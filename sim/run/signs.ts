// The slow signs at the mouth, smoothed as an eye would, and the moment when the returns run clean.

import { SALT } from '../fluid/substances';
import { layerAt } from '../ground/lookup';
import { fluidLevel_m } from '../hole/hole';
import { parcelVolume_m3 } from '../hole/parcel';
import { CLASS_COUNT, FINE_CLASS_COUNT } from '../materials/sizes';
import { flowing } from './flowing';
import { groundOf } from './ground';
import type { Run } from './run';
import { stemPlace } from './stem';
import { tell } from './tell';
import { TICK_s } from './work';

/** Weight of the newest second. ASSUMED: an eye averages over some five seconds. */
const FRESH_frac = 0.2;
/** Volume fractions of sand and coarser at the mouth: loaded from here on, clean below this for so many seconds. ASSUMED. */
const LOADED_frac = 0.002;
const CLEAN_frac = 0.0004;
const CLEAN_FOR_s = 10;
/** Fewer grains than this give no colour of their own. */
const COLOURLESS_frac = 2e-4;

export function readSigns(run: Run): void {
  const { signs, pump } = run.state;
  const { mouth } = run.work;
  const pumped_m3 = pump.flow_m3s * TICK_s;
  const returned_m3 = parcelVolume_m3(mouth);
  const share = pumped_m3 > 0 ? Math.min(1.5, returned_m3 / pumped_m3) : 0;
  signs.returns_frac += FRESH_frac * (share - signs.returns_frac);
  let grit_frac = 0;
  let fines_frac = 0;
  let solids_m3 = 0;
  let moment_m4 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const c = returned_m3 > 0 ? mouth.solids_m3[k] / returned_m3 : 0;
    signs.mouth_frac[k] += FRESH_frac * (c - signs.mouth_frac[k]);
    if (k < FINE_CLASS_COUNT) fines_frac += signs.mouth_frac[k];
    else grit_frac += signs.mouth_frac[k];
    solids_m3 += mouth.solids_m3[k];
    moment_m4 += mouth.moment_m4[k];
  }
  const salt_gL = mouth.water_m3 > 0 ? mouth.dissolved_kg[SALT] / mouth.water_m3 : 0;
  signs.salt_gL += FRESH_frac * (salt_gL - signs.salt_gL);
  signs.level_m = fluidLevel_m(run.state.hole, stemPlace(run));
  signs.grit_frac = grit_frac;
  signs.fines_frac = fines_frac;
  if (solids_m3 > COLOURLESS_frac * returned_m3 && solids_m3 > 0)
    signs.colour = layerAt(groundOf(run), moment_m4 / solids_m3).colour;
  watchForClear(run);
}

/** Running clean is told once after each time the returns were loaded. */
function watchForClear(run: Run): void {
  const { signs } = run.state;
  if (!flowing(run.state) || signs.returns_frac < 0.5) {
    signs.cleanTicks = 0;
    return;
  }
  if (signs.grit_frac > LOADED_frac) signs.wasLoaded = true;
  signs.cleanTicks = signs.grit_frac < CLEAN_frac ? signs.cleanTicks + 1 : 0;
  if (signs.wasLoaded && signs.cleanTicks >= CLEAN_FOR_s) {
    signs.wasLoaded = false;
    tell(run, 'clear', {});
  }
}
