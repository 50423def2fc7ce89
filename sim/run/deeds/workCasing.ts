// Working a hung casing down: two people throw their weight on it, stroke by stroke, harder the longer it takes.

import { sectionLeft_frac } from '../../completion/slots';
import { axial_N, jointStrength_frac, slotted_N, WORKING_N } from '../../completion/tension';
import type { CasingState } from '../../completion/casing';
import { shoe_m, type WellPlan } from '../../completion/plan';
import { RUNNING_GAP_m } from '../../completion/planCheck';
import { bedTop_m } from '../../hole/hole';
import { passableTo_m } from '../../hole/wall/passage';
import { fillTop_m, pipeOf } from '../casing';
import { casingPlaceInto } from '../casingPlace';
import type { Run } from '../run';
import { tell } from '../tell';
import type { Deed } from './deed';

/** A stroke takes so long, s, and brings it down so far, m, through so much loose fill in all, m. ASSUMED. */
const STROKE_s = 2;
const STROKE_m = 0.01;
const LOOSE_m = 0.3;
/** The first stroke has this share of the force; it grows evenly to all of it in so many seconds. ASSUMED: patience wears off. */
const GENTLE_frac = 0.3;
const HARD_AFTER_s = 90;

/** Force of a stroke after so long, N. Worked value: 0 s -> 360; 90 s -> 1200. */
export const stroke_N = (time_s: number): number =>
  WORKING_N * Math.min(1, GENTLE_frac + ((1 - GENTLE_frac) * time_s) / HARD_AFTER_s);

/** What the weakest part of the string bears, N: the slots, or the youngest joint, or one that was loaded too soon. */
function bears_N(run: Run, plan: WellPlan, casing: CasingState): number {
  const pipe = pipeOf(plan);
  const slots_N = slotted_N(pipe, sectionLeft_frac(plan, pipe.outside_m));
  if (casing.glued_tick < 0) return slots_N;
  const cured_frac = jointStrength_frac(run.state.tick - casing.glued_tick, pipe.jointSets_s);
  return Math.min(slots_N, axial_N(pipe) * Math.min(cured_frac, casing.joint_frac));
}

/** Top of what it stands in or over: the bed, and what was thrown in on it, m. */
const looseTop_m = (run: Run): number =>
  fillTop_m(run, bedTop_m(run.state.hole, casingPlaceInto(run.work.place, run.state.completion)));

/** How far a stroke brings it, m: through loose fill, and past a wall that is a little too tight to run through. */
function strokeWay_m(run: Run, plan: WellPlan, casing: CasingState): number {
  const { hole } = run.state;
  const wanted_m = Math.min(casing.shoe_m + STROKE_m, shoe_m(plan), hole.depth_m);
  const reach_m = passableTo_m(hole, casing.shoe_m, wanted_m, pipeOf(plan).outside_m / 2);
  const inFill_m = Math.max(0, reach_m - Math.max(casing.shoe_m, looseTop_m(run)));
  const left_m = LOOSE_m - casing.worked_m;
  return inFill_m <= left_m ? reach_m - casing.shoe_m : Math.max(0, reach_m - inFill_m + left_m - casing.shoe_m);
}

function stroke(run: Run, time_s: number): void {
  const { plan, casing } = run.state.completion;
  if (!plan || casing.snapped) return;
  if (stroke_N(time_s) > bears_N(run, plan, casing)) {
    casing.snapped = true;
    tell(run, 'casingSnapped', { shoe_m: casing.shoe_m, force_N: stroke_N(time_s) });
    return;
  }
  const top_m = looseTop_m(run);
  const way_m = strokeWay_m(run, plan, casing);
  const before_m = casing.shoe_m;
  casing.shoe_m += way_m;
  casing.worked_m += Math.max(0, casing.shoe_m - Math.max(before_m, top_m));
  if (casing.shoe_m < shoe_m(plan) - 1e-9) return;
  casing.look = 'landed';
  tell(run, 'casingLanded', { shoe_m: casing.shoe_m, planned_m: shoe_m(plan) });
}

/** Whether nothing holds the casing any more: it can be run on. */
function isFree(run: Run): boolean {
  const { plan, casing } = run.state.completion;
  const { hole } = run.state;
  const next_m = casing.shoe_m + STROKE_m;
  const wide = passableTo_m(hole, casing.shoe_m, next_m, pipeOf(plan!).outside_m / 2 + RUNNING_GAP_m) >= next_m;
  return wide && looseTop_m(run) > next_m;
}

export const workCasing: Deed = {
  refusal: (run) => (run.state.completion.casing.look === 'hung' ? null : 'casingNotHung'),
  time_s: (_run, payload) => payload.time_s as number,
  begin: (_run, _payload, task) => {
    if (task) task.data.worked_s = 0;
  },
  during: (run, task) => {
    const { casing } = run.state.completion;
    task.data.worked_s += 1;
    if (casing.look !== 'hung' || casing.snapped) task.endTick = run.state.tick;
    else if (task.data.worked_s % STROKE_s === 0) stroke(run, task.data.worked_s - STROKE_s);
  },
  end: (run) => {
    const { casing } = run.state.completion;
    if (casing.look === 'hung' && !casing.snapped && isFree(run)) casing.look = 'free';
  },
};
