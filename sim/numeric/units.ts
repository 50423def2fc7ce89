// The one physical constant that every part of the model shares.

/** Acceleration of gravity, m/s2. The reference rows use 9.81, so the model does too. */
export const GRAVITY_MS2 = 9.81;
