// What the wall has to know of the rest of the hole in one tick.
import type { LineFluid } from '../../hydraulics/pipe';
import type { StemPlace } from '../hole';

export interface WallInput {
  /** Number of the tick: says whose turn it is. */
  tick: number;
  dt_s: number;
  /** By cell, as the loss left them, Pa: the fluid against the wall (0 where it stands dry), what the moving stem has part in that, the ground's water. */
  pressure_Pa: Float64Array;
  surge_Pa: Float64Array;
  ground_Pa: Float64Array;
  stem: StemPlace;
  bitWidth_m: number;
  flow_m3s: number;
  /** The fluid in the ring. */
  fluid: LineFluid;
  soaked_gL: number;
  bentonite_gL: number;
}

/** Pressure of the fluid on cell i without what a moving stem does to it for a moment, Pa. */
export const restingPressure_Pa = (input: WallInput, i: number): number =>
  input.pressure_Pa[i] > 0 ? Math.max(0, input.pressure_Pa[i] - input.surge_Pa[i]) : 0;
