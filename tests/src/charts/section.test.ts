// The section log: both columns on one scale, words that do not cover each other, the ground cut where the picture ends.
import { describe, expect, it } from 'vitest';
import { cutAt, headOf_px, linesFor, placeWords, planSection } from '../../../src/charts/section';

const EM = 14;

describe('the section log', () => {
  it.each([
    [288, true],
    [288, false],
    [700, true],
    [700, false],
  ])('fits a width of %i px (both columns: %s)', (width_px, both) => {
    const plan = planSection(width_px, EM, 5, both);
    expect(plan.own_x).toBeGreaterThan(0);
    expect(plan.true_x + plan.column_px).toBeLessThan(width_px);
    if (both) {
      expect(plan.own_x + plan.column_px).toBeLessThan(plan.ruler_x);
      expect(plan.ruler_x).toBeLessThan(plan.true_x);
      expect(plan.ownWords_x).toBeGreaterThan(4 * EM);
      expect(width_px - plan.trueWords_x).toBeGreaterThan(4 * EM);
    }
    expect(plan.height_px).toBeGreaterThan(headOf_px(EM) + 5 * plan.depth_pxm);
  });

  it('keeps its ticks apart at any depth', () => {
    for (const depth_m of [2, 5, 12, 40]) {
      const plan = planSection(500, EM, depth_m, true);
      expect(plan.step_m * plan.depth_pxm).toBeGreaterThanOrEqual(2 * EM);
    }
  });

  it('pushes words of thin layers down, never onto each other', () => {
    const bands = [0, 0.1, 0.2, 0.3, 2].map((top_m) => ({ top_m, bottom_m: top_m + 0.1, kind: 'silt' }));
    const placed = placeWords(
      bands,
      () => 'fine sand',
      (depth_m) => depth_m * 30,
      40,
      EM,
    );
    for (let i = 1; i < placed.length; i++) {
      expect(placed[i].y - placed[i - 1].y).toBeGreaterThanOrEqual(placed[i - 1].lines.length * EM * 1.1);
    }
    expect(placed[0].lines).toEqual(['fine', 'sand']);
    expect(linesFor('fine sand', 400, EM)).toEqual(['fine sand']);
    expect(linesFor('weathered', 10, EM)).toEqual(['weathered']);
  });

  it('cuts the ground at the foot of the picture', () => {
    const bands = [
      { top_m: 0, bottom_m: 2, kind: 'silt' },
      { top_m: 2, bottom_m: 9, kind: 'clay' },
      { top_m: 9, bottom_m: 30, kind: 'peat' },
    ];
    expect(cutAt(bands, 5)).toEqual([bands[0], { top_m: 2, bottom_m: 5, kind: 'clay' }]);
    expect(bands[1].bottom_m).toBe(9);
  });
});
