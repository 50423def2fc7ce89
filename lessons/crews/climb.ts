// How a crew allows for the climb: it remembers where the bit was, and reckons how long grains need to the mouth.

import type { Senses } from '$sim';

/** Where the bit was, every few seconds, newest last. */
export interface Trail {
  readonly time_s: number[];
  readonly bit_m: number[];
}

const KEEP_EVERY_s = 5;
const KEEP = 60;

/** How fast grains climb by a crew's reckoning, m/s: the stream's third of a metre a second, less what sand lags behind. ASSUMED rule of thumb. */
const CLIMB_ms = 0.2;

export function createTrail(): Trail {
  return { time_s: [], bit_m: [] };
}

export function keepTrail(trail: Trail, senses: Senses): void {
  const last_s = trail.time_s[trail.time_s.length - 1];
  if (last_s !== undefined && senses.time_s - last_s < KEEP_EVERY_s) return;
  trail.time_s.push(senses.time_s);
  trail.bit_m.push(senses.stem.bit_m);
  if (trail.time_s.length > KEEP) {
    trail.time_s.shift();
    trail.bit_m.shift();
  }
}

/** Depth of the bit at that job second, from memory; the oldest kept if it is longer ago. */
export function trailAt_m(trail: Trail, time_s: number): number {
  for (let i = trail.time_s.length - 1; i >= 0; i--) if (trail.time_s[i]! <= time_s) return trail.bit_m[i]!;
  return trail.bit_m[0] ?? 0;
}

/** Seconds that grains need from the bottom to the mouth. */
export function climb_s(senses: Senses): number {
  return senses.stem.bottom_m / CLIMB_ms;
}
