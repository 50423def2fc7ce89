// Repeatable scatter: the same place in a picture always gets the same grain, tuft or stroke.

/** A value in [0, 1) that depends on the two whole numbers only. */
export function scatter(i: number, j: number): number {
  let h = Math.imul(i | 0, 0x9e3779b1) ^ Math.imul((j | 0) + 0x7f4a7c15, 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39);
  return ((h ^ (h >>> 15)) >>> 0) / 4294967296;
}
