// Whether two crews would notice that their sites differ: what the senses say, less than nobody can tell apart.

import type { Senses } from '$sim';
import type { Lesson } from '../../schema';

type SenseKey = keyof Senses;

/** What is shown only where the lesson gives a sense or a gauge for it; all else everybody can see. */
const SHOWN_BY: Partial<Record<SenseKey, readonly (Lesson['senses'][number] | Lesson['gauges'][number])[]>> = {
  returns: ['returns', 'flow', 'loading'],
  feel: ['feel', 'fluid'],
  funnel: ['funnel', 'fluid'],
  stick: ['stick', 'pitLevel'],
  tray: ['tray'],
  stem: ['stem', 'torque'],
  pump: ['pump'],
  pit: ['pit', 'pitLevel'],
  mouth: ['returns'],
};

/** A figure that differs by less than this share of it, or of one, is taken for the same. ASSUMED: nobody reads closer without an instrument. */
const SAME_frac = 0.02;

function alike(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= SAME_frac * Math.max(1, Math.abs(a), Math.abs(b));
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => alike((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]));
}

/** Names of the senses by which the two differ. */
export const partedBy = (a: Partial<Senses>, b: Partial<Senses>): SenseKey[] =>
  (Object.keys(a) as SenseKey[]).filter((key) => !alike(a[key], b[key]));

/** Does the lesson show the learner any of these? */
export function isShown(keys: readonly SenseKey[], { senses, gauges }: Lesson): boolean {
  const on: readonly string[] = [...senses, ...gauges];
  return keys.some((key) => SHOWN_BY[key]?.some((one) => on.includes(one)) ?? true);
}
