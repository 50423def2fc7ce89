// Drawn sizes of grains: true to the widened scale of the hole, but never smaller than the eye can tell.

/** Least drawn size by class, px: clay and silt are colour, not grains. */
const LEAST_px = [0, 0, 2, 2.6, 3.4, 4.4, 6, 9];

/**
 * How many times denser than true grains are drawn: at their true share, fluid that runs heavy with sand would look
 * nearly clean. Told on the picture.
 */
export const DENSER = 4;

export function grainSize_px(classIndex: number, grain_m: number, across_pxm: number): number {
  return Math.max(LEAST_px[classIndex] ?? 1.5, grain_m * across_pxm);
}
