// The small record that the kernel hands to the machine: what the continuous state looks like now, already reduced to yes and no.

export interface Signals {
  /** A hand is filling the suction line. */
  priming: boolean;
  /** Suction line full. */
  primed: boolean;
  throttleUp: boolean;
  /** Strainer shut so far that the pump starves behind it. */
  strainerShut: boolean;
  turning: boolean;
  onBottom: boolean;
  /** Torque or drag far above normal. */
  tight: boolean;
  /** Past the stall torque or the pull limit. */
  stuck: boolean;
  /** The bit is out of the hole, at the mouth or above it. */
  out: boolean;
  /** Somewhere the wall is falling in; somewhere the hole has closed. */
  sloughing: boolean;
  holeClosed: boolean;
  /** Share of the pump's flow that comes back at the mouth. */
  returns_frac: number;
  flowing: boolean;
  /** Any powder in the fluid. */
  powder: boolean;
  /** Share of the sound powder that has soaked. */
  soaked_frac: number;
  /** Soaked powder now, as a share of the working dose. */
  dose_ratio: number;
  /** Share of the powder ever put in that has rotted. */
  rotted_frac: number;
}
