// Grains on the screen: as many as the state holds by area, moving as fast as its fluid less their fall, and not at all by themselves.
import { describe, expect, it } from 'vitest';
import { advance, createDrift, reconcile, type Drift } from '../../../src/cutaway/drift';
import { DENSER, grainSize_px } from '../../../src/cutaway/grainSize';
import { timesSlower } from '../../../src/cutaway/pace';
import type { CutawayView } from '../../../src/cutaway/shown';
import { fixtureView } from '../../browser/cutaway/fixture';

const DEPTH_PXM = 50;
const ACROSS_PXM = 850;
const CLASSES = 8;

/** Drawn area of the fluid above the bit and of the grains of each class in it, px2. */
function areas(view: CutawayView, drift: Drift): { wanted: number[]; drawn: number[] } {
  const hole = view.hole!;
  const wanted = Array<number>(CLASSES).fill(0);
  const drawn = Array<number>(CLASSES).fill(0);
  for (let k = 2; k < CLASSES; k++) {
    for (let i = 0; i < hole.cells; i++) {
      const top_m = i * hole.dz_m;
      const bottom_m = Math.min(top_m + hole.dz_m, hole.depth_m - hole.bed_m);
      const steel_m = top_m + hole.dz_m / 2 < view.stem.bit_m ? view.kit.rodOutside_m / 2 : 0;
      const cell_px2 = 2 * (hole.radius_m[i] - steel_m) * ACROSS_PXM * Math.max(0, bottom_m - top_m) * DEPTH_PXM;
      wanted[k] += DENSER * hole.solids_frac[k * hole.stride + i] * cell_px2;
    }
  }
  for (let g = 0; g < drift.count; g++) {
    const k = drift.sizeClass[g];
    const d = grainSize_px(k, view.kit.grain_m[k], ACROSS_PXM);
    drawn[k] += 0.785 * d * d;
  }
  return { wanted, drawn };
}

describe('grains', () => {
  it('cover of each class the told multiple of the share that they take of the fluid, to within one grain', () => {
    const view = fixtureView();
    const drift = createDrift(3000);
    reconcile(drift, view, DEPTH_PXM, ACROSS_PXM);
    expect(drift.thinning).toBe(1);
    const { wanted, drawn } = areas(view, drift);
    for (let k = 2; k < CLASSES; k++) {
      const d = grainSize_px(k, view.kit.grain_m[k], ACROSS_PXM);
      expect(Math.abs(drawn[k] - wanted[k]), `class ${k}`).toBeLessThan(0.785 * d * d * 1.001);
    }
  });

  it('are thinned evenly where there is no room for all', () => {
    const view = fixtureView();
    const drift = createDrift(60);
    reconcile(drift, view, DEPTH_PXM, ACROSS_PXM);
    expect(drift.count).toBeLessThanOrEqual(60);
    expect(drift.thinning).toBeGreaterThan(2);
    const { wanted, drawn } = areas(view, drift);
    for (const k of [2, 3, 4]) expect(drawn[k] * drift.thinning).toBeGreaterThan(wanted[k] * 0.5);
  });

  it('are none where the view has no hole, and none of silt and clay', () => {
    const drift = createDrift(500);
    reconcile(drift, fixtureView(), DEPTH_PXM, ACROSS_PXM);
    expect(drift.count).toBeGreaterThan(50);
    expect([...drift.sizeClass.subarray(0, drift.count)].every((k) => k >= 2)).toBe(true);
    reconcile(drift, fixtureView({ level: 'blind' }), DEPTH_PXM, ACROSS_PXM);
    expect(drift.count).toBe(0);
  });

  it('climb at the speed of the fluid less their fall', () => {
    const view = fixtureView({ washOut: false });
    const hole = view.hole!;
    const drift = createDrift(3000);
    reconcile(drift, view, DEPTH_PXM, ACROSS_PXM);
    const before = new Map(Array.from({ length: drift.count }, (_, g) => [drift.mark[g], drift.depth_m[g]]));
    advance(drift, view, 0.5);
    let checked = 0;
    for (let g = 0; g < drift.count; g++) {
      const k = drift.sizeClass[g];
      const from_m = before.get(drift.mark[g])!;
      const i = Math.floor(from_m / hole.dz_m);
      const up_ms = hole.up_ms[i] - hole.slip_ms[k * hole.stride + i];
      expect(from_m - drift.depth_m[g]).toBeCloseTo(up_ms * 0.5, 9);
      checked++;
    }
    expect(checked).toBeGreaterThan(100);
  });

  it('leave at the mouth, end in the bed, and stay where they are when no time passes', () => {
    // Over a wash-out grains can hang for good: fast below it, slow in it.
    const view = fixtureView({ washOut: false });
    const drift = createDrift(3000);
    reconcile(drift, view, DEPTH_PXM, ACROSS_PXM);
    const still = drift.depth_m.slice(0, drift.count);
    advance(drift, view, 0);
    expect(drift.depth_m.slice(0, drift.count)).toEqual(still);
    advance(drift, view, 1000);
    expect(drift.count).toBe(0);
  });

  it('stand in the same places for the same state', () => {
    const [one, two] = [createDrift(900), createDrift(900)];
    for (const drift of [one, two]) reconcile(drift, fixtureView(), DEPTH_PXM, ACROSS_PXM);
    expect(one.depth_m).toEqual(two.depth_m);
    expect(one.across).toEqual(two.across);
  });

  it('keep their number when the state stays and they drift', () => {
    const view = fixtureView();
    const drift = createDrift(3000);
    reconcile(drift, view, DEPTH_PXM, ACROSS_PXM);
    const first = drift.count;
    for (let second = 0; second < 30; second++) {
      advance(drift, view, 1);
      reconcile(drift, view, DEPTH_PXM, ACROSS_PXM);
      expect(Math.abs(drift.count - first)).toBeLessThanOrEqual(CLASSES);
    }
  });
});

describe('the shown pace', () => {
  it('is the true one at 1x on a whole page, and slower by a whole number when the eye would lose it', () => {
    expect(timesSlower(1, 4, 0.35, 50)).toBe(1);
    expect(timesSlower(0, 4, 0.35, 50)).toBe(1);
    expect(timesSlower(20, 4, 0.35, 50)).toBe(10);
    for (const pace of [5, 20, 60]) {
      const slower = timesSlower(pace, 4, 0.35, 50);
      expect(Number.isInteger(slower)).toBe(true);
      expect((4 * 50 * pace) / slower).toBeLessThan(460);
    }
  });
});
