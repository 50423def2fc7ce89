// Everything that the verdict looks at, as plain data.
import type { Ground, Spot } from '../ground/ground';
import type { WellPumpName } from '../materials/wellPumps';
import type { ScreenRing } from './ring';
import type { Standing } from './standing';
import type { Disinfection, HeadWorks } from './wellState';
import type { WellTest } from './wellTest';

export interface VerdictReading {
  readonly standing: Standing;
  readonly ring: ScreenRing;
  readonly ground: Ground;
  /** The spot of the hole; null where the ground has none. */
  readonly spot: Spot | null;
  /** How much lower the water stands in the driest month. */
  readonly dryFall_m: number;
  readonly altitude_m: number;
  readonly temperature_C: number;
  readonly lifts: readonly WellPumpName[];
  readonly people: number;
  readonly stickUp_m: number;
  readonly test: WellTest | null;
  readonly disinfection: Disinfection | null;
  readonly headWorks: HeadWorks | null;
  /** Free chlorine in the water, g/L. */
  readonly chlorine_gL: number;
  readonly hours_h: number;
  readonly cost_marks: number;
}
