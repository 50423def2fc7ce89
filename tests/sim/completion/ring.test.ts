// Formulas of the ring: worked values of the doc comments, and what must hold for any ring.
import { expect, it } from 'vitest';
import { cellRoom_m3, createAnnulus } from '../../../sim/completion/annulus';
import { crowd_frac, jamAt_frac, largestPiece_mm } from '../../../sim/completion/bridging';
import { offMiddle_frac } from '../../../sim/completion/centred';
import { pieceFall_ms } from '../../../sim/completion/falling';
import { d15_mm, entryDepth_m, groutable_frac } from '../../../sim/completion/slurry';
import { PACKS } from '../../../sim/materials/packs';
import { stroke_N } from '../../../sim/run/deeds/workCasing';

it('gives the worked values', () => {
  const ring = createAnnulus(0.25, 4, 4);
  ring.radius_m.fill(0.05);
  expect(cellRoom_m3(ring, 1, { outside_m: 0.063, shoe_m: 0.9 })).toBeCloseTo(1.1842e-3, 7);
  // Below the shoe the whole hole counts.
  expect(cellRoom_m3(ring, 3, { outside_m: 0.063, shoe_m: 0.5 })).toBeCloseTo(1.9635e-3, 7);
  expect(largestPiece_mm(0.0185)).toBeCloseTo(3.7, 9);
  expect(crowd_frac(5 / 60000, 0.004737, 0.15)).toBeCloseTo(0.1173, 4);
  expect(jamAt_frac(1.8, 0.0185)).toBeCloseTo(0.2568, 4);
  expect(jamAt_frac(4, 0.0185)).toBe(0);
  expect(offMiddle_frac(3, 12, 4)).toBeCloseTo(0.3333, 4);
  expect(offMiddle_frac(3, 12, 0)).toBe(1);
  expect(d15_mm(PACKS.pack1)).toBeCloseTo(1.108, 3);
  expect(groutable_frac(PACKS.pack1)).toBeCloseTo(0.574, 3);
  expect(groutable_frac(PACKS.pack2)).toBe(1);
  expect(entryDepth_m(PACKS.pack2, 8590)).toBeCloseTo(0.4085, 3);
  expect(pieceFall_ms(1.41, 2650, { K_Pasn: 1.002e-3, n_ratio: 1 }, 998.2)).toBeCloseTo(0.1737, 3);
  expect(stroke_N(0)).toBeCloseTo(360, 6);
  expect(stroke_N(90)).toBe(1200);
});
