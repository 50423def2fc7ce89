// What the well yields: now, in the driest month, beside the same screen in clean ground; and which lifts can draw it.
import { deepestDraw_m, allowedDrawdown_m } from './lift';
import { readIntake, type WellIntake } from './intake';
import { PUMPED_A_DAY_s } from './need';
import type { LiftVerdict, Verdict, YieldLimit } from './verdict';
import type { VerdictReading } from './verdictReading';
import { DAY_s } from '../numeric/units';
import { WELL_PUMPS, type WellPumpName } from '../materials/wellPumps';
import { drawdownOf_m, largestYield_m3s, seasonResponse_sm2 } from './yield';

const LMIN_PER_M3S = 60000;
/** The well is worked for so long before its yield is told: a dry season. ASSUMED: four months without rain. */
export const SEASON_s = 120 * DAY_s;
/** A lift is of use from this share of its usual flow on. ASSUMED: a bucket of 20 L in four minutes. */
const USEFUL_frac = 0.3;
/** Less than this share of the clean yield: it is ring and slots that hold the water back. ASSUMED. */
const CHOKED_frac = 0.5;
/** Height of a pump that sucks over the ground, m. ASSUMED: handle and spout. */
export const PUMP_HEIGHT_m = 0.5;

/** A yield with what it rests on. */
export interface YieldRead {
  readonly read: WellIntake;
  readonly response_sm2: number;
  readonly flow_m3s: number;
}

const nothing = (read: WellIntake): YieldRead => ({ read, response_sm2: 0, flow_m3s: 0 });

/** The largest rate that may be drawn down to deepest_m at the end of a dry season of daily use, with levels fall_m lower. */
export function yieldAt(reading: VerdictReading, fall_m: number, whole: boolean, deepest_m: number): YieldRead {
  const { standing, ring, ground } = reading;
  const read = readIntake(standing, ring, ground, fall_m, whole);
  if (!(read.intake.T_m2s > 0)) return nothing(read);
  const response_sm2 = seasonResponse_sm2(read.intake, PUMPED_A_DAY_s, SEASON_s);
  const { screenFrom_m, screenTo_m } = standing;
  const allowed_m = allowedDrawdown_m(
    read.aquifer.level_m,
    screenFrom_m,
    screenTo_m,
    read.intake.freeThickness_m,
    deepest_m,
  );
  return { read, response_sm2, flow_m3s: largestYield_m3s(read.intake, allowed_m, response_sm2) };
}

/** How one lift would do in the driest month. */
export function liftVerdict(reading: VerdictReading, lift: WellPumpName): LiftVerdict {
  const pump = WELL_PUMPS[lift];
  const { outside_m, wall_m } = reading.standing.pipe;
  const fits = outside_m - 2 * wall_m >= pump.leastBore_m;
  const height_m = pump.sucks ? PUMP_HEIGHT_m : 0;
  const deepest_m = deepestDraw_m(pump, reading.altitude_m, reading.temperature_C) - height_m;
  const { flow_m3s } = yieldAt(reading, reading.dryFall_m, false, deepest_m);
  const drawn_m3s = fits ? Math.min(pump.flow_m3s, flow_m3s) : 0;
  return { lift, reaches: drawn_m3s >= USEFUL_frac * pump.flow_m3s, flow_Lmin: drawn_m3s * LMIN_PER_M3S };
}

/** All of the yield; the lift is the one fitted, else the best of those on offer. */
export function yieldVerdict(
  reading: VerdictReading,
  lifts: readonly LiftVerdict[],
  lift: LiftVerdict | null,
): { yield: Verdict['yield']; dry: YieldRead; now: YieldRead; drawdown_m: number } {
  const now = yieldAt(reading, 0, false, Infinity);
  const dry = yieldAt(reading, reading.dryFall_m, false, Infinity);
  const whole = yieldAt(reading, reading.dryFall_m, true, Infinity);
  const share_frac = whole.flow_m3s > 0 ? dry.flow_m3s / whole.flow_m3s : 0;
  const dry_Lmin = dry.flow_m3s * LMIN_PER_M3S;
  let best_Lmin = lift?.flow_Lmin ?? 0;
  if (!lift) for (const { flow_Lmin } of lifts) best_Lmin = Math.max(best_Lmin, flow_Lmin);
  const limitedBy: YieldLimit =
    whole.flow_m3s === 0
      ? 'dry'
      : share_frac < CHOKED_frac
        ? 'screen'
        : best_Lmin < dry_Lmin * 0.999
          ? 'lift'
          : 'ground';
  const drawdown_m = dry.flow_m3s > 0 ? drawdownOf_m(dry.read.intake, dry.flow_m3s, dry.response_sm2) : 0;
  return {
    yield: {
      now_Lmin: now.flow_m3s * LMIN_PER_M3S,
      dry_Lmin,
      whole_Lmin: whole.flow_m3s * LMIN_PER_M3S,
      share_frac,
      limitedBy,
    },
    dry,
    now,
    drawdown_m,
  };
}
