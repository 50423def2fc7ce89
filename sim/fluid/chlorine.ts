// Chlorine in the fluid: it breaks soaked polymer, is used up by that, and fades by itself. Bentonite and powder not yet soaked it leaves alone.
import { expm1, ln, pow } from '../numeric/functions';
import { CHLORINE as LAW } from '../materials/chlorine';
import { POLYMER } from '../materials/polymer';
import { CHLORINE, SOAKED } from './substances';

/** What one tick does at a temperature: worked out once. */
export interface BreakPace {
  /** Polymer broken per kg/m3 of polymer and of chlorine, m3/kg. */
  breaks_m3kg: number;
  /** Share of the chlorine that fades in clean fluid. */
  fade_frac: number;
}

/** What chlorine has taken so far, kg; the caller empties it. */
export interface BreakLoss {
  polymer_kg: number;
  chlorine_kg: number;
}

/** Pace of a tick of tick_s seconds at a temperature in C; ten degrees more, twice as fast. Worked value: 25 C, 1 s -> .002 m3/kg. */
export function breakPace(temperature_C: number, tick_s: number): BreakPace {
  const faster = pow(LAW.Q10, (temperature_C - POLYMER.reference_C) / 10);
  return {
    breaks_m3kg: LAW.breaks_m3kgs * faster * tick_s,
    fade_frac: -expm1((-ln(2) * faster * tick_s) / LAW.halfLife_s),
  };
}

/**
 * One tick in cell i of `stride` cells, in place; adds what went to out. water_m3: its water; fines_frac: its clay and silt.
 * Second order, implicit, with each kept from overshooting:
 *   polymer: P k C dt / (1 + k C dt), chlorine .05 of that, then (1 + fines/.01) times its fading in clean fluid.
 * Worked value: 1 m3, 1 kg of polymer, .5 kg of chlorine, k dt .002 -> .000999 kg broken, .00005 kg of chlorine used.
 */
export function breakPolymer(
  dissolved_kg: Float64Array,
  stride: number,
  i: number,
  water_m3: number,
  fines_frac: number,
  pace: BreakPace,
  out: BreakLoss,
): void {
  const chlorine = CHLORINE * stride + i;
  const present_kg = dissolved_kg[chlorine];
  if (!(present_kg > 0) || !(water_m3 > 0)) return;
  const soaked = SOAKED * stride + i;
  const contact = (pace.breaks_m3kg * present_kg) / water_m3;
  const reach_kg = present_kg / LAW.used_ratio;
  const broken_kg = Math.min((dissolved_kg[soaked] * contact) / (1 + contact), reach_kg);
  const left_kg = Math.max(0, present_kg - broken_kg * LAW.used_ratio);
  const faded = Math.min(1, pace.fade_frac * (1 + fines_frac / LAW.dirtDoubles_frac));
  dissolved_kg[soaked] -= broken_kg;
  dissolved_kg[chlorine] = left_kg * (1 - faded);
  out.polymer_kg += broken_kg;
  out.chlorine_kg += present_kg - dissolved_kg[chlorine];
}
