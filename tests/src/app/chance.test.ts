// Numbers of grounds, ids of runs, numbers of learners.
import { expect, it } from 'vitest';
import { LARGEST_SEED, newId, newSeed, seedOf } from '../../../src/app/chance';
import { runFileName } from '../../../src/app/saveFile';
import { numberedId, whoWords } from '../../../src/app/who';

it('takes whole numbers from 0 to the largest for a ground, and nothing else', () => {
  expect(seedOf('0')).toBe(0);
  expect(seedOf(' 42 ')).toBe(42);
  expect(seedOf(String(LARGEST_SEED))).toBe(LARGEST_SEED);
  for (const wrong of ['', '-1', '1.5', '1e3', String(LARGEST_SEED + 1), '99999999999', 'x'])
    expect(seedOf(wrong), wrong).toBeNull();
});

it('draws new grounds and ids that differ', () => {
  const seeds = Array.from({ length: 50 }, newSeed);
  expect(new Set(seeds).size).toBeGreaterThan(45);
  expect(seeds.every((seed) => seedOf(String(seed)) === seed)).toBe(true);
  expect(new Set(Array.from({ length: 200 }, newId)).size).toBe(200);
});

it('calls a learner by picture, by number, or as the file says', () => {
  expect(numberedId('7')).toBe('T-07');
  expect(numberedId('120')).toBe('T-120');
  for (const wrong of ['0', '1000', '-3', '1.5', '']) expect(numberedId(wrong), wrong).toBeNull();
  expect(whoWords('fish')).toBe('Fish');
  expect(whoWords('T-07')).toBe('T-07');
  expect(whoWords('')).toBe('somebody');
  expect(whoWords('Crew of Low Ferry')).toBe('Crew of Low Ferry');
});

it('names files with letters, digits and hyphens only', () => {
  expect(runFileName('first-rods', 'T-01', Date.UTC(2026, 10, 25, 9, 31))).toBe(
    'first-rods-T-01-2026-11-25-09-31.json',
  );
  expect(runFileName('first-rods', '../../a b', 0)).toMatch(/^[\w-]+\.json$/);
});
