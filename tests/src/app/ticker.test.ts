// The clock's arithmetic: whole job seconds out of uneven pictures.
import { describe, expect, it } from 'vitest';
import { createTicker } from '../../../src/app/ticker';

describe('the ticker', () => {
  it('owes nothing at the first picture', () => {
    expect(createTicker().due(5000, 60)).toBe(0);
  });

  it('gives as many seconds as the speed over any stretch of pictures', () => {
    for (const speed of [1, 5, 20, 60] as const) {
      const ticker = createTicker();
      let seconds = ticker.due(0, speed);
      for (let picture = 1; picture <= 600; picture++) seconds += ticker.due((picture * 1000) / 60, speed);
      expect(Math.abs(seconds - 10 * speed)).toBeLessThanOrEqual(1);
    }
  });

  it('stands still when paused', () => {
    const ticker = createTicker();
    ticker.due(0, 0);
    expect(ticker.due(100, 0)).toBe(0);
    expect(ticker.due(200, 0)).toBe(0);
  });

  it('does not make up for a page that slept', () => {
    const ticker = createTicker();
    ticker.due(0, 60);
    expect(ticker.due(3_600_000, 60)).toBe(15);
  });

  it('forgets what was left over when reset', () => {
    const ticker = createTicker();
    ticker.due(0, 1);
    ticker.due(240, 1);
    ticker.reset();
    ticker.due(10_000, 1);
    expect(ticker.due(10_200, 1)).toBe(0);
  });
});
