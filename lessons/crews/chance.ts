// A stream of chance as plain data: whoever holds it can be frozen and set going again. Only for the crew that acts at random.

export interface Chance {
  drawn: number;
}

/** Weyl step and mixers of a 32-bit generator: odd numbers with their bits well spread. */
const STEP = 0x6d2b79f5;
const WHOLE = 4294967296;

export const createChance = (from: number): Chance => ({ drawn: from >>> 0 });

/** The next number, 0 up to but not 1. */
export function draw(chance: Chance): number {
  chance.drawn = (chance.drawn + STEP) >>> 0;
  let mixed = Math.imul(chance.drawn ^ (chance.drawn >>> 15), chance.drawn | 1);
  mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
  return ((mixed ^ (mixed >>> 14)) >>> 0) / WHOLE;
}

export const between = (chance: Chance, low: number, high: number): number => low + (high - low) * draw(chance);
export const whole = (chance: Chance, low: number, high: number): number => Math.round(between(chance, low, high));
export const pick = <T>(chance: Chance, list: readonly T[]): T => list[Math.floor(draw(chance) * list.length)]!;
