// What ground and sky do to the pit: seepage through an unlined floor, sun, rain, and what runs over the rim.

import { apparentViscosity_Pas } from '../fluid/apparent';
import { FAULT } from '../materials/faults';
import { emptyParcel } from '../hole/parcel';
import { spillOver, takeWater } from '../pit/exchange';
import { levelBelowRim_m } from '../pit/level';
import type { Chamber } from '../pit/pit';
import { seepage_m3s } from '../pit/seep';
import { countOut } from './boundary';
import { chamberRheologyInto } from './pitSigns';
import type { Run } from './run';
import { tell } from './tell';
import { TICK_s } from './work';

/** Width of the channel, m. ASSUMED: a spade. */
export const CHANNEL_WIDTH_m = 0.2;
/** Fluid creeps through the ground at about this shear rate, 1/s. ASSUMED. */
const CREEP_1s = 1;
/** Running over is told again only after the fluid has stood this far below the rim, m. */
const BELOW_RIM_m = 0.01;

function seep(run: Run, chamber: Chamber): void {
  const { work, state } = run;
  chamberRheologyInto(run, chamber);
  const viscosity_Pas = apparentViscosity_Pas(work.rheology, CREEP_1s);
  // Powder in next to no water is a crust: nothing of it runs. Its thickness is beyond all numbers.
  if (!(viscosity_Pas < Infinity)) return;
  const lost_m3 = seepage_m3s(chamber, work.pitGround, viscosity_Pas) * TICK_s;
  if (lost_m3 > 0) takeWater(chamber, lost_m3, work.spilled);
  else {
    chamber.water_m3 -= lost_m3;
    state.boundary.waterIn_m3 -= lost_m3;
  }
}

/** Rain now, mm/h: the showers of the weather, and one that comes as a fault. */
export function rainNow_mmh({ scenario, state }: Run): number {
  const { tick, faults } = state;
  let mmh = faults.rain_mmh;
  for (const shower of scenario.weather?.showers ?? [])
    if (tick >= shower.from_s && tick < shower.to_s) mmh += shower.rain_mmh;
  return mmh;
}

/** Nobody on site overlooks the rain. */
function tellRain(run: Run, raining: boolean): void {
  const { faults } = run.state;
  if (raining !== faults.rainTold) tell(run, raining ? 'rainBegins' : 'rainEnds', {});
  faults.rainTold = raining;
}

const MS_PER_MMH = 1 / 3.6e6;

function skyOver(run: Run, rain_mmh: number): void {
  const { pit, boundary, site, faults } = run.state;
  const sun_ms = (run.scenario.weather?.evaporation_mmDay ?? 0) / 8.64e7;
  const fall_ms = rain_mmh * MS_PER_MMH;
  // The ground round about sheds the shower into the pit, unless a ditch leads it away.
  const shed_m3s = faults.ditch ? 0 : faults.rain_mmh * MS_PER_MMH * FAULT.catch_m2;
  const whole_m2 = pit.settling.area_m2 + pit.suction.area_m2;
  for (const chamber of [pit.settling, pit.suction]) {
    const channel_m2 = chamber === pit.settling ? site.channel_m * CHANNEL_WIDTH_m : 0;
    // Sun takes the water alone; what it carried stays behind.
    const dried_m3 = Math.min(chamber.water_m3, sun_ms * chamber.area_m2 * TICK_s);
    const rained_m3 = (fall_ms * (chamber.area_m2 + channel_m2) + (shed_m3s * chamber.area_m2) / whole_m2) * TICK_s;
    chamber.water_m3 += rained_m3 - dried_m3;
    boundary.waterOut_m3 += dried_m3;
    boundary.waterIn_m3 += rained_m3;
  }
}

/** One second of ground and sky; what leaves is counted out. */
export function tendPit(run: Run): void {
  const { state, scenario, work } = run;
  const { pit, signs, site } = state;
  const rain_mmh = rainNow_mmh(run);
  tellRain(run, rain_mmh > 0);
  if (!site.pitDug) return;
  emptyParcel(work.spilled);
  if (scenario.opening.unlinedPit) {
    seep(run, pit.settling);
    seep(run, pit.suction);
  }
  if (scenario.weather || rain_mmh > 0) skyOver(run, rain_mmh);
  const over_m3 = spillOver(pit, work.spilled);
  countOut(state.boundary, work.spilled);
  if (over_m3 > 0 && !signs.pitFullTold) {
    signs.pitFullTold = true;
    tell(run, 'pitFull', {});
  } else if (signs.pitFullTold && Math.min(levelBelowRim_m(pit.settling), levelBelowRim_m(pit.suction)) > BELOW_RIM_m)
    signs.pitFullTold = false;
}
