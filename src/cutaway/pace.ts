// How fast moving things are shown. One whole factor for all of them, so that grains, fluid and bore keep their true
// ratio and "shown 3 times slower" is exact.

/** Fastest motion that an eye can still follow in the bore of the stem, px/s. */
const MOST_BORE_PXS = 420;
/** The same round the stem, where single grains have to be told apart. */
const MOST_ROUND_PXS = 150;

/**
 * How many times slower than the run things are shown: 1, 2, 3 ...
 * @param run_ratio job seconds per second on the wall, 0 when paused
 */
export function timesSlower(run_ratio: number, bore_ms: number, round_ms: number, depth_pxm: number): number {
  const bore_ratio = (Math.abs(bore_ms) * depth_pxm * run_ratio) / MOST_BORE_PXS;
  const round_ratio = (Math.abs(round_ms) * depth_pxm * run_ratio) / MOST_ROUND_PXS;
  return Math.max(1, Math.ceil(Math.max(bore_ratio, round_ratio) - 0.05));
}
