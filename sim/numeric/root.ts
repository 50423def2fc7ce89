// Finds where a function crosses zero inside a bracket: the false position with the Illinois correction.
// It uses only + - * / so it takes the same steps in every engine.

const MOST_STEPS = 400;

/**
 * Solves f(x) = 0 for x in lo..hi.
 * f: continuous, with opposite signs at lo and hi. guess: a first try, such as the answer of the tick before
 * (ignored when outside the bracket). tolerance: stop when the bracket is narrower than this, in units of x.
 * Throws RangeError when f has the same sign at both ends.
 * Source: Dowell & Jarratt 1971, BIT 11:168 (from memory).
 * Worked value: f = x*x - 2, 0..2 -> 1.41421356.
 */
export function solveBracketed(
  f: (x: number) => number,
  lo: number,
  hi: number,
  guess: number,
  tolerance: number,
): number {
  let a = lo;
  let b = hi;
  let fa = f(a);
  if (fa === 0) return a;
  let fb = f(b);
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) {
    throw new RangeError(`No crossing between ${lo} and ${hi}: the function is ${fa} and ${fb} there.`);
  }
  // A guess close to the answer is worth a narrow bracket on both of its sides.
  let x = guess;
  let side = 0;
  const reach = (hi - lo) / 64;
  if (x > a && x < b) {
    const fx = f(x);
    if (fx === 0) return x;
    const left = fx > 0 === fb > 0;
    if (left) {
      b = x;
      fb = fx;
    } else {
      a = x;
      fa = fx;
    }
    const near = left ? x - reach : x + reach;
    if (near > a && near < b) {
      const fn = f(near);
      if (fn === 0) return near;
      if (fn > 0 === fb > 0) {
        b = near;
        fb = fn;
      } else {
        a = near;
        fa = fn;
      }
    }
  }
  const nearest = tolerance / 2;
  for (let step = 0; step < MOST_STEPS && b - a > tolerance; step++) {
    // Past the usual number of steps every fourth one halves, so that no curve can stall the search.
    x = step > 8 && (step & 3) === 3 ? (a + b) / 2 : (fa * b - fb * a) / (fa - fb);
    // Half a tolerance away from an end, the next value closes the bracket as soon as that end is the answer.
    if (!(x > a + nearest)) x = a + nearest;
    if (!(x < b - nearest)) x = b - nearest;
    if (!(x > a && x < b)) break;
    const fx = f(x);
    if (fx === 0) return x;
    if (fx > 0 === fb > 0) {
      b = x;
      fb = fx;
      if (side === 1) fa /= 2;
      side = 1;
    } else {
      a = x;
      fa = fx;
      if (side === -1) fb /= 2;
      side = -1;
    }
  }
  return (a + b) / 2;
}
