// What the wall has to know of the rest of the hole in one tick, and the pressure that follows.
import type { LineFluid } from '../../hydraulics/pipe';
import { GRAVITY_MS2 } from '../../numeric/units';
import type { StemPlace } from '../hole';

export interface WallInput {
  /** Number of the tick: says whose turn it is. */
  tick: number;
  dt_s: number;
  /** Depth of the fluid's surface below ground level, m. */
  level_m: number;
  stem: StemPlace;
  bitWidth_m: number;
  /** Mean width of the hole above the bit, m. */
  holeWidth_m: number;
  /** Speed of the stem in this tick, upwards, m/s; negative: down. */
  lift_ms: number;
  flow_m3s: number;
  /** Friction of the upward flow over the whole ring, Pa: it adds to the pressure below. */
  annulus_Pa: number;
  /** The fluid in the ring. */
  fluid: LineFluid;
  soaked_gL: number;
  bentonite_gL: number;
  balling_frac: number;
}

/** Pressure of the fluid in the hole at a depth, Pa above that of the air: its weight below the level and the friction of the flow. */
export function fluidPressure_Pa(input: WallInput, depth_m: number): number {
  if (depth_m <= input.level_m) return 0;
  const { bit_m } = input.stem;
  const friction_Pa = depth_m >= bit_m ? input.annulus_Pa : (input.annulus_Pa * depth_m) / bit_m;
  return input.fluid.density_kgm3 * GRAVITY_MS2 * (depth_m - input.level_m) + friction_Pa;
}
