// One look at the stream along a cell: it takes off what it can.
import type { HoleState } from '../hole';
import type { WallGround } from '../wallGround';
import { WASHOUT, note } from './failures';
import { takeOff } from './slough';
import { BIT_FILLS_frac } from './swab';
import type { WallInput } from './input';
import { wallShear_Pa, washRate_ms, washThreshold_Pa } from './washout';
import type { WallWork } from './work';

/** A hole this much wider than the bit counts as washed out, m in radius. ASSUMED. */
const WASHED_m = 0.003;

/** gradient_ratio: outward gradient at the wall; stuck_Pa: cohesion of loose ground, 0 in clay, whose tau_c says it all. */
export function washCell(
  hole: HoleState,
  ground: WallGround,
  work: WallWork,
  input: WallInput,
  i: number,
  dt_s: number,
  thin_ratio: number,
  gradient_ratio: number,
  stuck_Pa: number,
): void {
  const { stem } = input;
  const top_m = i * hole.dz_m;
  if (!(input.flow_m3s > 0) || top_m >= stem.bit_m || top_m + hole.dz_m <= input.level_m) return;
  // Past the bit the same flow has only what the bit leaves free.
  const atBit = top_m + hole.dz_m >= stem.bit_m;
  const flow_m3s = atBit ? input.flow_m3s / (1 - BIT_FILLS_frac) : input.flow_m3s;
  const before_m = hole.radius_m[i];
  const threshold_Pa = washThreshold_Pa(ground, work.wash, i, gradient_ratio, hole.wall.cake_m[i], stuck_Pa);
  const shear_Pa = wallShear_Pa(work.conduit, flow_m3s, 2 * before_m, stem.rodOutside_m, input.fluid);
  const rate_ms = washRate_ms(work.wash, i, shear_Pa, threshold_Pa, thin_ratio);
  if (!(rate_ms > 0)) return;
  const volume_m3 = takeOff(hole, ground, work.fallen, i, rate_ms * dt_s, input.bitWidth_m);
  const washed_m = input.bitWidth_m / 2 + WASHED_m;
  if (hole.radius_m[i] >= washed_m) note(work.failures, WASHOUT, i, volume_m3, before_m < washed_m);
}
