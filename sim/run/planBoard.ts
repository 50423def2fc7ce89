// What can be said of a plan from all that the crew knows: its tally, its own log, what the neighbours say of the water.

import { checkPlan, type PlanProblem } from '../completion/planCheck';
import type { WellPlan } from '../completion/plan';
import type { PlanBed, PlanFacts } from '../completion/planFacts';
import { planFigures, type PlanFigures } from '../completion/planFigures';
import type { PlanNote } from '../completion/planNote';
import { planNotes } from '../completion/planNotes';
import { SOILS } from '../materials/soils';
import { USUAL_SOILS } from '../materials/soilWords';
import { WELL_PUMPS } from '../materials/wellPumps';
import { groundOf } from './ground';
import type { Run } from './run';

export interface PlanBoard {
  /** What cannot be done, by field; where there is any, there are no figures. */
  readonly problems: readonly PlanProblem[];
  readonly figures: PlanFigures | null;
  readonly notes: readonly PlanNote[];
}

/** The crew's own log with the usual grains of what it named. */
function bedsOf(run: Run): PlanBed[] {
  const beds: PlanBed[] = [];
  for (const { from_m, to_m, kind } of run.state.ownLog) {
    const usual = USUAL_SOILS[kind];
    if (usual !== null) beds.push({ ...SOILS[usual], top_m: from_m, bottom_m: to_m });
  }
  return beds;
}

/** The deepest that any neighbour's water fell in the driest month, m; null without neighbours. */
function lowestTold_m(run: Run): number | null {
  let lowest_m: number | null = null;
  for (const { dryLevel_m } of groundOf(run).site.wells) lowest_m = Math.max(lowest_m ?? 0, dryLevel_m);
  return lowest_m;
}

/** What a plan is held against; the rate is that of a hand pump. */
export const planFacts = (run: Run): PlanFacts => ({
  bit_m: run.kit.bit_m,
  depth_m: run.state.hole.depth_m,
  beds: bedsOf(run),
  lowest_m: lowestTold_m(run),
  rate_m3s: WELL_PUMPS.suction.flow_m3s,
});

/** Problems, figures and remarks for a plan that is being written. It changes nothing. */
export function planBoard(run: Run, plan: WellPlan): PlanBoard {
  const facts = planFacts(run);
  const problems = checkPlan(plan, facts);
  if (problems.length > 0) return { problems, figures: null, notes: [] };
  const figures = planFigures(plan, facts);
  return { problems, figures, notes: planNotes(plan, figures, facts) };
}
