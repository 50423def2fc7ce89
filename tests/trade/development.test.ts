// Development: what drilling left round the screen, and what brings it out.
import { describe, expect, it } from 'vitest';
import { act, verdictOf, type Run } from '../../sim';
import { packedAndSealed, seconds, setWell } from '../setWell';
import { does } from '../rig';

/** A hole drilled with a working fluid that went .13 m into the sand. */
const mudded = (): Run => setWell({ fill: packedAndSealed(), invaded_m: 0.13, dose_ratio: 1 });
const share = (run: Run): number => verdictOf(run)!.yield.share_frac;

function develop(run: Run, method: string, hours: number, pace = {}): Run {
  does(run, 'develop', { method, time_s: hours * 3600, ...pace });
  seconds(run, hours * 3600 + 1);
  return run;
}

function breakIt(run: Run): Run {
  does(run, 'breakPolymer', { dose_mgL: 1000, contact_s: 6 * 3600 });
  seconds(run, 6 * 3600 + 200);
  return run;
}

it('a polymer hole invaded past .12 m gives less than half at hand-over; developed, over 85 %', () => {
  const run = mudded();
  expect(run.state.well!.ring.invaded_m[3]).toBeGreaterThan(0.12);
  expect(share(run)).toBeLessThan(0.5);
  expect(verdictOf(run)!.yield.limitedBy).toBe('screen');
  develop(breakIt(run), 'surge', 2);
  expect(share(run)).toBeGreaterThan(0.85);
});

it('left alone it gets better as the polymer rots, but never whole', () => {
  const run = mudded();
  const fresh = share(run);
  seconds(run, 3 * 86400);
  const rotted = share(run);
  expect(rotted).toBeGreaterThan(fresh + 0.1);
  expect(rotted).toBeLessThan(0.85);
});

describe('an hour of', () => {
  const after = new Map(
    ['bail', 'overPump', 'backWash', 'surge'].map((method) => [method, develop(mudded(), method, 1)]),
  );
  const mudLeft = (method: string): number => after.get(method)!.state.well!.ring.mud_frac[4];

  it('surging brings out most, bailing least', () => {
    expect(mudLeft('surge')).toBeLessThan(mudLeft('backWash'));
    expect(mudLeft('backWash')).toBeLessThan(mudLeft('overPump'));
    expect(mudLeft('overPump')).toBeLessThan(mudLeft('bail'));
    expect(mudLeft('bail')).toBeLessThan(1);
  });
  it('pumping one way only bridges the grains; surging breaks the bridges', () => {
    const pumped = after.get('overPump')!;
    expect(pumped.state.well!.ring.bridged_frac[4]).toBeGreaterThan(0.3);
    const bridged = share(develop(develop(mudded(), 'surge', 4), 'overPump', 1));
    const freed = share(develop(develop(develop(mudded(), 'surge', 4), 'overPump', 1), 'surge', 1));
    expect(freed).toBeGreaterThan(bridged + 0.02);
  });
  it('any of them clears the water a little', () => {
    for (const run of after.values()) {
      const { sand_mgL, turbidity_NTU } = verdictOf(run)!;
      const before = verdictOf(mudded())!;
      expect(sand_mgL).toBeLessThan(before.sand_mgL);
      expect(turbidity_NTU).toBeLessThan(before.turbidity_NTU);
    }
  });
});

it('chlorine first: surging the same hour brings out more', () => {
  const straight = develop(mudded(), 'surge', 1);
  const broken = develop(breakIt(mudded()), 'surge', 1);
  expect(broken.state.well!.ring.mud_frac[4]).toBeLessThan(0.5 * straight.state.well!.ring.mud_frac[4]);
  expect(broken.record.events.some(({ name }) => name === 'polymerBroken')).toBe(true);
});

it('chlorine leaves clay on the wall alone, surging for a day does not', () => {
  const caked = (): Run => {
    const run = mudded();
    const { ring } = run.state.well!;
    ring.cake_s.fill(1e6);
    ring.clay_frac.fill(1);
    return run;
  };
  const fresh = share(caked());
  expect(fresh).toBeLessThan(0.1);
  expect(share(breakIt(caked()))).toBeLessThan(fresh + 0.05);
  expect(share(develop(develop(breakIt(caked()), 'surge', 4), 'surge', 4))).toBeGreaterThan(0.3);
});

it('a screen with few slots is washed more slowly', () => {
  const few = develop(
    setWell({ plan: { slotRows: 1 }, fill: packedAndSealed(), invaded_m: 0.13, dose_ratio: 1 }),
    'surge',
    1,
  );
  const many = develop(mudded(), 'surge', 1);
  expect(few.state.well!.ring.mud_frac[4]).toBeGreaterThan(many.state.well!.ring.mud_frac[4] + 0.1);
});

it('the jar goes from muddy to clear, and the crew is told once', () => {
  const run = breakIt(mudded());
  develop(run, 'bail', 0.1);
  const muddy = run.state.well!.jar!.turbidity_NTU;
  develop(run, 'surge', 4);
  expect(act(run, 'yieldTest', { lift: 'suction', rate1_Lmin: 15, step_s: 600, recovery_s: 600 }).kind).toBe('done');
  seconds(run, 1400);
  expect(muddy).toBeGreaterThan(100);
  expect(run.state.well!.jar!.turbidity_NTU).toBeLessThan(5);
  expect(run.record.events.filter(({ name }) => name === 'wellClear')).toHaveLength(1);
});
