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
  /** Anything in the fluid that was put in to thicken it. */
  powder: boolean;
  /** Share of it that has soaked or swollen. */
  soaked_frac: number;
  /** What works now, in working doses. */
  dose_ratio: number;
  /** Share of all ever put in that has rotted, was broken, or is spoilt by salt. */
  rotted_frac: number;
}
