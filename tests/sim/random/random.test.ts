// Whatever a crew does: nothing negative, nothing infinite, everything balanced, and the same again on replay and from a snapshot.
import { expect, it } from 'vitest';
import { EVENT_NAMES } from '../../../sim';
import { ticksFor } from './jobs';
import { added } from './tally';
import { trial } from './trial';

const RUNS = 300;
const TICKS = 1200;

/** Share of all events that so few runs must meet; the sweep of 5,000 must meet them all. */
const MET_frac = 0.7;

it(`${RUNS} random runs of ${TICKS / 60} job minutes keep every invariant`, { timeout: 300_000 }, () => {
  const faults: string[] = [];
  const tallies = [];
  for (let n = 0; n < RUNS; n++) {
    const { tally, fault } = trial(n, { ticks: ticksFor(n, TICKS), replay: n % 10 === 0, restore: n % 10 === 5 });
    if (fault) faults.push(`run ${n}, ${fault}`);
    tallies.push(tally);
  }
  expect(faults).toEqual([]);
  // The runs must get somewhere, or they prove nothing.
  const { tried, taken, drilled_m, events } = added(tallies);
  expect(taken / tried).toBeGreaterThan(0.5);
  expect(drilled_m).toBeGreaterThan(RUNS * 0.1);
  const met = EVENT_NAMES.filter((name) => events[name] !== undefined);
  expect(met.length).toBeGreaterThan(EVENT_NAMES.length * MET_frac);
});
