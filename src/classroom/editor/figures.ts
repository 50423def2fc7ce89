// The figures of the editor as people set them: in which unit, and how far one press goes. What is kept stays in the units of its name.
import type { Exercise } from '$lessons';
import { baseOf } from '$lessons';
import { limitsOf, type Limits } from './limits';

export type UnitId = 'm' | 'L' | 'kg' | 'gL' | 'mmh' | 'percent' | 'marks' | 'min' | 'h' | 'points' | 'none';

export interface Figure {
  readonly unit: UnitId;
  /** So many of the unit are one of what is kept. */
  readonly factor: number;
  /** One press, and one of the page keys, in the unit. */
  readonly step: number;
  readonly stride: number;
}

const figure = (unit: UnitId, step: number, stride: number, factor = 1): Figure => ({ unit, factor, step, stride });

/** By the last word of the path that is no number of a list. */
const FIGURES: Readonly<Record<string, Figure>> = {
  thickness_m: figure('m', 0.1, 1),
  waterTable_m: figure('m', 0.1, 1),
  swing_m: figure('m', 0.1, 1),
  confinedRise_m: figure('m', 0.1, 1),
  from_m: figure('m', 0.5, 5),
  to_m: figure('m', 0.5, 5),
  salt_gL: figure('gL', 1, 5),
  seed: figure('none', 1, 100),
  depth_m: figure('m', 0.1, 1),
  water_L: figure('L', 100, 1000),
  powder_kg: figure('kg', 0.5, 2),
  bentonite_kg: figure('kg', 5, 25),
  clay_kg: figure('kg', 10, 50),
  chlorine_kg: figure('kg', 0.5, 1),
  petrol_L: figure('L', 1, 5),
  pit_L: figure('L', 20, 200),
  pumpWorn_frac: figure('percent', 5, 10, 100),
  budget_marks: figure('marks', 10, 100),
  pass_points: figure('points', 1, 10),
  time_s: figure('min', 1, 10, 1 / 60),
  delay_s: figure('min', 1, 10, 1 / 60),
  share_frac: figure('percent', 5, 10, 100),
  rain_mmh: figure('mmh', 5, 20),
  east_m: figure('m', 1, 10),
  north_m: figure('m', 1, 10),
  rise_m: figure('m', 0.1, 0.5),
  bottom_m: figure('m', 0.1, 1),
  level_m: figure('m', 0.1, 1),
  dryLevel_m: figure('m', 0.1, 1),
  floodLine_m: figure('m', 0.1, 1),
  height_m: figure('m', 0.5, 2),
};
const POINTS = figure('points', 1, 5);
const MINUTES = figure('min', 5, 30, 1 / 60);
const HOURS = figure('h', 0.5, 6, 1 / 3600);
/** Jobs longer than this are told in hours, s. */
const LONG_s = 21600;

export function figureOf(exercise: Exercise, path: string): Figure {
  if (path.startsWith('weights.')) return POINTS;
  if (path === 'cap_s') return baseOf(exercise).end.cap_s > LONG_s ? HOURS : MINUTES;
  const name = path
    .split('.')
    .filter((step) => !/^\d+$/.test(step))
    .at(-1)!;
  const found = FIGURES[name];
  if (!found) throw new RangeError(`The editor has no figure "${path}".`);
  return found;
}

/** A figure in a sentence; one that is being typed may be none yet. */
export const told = (value: number): number | string => (Number.isFinite(value) ? value : '?');

const hundredths = (value: number): number => Math.round(value * 100) / 100;

/** A kept value as it is shown. */
export const shownAs = ({ factor }: Figure, value: number): number => hundredths(value * factor);

/** A value as it was set, to be kept; a whole one where the form wants that. Not a number stays that. */
export function keptAs({ factor }: Figure, shown: number, whole: boolean): number {
  const value = shown / factor;
  if (!Number.isFinite(value)) return Number.NaN;
  return whole ? Math.round(value) : Math.round(value * 1e6) / 1e6;
}

/** The limits as they are shown. */
export function shownLimits(figure: Figure, { min, max }: Limits): { min: number; max: number } {
  return {
    // Adding 0 turns -0 into 0.
    min: Math.ceil(min * figure.factor * 100 - 1e-6) / 100 + 0,
    max: Math.floor(max * figure.factor * 100 + 1e-6) / 100,
  };
}

/** The next value by so many of the unit, on the grid of the step, within the limits. Both as shown. */
export function steppedBy(value: number, by: number, { min, max }: { min: number; max: number }): number {
  const from = Number.isFinite(value) ? value : min;
  return hundredths(Math.min(max, Math.max(min, from + by)));
}

/**
 * A figure as people type it, with point or comma; not a number where it is none. Three digits after a comma are thousands: nothing here is
 * set to a thousandth.
 */
export function typedFigure(text: string): number {
  const plain = text
    .trim()
    .replace(/\s+/g, '')
    .replace('\u2212', '-')
    .replace(/,(?=\d{3}(?:,|$))/g, '')
    .replace(',', '.');
  return plain === '' ? Number.NaN : Number(plain);
}

/** Limits of the field at a path, as shown; null where it is no figure now. */
export function limitsShown(exercise: Exercise, path: string): { min: number; max: number } | null {
  const limits = limitsOf(exercise, path);
  return limits && shownLimits(figureOf(exercise, path), limits);
}
