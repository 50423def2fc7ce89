// The bit, the rope and balling.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { ballingAfter } from '../../../sim/drilling/balling';
import { createBitResult, drillInto, fillFactor, type BitInput, type BitResult } from '../../../sim/drilling/bit';
import { jetErosion_ms } from '../../../sim/drilling/jet';
import { freeingChance, pull_N } from '../../../sim/drilling/pull';
import { bedTorque_Nm, bitTorque_Nm } from '../../../sim/drilling/torque';
import { hangingWeight_N, weightOnBit_N } from '../../../sim/drilling/weight';
import { DEFAULT_KIT } from '../../../sim/materials/kit';

const SAND: BitInput = {
  kit: DEFAULT_KIT,
  feed_frac: 0.6,
  stemLength_m: 9,
  turning: true,
  E_MPa: 0.5,
  su_kPa: null,
  tauC_Pa: 0.2,
  grip_Nm: 0,
  balling_frac: 0,
  bed_m: 0,
  load_frac: 0.01,
  flow_m3s: 0.002,
  density_kgm3: 1000,
  nozzleVelocity_ms: 13,
};

function drilled(change: Partial<BitInput> = {}): BitResult {
  const out = createBitResult();
  drillInto(out, { ...SAND, ...change });
  return out;
}

test('worked values', () => {
  expect(hangingWeight_N(DEFAULT_KIT, 20, 1000)).toBeCloseTo(459.5, 0);
  expect(weightOnBit_N(DEFAULT_KIT, 1, 459.5)).toBe(250);
  expect(bitTorque_Nm(250, 0.1)).toBeCloseTo(3.33, 2);
  expect(bedTorque_Nm(0.5)).toBeCloseTo(23, 12);
  expect(fillFactor(0.075, 0.075)).toBeCloseTo(0.25, 12);
  expect(pull_N(DEFAULT_KIT, 20, 1000, 0.5, 0, 0)).toBeCloseTo(984.5, 0);
  expect(freeingChance(0.002, 0.002, 0)).toBe(0.5);
  expect(jetErosion_ms(101, 1)).toBeCloseTo(2e-5, 9);
});

describe('the rate of penetration', () => {
  it('rises with the feed and falls with the strength of the ground', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 0.4, max: 20, noNaN: true }),
        (feed_frac, E_MPa) => {
          const here = drilled({ feed_frac, E_MPa }).rate_ms;
          expect(here).toBeGreaterThan(0);
          expect(drilled({ feed_frac: feed_frac * 0.8, E_MPa }).rate_ms).toBeLessThanOrEqual(here);
          expect(drilled({ feed_frac, E_MPa: E_MPa * 1.2 }).rate_ms).toBeLessThan(here);
        },
      ),
      { seed: 15 },
    );
  });
  it('is nothing without turning, without feed, and in ground that refuses the bit', () => {
    expect(drilled({ turning: false }).rate_ms).toBe(0);
    expect(drilled({ feed_frac: 0 }).rate_ms).toBe(0);
    expect(drilled({ E_MPa: null }).rate_ms).toBe(0);
  });
  it('falls as the hole loads up and stops on a bed', () => {
    const clean = drilled().rate_ms;
    expect(drilled({ load_frac: 0.05 }).rate_ms).toBe(clean);
    expect(drilled({ load_frac: 0.075 }).rate_ms).toBeCloseTo(clean / 2, 9);
    expect(drilled({ load_frac: 0.1 }).rate_ms).toBe(0);
    expect(drilled({ bed_m: 0.075 }).rate_ms).toBeCloseTo(clean / 2, 9);
    expect(drilled({ bed_m: 0.15 }).rate_ms).toBe(0);
  });
  it('falls to a fifth when the bit is packed with clay', () => {
    const clay = { E_MPa: 5, su_kPa: 60, tauC_Pa: 5, flow_m3s: 0 };
    expect(drilled({ ...clay, balling_frac: 1 }).rate_ms / drilled(clay).rate_ms).toBeCloseTo(0.2, 1);
  });
  it('is helped by the jets in clay, a little, and not in sand', () => {
    const clay = { E_MPa: 2.8, su_kPa: 15, tauC_Pa: 1 };
    const help = drilled(clay).rate_ms / drilled({ ...clay, flow_m3s: 0 }).rate_ms;
    expect(help).toBeGreaterThan(1.01);
    expect(help).toBeLessThan(1.3);
    expect(drilled({ flow_m3s: 0 }).rate_ms).toBe(drilled().rate_ms);
  });
});

