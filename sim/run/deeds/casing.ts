// Joining the casing, running it into the hole, working it down where it hangs.

import { amountsOf, casingCost_marks, piecesFor } from '../../completion/amounts';
import { casingLength_m, type WellPlan } from '../../completion/plan';
import { nominalHole } from '../../completion/quantities';
import { PVC } from '../../materials/pipes';
import { pipeOf, targetShoe_m } from '../casing';
import { send } from '../modes';
import type { RefusalKey } from '../names';
import type { Run } from '../run';
import { tell } from '../tell';
import type { Deeds } from './deed';
import { workCasing } from './workCasing';

/** A way to go shorter than this is none, m. */
const NO_WAY_m = 1e-6;

const amountsIn = (run: Run, plan: WellPlan) => amountsOf(plan, nominalHole(run.kit.bit_m), run.state.hole.depth_m);

/** Length of the string once so many pieces are joined, m: the last one is cut. */
const lengthOf_m = (plan: WellPlan, pieces: number): number => Math.min(casingLength_m(plan), pieces * PVC.piece_m);

function joined(run: Run): void {
  const { state } = run;
  const { plan, casing } = state.completion;
  const amounts = amountsIn(run, plan!);
  if (casing.joined > 0) casing.glued_tick = state.tick;
  casing.joined += 1;
  casing.length_m = lengthOf_m(plan!, casing.joined);
  if (casing.look === 'none') casing.look = 'air';
  state.stocks.wellSpent_marks += casingCost_marks(plan!, amounts) / amounts.pieces;
  tell(run, 'casingJoined', { pieces: casing.joined, length_m: casing.length_m });
}

function joinRefusal(run: Run): RefusalKey | null {
  const { plan, casing } = run.state.completion;
  if (!plan) return 'notPlanned';
  if (casing.look === 'set') return 'casingSet';
  if (run.state.tasks.some(({ action }) => action === 'joinCasing' || action === 'runCasing')) return 'handsBusy';
  return casing.joined >= piecesFor(casingLength_m(plan)) ? 'allJoined' : null;
}

function runRefusal(run: Run): RefusalKey | null {
  const { machine, stem, completion, tasks } = run.state;
  const { plan, casing } = completion;
  if (casing.look === 'set') return 'casingSet';
  if (machine.job !== 'pullingOut' && machine.job !== 'casing') return 'stillDrilling';
  if (stem.rods > 0) return 'stemInHole';
  if (!plan) return 'notPlanned';
  if (casing.joined === 0) return 'nothingJoined';
  if (casing.look === 'hung') return 'casingHung';
  if (tasks.some(({ action }) => action === 'joinCasing')) return 'handsBusy';
  return targetShoe_m(plan, casing) - casing.shoe_m < NO_WAY_m ? 'allRun' : null;
}

/** A joint that is loaded before it has set never gets its full strength. ASSUMED: what it had by then. */
function loadJoint(run: Run, plan: WellPlan): void {
  const { casing } = run.state.completion;
  if (casing.glued_tick < 0) return;
  const set_frac = (run.state.tick - casing.glued_tick) / pipeOf(plan).jointSets_s;
  casing.joint_frac = Math.min(casing.joint_frac, set_frac);
}

export const casingDeeds: Deeds = {
  joinCasing: {
    refusal: joinRefusal,
    // Slots are sawn and sleeves drawn on beforehand, by whoever has a hand free while the hole is drilled.
    end: joined,
  },
  runCasing: {
    refusal: runRefusal,
    time_s: (run, payload) => {
      const { plan, casing } = run.state.completion;
      return Math.ceil((targetShoe_m(plan!, casing) - casing.shoe_m) / (payload.speed_ms as number));
    },
    begin: (run, payload) => {
      const { plan, casing } = run.state.completion;
      if (run.state.machine.job !== 'casing') send(run, 'casingBegins');
      loadJoint(run, plan!);
      casing.motion_m = targetShoe_m(plan!, casing) - casing.shoe_m;
      casing.motion_ms = payload.speed_ms as number;
      casing.filling = payload.fill === true;
    },
    // It lasts until the casing stands, hangs or floats.
    during: (run, task) => {
      const { casing } = run.state.completion;
      const { tick } = run.state;
      if (casing.motion_m > 0) task.endTick = Math.max(task.endTick, tick + 2);
      else task.endTick = tick;
    },
  },
  workCasing,
};
