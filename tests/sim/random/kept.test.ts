// Random runs that once went wrong stay sound.
import { expect, it } from 'vitest';
import { ticksFor } from './jobs';
import { trial } from './trial';

const LONG_TICKS = 14_400;

// 4974: powder left behind in an unlined pit, and a vanishing rest of water poured on it, made its thickness no number.
// 2224: what had run out of the hole before the pit was dug was counted nowhere.
// 3147, 3683: a stick read while the pit ran over, a last rod that took longer than reckoned: signed figures, no faults.
it.each([2224, 3147, 3683, 4974])('random run %i is sound to its end', { timeout: 60_000 }, (n) => {
  expect(trial(n, { ticks: ticksFor(n, LONG_TICKS), replay: true, restore: false }).fault).toBeNull();
});