describe('torque', () => {
  it('grows with the bed, and stalls the drive', () => {
    const torques = [0, 0.1, 0.3, 0.5, 0.7].map((bed_m) => drilled({ bed_m }).torque_Nm);
    torques.slice(1).forEach((t, i) => expect(t).toBeGreaterThan(torques[i]));
    const buried = drilled({ bed_m: 0.9 });
    expect(buried.stalled).toBe(true);
    expect(buried.torque_Nm).toBe(DEFAULT_KIT.stallTorque_Nm);
    expect(buried.rate_ms).toBe(0);
  });
  it('is none while the stem stands', () => expect(drilled({ turning: false }).torque_Nm).toBe(0));
});

describe('pull', () => {
  it('grows with the bed beyond what the rope can take', () => {
    const pulls = [0, 0.2, 0.5, 0.8].map((bed_m) => pull_N(DEFAULT_KIT, 20, 1000, bed_m, 0, 0));
    pulls.slice(1).forEach((p, i) => expect(p).toBeGreaterThan(pulls[i]));
    expect(pulls[2]).toBeLessThan(DEFAULT_KIT.pullLimit_N);
    expect(pulls[3]).toBeGreaterThan(DEFAULT_KIT.pullLimit_N);
  });
  it('grows with clay that grips the bit', () => {
    const grip_N = pull_N(DEFAULT_KIT, 10, 1000, 0, 1, 20) - pull_N(DEFAULT_KIT, 10, 1000, 0, 0, 20);
    expect(grip_N).toBeCloseTo(Math.PI * 0.1 * 0.3 * 20e3, 6);
  });
  it('frees more often with flow and in a low bed, never surely', () => {
    expect(freeingChance(0, 0.002, 0.3)).toBe(0);
    expect(freeingChance(0.002, 0.002, 0.5)).toBeCloseTo(0.5 * Math.exp(-1), 9);
    expect(freeingChance(0.001, 0.002, 0.5)).toBeLessThan(freeingChance(0.002, 0.002, 0.5));
    expect(freeingChance(1, 0.002, 0)).toBe(1);
  });
});

describe('balling', () => {
  const after = (seconds: number, start: number, clay_m3s: number, flow_m3s: number, cuts: boolean): number => {
    let b = start;
    for (let t = 0; t < seconds; t++) b = ballingAfter(b, clay_m3s, flow_m3s, cuts, 1);
    return b;
  };
  it('packs the bit in two minutes when the flow cannot carry the clay away', () => {
    expect(after(119, 0, 5e-5, 0.002, true)).toBeLessThan(1);
    expect(after(121, 0, 5e-5, 0.002, true)).toBe(1);
    expect(after(60, 0, 1e-6, 0, true)).toBeCloseTo(0.5, 9);
  });
  it('stays as it is while the flow copes, and off bottom without flow', () => {
    expect(after(60, 0.4, 1e-6, 0.002, true)).toBe(0.4);
    expect(after(60, 0.4, 0, 0, false)).toBe(0.4);
  });
  it('packed clay takes the way of the water: a little too much clay packs a little, much too much packs to the end', () => {
    const fed = (over: number): number => {
      let b = 0;
      for (let t = 0; t < 600; t++) b = ballingAfter(b, (over * 2.5e-6) / (1 + 4 * b), 0.002, true, 1);
      return b;
    };
    expect(fed(0.99)).toBe(0);
    expect(fed(1.4)).toBeGreaterThan(0.1);
    expect(fed(1.4)).toBeLessThan(0.5);
    expect(fed(1.6)).toBe(1);
  });
  it('washes off in a minute or two off bottom with flow', () => {
    expect(after(60, 0.5, 0, 0.002, false)).toBeCloseTo(0.5 * Math.exp(-1), 2);
    expect(after(300, 1, 0, 0.002, false)).toBeLessThan(0.02);
  });
});
