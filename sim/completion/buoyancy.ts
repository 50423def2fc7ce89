// Whether a casing sinks in the hole or floats.
import type { Casing } from '../materials/pipes';
import { GRAVITY_MS2 } from '../numeric/units';
import { pipeWeight_N, wallArea_m2 } from './tension';

/** Cross-section of the pipe, wall and bore, m2. Worked value: 63 mm -> 3.117e-3. */
export const wholeArea_m2 = ({ outside_m }: Casing): number => (Math.PI / 4) * outside_m * outside_m;

/** Cross-section of the bore, m2. Worked value: 63 x 3.0 -> 2.552e-3. */
export const boreArea_m2 = (pipe: Casing): number => wholeArea_m2(pipe) - wallArea_m2(pipe);

export interface Hanging {
  readonly length_m: number;
  /** Length that stands in the fluid of the hole. */
  readonly submerged_m: number;
  /** The lower end lets no water in: capped, and no open slots. */
  readonly plugged: boolean;
  /** Height of the water inside above the lower end; an open pipe fills by itself. */
  readonly filled_m: number;
  /** Fluid of the hole, and what is inside. */
  readonly outside_kgm3: number;
  readonly inside_kgm3: number;
}

/**
 * Weight of the casing on the crew's hands, N; below 0 it floats. Pipe and filling less what they displace (Archimedes): an open
 * pipe displaces its wall alone. Worked value: 63 x 3.0, 1 m, plugged, empty, in water of 998.2 -> -22.75 (2.32 kg of lift).
 */
export function hanging_N(pipe: Casing, h: Hanging): number {
  const displaced_m2 = h.plugged ? wholeArea_m2(pipe) : wallArea_m2(pipe);
  const filling_N = h.plugged ? boreArea_m2(pipe) * h.filled_m * h.inside_kgm3 * GRAVITY_MS2 : 0;
  const lift_N = displaced_m2 * h.submerged_m * h.outside_kgm3 * GRAVITY_MS2;
  return pipeWeight_N(pipe, h.length_m) + filling_N - lift_N;
}
