// The verdict on the well of a run, once its casing is set.

import { judgeWell } from '../well/judge';
import { standingOf } from '../well/standing';
import type { Verdict } from '../well/verdict';
import type { VerdictReading } from '../well/verdictReading';
import { costOf } from './cost';
import { worked_s } from './daylight';
import { groundOf } from './ground';
import type { Run } from './run';

function readingOf(run: Run): VerdictReading | null {
  const { state, scenario, kit } = run;
  const { well, completion } = state;
  const standing = standingOf(completion);
  if (!well || !standing || !completion.plan) return null;
  const ground = groundOf(run);
  const { spots } = ground.site;
  return {
    standing,
    ring: well.ring,
    ground,
    spot: spots.find(({ id }) => id === state.site.spot) ?? spots[0] ?? null,
    dryFall_m: Math.max(0, ground.lowestWater_m - ground.waterTable_m),
    altitude_m: kit.altitude_m,
    temperature_C: kit.temperature_C,
    lifts: scenario.well?.lifts ?? [],
    people: scenario.well?.people ?? 0,
    stickUp_m: completion.plan.stickUp_m,
    test: well.test,
    disinfection: well.disinfection,
    headWorks: well.headWorks,
    chlorine_gL: well.chlorineIn_m3 > 0 ? well.chlorine_kg / well.chlorineIn_m3 : 0,
    hours_h: worked_s(scenario, state.tick) / 3600,
    cost_marks: costOf(run),
  };
}

/** What the well is worth as it stands; null before the casing is set. Changes nothing. */
export function verdictOf(run: Run): Verdict | null {
  const reading = readingOf(run);
  return reading && judgeWell(reading);
}
