// Random runs that once went wrong stay sound.
import { expect, it } from 'vitest';
import { ticksFor } from './jobs';
import { trial } from './trial';

const LONG_TICKS = 14_400;

// 4974: powder left behind in an unlined pit, and a vanishing rest of water poured on it, made its thickness no number.
it.each([4974])('random run %i is sound to its end', { timeout: 60_000 }, (n) => {
  expect(trial(n, { ticks: ticksFor(n, LONG_TICKS), replay: true, restore: false }).fault).toBeNull();
});
