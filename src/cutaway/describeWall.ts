// What the wall of the hole is doing, as message keys: its width, the skin on it, ground that falls, fluid that goes through.

import type { CutawayView, ShownHole } from './shown';
import { skinShare } from './skin';
import { keyOf as key, round, type Description } from './thing';

/** Wider or narrower than the bit by less than this, nobody would speak of it. */
const WALL_EVEN_m = 0.008;

/** Where the wall stands farthest from the bit's own width, and how wide the hole is there. */
export function tellWall({ kit }: CutawayView, hole: ShownHole): Description | null {
  let at = 0;
  for (let i = 1; i < hole.cells; i++)
    if (Math.abs(hole.radius_m[i] - kit.bit_m / 2) > Math.abs(hole.radius_m[at] - kit.bit_m / 2)) at = i;
  const off_m = (hole.radius_m[at] ?? 0) - kit.bit_m / 2;
  const data = { depth: round((at + 0.5) * hole.dz_m, 0.1), cm: Math.round(hole.radius_m[at] * 200) };
  if (hole.radius_m[at] <= kit.rodOutside_m / 2) return { thing: 'wall', key: key('wallClosed'), data };
  if (Math.abs(2 * off_m) < WALL_EVEN_m) return { thing: 'wall', key: key('wallEven'), data };
  return { thing: 'wall', key: key(off_m > 0 ? 'wallWide' : 'wallNarrow'), data };
}

export function tellCake(hole: ShownHole): Description | null {
  let thickest_m = 0;
  for (let i = 0; i < hole.cells; i++) thickest_m = Math.max(thickest_m, hole.cake_m[i]);
  const bears = skinShare(hole);
  if (bears === 0) return null;
  return { thing: 'cake', key: key('cake'), data: { mm: round(thickest_m * 1000, 0.1), share: bears } };
}

export function tellFalling(hole: ShownHole): Description | null {
  const at = hole.falling.findIndex((falls, i) => falls > 0 && i < hole.cells);
  if (at < 0) return null;
  return { thing: 'falling', key: key('falling'), data: { depth: round((at + 0.5) * hole.dz_m, 0.1) } };
}

/** Less than this through the whole wall is not spoken of: a litre in five minutes. */
const SEEP_LEAST_m3s = 3e-6;

export function tellSeep(hole: ShownHole): Description | null {
  const { seep_m2s } = hole;
  if (!seep_m2s) return null;
  let sum_m3s = 0;
  let at = 0;
  for (let i = 0; i < hole.cells; i++) {
    sum_m3s += seep_m2s[i] * hole.dz_m;
    if (Math.abs(seep_m2s[i]) > Math.abs(seep_m2s[at])) at = i;
  }
  if (Math.abs(sum_m3s) < SEEP_LEAST_m3s) return null;
  const data = { rate_Lmin: Math.abs(sum_m3s) * 60000, depth: round((at + 0.5) * hole.dz_m, 0.1) };
  return { thing: 'seep', key: key(sum_m3s > 0 ? 'seepOut' : 'seepIn'), data };
}
