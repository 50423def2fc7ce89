// A yield test as it is run and written down: steps of one rate each, readings of the level, the recovery after it.
import type { WellPumpName } from '../materials/wellPumps';

/** One reading: time since pumping began, rate, depth of the water as the dipper shows it. */
export interface TestRow {
  time_s: number;
  rate_Lmin: number;
  level_m: number;
}

/** Why a test was broken off. */
export type TestStop = 'tooDeep' | 'ranDry';

export interface WellTest {
  lift: WellPumpName;
  /** Job second at which pumping began. */
  tick: number;
  rates_Lmin: number[];
  step_s: number;
  recovery_s: number;
  rows: TestRow[];
  /** As read before pumping, the lowest while it lasted, and at the end of the recovery; null: not read yet. */
  static_m: number;
  lowest_m: number;
  recovered_m: number | null;
  refusal: TestStop | null;
  /** Steps and recovery are over, or it was broken off. */
  over: boolean;
}
