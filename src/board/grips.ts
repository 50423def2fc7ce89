// What can be taken hold of in the drawing, and where it goes when it is moved.
import type { WellPlan } from '$sim';
import { rounded } from './draft';

export const GRIPS = ['screenFrom_m', 'screenTo_m', 'packTop_m', 'sealFrom_m', 'sealTo_m'] as const;
/** One end of screen, pack or seal; or the whole screen, the whole seal. */
export type Grip = (typeof GRIPS)[number] | 'screen' | 'seal';

/** Depths are set to a tenth of a metre by hand. */
const HAND_m = 0.1;

export const onGrid = (depth_m: number): number => rounded(Math.round(depth_m / HAND_m) * HAND_m);

/** The grips that the plan has. */
export function gripsOf(plan: WellPlan): (typeof GRIPS)[number][] {
  return GRIPS.filter((grip) => {
    if (grip === 'packTop_m') return plan.pack !== 'none';
    return grip.startsWith('seal') ? plan.seal !== 'none' : true;
  });
}

/** Ends closer together than this cannot be told apart by a finger: the one held before is meant. */
const SAME_m = 0.05;

/** The grip at a depth: the nearest end within reach, else the whole that the depth lies in. */
export function gripAt(plan: WellPlan, depth_m: number, reach_m: number, held: Grip | null): Grip | null {
  const off_m = (grip: (typeof GRIPS)[number]): number => Math.abs(plan[grip] - depth_m) - (grip === held ? SAME_m : 0);
  const [nearest] = gripsOf(plan).sort((a, b) => off_m(a) - off_m(b));
  if (nearest && off_m(nearest) <= reach_m) return nearest;
  if (depth_m > plan.screenFrom_m && depth_m < plan.screenTo_m) return 'screen';
  return plan.seal !== 'none' && depth_m > plan.sealFrom_m && depth_m < plan.sealTo_m ? 'seal' : null;
}

/** The plan with a grip moved to a depth; a whole keeps its length and stays in the hole. */
export function movedTo(plan: WellPlan, grip: Grip, depth_m: number, bottom_m: number): WellPlan {
  const within = (value_m: number): number => Math.min(Math.floor(bottom_m * 10 + 1e-6) / 10, Math.max(0, value_m));
  if (grip === 'screen') {
    const length_m = plan.screenTo_m - plan.screenFrom_m;
    const top_m = onGrid(Math.max(0, Math.min(bottom_m - length_m, depth_m - length_m / 2)));
    return { ...plan, screenFrom_m: top_m, screenTo_m: rounded(top_m + length_m) };
  }
  if (grip === 'seal') {
    const length_m = plan.sealTo_m - plan.sealFrom_m;
    const top_m = onGrid(Math.max(0, Math.min(bottom_m - length_m, depth_m - length_m / 2)));
    return { ...plan, sealFrom_m: top_m, sealTo_m: rounded(top_m + length_m) };
  }
  return { ...plan, [grip]: within(onGrid(depth_m)) };
}
