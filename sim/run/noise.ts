// The unsteadiness of the senses: one slowly wandering value per sense, drawn in the step and kept in the state, so that looking never changes a run.

import type { Stream } from '../numeric/stream';

/** Which wandering value serves which sense. */
export const NOISE = { returns: 0, grit: 1, fines: 2, torque: 3, pull: 4, sinking: 5, sound: 6, grains: 7 } as const;
export const NOISE_COUNT = 8;

/** Standard deviation of a reading, as a share of what is so: for the senses that are read as numbers or weighed against limits. ASSUMED. */
export const SPREAD_ratio = {
  returns: 0.04,
  grit: 0.12,
  fines: 0.1,
  torque: 0.08,
  pull: 0.08,
  sinking: 0.1,
  grains: 0.25,
} as const;

/** What the truth is multiplied by to give the reading of a sense at this moment; 1 in the mean. */
export function blur(noise: Float64Array, sense: keyof typeof SPREAD_ratio): number {
  return 1 + SPREAD_ratio[sense] * noise[NOISE[sense]];
}

/** Seconds between draws, and how much of the old value stays at each draw. ASSUMED: a crew's impression holds for about twenty seconds. */
const DRAW_EVERY_s = 4;
const KEPT_ratio = 0.8;
const FRESH_ratio = Math.sqrt(1 - KEPT_ratio * KEPT_ratio);

/** Moves the noise on by one second. Three uniform numbers give a bell of variance 1 that never passes 3. */
export function wander(noise: Float64Array, stream: Stream, tick: number): void {
  if (tick % DRAW_EVERY_s !== 0) return;
  for (let i = 0; i < NOISE_COUNT; i++) {
    const bell = 2 * (stream.uniform() + stream.uniform() + stream.uniform() - 1.5);
    noise[i] = KEPT_ratio * noise[i] + FRESH_ratio * bell;
  }
}
