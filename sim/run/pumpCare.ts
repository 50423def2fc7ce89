// What a second does to the pump: sand and boiling wear it, and a dry one burns its seal.

import { SEAL_DRY_s, wearAfter } from '../hydraulics/wear';
import type { Run } from './run';
import { tell } from './tell';
import { TICK_s } from './work';

/** A crew feels the pump as worn when it has lost this share of its head. ASSUMED. */
const WORN_frac = 0.1;

/** Wears the pump by what it drew this second; call after pumpDown. A stopped pump cools as fast as a dry one heats. */
export function wearPump(run: Run): void {
  const { pump } = run.state;
  const dry = pump.throttle_frac > 0 && !pump.primed;
  pump.dry_s = dry ? pump.dry_s + TICK_s : pump.primed ? 0 : Math.max(0, pump.dry_s - TICK_s);
  if (!pump.sealBurnt && pump.dry_s >= SEAL_DRY_s) {
    pump.sealBurnt = true;
    tell(run, 'sealBurnt', {});
  }
  if (pump.gulping !== pump.gulpingTold) {
    pump.gulpingTold = pump.gulping;
    if (pump.gulping) tell(run, 'pumpGulps', { npsh_m: run.work.flowResult.npsh_m });
  }
  if (pump.throttle_frac <= 0 || !pump.primed) return;
  pump.worn_frac = wearAfter(pump.worn_frac, run.work.drawn.solids_m3, run.work.flowResult.starved, TICK_s);
  if (pump.wornTold || pump.worn_frac < WORN_frac) return;
  pump.wornTold = true;
  tell(run, 'pumpWorn', { worn_frac: pump.worn_frac });
}
