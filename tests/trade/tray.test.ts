// The tray and the stop: what was cut below shows above only after the climb, and what was not cleared falls back.
import { describe, expect, it } from 'vitest';
import { bedHeight_m, createRun, type GroundRecipe, type Run } from '../../sim';
import { clearHole, does, drillRod, drillTo, nextRod, rigScenario, steps, until } from '../rig';

/** Sand below 7 m of silt: the mud of the silt lines the sand, and the hole keeps its fluid. */
const SAND_UNDER_SILT: GroundRecipe['layers'] = [
  { kind: 'silt', thickness_m: [7, 7] },
  { kind: 'mediumSand', thickness_m: [40, 40] },
];

function origin_m(run: Run): number {
  const caught = run.record.events.filter((e) => e.name === 'sampleCaught').at(-1)!;
  return caught.data.origin_m as number;
}

describe('a sample caught at once', () => {
  it('comes from higher up than the bit: the label with the depth of the bit is too deep by the climb', () => {
    const run = createRun(rigScenario({ layers: SAND_UNDER_SILT }));
    drillTo(run, 9);
    clearHole(run, 60);
    nextRod(run);
    does(run, 'setThrottle', { throttle_frac: 1 });
    does(run, 'setTurning', { on: true });
    does(run, 'setFeed', { feed_frac: 1 });
    until(run, ({ state }) => state.hole.depth_m > 10.2);
    const bit_m = run.state.stem.bit_m;
    does(run, 'setTurning', { on: false });
    does(run, 'catchSample', { label_m: bit_m });
    until(run, ({ state }) => state.tasks.length === 0);
    // The bit went down for as long as the grains were under way.
    const late_m = bit_m - origin_m(run);
    const rate_ms = run.record.trace.columns.sinking_ms[run.record.trace.length - 8];
    const climb_s = bit_m / run.work.flowResult.annulusVelocity_ms;
    expect(late_m).toBeGreaterThan(0.5 * rate_ms * climb_s);
    expect(late_m).toBeGreaterThan(0.1);
  });

  it('caught after the climb, with the feed off, it comes from the bit', () => {
    const run = createRun(rigScenario({ layers: SAND_UNDER_SILT }));
    drillTo(run, 9);
    const bit_m = run.state.stem.bit_m;
    steps(run, 25);
    does(run, 'setTurning', { on: false });
    does(run, 'catchSample', { label_m: bit_m });
    until(run, ({ state }) => state.tasks.length === 0);
    expect(Math.abs(origin_m(run) - bit_m)).toBeLessThan(0.5);
  });
});

describe('a stop', () => {
  const drilled = () => {
    const run = createRun(rigScenario({ layers: SAND_UNDER_SILT }));
    drillTo(run, 9, 1);
    return run;
  };
  const fillAfterStop = (run: Run): number => {
    does(run, 'setTurning', { on: false });
    does(run, 'setThrottle', { throttle_frac: 0 });
    steps(run, 300);
    return bedHeight_m(run.state.hole, run.work.place);
  };

  it('without clearing buries the bit, which is noticed when the stem is turned again', () => {
    const run = drilled();
    const told = () => run.record.events.filter((e) => e.name === 'buried' && e.tick > run.state.tick - 320).length;
    expect(fillAfterStop(run)).toBeGreaterThan(0.05);
    expect(told()).toBe(0);
    does(run, 'setTurning', { on: true });
    steps(run, 1);
    expect(told()).toBe(1);
  });

  it('after clearing leaves it free', () => {
    const run = drilled();
    clearHole(run, 150);
    const cleared = fillAfterStop(run);
    expect(run.record.events.some((e) => e.name === 'buried' && e.tick > run.state.tick - 320)).toBe(false);
    expect(cleared).toBeLessThan(0.05);
  });

  it('adding a rod takes a rod of common length, 1.5 m (common practice, no source)', () => {
    const run = createRun(rigScenario({ layers: SAND_UNDER_SILT }));
    drillRod(run, 1);
    expect(run.state.hole.depth_m).toBeCloseTo(1.5, 2);
  });
});
