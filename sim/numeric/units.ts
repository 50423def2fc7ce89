// What every part of the model shares: gravity, and the length of a day.

/** Acceleration of gravity, m/s2. The reference rows use 9.81, so the model does too. */
export const GRAVITY_MS2 = 9.81;

/** A day, s. */
export const DAY_s = 86400;
