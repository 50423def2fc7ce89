// The tangent and the cosine by their series: only + - * /, so the same bits in every engine.

const TERMS = 12;
const PER_DEGREE = 0.017453292519943295;

/** Sum of x^n/n! with alternating signs, from the term of power `first` on: sine from 1, cosine from 0. */
function series(x: number, first: 0 | 1): number {
  let term = first === 1 ? x : 1;
  let sum = term;
  for (let i = 1; i <= TERMS; i++) {
    const n = 2 * i + first;
    term *= (-x * x) / (n * (n - 1));
    sum += term;
  }
  return sum;
}

/** Tangent of an angle in degrees, above -90 and below 90 (to 1e-14). Worked value: 45 -> 1. */
export const tanOf = (angle_deg: number): number =>
  series(angle_deg * PER_DEGREE, 1) / series(angle_deg * PER_DEGREE, 0);

/** Cosine of an angle in degrees, -90 to 90 (to 1e-15). Worked value: 60 -> .5. */
export const cosOf = (angle_deg: number): number => series(angle_deg * PER_DEGREE, 0);
