// The steady well of the handbooks, for a sum by hand on the planning board.
import { ln } from '../numeric/functions';

/**
 * Flow to a well under cover, m3/s: Q = 2 pi T (s1 - s2)/ln(r2/r1). T m2/s; s1, s2 m the drawdowns at r1 and, further out, r2.
 * Source: Thiem 1906. Worked value: T 900 m2/d, 3.0 m at .15 m, 0 at 300 m -> .025832.
 */
export const coveredFlow_m3s = (T_m2s: number, s1_m: number, s2_m: number, r1_m: number, r2_m: number): number =>
  (2 * Math.PI * T_m2s * (s1_m - s2_m)) / ln(r2_m / r1_m);

/**
 * Flow to a well with a free table, m3/s: Q = pi K (h2^2 - h1^2)/ln(r2/r1), h m the water over the bottom at r1 and, further out, r2.
 * Source: Dupuit 1863. Worked value: K 1.4e-4, h 4.53 at 10 m, 9.24 at 27.698 m -> .0280.
 */
export const freeFlow_m3s = (K_ms: number, h1_m: number, h2_m: number, r1_m: number, r2_m: number): number =>
  (Math.PI * K_ms * (h2_m * h2_m - h1_m * h1_m)) / ln(r2_m / r1_m);

/** Reach of the cone, m: R = 3000 s sqrt(K), s m, K m/s. Source: Sichardt 1928 (from memory). Worked value: 1 m, 1e-4 -> 30. */
export const sichardtReach_m = (drawdown_m: number, K_ms: number): number => 3000 * drawdown_m * Math.sqrt(K_ms);
