// Whether the water is fit: salt at the screen, chlorine that has worked, and what a test says of the ground.
import { saltAt_gL } from '../hole/wallGround';
import { contact_mgminL, CONTACT_s, DOSE_gL } from './disinfect';
import { conductivity_uScm, saltClass } from './drinking';
import { fitTest } from './testFit';
import type { ScreenRing } from './ring';
import type { Verdict } from './verdict';
import type { VerdictReading } from './verdictReading';
import type { WellTest } from './wellTest';

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
    laboratoryNeeded: true,
  };
}

/** The chlorine fades while it stands, and dirt eats a part: so much of the contact asked for is enough. ASSUMED: half of it goes in 12 h. */
const ENOUGH_frac = 0.8;

/** Enough is the least dose for the least time, as it fades. */
export function disinfectionVerdict({ disinfection, chlorine_gL }: VerdictReading): Verdict['disinfection'] {
  const left_mgL = chlorine_gL * 1000;
  if (!disinfection) return { done: false, ct_mgminL: 0, enough: false, left_mgL };
  const { ct_mgminL } = disinfection;
  const asked_mgminL = ENOUGH_frac * contact_mgminL(DOSE_gL[0], CONTACT_s);
  return { done: true, ct_mgminL, enough: ct_mgminL >= asked_mgminL, left_mgL };
}

/** Transmissivity by the test; null where none was run to its end. */
export function testVerdict(test: WellTest | null, bore_m: number, freeThickness_m: number): Verdict['test'] {
  if (!test || !test.over || test.rows.length === 0) return null;
  return fitTest(test, bore_m / 2, freeThickness_m);
}
