// The well function of a well that is no line: in the first seconds, and in tight ground for hours, its own width counts.
import { ln } from '../numeric/functions';

/** 2/sqrt(pi): the first fall of a cylinder goes with the root of the time. 1/exp(.5772157): the late one is Cooper and Jacob's. */
const EARLY = 1.1283791671;
const LATE = 0.5614594836;

/**
 * What W(u) is at the wall of a cylinder instead of a line: ln(1 + 1.12838/sqrt(u) + .561459/u). Early 4 sqrt(t_D/pi), late W(u),
 * t_D = 1/(4 u); between them at most 6.5 % too much. u above 0. Source: fitted to the solution of van Everdingen & Hurst 1949 (its
 * Laplace transform inverted by Stehfest's way, see the test). Worked values: u 25 -> .22165 (exact .21621), .25 -> 1.7052 (1.6043),
 * 2.5e-4 -> 7.7485 (7.7212).
 */
export const wideWellFunction = (u: number): number => ln(1 + EARLY / Math.sqrt(u) + LATE / u);
