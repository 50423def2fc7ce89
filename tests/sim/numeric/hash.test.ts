// The fingerprint: every bit, every name, every length counts; nothing endless or unnumbered gets in.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hashOf } from '../../../sim/numeric/hash';

test('is 16 hex digits and stays what it was', () => {
  expect(hashOf({ a: 1 })).toMatch(/^[0-9a-f]{16}$/);
  // Golden: a change here breaks every saved run.
  expect(hashOf({ depth_m: 4.5, cells: [1, 2, 3], name: 'T-01', on: true, none: null })).toBe('d449b5e51a362dd6');
});

test('ignores the order of keys but not their names', () => {
  expect(hashOf({ a: 1, b: 2 })).toBe(hashOf({ b: 2, a: 1 }));
  expect(hashOf({ a: 1, b: 2 })).not.toBe(hashOf({ a: 1, c: 2 }));
  expect(hashOf({ a: 1, b: 2 })).not.toBe(hashOf({ a: 2, b: 1 }));
});

test('minus zero counts as zero', () => {
  expect(hashOf([-0])).toBe(hashOf([0]));
});

test('a typed array counts as the list of its numbers', () => {
  expect(hashOf(new Float64Array([1, 2.5]))).toBe(hashOf([1, 2.5]));
  expect(hashOf([1, 2])).not.toBe(hashOf([1, 2, 0]));
  expect(hashOf([[1], [2]])).not.toBe(hashOf([[1, 2]]));
});

test('kinds of value do not collide', () => {
  const values = [0, 1, '', '0', '1', true, false, null, [], {}, [0], [null], { '': 0 }];
  expect(new Set(values.map((v) => hashOf(v))).size).toBe(values.length);
});

test('flipping the last bit of any one number changes it', () => {
  const bits = new DataView(new ArrayBuffer(8));
  const flipped = (x: number): number => {
    bits.setFloat64(0, x);
    bits.setUint8(7, bits.getUint8(7) ^ 1);
    return bits.getFloat64(0);
  };
  fc.assert(
    fc.property(
      fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), { minLength: 1, maxLength: 40 }),
      fc.nat(),
      (list, at) => {
        const i = at % list.length;
        // The smallest number of all and minus zero are the two values whose flip lands on zero.
        fc.pre(flipped(list[i]) !== 0 && list[i] !== 0);
        const changed = [...list];
        changed[i] = flipped(list[i]);
        expect(hashOf(changed)).not.toBe(hashOf(list));
      },
    ),
    { seed: 2, numRuns: 2000 },
  );
});

test('near states spread over all 64 bits', () => {
  const seen = new Set<string>();
  const ones = new Array<number>(64).fill(0);
  for (let i = 0; i < 4096; i++) {
    const hash = hashOf({ i });
    seen.add(hash);
    const value = BigInt(`0x${hash}`);
    for (let b = 0; b < 64; b++) if ((value >> BigInt(b)) & 1n) ones[b]++;
  }
  expect(seen.size).toBe(4096);
  for (const n of ones) expect(Math.abs(n - 2048)).toBeLessThan(200);
});

test('names the place of what cannot be hashed', () => {
  expect(() => hashOf({ pit: { water_m3: [1, NaN] } })).toThrow('pit.water_m3[1]');
  expect(() => hashOf({ a: Infinity })).toThrow("'a'");
  expect(() => hashOf({ a: undefined })).toThrow("'a'");
  expect(() => hashOf({ a: new Float64Array([NaN]) })).toThrow('a[0]');
  expect(() => hashOf({ f: () => 1 })).toThrow("'f'");
});
