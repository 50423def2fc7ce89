// What a plan cannot be: problems by field. Foolish plans pass: a seal across the screen, a screen in clay, no slots at all.
import { CLOTHS } from '../materials/cloths';
import { PACKS } from '../materials/packs';
import { CASINGS, type Casing } from '../materials/pipes';
import { SEALS } from '../materials/seals';
import { casingLength_m, shoe_m, type WellPlan } from './plan';
import type { HoleFacts } from './planFacts';

/** Room that the casing needs all round to go down at all, and that a centraliser needs. ASSUMED: its bows are some millimetres of plastic. */
export const RUNNING_GAP_m = 0.003;
const CENTRALISER_GAP_m = 0.006;
/** Length of pipe that one centraliser takes. ASSUMED. */
const CENTRALISER_m = 0.3;

export type PlanProblemKey =
  | 'unknown'
  | 'notNumber'
  | 'negative'
  | 'notWhole'
  | 'upsideDown'
  | 'belowHole'
  | 'belowShoe'
  | 'widerThanHole'
  | 'slotWiderThanPipe'
  | 'slotsMeetRound'
  | 'slotsMeetAlong'
  | 'noRoomForCentralisers'
  | 'tooManyCentralisers'
  | 'sealInPack';

export interface PlanProblem {
  readonly field: keyof WellPlan;
  readonly problem: PlanProblemKey;
  /** The value given and the limit it breaks, in the field's unit; left out where there is none. */
  readonly have?: number;
  readonly limit?: number;
}

type NumberField = {
  [F in keyof WellPlan]: WellPlan[F] extends number ? F : never;
}[keyof WellPlan];

const NUMBERS: readonly NumberField[] = [
  'screenFrom_m',
  'screenTo_m',
  'sump_m',
  'slotWidth_mm',
  'slotRows',
  'slotArc_mm',
  'slotSpacing_mm',
  'centralisers',
  'packTop_m',
  'sealFrom_m',
  'sealTo_m',
  'stickUp_m',
];
const WHOLE: readonly NumberField[] = ['slotRows', 'centralisers'];

/** A hundredth of a millimetre in the metre fields: sums of decimals do not meet to the last bit. */
const SLACK_m = 1e-5;

const over = (have: number, limit: number): boolean => have > limit + SLACK_m;

function checkValues(plan: WellPlan, problems: PlanProblem[]): void {
  for (const field of NUMBERS) {
    const have = plan[field];
    if (!Number.isFinite(have)) problems.push({ field, problem: 'notNumber' });
    else if (have < 0) problems.push({ field, problem: 'negative', have, limit: 0 });
    else if (WHOLE.includes(field) && !Number.isInteger(have)) problems.push({ field, problem: 'notWhole', have });
  }
  if (!(plan.casing in CASINGS)) problems.push({ field: 'casing', problem: 'unknown' });
  if (plan.cloth !== 'none' && !(plan.cloth in CLOTHS)) problems.push({ field: 'cloth', problem: 'unknown' });
  if (plan.pack !== 'none' && !(plan.pack in PACKS)) problems.push({ field: 'pack', problem: 'unknown' });
  if (plan.seal !== 'none' && !(plan.seal in SEALS)) problems.push({ field: 'seal', problem: 'unknown' });
}

function checkPipe(plan: WellPlan, { outside_m }: Casing, facts: HoleFacts, problems: PlanProblem[]): void {
  const room_m = facts.bit_m - 2 * RUNNING_GAP_m;
  if (over(outside_m, room_m))
    problems.push({ field: 'casing', problem: 'widerThanHole', have: outside_m, limit: room_m });
  if (plan.screenTo_m <= plan.screenFrom_m)
    problems.push({ field: 'screenTo_m', problem: 'upsideDown', have: plan.screenTo_m, limit: plan.screenFrom_m });
  if (over(plan.screenTo_m, facts.depth_m))
    problems.push({ field: 'screenTo_m', problem: 'belowHole', have: plan.screenTo_m, limit: facts.depth_m });
  else if (over(shoe_m(plan), facts.depth_m))
    problems.push({ field: 'sump_m', problem: 'belowHole', have: plan.sump_m, limit: facts.depth_m - plan.screenTo_m });
}

function checkCentralisers(plan: WellPlan, { outside_m }: Casing, facts: HoleFacts, problems: PlanProblem[]): void {
  const gap_m = (facts.bit_m - outside_m) / 2;
  // Without room for the casing there is no use in speaking of its centralisers.
  if (plan.centralisers === 0 || gap_m < RUNNING_GAP_m) return;
  const most = Math.floor(casingLength_m(plan) / CENTRALISER_m);
  if (gap_m < CENTRALISER_GAP_m)
    problems.push({ field: 'centralisers', problem: 'noRoomForCentralisers', have: gap_m, limit: CENTRALISER_GAP_m });
  else if (plan.centralisers > most)
    problems.push({ field: 'centralisers', problem: 'tooManyCentralisers', have: plan.centralisers, limit: most });
}

function checkSlots(plan: WellPlan, { outside_m }: Casing, problems: PlanProblem[]): void {
  if (plan.slotRows === 0 || plan.slotWidth_mm === 0) return;
  const outside_mm = 1000 * outside_m;
  const round_mm = Math.PI * outside_mm;
  if (plan.slotWidth_mm >= outside_mm)
    problems.push({ field: 'slotWidth_mm', problem: 'slotWiderThanPipe', have: plan.slotWidth_mm, limit: outside_mm });
  else if (plan.slotWidth_mm >= plan.slotSpacing_mm)
    problems.push({
      field: 'slotSpacing_mm',
      problem: 'slotsMeetAlong',
      have: plan.slotSpacing_mm,
      limit: plan.slotWidth_mm,
    });
  if (plan.slotRows * plan.slotArc_mm >= round_mm)
    problems.push({
      field: 'slotArc_mm',
      problem: 'slotsMeetRound',
      have: plan.slotArc_mm,
      limit: round_mm / plan.slotRows,
    });
}

function checkFill(plan: WellPlan, facts: HoleFacts, problems: PlanProblem[]): void {
  const packed = plan.pack !== 'none';
  if (packed && over(plan.packTop_m, shoe_m(plan)))
    problems.push({ field: 'packTop_m', problem: 'belowShoe', have: plan.packTop_m, limit: shoe_m(plan) });
  if (plan.seal === 'none') return;
  if (plan.sealTo_m <= plan.sealFrom_m)
    problems.push({ field: 'sealTo_m', problem: 'upsideDown', have: plan.sealTo_m, limit: plan.sealFrom_m });
  if (over(plan.sealTo_m, facts.depth_m))
    problems.push({ field: 'sealTo_m', problem: 'belowHole', have: plan.sealTo_m, limit: facts.depth_m });
  else if (packed && over(plan.sealTo_m, plan.packTop_m))
    problems.push({ field: 'sealTo_m', problem: 'sealInPack', have: plan.sealTo_m, limit: plan.packTop_m });
}

/** All that makes the plan impossible in this hole, in the order of its fields as far as may be; empty: it can be tried. */
export function checkPlan(plan: WellPlan, facts: HoleFacts): PlanProblem[] {
  const problems: PlanProblem[] = [];
  checkValues(plan, problems);
  if (problems.length > 0) return problems;
  const pipe = CASINGS[plan.casing];
  checkPipe(plan, pipe, facts, problems);
  checkCentralisers(plan, pipe, facts, problems);
  checkSlots(plan, pipe, problems);
  checkFill(plan, facts, problems);
  return problems;
}
