// Pack and backfill round the casing, on whole runs. Trade rules are common practice, no source, unless one is named.
import { describe, expect, it } from 'vitest';
import {
  act,
  FILL_NAMES,
  GROUND_FILL,
  restoreRun,
  sensesOf,
  snapshotOf,
  type FillName,
  type Payload,
  type Run,
} from '../../sim';
import { cellRoom_m3, standing_m3 } from '../../sim/completion/annulus';
import { standpipe } from '../../sim/run/annulus';
import { does, steps } from '../rig';
import { drilledOut, idle, joinAll, keptFull, landed, pulledOut } from '../wellRig';
import { expectBalanced, told } from './site';

const annulus = (run: Run) => run.state.completion.annulus!;

/** All of one fill that stands in the ring, L. */
function standing_L(run: Run, fill: FillName): number {
  const { cells, fill_m3 } = annulus(run);
  const f = FILL_NAMES.indexOf(fill);
  return 1000 * fill_m3.subarray(f * cells, (f + 1) * cells).reduce((sum, v) => sum + v, 0);
}

function sounded_m(run: Run): number {
  does(run, 'sound');
  idle(run);
  return run.state.completion.sounded!.top_m;
}

/** Depth down to which the ring has no void from the bottom up, m. */
function solidTop_m(run: Run): number {
  const ring = annulus(run);
  let i = ring.used - 1;
  while (i >= 0 && standing_m3(ring, i) > 0.98 * cellRoom_m3(ring, i, standpipe(run))) i--;
  return (i + 1) * ring.dz_m;
}

const pour = (run: Run, payload: Payload): void => {
  does(run, 'pourPack', payload);
  keptFull(run);
};

describe('a pack', () => {
  it('poured slowly fills the ring from below, by the room that there is', () => {
    const run = landed();
    pour(run, { pack: 'pack1', volume_L: 20, rate_Lmin: 2 });
    steps(run, 200);
    expect(told(run, 'packBridged')).toBe(0);
    expect(standing_L(run, 'pack1')).toBeCloseTo(20, 3);
    // 4.74 L to the metre round 63 mm in 100 mm, 7.85 L below the shoe: 20 L reach some 4 m up.
    const top_m = sounded_m(run);
    expect(top_m).toBeGreaterThan(4.5);
    expect(top_m).toBeLessThan(5.6);
    expect(Math.abs(top_m - solidTop_m(run))).toBeLessThan(0.5);
    expect(run.state.completion.poured).toEqual([{ fill: 'pack1', volume_m3: expect.closeTo(0.02, 9) as number }]);
    expectBalanced(run);
  });

  it('poured too fast bridges, and sounding shows it', () => {
    const run = landed();
    pour(run, { pack: 'pack1', volume_L: 20, rate_Lmin: 20 });
    steps(run, 200);
    expect(told(run, 'packBridged')).toBe(1);
    // Nobody sees it: the crew only finds the pack higher than so many litres can stand.
    expect(sensesOf(run).felt).not.toContain('packBridged');
    expect(sounded_m(run)).toBeLessThan(4);
    expect(solidTop_m(run)).toBeGreaterThan(6);
    expectBalanced(run);
  });

  it('bridges whatever the rate where a grain is over a fifth of the gap (Bulletin 74-90)', () => {
    // 18.5 mm round 63 mm in 100 mm: grains over 3.7 mm jam one by one.
    const coarse = landed();
    pour(coarse, { pack: 'pack4', volume_L: 8, rate_Lmin: 0.5 });
    expect(told(coarse, 'packBridged')).toBe(1);
    const fine = landed();
    pour(fine, { pack: 'pack07', volume_L: 8, rate_Lmin: 0.5 });
    expect(told(fine, 'packBridged')).toBe(0);
  });

  it('a bridge comes down when the well is surged', () => {
    const run = landed();
    pour(run, { pack: 'pack1', volume_L: 12, rate_Lmin: 20 });
    const bridge = annulus(run).bridged.indexOf(1);
    expect(solidTop_m(run)).toBeGreaterThan((bridge + 2) * 0.25);
    does(run, 'develop', { method: 'surge', time_s: 600 });
    idle(run);
    steps(run, 200);
    expect(annulus(run).bridged.every((held) => held === 0)).toBe(true);
    expect(solidTop_m(run)).toBeLessThan(bridge * 0.25);
    expectBalanced(run);
  });

  it('stops when the ring is full, and only what went in is paid', () => {
    const run = landed();
    const before = run.state.stocks.wellSpent_marks;
    pour(run, { pack: 'pack1', volume_L: 100, rate_Lmin: 40 });
    const { poured } = run.state.completion;
    expect(poured[0].volume_m3).toBeLessThan(0.06);
    expect(run.state.stocks.wellSpent_marks - before).toBeCloseTo(poured[0].volume_m3 * 1000 * 0.05, 9);
    steps(run, 300);
    expect(act(run, 'pourPack', { pack: 'pack1', volume_L: 5, rate_Lmin: 5 })).toMatchObject({ reason: 'annulusFull' });
  });
});

