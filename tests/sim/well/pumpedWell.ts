// A well second by second: Theis by superposition, skin, well loss and the casing's own water.
import { createRateSteps, recordRate } from '../../../sim/well/rateSteps';
import { groundRate_m3s, type CasingTick } from '../../../sim/well/storage';
import { steppedDrawdown_m, theisU } from '../../../sim/well/theis';
import { wellFunction } from '../../../sim/well/wellFunction';

export interface PumpedWell {
  T_m2s: number;
  S_ratio: number;
  r_m: number;
  casing_m: number;
  skin: number;
  loss_s2m5: number;
}

/** Drawdown at every second from 0 to last_s, with so much drawn in the second that begins there. */
export function pumpedWell(well: PumpedWell, drawn_m3s: (time_s: number) => number, last_s: number): number[] {
  const { T_m2s, S_ratio, r_m, casing_m, skin, loss_s2m5 } = well;
  const steps = createRateSteps();
  const tick: CasingTick = {
    pumped_m3s: 0,
    drawdown_m: 0,
    earlier_m: 0,
    before_m3s: 0,
    response_sm2: wellFunction(theisU(r_m, S_ratio, T_m2s, 1)) / (4 * Math.PI * T_m2s),
    skin_sm2: skin / (2 * Math.PI * T_m2s),
    loss_s2m5,
    section_m2: Math.PI * casing_m * casing_m,
  };
  const levels_m = [0];
  for (let t = 0; t < last_s; t++) {
    tick.pumped_m3s = drawn_m3s(t);
    tick.earlier_m = steppedDrawdown_m(steps, T_m2s, S_ratio, r_m, t + 1);
    const ground_m3s = groundRate_m3s(tick, 1);
    recordRate(steps, t, ground_m3s);
    tick.before_m3s = ground_m3s;
    tick.drawdown_m += (tick.pumped_m3s - ground_m3s) / tick.section_m2;
    levels_m.push(tick.drawdown_m);
  }
  return levels_m;
}
