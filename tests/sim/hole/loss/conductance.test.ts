// The law of loss: its limits, and what must never turn round.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createLossLaw,
  flowPerMetre_m2s,
  indexLogOf,
  permeability_m2,
  poreLogOf,
  reachLogOf,
  type LossLaw,
} from '../../../../sim/hole/loss/conductance';
import { frontRadius_m, REACH_m } from '../../../../sim/hole/loss/front';

interface Given {
  radius_m: number;
  K_ms: number;
  porosity_frac: number;
  front_ratio: number;
  K_Pasn: number;
  n_ratio: number;
  cake_s: number;
}

function lawOf(g: Given): LossLaw {
  return {
    ...createLossLaw(),
    radius_m: g.radius_m,
    K_ms: g.K_ms,
    reachLog: reachLogOf(g.radius_m),
    poreLog: poreLogOf(g.radius_m, g.K_ms, g.porosity_frac),
    frontLog: Math.log(g.front_ratio),
    indexLog: indexLogOf(g.n_ratio),
    K_Pasn: g.K_Pasn,
    n_ratio: g.n_ratio,
    cake_s: g.cake_s,
  };
}

const SAND: Given = {
  radius_m: 0.05,
  K_ms: 9e-4,
  porosity_frac: 0.37,
  front_ratio: 4,
  K_Pasn: 0.08,
  n_ratio: 0.69,
  cake_s: 0,
};
const flow = (head_m: number, change: Partial<Given> = {}, guess_m2s = 0): number =>
  flowPerMetre_m2s(head_m, lawOf({ ...SAND, ...change }), guess_m2s);
const WATER = { K_Pasn: 1.002e-3, n_ratio: 1 };

/** Head that a flow needs, by the formula as it is written down. */
function headFor_m(q: number, g: Given): number {
  const k = permeability_m2(g.K_ms);
  const { n_ratio: n, radius_m: r } = g;
  const front_m = r * g.front_ratio;
  const C = (g.K_Pasn * Math.pow((((3 * n + 1) / (4 * n)) * 4) / Math.sqrt(8 * k * g.porosity_frac), n - 1)) / k;
  const ring_Pa = (Math.pow(q / (2 * Math.PI), n) * C * (Math.pow(front_m, 1 - n) - Math.pow(r, 1 - n))) / (1 - n);
  const outer_m = (q * Math.log(REACH_m / front_m)) / (2 * Math.PI * g.K_ms);
  return ring_Pa / 9810 + outer_m + (q * g.cake_s) / (2 * Math.PI * r);
}

const given = fc.record({
  radius_m: fc.double({ min: 0.03, max: 0.25, noNaN: true }),
  K_ms: fc.double({ min: -9, max: -1, noNaN: true }).map((x) => Math.pow(10, x)),
  porosity_frac: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
  front_ratio: fc.double({ min: 1.001, max: 15, noNaN: true }),
  K_Pasn: fc.double({ min: -3, max: 0, noNaN: true }).map((x) => Math.pow(10, x)),
  n_ratio: fc.double({ min: 0.35, max: 0.995, noNaN: true }),
  cake_s: fc.oneof(fc.constant(0), fc.double({ min: 1, max: 1e6, noNaN: true })),
});
const head = fc.double({ min: -2, max: 1.5, noNaN: true }).map((x) => Math.pow(10, x));

describe('loss per metre of wall', () => {
  it('is that of Thiem for water in a clean hole, with any front', () => {
    for (const front_ratio of [1, 1.5, 20]) {
      const thiem = (2 * Math.PI * 9e-4 * 1) / Math.log(REACH_m / 0.05);
      expect(flow(1, { ...WATER, front_ratio })).toBeCloseTo(thiem, 15);
    }
    expect(flow(1, { ...WATER }) * 60000).toBeCloseTo(73.68, 2);
  });
  it('gives the worked values of its parts', () => {
    expect(flow(1, { ...WATER, K_ms: 1e-4 })).toBeCloseTo(1.3644e-4, 8);
    expect(permeability_m2(1e-4)).toBeCloseTo(1.0214e-11, 15);
    expect(reachLogOf(0.05)).toBeCloseTo(4.6052, 4);
    expect(reachLogOf(REACH_m)).toBe(0);
    expect(poreLogOf(0.05, 1e-4, 0.42)).toBeCloseTo(-16.4297, 4);
    expect(indexLogOf(0.5)).toBeCloseTo(-0.22314, 5);
    expect(frontRadius_m(0.05, 0.01, 0.37)).toBeCloseTo(0.10537, 5);
    expect(frontRadius_m(0.05, 1e9, 0.37)).toBe(REACH_m);
  });
  it('solves the law as it is written down, from any guess', () => {
    fc.assert(
      fc.property(given, head, fc.double({ min: -6, max: 6, noNaN: true }), (g, head_m, off) => {
        const q = flowPerMetre_m2s(head_m, lawOf(g), 0);
        expect(Math.abs(headFor_m(q, g) / head_m - 1)).toBeLessThan(5e-5);
        const again = flowPerMetre_m2s(head_m, lawOf(g), q * Math.pow(10, off));
        expect(Math.abs(again / q - 1)).toBeLessThan(5e-5);
      }),
      { numRuns: 500 },
    );
  });
  it('goes over into a Newtonian fluid without a jump as n goes to 1', () => {
    const newtonian = flow(1, { n_ratio: 1 });
    expect(flow(1, { n_ratio: 1 - 1e-13 })).toBeCloseTo(newtonian, 12);
    for (const off of [1e-11, 1e-9, 1e-7, 1e-5]) {
      expect(Math.abs(flow(1, { n_ratio: 1 - off }) / newtonian - 1)).toBeLessThan(20 * off + 5e-5);
    }
  });
  it('grows with head and K, falls with thickness, with the front and with cake', () => {
    fc.assert(
      fc.property(given, head, fc.double({ min: 1.01, max: 3, noNaN: true }), (g, head_m, more) => {
        const at = (change: Partial<Given>, h = head_m): number => flowPerMetre_m2s(h, lawOf({ ...g, ...change }), 0);
        const q = at({});
        expect(q).toBeGreaterThan(0);
        expect(at({}, head_m * more)).toBeGreaterThan(q);
        expect(at({ K_ms: g.K_ms * more })).toBeGreaterThan(q);
        expect(at({ K_Pasn: g.K_Pasn * more })).toBeLessThan(q);
        const tenth_s = (0.1 * 2 * Math.PI * g.radius_m * head_m) / q;
        expect(at({ cake_s: g.cake_s + tenth_s })).toBeLessThan(q);
        // A fluid that in the pores is thicker than water loses by a wider ring.
        const slow = at({ K_Pasn: 1, n_ratio: 1, front_ratio: g.front_ratio * more });
        expect(slow).toBeLessThan(at({ K_Pasn: 1, n_ratio: 1 }) * (1 + 1e-9));
      }),
      { numRuns: 300 },
    );
  });
  it('is continuous in the head', () => {
    let before = flow(0.5);
    for (let h = 0.501; h < 0.6; h += 0.001) {
      const now = flow(h, {}, before);
      expect(now / before).toBeGreaterThan(1);
      expect(now / before).toBeLessThan(1.005);
      before = now;
    }
  });
});