describe('without a pack', () => {
  it('the sand closes on the screen when the level falls', () => {
    const run = landed();
    does(run, 'sound');
    steps(run, 7200);
    const ring = annulus(run);
    const f = GROUND_FILL * ring.cells;
    // Beside the screen, 5.5 to 8.5 m.
    for (let i = 22; i < 34; i++)
      expect(ring.fill_m3[f + i] / cellRoom_m3(ring, i, standpipe(run))).toBeGreaterThan(0.9);
    // The clay above stands.
    expect(ring.fill_m3[f + 4]).toBe(0);
    expect(ring.radius_m[4]).toBeCloseTo(0.05, 3);
    expectBalanced(run);
  });

  it('and stays open as long as it is kept full', () => {
    const run = landed();
    does(run, 'sound');
    idle(run);
    keptFull(run, 900);
    expect(annulus(run).put_m3[GROUND_FILL]).toBeLessThan(0.004);
  });
});

it('a hole without a casing can be filled in, and then takes none', () => {
  const run = drilledOut(9);
  expect(act(run, 'backfill', { material: 'clay', volume_L: 10 })).toMatchObject({ reason: 'stemInHole' });
  pulledOut(run);
  does(run, 'backfill', { material: 'clay', volume_L: 40 });
  idle(run);
  expect(run.state.completion.poured).toEqual([{ fill: 'clay', volume_m3: expect.closeTo(0.04, 9) as number }]);
  joinAll(run);
  does(run, 'runCasing', { fill: true, speed_ms: 0.1 });
  idle(run);
  // 40 L fill five metres of a hole of 100 mm.
  expect(run.state.completion.casing).toMatchObject({ look: 'hung' });
  expect(run.state.completion.casing.shoe_m).toBeLessThan(4);
});

it('a well given up for another hole leaves its casing there', () => {
  const run = landed();
  const { ground } = run.scenario;
  const two = restoreRun({ ...run.scenario, grounds: [ground, ground] }, snapshotOf(run));
  does(two, 'pourPack', { pack: 'pack1', volume_L: 4, rate_Lmin: 2 });
  idle(two);
  does(two, 'abandon', { move: true });
  idle(two);
  expect(two.state.well).toBeNull();
  expect(two.state.completion).toMatchObject({ plan: null, annulus: null, casing: { look: 'none', shoe_m: 0 } });
  expect(two.state.oldHoles[0]).toMatchObject({ casingLost_m: 9.3, rodsLost: 0 });
  expect(two.state.machine.job).toBe('siteSetup');
  // It is paid all the same.
  expect(two.state.stocks.wellSpent_marks).toBeGreaterThan(30);
  steps(two, 60);
  expectBalanced(two);
});
