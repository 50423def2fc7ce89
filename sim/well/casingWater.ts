// The water in the casing through one second: what is drawn, what the ground gives, where it stands.
import { exp } from '../numeric/functions';
import type { ScreenedAquifer } from './aquifer';
import { recordRate } from './rateSteps';
import { groundRate_m3s, type CasingTick } from './storage';
import { steppedDrawdown_m, theisU } from './theis';
import { wideWellFunction } from './wideWell';
import type { WellState } from './wellState';

/** The water counts as at rest when it stands so near its level and so little comes in: 5 mm on a dipper, a glass in ten minutes. ASSUMED. */
const STILL_m = 0.005;
const STILL_m3s = 3e-7;
/** So little is nothing, wherever the water stands: a screen in clay. */
const NOTHING_m3s = 3e-8;
/** A change of the ground's rate below this share is no step of its own in the history. */
const SAME_RATE_ratio = 2e-3;
/** Water that is left in the casing when it runs dry, m: the pump or bailer does not get it. ASSUMED. */
const DREGS_m = 0.1;
/** A free table that has been drawn down costs more, as the way in gets thinner; more than this times is cut off. */
const MOST_THINNING_ratio = 10;

/** What one second brought, m3: out of the casing, and from the ground (negative: into it); and what was asked of the law. */
export interface WaterTick {
  drawn_m3: number;
  ground_m3: number;
  readonly law: CasingTick;
}

export const createWaterTick = (): WaterTick => ({
  drawn_m3: 0,
  ground_m3: 0,
  law: {
    pumped_m3s: 0,
    drawdown_m: 0,
    earlier_m: 0,
    before_m3s: 0,
    response_sm2: 0,
    skin_sm2: 0,
    loss_s2m5: 0,
    section_m2: 1,
  },
});

/**
 * One second with wanted_m3s drawn (negative: poured in), in place. Theis by superposition with the skin, the slots' loss, the casing's own
 * water, and in a free table s' = s(1 - s/2b) by the drawdown of the second before. Draws no more than there is.
 */
export function carryWater(well: WellState, tick: number, wanted_m3s: number, tick_s: number, out: WaterTick): void {
  const { intake, section_m2, rates } = well;
  const { law } = out;
  const time_s = tick - well.closedTick;
  const drawdown_m = well.level_m - well.rest_m;
  const most_m3 = Math.max(0, well.water_m3 - DREGS_m * section_m2);
  let ground_m3s = 0;
  if (intake.T_m2s > 0) {
    const { T_m2s, S_ratio, skin_ratio, freeThickness_m } = intake;
    const wide_m = skin_ratio < 0 ? intake.radius_m * exp(-skin_ratio) : intake.radius_m;
    const down_m = Math.max(0, drawdown_m);
    const thinner =
      freeThickness_m > 0 ? Math.min(MOST_THINNING_ratio, 1 / Math.max(1e-9, 1 - down_m / (2 * freeThickness_m))) : 1;
    law.pumped_m3s = Math.min(wanted_m3s, most_m3 / tick_s);
    law.drawdown_m = drawdown_m;
    law.before_m3s = rates.count > 0 ? rates.rate_m3s[rates.count - 1] : 0;
    law.earlier_m = thinner * steppedDrawdown_m(rates, T_m2s, S_ratio, wide_m, time_s + tick_s, wideWellFunction);
    law.response_sm2 = (thinner * wideWellFunction(theisU(wide_m, S_ratio, T_m2s, tick_s))) / (4 * Math.PI * T_m2s);
    law.skin_sm2 = (thinner * Math.max(0, skin_ratio)) / (2 * Math.PI * T_m2s);
    law.loss_s2m5 = intake.wellLoss_s2m5;
    law.section_m2 = section_m2;
    ground_m3s = groundRate_m3s(law, tick_s);
    if (!(Math.abs(ground_m3s - law.before_m3s) <= SAME_RATE_ratio * Math.abs(law.before_m3s)))
      recordRate(rates, time_s, ground_m3s);
  }
  out.drawn_m3 = Math.min(wanted_m3s * tick_s, Math.max(0, most_m3 + Math.max(0, ground_m3s) * tick_s));
  // The ground never takes more than there is.
  out.ground_m3 = Math.max(ground_m3s * tick_s, out.drawn_m3 - well.water_m3);
  well.water_m3 += out.ground_m3 - out.drawn_m3;
  well.level_m = well.bottom_m - well.water_m3 / section_m2;
  well.ground_m3s = out.ground_m3 / tick_s;
  well.drawn_m3s = out.drawn_m3 / tick_s;
  const near = Math.abs(well.level_m - well.rest_m) < STILL_m || !(intake.T_m2s > 0);
  if (wanted_m3s === 0 && Math.abs(well.ground_m3s) < (near ? STILL_m3s : NOTHING_m3s)) {
    if (intake.T_m2s > 0) recordRate(rates, time_s, 0);
    well.ground_m3s = 0;
    well.still = true;
  }
}

/** Where the water of the casing comes to rest: at the aquifers' level, but not below the casing's lower end. */
export const restLevel_m = (aquifer: ScreenedAquifer, bottom_m: number): number => Math.min(bottom_m, aquifer.level_m);
