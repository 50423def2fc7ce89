// The verdict on a finished well, put together from its parts.
import { HAND_PUMP_M3S, NEED_m3, PEOPLE_A_PUMP, peopleServed, PUMPED_A_DAY_s } from './need';
import { casingVerdict, screenVerdict } from './casingVerdict';
import { leakVerdict } from './leakVerdict';
import { carriedAt } from './sand';
import { DAY_s } from '../numeric/units';
import { theisDrawdown_m } from './theis';
import { drawdownOf_m } from './yield';
import type { LiftVerdict, Verdict } from './verdict';
import type { VerdictReading } from './verdictReading';
import { disinfectionVerdict, testVerdict, waterVerdict } from './waterVerdict';
import { liftVerdict, SEASON_s, yieldVerdict, type YieldRead } from './yieldVerdict';

const LMIN_PER_M3S = 60000;

/** Casing above the ground that keeps a flood out, m: 12 in (EPA-570/9-75-001). */
const STICK_UP_m = 0.3;

/** Those whom the well can serve, in the driest month, with a lift; no more than one pump is planned for. */
function peopleVerdict({ people }: VerdictReading, flow_m3s: number): Verdict['people'] {
  const served = Math.min(PEOPLE_A_PUMP, peopleServed(flow_m3s, PUMPED_A_DAY_s, NEED_m3));
  return { served, asked: people };
}

/** Fall at the nearest neighbour's well after a dry season of daily use, m. */
function neighbourFall_m({ ground, spot }: VerdictReading, flow_m3s: number, { read }: YieldRead): number {
  let nearest_m = Infinity;
  for (const well of ground.site.wells) {
    const east_m = well.east_m - (spot?.east_m ?? 0);
    const north_m = well.north_m - (spot?.north_m ?? 0);
    nearest_m = Math.min(nearest_m, Math.sqrt(east_m * east_m + north_m * north_m));
  }
  const { T_m2s, S_ratio } = read.intake;
  if (nearest_m === Infinity || !(T_m2s > 0)) return 0;
  return theisDrawdown_m((flow_m3s * PUMPED_A_DAY_s) / DAY_s, T_m2s, S_ratio, nearest_m, SEASON_s);
}

/** The whole verdict. Pure: the same reading gives the same verdict. */
export function judgeWell(reading: VerdictReading): Verdict {
  const { standing, ring, ground, headWorks, spot } = reading;
  const lifts: LiftVerdict[] = reading.lifts.map((lift) => liftVerdict(reading, lift));
  const fitted = headWorks ? liftVerdict(reading, headWorks.lift) : null;
  const { yield: yields, dry, now, drawdown_m } = yieldVerdict(reading, lifts, fitted);
  let best_Lmin = fitted?.flow_Lmin ?? 0;
  if (!fitted)
    for (const { reaches, flow_Lmin } of lifts) best_Lmin = reaches ? Math.max(best_Lmin, flow_Lmin) : best_Lmin;
  const flow_m3s = best_Lmin / LMIN_PER_M3S;
  // A well without a pump is looked at as if a hand pump drew from it.
  const used_m3s = flow_m3s > 0 ? flow_m3s : HAND_PUMP_M3S;
  const carried = carriedAt(standing, { ...ring, flow_frac: dry.read.flow_frac }, ground, used_m3s);
  // In daily use the level falls by what is really drawn.
  const used_m = flow_m3s > 0 ? drawdownOf_m(dry.read.intake, flow_m3s, dry.response_sm2) : 0;
  const bore_m = standing.pipe.outside_m - 2 * standing.pipe.wall_m;
  const flood_m = ground.site.floodLine_m - (spot?.rise_m ?? 0);
  return {
    yield: yields,
    static_m: now.read.aquifer.level_m,
    dryStatic_m: dry.read.aquifer.level_m,
    drawdown_m,
    lifts,
    fitted: headWorks?.lift ?? null,
    fittedWorks: fitted?.reaches ?? false,
    sand_mgL: carried.sand_gL * 1000,
    turbidity_NTU: carried.turbidity_NTU,
    leak: leakVerdict(reading, dry, used_m),
    casing: casingVerdict(reading, now.read.aquifer.level_m),
    screen: screenVerdict(reading, dry, used_m3s),
    water: waterVerdict(reading, dry.read.flow_frac),
    disinfection: disinfectionVerdict(reading),
    headWorks: {
      apron_m: headWorks?.apron_m ?? 0,
      drain_m: headWorks?.drain_m ?? 0,
      cap: headWorks?.cap ?? false,
      stickUp_m: reading.stickUp_m,
      aboveFlood: reading.stickUp_m >= Math.max(STICK_UP_m, flood_m),
    },
    people: peopleVerdict(reading, flow_m3s),
    test: testVerdict(reading.test, bore_m, now.read.intake.freeThickness_m),
    neighbourFall_m: neighbourFall_m(reading, flow_m3s, dry),
    hours_h: reading.hours_h,
    cost_marks: reading.cost_marks,
  };
}
