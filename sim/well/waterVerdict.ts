// Whether the water is fit: salt at the screen, chlorine that has worked, and what a test says of the ground.
import { saltAt_gL } from '../hole/wallGround';
import { contact_mgminL, chlorineHalfLife_s, CONTACT_s, DOSE_gL, residual_gL } from './disinfect';
import { CHLORIDE_TASTE_gL, chloride_gL, conductivity_uScm, saltClass } from './drinking';
import { slopePerTenfold, straightLineT_m2s } from './straightLine';
import { storageEnd_s } from './storage';
import type { ScreenRing } from './ring';
import type { Verdict } from './verdict';
import type { VerdictReading } from './verdictReading';
import type { WellTest } from './wellTest';

const LMIN_PER_M3S = 60000;
/** Fewest readings for a line through them. */
const LEAST_READINGS = 4;

/** Salt of the water that comes in, g/L: of each cell by its share of the flow; of all alike where none flows. */
function saltAtScreen_gL({ ring, ground }: VerdictReading, flow_frac: Float64Array): number {
  let salt = 0;
  let all = 0;
  for (let i = 0; i < ring.count; i++) {
    const share = flow_frac[i] > 0 ? flow_frac[i] : LEAST_SHARE;
    salt += share * saltAt_gL(ground, middle_m(ring, i));
    all += share;
  }
  return all > 0 ? salt / all : 0;
}

/** Share that a cell without flow counts with, so that a dry screen still has a salt to tell. */
const LEAST_SHARE = 1e-12;
const middle_m = (ring: ScreenRing, i: number): number => ring.top_m[i] + ring.height_m[i] / 2;

export function waterVerdict(reading: VerdictReading, flow_frac: Float64Array): Verdict['water'] {
  const salt_gL = saltAtScreen_gL(reading, flow_frac);
  return {
    salt_gL,
    class: saltClass(salt_gL),
    meter_uScm: conductivity_uScm(salt_gL),
    tastesOfSalt: chloride_gL(salt_gL) > CHLORIDE_TASTE_gL,
    laboratoryNeeded: true,
  };
}

/** Enough is what the least dose does in the least contact time as it fades, in water that a dose may be put into. */
export function disinfectionVerdict({
  disinfection,
  temperature_C,
  chlorine_gL,
}: VerdictReading): Verdict['disinfection'] {
  if (!disinfection) return { done: false, ct_mgminL: 0, enough: false, left_mgL: chlorine_gL * 1000 };
  const asked_mgminL = contact_mgminL(DOSE_gL[0], CONTACT_s, chlorineHalfLife_s(temperature_C));
  // A dose that should have lasted is gone where dirt has eaten it.
  const left_gL = Math.min(chlorine_gL, residual_gL(disinfection.dose_gL, temperature_C, disinfection.contact_s));
  return {
    done: true,
    ct_mgminL: disinfection.ct_mgminL,
    enough: disinfection.ct_mgminL >= SHORT_ratio * asked_mgminL,
    left_mgL: left_gL * 1000,
  };
}

/** What is so little short of the contact asked for counts as enough: dirt has eaten a little of the dose. ASSUMED. */
const SHORT_ratio = 0.9;

/** Transmissivity by a straight line through the first step, after the casing's water no longer tells; null where too few readings are left. */
export function testVerdict(test: WellTest | null, bore_m: number): Verdict['test'] {
  if (!test || test.rates_Lmin.length === 0) return null;
  const first = test.rows.filter(({ time_s, rate_Lmin }) => time_s <= test.step_s && rate_Lmin > 0);
  if (first.length < LEAST_READINGS) return null;
  const time_s = Float64Array.from(first, (row) => row.time_s);
  const level_m = Float64Array.from(first, (row) => row.level_m);
  const rate_m3s = test.rates_Lmin[0] / LMIN_PER_M3S;
  const rough_m = slopePerTenfold(time_s, level_m, first.length, 0, Infinity);
  if (!(rough_m > 0)) return null;
  const from_s = storageEnd_s(bore_m / 2, straightLineT_m2s(rate_m3s, rough_m));
  const slope_m = slopePerTenfold(time_s, level_m, first.length, from_s, Infinity);
  return slope_m > 0 ? { T_m2s: straightLineT_m2s(rate_m3s, slope_m), from_s } : null;
}
