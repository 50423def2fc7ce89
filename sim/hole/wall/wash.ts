// One look at the stream along a cell: it takes off what it can.
import type { HoleState } from '../hole';
import { DRAINED_kPa, type WallGround } from '../wallGround';
import { WASHOUT, note } from './failures';
import { takeOff } from './slough';
import { BIT_FILLS_frac } from './swab';
import type { WallInput } from './input';
import { inhibition_ratio } from './swelling';
import { thinness_ratio, wallShear_Pa, washRate_ms, washThreshold_Pa } from './washout';
import type { WallWork } from './work';

/** A hole this much wider than the bit counts as washed out, m in radius. ASSUMED. */
const WASHED_m = 0.003;

/** Past the bit the same flow has only what the bit leaves free. */
const pastBit_m3s = (flow_m3s: number): number => flow_m3s / (1 - BIT_FILLS_frac);

/** Reads the stream of this tick. */
export function readStream(work: WallWork, input: WallInput): void {
  const { stream, conduit } = work;
  const { flow_m3s, bitWidth_m, fluid } = input;
  const { rodOutside_m } = input.stem;
  stream.ring_Pa = wallShear_Pa(conduit, flow_m3s, bitWidth_m, rodOutside_m, fluid);
  stream.bit_Pa = wallShear_Pa(conduit, pastBit_m3s(flow_m3s), bitWidth_m, rodOutside_m, fluid);
  stream.coated_ratio = inhibition_ratio(input.soaked_gL, input.bentonite_gL);
  stream.thin_ratio = flow_m3s > 0 ? thinness_ratio(fluid, flow_m3s, bitWidth_m, rodOutside_m) : 1;
}

/** One look. gradient_ratio: outward gradient at the wall; stuck_Pa: cohesion of loose ground, 0 in clay, whose tau_c says it all. */
export function washCell(
  hole: HoleState,
  ground: WallGround,
  work: WallWork,
  input: WallInput,
  i: number,
  dt_s: number,
  gradient_ratio: number,
  stuck_Pa: number,
): void {
  const { stem } = input;
  const top_m = i * hole.dz_m;
  if (!(input.flow_m3s > 0) || top_m >= stem.bit_m || !(input.pressure_Pa[i] > 0)) return;
  const atBit = top_m + hole.dz_m >= stem.bit_m;
  const before_m = hole.radius_m[i];
  const threshold_Pa = washThreshold_Pa(ground, work.wash, i, gradient_ratio, hole.wall.cake_m[i], stuck_Pa);
  const most_Pa = atBit ? work.stream.bit_Pa : work.stream.ring_Pa;
  if (threshold_Pa >= most_Pa && 2 * before_m >= input.bitWidth_m) return;
  const flow_m3s = atBit ? pastBit_m3s(input.flow_m3s) : input.flow_m3s;
  const shear_Pa = wallShear_Pa(work.conduit, flow_m3s, 2 * before_m, stem.rodOutside_m, input.fluid);
  const left_ratio = ground.su_kPa[i] === DRAINED_kPa ? work.stream.thin_ratio : work.stream.coated_ratio;
  const rate_ms = washRate_ms(work.wash, i, shear_Pa, threshold_Pa, left_ratio);
  if (!(rate_ms > 0)) return;
  const volume_m3 = takeOff(hole, ground, work.fallen, i, rate_ms * dt_s, input.bitWidth_m);
  const washed_m = input.bitWidth_m / 2 + WASHED_m;
  if (hole.radius_m[i] >= washed_m) note(work.failures, WASHOUT, i, volume_m3, before_m < washed_m);
}
