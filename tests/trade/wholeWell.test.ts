// From the last rod to the hand-over on one run: a polymer hole in sand under three metres of clay.
import { describe, expect, it } from 'vitest';
import {
  hashRun,
  restoreRun,
  sensesOf,
  snapshotOf,
  step,
  verdictOf,
  type Run,
  type Snapshot,
  type Verdict,
} from '../../sim';
import { does, steps } from '../rig';
import { drilledOut, idle, joinAll, keptFull, pulledOut } from '../wellRig';
import { expectBalanced, told } from './site';

const DEPTH_m = 9;

/** Casing landed, pack and seal in, everything set. */
function built(): Run {
  const run = drilledOut(DEPTH_m, { slotWidth_mm: 0.5, sealFrom_m: 0, sealTo_m: 4 }, { seed: 3 });
  run.state.stocks.chlorine_kg = 4;
  joinAll(run);
  pulledOut(run);
  does(run, 'runCasing', { fill: true, speed_ms: 0.1 });
  keptFull(run);
  expect(run.state.completion.casing.look).toBe('landed');
  does(run, 'pourPack', { pack: 'pack1', volume_L: 22, rate_Lmin: 2 });
  keptFull(run, 120);
  does(run, 'placeSeal', { seal: 'bentoniteGranules', volume_L: 20, rate_Lmin: 2 });
  keptFull(run, 120);
  does(run, 'waitFor', { until: 'set', cap_s: 20000 });
  while (run.state.wait) step(run);
  return run;
}

const frozen = ((): { scenario: Run['scenario']; snapshot: Snapshot } => {
  const run = built();
  return { scenario: run.scenario, snapshot: snapshotOf(run) };
})();
const fresh = (): Run => restoreRun(frozen.scenario, frozen.snapshot);

function finished(run: Run): Verdict {
  does(run, 'breakPolymer', { dose_mgL: 1000, contact_s: 6 * 3600 });
  idle(run);
  for (const [method, time_s] of [
    ['surge', 3600],
    ['bail', 900],
    ['surge', 5400],
  ] as const) {
    does(run, 'develop', { method, time_s });
    idle(run);
  }
  does(run, 'yieldTest', { lift: 'suction', rate1_Lmin: 8, rate2_Lmin: 15, step_s: 3600, recovery_s: 3600 });
  idle(run);
  does(run, 'disinfect', { dose_mgL: 75, contact_s: 8 * 3600 });
  idle(run);
  does(run, 'develop', { method: 'overPump', time_s: 3600, rate_Lmin: 20 });
  idle(run);
  does(run, 'headWorks', { apron_m: 1.5, drain_m: 4, cap: true, lift: 'suction' });
  idle(run);
  does(run, 'handOver');
  return verdictOf(run)!;
}

describe('as built, not developed', () => {
  it('the ring is full of polymer, and the well gives less than half', () => {
    const run = fresh();
    const verdict = verdictOf(run)!;
    expect(run.state.well!.ring.dose_ratio[4]).toBeGreaterThan(0.5);
    expect(Math.max(...run.state.well!.ring.invaded_m)).toBeGreaterThan(0.12);
    expect(verdict.yield.share_frac).toBeLessThan(0.5);
    expect(verdict.yield.limitedBy).toBe('screen');
    expect(verdict.turbidity_NTU).toBeGreaterThan(50);
    expectBalanced(run);
  });
  it('the seal lies where it was put and holds for years, the ground beside it is told', () => {
    const { leak } = verdictOf(fresh())!;
    expect(leak.sealedLength_m).toBeGreaterThan(3);
    expect(leak.annulus_d).toBeGreaterThan(5 * 365);
    expect(leak.ground_d).toBeGreaterThan(365);
  });
});

describe('developed, tested, disinfected, handed over', () => {
  const run = fresh();
  const verdict = finished(run);
  it('gives over 85 % of what the same screen would in clean ground, clear and without sand', () => {
    expect(verdict.yield.share_frac).toBeGreaterThan(0.85);
    expect(verdict.turbidity_NTU).toBeLessThan(5);
    expect(verdict.sand_mgL).toBeLessThan(5);
  });
  it('serves its people by the pump on it', () => {
    expect(verdict).toMatchObject({ fitted: 'suction', fittedWorks: true });
    expect(verdict.people.served).toBeGreaterThan(verdict.people.asked);
    expect(verdict.disinfection).toMatchObject({ done: true, enough: true });
    expect(verdict.disinfection.left_mgL).toBeLessThan(0.5);
    expect(verdict.water).toMatchObject({ class: 'fresh', laboratoryNeeded: true });
  });
  it('the crew has read its test', () => {
    const { test, water } = sensesOf(run).well!;
    expect(test).toMatchObject({ refusal: null, over: true });
    expect(test!.lowest_m).toBeGreaterThan(test!.static_m);
    expect(water).toMatchObject({ jar: 'clear', sand: 'none' });
    expect(told(run, 'wellClear')).toBeGreaterThan(0);
  });
  it('the job is over and the books balance', () => {
    expect(run.state.machine.job).toBe('handedOver');
    expect(sensesOf(run).ended).toBe(true);
    expectBalanced(run);
  });
  it('plays again to the same hash', () => {
    const again = fresh();
    finished(again);
    steps(again, 60);
    steps(run, 60);
    expect(hashRun(again)).toBe(hashRun(run));
  });
});
