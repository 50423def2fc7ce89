// A place that clay has closed: the stem stops over it, and a turning bit cuts its way through.
import { describe, expect, it } from 'vitest';
import { createRun, step, type Run } from '../../../sim';
import { moveStem } from '../../../sim/run/stem';
import { oneSoil, rigScenario } from '../../rig';

/** Stiff clay drilled to 3 m, its cell from 2 to 2.25 m closed, the bit at 1 m on its way down. */
function closedAt2m(radius_m: number): Run {
  const run = createRun(rigScenario({ layers: oneSoil('stiffClay'), rods: 3, starter_m: 3 }));
  const { hole, stem } = run.state;
  hole.wall.open_s.fill(60, 0, 12);
  hole.radius_m[8] = radius_m;
  hole.wall.squeezed_m[8] = 0.05 - radius_m;
  stem.bit_m = 1;
  stem.motion_m = 2;
  stem.motion_ms = 0.1;
  return run;
}

describe('a closed place in the hole', () => {
  it('stops a stem that is let down, right over it', () => {
    for (const radius_m of [0, 0.02, 0.045]) {
      const run = closedAt2m(radius_m);
      for (let s = 0; s < 40; s++) moveStem(run);
      expect(run.state.stem.bit_m).toBeCloseTo(2, 9);
      expect(run.state.stem.motion_m).toBe(0);
    }
  });

  it('lets a bit past that it grips only lightly', () => {
    const run = closedAt2m(0.0485);
    for (let s = 0; s < 40; s++) moveStem(run);
    expect(run.state.stem.bit_m).toBeCloseTo(3, 9);
  });

  it('is cut open by a turning bit within minutes, and then lets the stem down', () => {
    const run = closedAt2m(0);
    const { stem, hole } = run.state;
    stem.turning = true;
    let solids_m3 = -run.state.boundary.solidsIn_m3.reduce((a, b) => a + b, 0);
    for (let s = 0; s < 60; s++) step(run);
    expect(stem.bit_m).toBeCloseTo(2, 9);
    expect(hole.radius_m[8]).toBeGreaterThan(0);
    for (let s = 0; s < 240; s++) {
      stem.motion_m = 2;
      stem.motion_ms = 0.1;
      step(run);
    }
    expect(stem.bit_m).toBeGreaterThan(2.25);
    solids_m3 += run.state.boundary.solidsIn_m3.reduce((a, b) => a + b, 0);
    expect(solids_m3).toBeGreaterThan(1e-4);
  });
});
