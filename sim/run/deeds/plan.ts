// The plan of the well: written down at any time, changed until it is done.

import type { WellPlan } from '../../completion/plan';
import { checkPlan } from '../../completion/planCheck';
import type { Payload } from '../check';
import type { RefusalKey } from '../names';
import { planFacts } from '../planBoard';
import type { Run } from '../run';
import { tell } from '../tell';
import type { Deeds } from './deed';

const planOf = (payload: Payload): WellPlan => ({ ...payload }) as unknown as WellPlan;

/** What is sawn, sleeved and glued from the first joint on, and what stands from the time on at which the casing is set. */
const JOINED: readonly (keyof WellPlan)[] = [
  'casing',
  'sump_m',
  'slotWidth_mm',
  'slotRows',
  'slotArc_mm',
  'slotSpacing_mm',
  'cloth',
  'cap',
  'centralisers',
];
const STANDS: readonly (keyof WellPlan)[] = [...JOINED, 'screenFrom_m', 'screenTo_m', 'stickUp_m'];

/** Lengths equal within this are the same, m: rounding. */
const SAME_m = 1e-9;

/** Does this plan ask for another casing than the one that is joined, or standing, already? It may still be moved up and down while it hangs. */
function changesWhatIsDone(run: Run, plan: WellPlan): boolean {
  const { plan: before, casing } = run.state.completion;
  if (!before || casing.joined === 0) return false;
  const fixed = casing.look === 'set' ? STANDS : JOINED;
  const screen_m = plan.screenTo_m - plan.screenFrom_m;
  const longer_m = Math.abs(screen_m - (before.screenTo_m - before.screenFrom_m));
  return longer_m > SAME_m || fixed.some((key) => plan[key] !== before[key]);
}

function refusal(run: Run, payload: Payload): RefusalKey | null {
  const { well } = run.scenario;
  if (!well) return 'nothingPlanned';
  const plan = planOf(payload);
  const offered =
    well.casings.includes(plan.casing) &&
    (plan.cloth === 'none' || well.cloths.includes(plan.cloth)) &&
    (plan.pack === 'none' || well.packs.includes(plan.pack)) &&
    (plan.seal === 'none' || well.seals.includes(plan.seal));
  if (!offered) return 'notOffered';
  if (changesWhatIsDone(run, plan)) return 'planDone';
  return checkPlan(plan, planFacts(run)).length > 0 ? 'planBroken' : null;
}

export const planDeeds: Deeds = {
  planWell: {
    refusal,
    begin: (run, payload) => {
      const plan = planOf(payload);
      run.state.completion.plan = plan;
      tell(run, 'wellPlanned', { screenFrom_m: plan.screenFrom_m, screenTo_m: plan.screenTo_m, seal: plan.seal });
    },
  },
};
