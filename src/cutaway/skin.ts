// Where the wall bears a skin. No drawing here: what is told reads it too.

import type { ShownHole } from './shown';

/** A thinner skin is not drawn and not told: nobody would feel it. */
export const LEAST_CAKE_m = 5e-5;

/** The stretches of the hole that bear a skin, m. */
export function skinned(hole: ShownHole): [from_m: number, to_m: number][] {
  const stretches: [number, number][] = [];
  for (let i = 0; i < hole.cells; i++) {
    if (hole.cake_m[i] < LEAST_CAKE_m) continue;
    const top_m = i * hole.dz_m;
    const bottom_m = Math.min(hole.depth_m, top_m + hole.dz_m);
    const last = stretches.at(-1);
    if (last && last[1] >= top_m - 1e-9) last[1] = bottom_m;
    else if (bottom_m > top_m) stretches.push([top_m, bottom_m]);
  }
  return stretches;
}

/** Share of the wall that bears a skin. */
export function skinShare(hole: ShownHole): number {
  let count = 0;
  for (let i = 0; i < hole.cells; i++) if (hole.cake_m[i] >= LEAST_CAKE_m) count++;
  return hole.cells > 0 ? count / hole.cells : 0;
}
