// The plan while it is being written: what it starts from, and how far each thing can be moved.
import { ACTION_SPECS, malformedIn, type FieldSpec, type Run, type WellKit, type WellPlan } from '$sim';

export type NumberField =
  | 'screenFrom_m'
  | 'screenTo_m'
  | 'sump_m'
  | 'slotWidth_mm'
  | 'slotRows'
  | 'slotArc_mm'
  | 'slotSpacing_mm'
  | 'centralisers'
  | 'packTop_m'
  | 'sealFrom_m'
  | 'sealTo_m'
  | 'stickUp_m';

/** One press of + or -, and one of the page keys. */
export const STEPS: Readonly<Record<NumberField, readonly [step: number, stride: number]>> = {
  screenFrom_m: [0.1, 1],
  screenTo_m: [0.1, 1],
  sump_m: [0.1, 0.5],
  slotWidth_mm: [0.1, 0.5],
  slotRows: [1, 1],
  slotArc_mm: [5, 20],
  slotSpacing_mm: [1, 5],
  centralisers: [1, 1],
  packTop_m: [0.1, 1],
  sealFrom_m: [0.1, 1],
  sealTo_m: [0.1, 1],
  stickUp_m: [0.1, 0.5],
};

type NumberSpec = Extract<FieldSpec, { type: 'number' }>;

/** Least and most of a field by the run's own table of acts. */
export function limitsOf(field: NumberField): NumberSpec {
  const spec = ACTION_SPECS.planWell.fields.find(({ name }) => name === field);
  if (spec?.type !== 'number') throw new Error(`planWell has no number ${field}`);
  return spec;
}

/** Hundredths: sums of decimals do not meet to the last bit. */
export const rounded = (value: number): number => Math.round(value * 100) / 100;

/** The next value on the grid of the step, within the limits of the field. */
export function stepped(field: NumberField, value: number, by: number): number {
  const { min, max } = limitsOf(field);
  const from = Number.isFinite(value) ? value : min;
  return rounded(Math.min(max, Math.max(min, from + by)));
}

/**
 * A bare pipe to the bottom of the hole: no slots sawn, no cloth, no cap, no pack, no seal. Nothing is decided for the
 * learner, and every part of it can be seen to be missing.
 */
export function firstPlan(kit: WellKit, depth_m: number): WellPlan {
  const bottom_m = Math.floor(depth_m * 10 + 1e-6) / 10;
  return {
    casing: kit.casings[0]!,
    screenFrom_m: rounded(Math.max(0, bottom_m - 1)),
    screenTo_m: bottom_m,
    sump_m: 0,
    slotWidth_mm: 1,
    slotRows: 0,
    slotArc_mm: 30,
    slotSpacing_mm: 10,
    cloth: 'none',
    cap: false,
    centralisers: 0,
    pack: 'none',
    packTop_m: bottom_m,
    seal: 'none',
    sealFrom_m: 0,
    sealTo_m: 0.5,
    stickUp_m: 0.3,
  };
}

/** What the board opens with: the plan that was written down last, else a bare pipe. */
export const openingPlan = ({ scenario, state }: Run): WellPlan =>
  state.completion.plan ?? firstPlan(scenario.well!, state.hole.depth_m);

/** The first field that the run's table of acts does not let through, or null. */
export function beyondLimits(plan: WellPlan): { field: NumberField; min: number; max: number } | null {
  const wrong = malformedIn('planWell', { ...plan });
  if (!wrong || wrong.min === undefined || wrong.max === undefined) return null;
  return { field: wrong.field as NumberField, min: wrong.min, max: wrong.max };
}

/** A number as people type it, with point or comma; NaN where it is none. */
export function typed(text: string): number {
  const plain = text.trim().replace(',', '.');
  return plain === '' ? Number.NaN : Number(plain);
}
