// Grass in the pit: what is not afloat hangs on the strainer, as much of it as is blocked.
import { expect, it } from 'vitest';
import { caughtBlades } from '../../../src/cutaway/grass';

it('hangs on the strainer in the measure in which that is blocked', () => {
  expect([0, 0.3, 0.5, 1, 1.2].map(caughtBlades)).toEqual([0, 2, 4, 8, 8]);
});
