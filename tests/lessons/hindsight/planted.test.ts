// Six planted mistakes, each in the drill about it: looking back, the stretch with the mistake is among the three dearest.
import { expect, test } from 'vitest';
import { lookFor, MISTAKES } from './planted';

/** Parted into so many stretches at most. */
const STRETCHES = 30;

test.each(MISTAKES.map((mistake) => [mistake.name, mistake] as const))(
  '%s is found',
  (_name, mistake) => {
    const found = lookFor(mistake, 1, STRETCHES);
    expect(found.start - found.score).toBeGreaterThan(5);
    expect({ made_s: found.made_s, dearest: found.dearest, hit: found.hit }).toMatchObject({ hit: true });
  },
  120_000,
);
