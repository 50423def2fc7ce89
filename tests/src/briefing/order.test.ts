// The order of a practice: which depths can be typed, and what is made of an order kept on the device.
import { expect, it } from 'vitest';
import { depthOf, keptOrder } from '../../../src/screens/briefing/order';

it.each([
  ['20', 20],
  [' 12.5 ', 12.5],
  ['7,5', 7.5],
  ['3', 3],
  ['40', 40],
])('%s is a depth', (text, depth_m) => {
  expect(depthOf(text)).toBe(depth_m);
});

it.each(['', 'deep', '2.9', '40.1', '-5', '1e1', '12.55', '100', 'Infinity'])('%s is none', (text) => {
  expect(depthOf(text)).toBeNull();
});

const USUAL = { depth_m: 20, setting: 'flood-plain' } as const;

it('takes an order that can still be asked, and the usual one for any other', () => {
  expect(keptOrder({ depth_m: 9, setting: 'delta' }, USUAL)).toEqual({ depth_m: 9, setting: 'delta' });
  expect(keptOrder(undefined, USUAL)).toBe(USUAL);
  expect(keptOrder({ depth_m: 99, setting: 'delta' }, USUAL)).toBe(USUAL);
  expect(keptOrder({ depth_m: 9, setting: 'moon' as 'delta' }, USUAL)).toBe(USUAL);
});
