// No two files need each other to load.
import { expect, it } from 'vitest';
import { importsOf, ringsIn } from './cycles';

it('no ring of imports in sim, lessons or src', () => {
  const imports = importsOf();
  expect(imports.size).toBeGreaterThan(50);
  expect([...imports.values()].flat().length).toBeGreaterThan(50);
  expect(ringsIn(imports)).toEqual([]);
});

it('a planted ring is found, and a fork that meets again is none', () => {
  const ring = new Map([
    ['a', ['b']],
    ['b', ['c', 'd']],
    ['c', ['a']],
    ['d', []],
  ]);
  expect(ringsIn(ring)).toEqual(['a -> b -> c -> a']);
  const fork = new Map([
    ['a', ['b', 'c']],
    ['b', ['d']],
    ['c', ['d']],
    ['d', []],
  ]);
  expect(ringsIn(fork)).toEqual([]);
});
