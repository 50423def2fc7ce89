// A thousand altered exercises and results, of the ten thousand of the sweep: none throws, each says what is wrong with it.
import { expect, it } from 'vitest';
import { alteredFile } from '../../sweep/altered';
import { looked } from '../../sweep/looked';

it('a thousand altered files are refused with a sentence, or used', () => {
  const came: Record<string, number> = {};
  for (let n = 0; n < 1000; n++) {
    const altered = alteredFile(n);
    const one = looked(altered);
    expect([n, altered.how, one.fault]).toEqual([n, altered.how, null]);
    came[one.came] = (came[one.came] ?? 0) + 1;
  }
  // The alterations reach behind the first check: some are taken, and of the results some are played.
  expect(Object.keys(came).length).toBeGreaterThan(12);
  expect(came['taken']).toBeGreaterThan(20);
  expect((came['reproduced'] ?? 0) + (came['notReproduced'] ?? 0)).toBeGreaterThan(40);
  expect(came['notReproduced']).toBeGreaterThan(0);
}, 120_000);
