// The lens: its stated figure is the true one, its shapes are true, and it lies clear of ruler, log and words.
import { describe, expect, it } from 'vitest';
import { compose, shownDepth_m } from '../../../src/cutaway/composition';
import { createDrift, advance, reconcile } from '../../../src/cutaway/drift';
import { grainSize_px, DENSER } from '../../../src/cutaway/grainSize';
import { lensAim, lensPlace, lensSpot, lensTimes } from '../../../src/cutaway/lensPlace';
import { halfOf, placeOf, yOf, type Place } from '../../../src/cutaway/place';
import { fixtureView } from '../../browser/cutaway/fixture';
import { withWell } from '../../browser/cutaway/wellFixture';

const SIZES = [
  [320, 200, 11.5],
  [390, 332, 11.5],
  [742, 576, 12.8],
  [812, 700, 12.8],
] as const;
const DEPTHS_m = [0.3, 4.5, 8.35, 29];

function placeAt(width_px: number, height_px: number, text_px: number, depth_m: number, zoom = 1): Place {
  const page = compose({
    width_px,
    height_px,
    text_px,
    shown_m: shownDepth_m(depth_m),
    above_m: 1.6,
    bit_m: 0.1,
    suctionLength_m: 0.775,
    settlingLength_m: 0.775,
    pitDepth_m: 0.8,
    widening: null,
  });
  return placeOf(page, { zoom, panX_px: 0, panY_px: 0 });
}

const cases = SIZES.flatMap(([w, h, text]) => DEPTHS_m.map((depth_m) => [w, h, text, depth_m] as const));

describe('the lens', () => {
  it.each(cases)(
    '%i x %i, letters of %f px, hole of %f m: lies below the bank, left of the hole',
    (w, h, text, depth_m) => {
      const place = placeAt(w, h, text, depth_m);
      const spot = lensSpot(fixtureView({ depth_m }), place);
      const r = spot.diameter_px / 2;
      expect(spot.x - r).toBeGreaterThanOrEqual(0);
      expect(spot.x + r).toBeLessThan(place.hole_x - halfOf(place, 0.05));
      expect(spot.y - r).toBeGreaterThan(place.ground_y - 2);
      expect(spot.y + r).toBeLessThanOrEqual(h - 3 * text);
    },
  );

  it.each(cases)(
    '%i x %i, letters of %f px, hole of %f m: is as strong as it says, wide and deep alike',
    (w, h, text, depth_m) => {
      for (const zoom of [1, 3, 10]) {
        const place = placeAt(w, h, text, depth_m, zoom);
        const view = fixtureView({ depth_m });
        const { diameter_px } = lensSpot(view, place);
        for (const close of [false, true]) {
          const times = lensTimes(place, 0.1, diameter_px, close);
          expect(Number.isInteger(times)).toBe(true);
          const aim = lensAim(view, depth_m, close);
          const lens = lensPlace(place, diameter_px, times, aim.depth_m, aim.off_m);
          const deep = yOf(lens, 1) - yOf(lens, 0);
          expect(deep / (yOf(place, 1) - yOf(place, 0))).toBeCloseTo(times, 6);
          expect(2 * halfOf(lens, 0.5)).toBeCloseTo(deep, 6);
          // What it is held to stands in the middle of what is drawn for it.
          expect(yOf(lens, aim.depth_m)).toBeCloseTo(lens.height_px / 2, 6);
          expect(lens.hole_x + aim.off_m * lens.across_pxm).toBeCloseTo(diameter_px / 2, 6);
        }
        // The whole bit is seen at first.
        if (zoom === 1)
          expect(0.1 * place.depth_pxm * lensTimes(place, 0.1, diameter_px, false)).toBeLessThan(diameter_px);
      }
    },
  );

  it('is held to the bit, then to the screen, then to the wall there', () => {
    const drilling = fixtureView();
    expect(lensAim(drilling, drilling.stem.bit_m, false)).toMatchObject({ at: 'bit', off_m: 0 });
    expect(lensAim(drilling, drilling.stem.bit_m, true).off_m).toBeCloseTo(0.045, 2);
    const well = withWell(fixtureView({ flowing: false }));
    const { screen } = well.well!.casing!;
    const aim = lensAim(well, 0, false);
    expect(aim.at).toBe('screen');
    expect(aim.depth_m).toBeGreaterThan(screen!.from_m);
    expect(aim.depth_m).toBeLessThan(screen!.to_m);
    expect(lensAim(well, 0, true).off_m).toBeGreaterThan(well.well!.casing!.outside_m / 2);
    expect(lensAim({ ...well, well: null }, 0, false).at).toBe('bottom');
  });

  it('is held to the same place in a blind lesson whatever the hole is like', () => {
    const even = fixtureView({ level: 'blind', washOut: false });
    const wide = fixtureView({ level: 'blind', washOut: true, halvedCell: 33 });
    for (const close of [false, true])
      expect(lensAim(wide, wide.stem.bit_m, close)).toEqual(lensAim(even, even.stem.bit_m, close));
  });
});

describe('grains under the lens', () => {
  const PXM = 1300;
  const stretch = (): ReturnType<typeof createDrift> => ({ ...createDrift(3000), from_m: 6, to_m: 6.2 });

  it('cover the told multiple of their share in the stretch that it shows, and of nothing else', () => {
    const view = fixtureView({ washOut: false });
    const drift = stretch();
    reconcile(drift, view, PXM, PXM);
    const hole = view.hole!;
    for (const k of [2, 3, 4, 5]) {
      const d = grainSize_px(k, view.kit.grain_m[k], PXM);
      const share = hole.solids_frac[k * hole.stride + 24];
      const field_px2 = 2 * (0.05 - view.kit.rodOutside_m / 2) * PXM * 0.2 * PXM;
      let count = 0;
      for (let g = 0; g < drift.count; g++) if (drift.sizeClass[g] === k) count++;
      expect(Math.abs(count * drift.thinning * 0.785 * d * d - DENSER * share * field_px2)).toBeLessThan(
        0.785 * d * d * 1.001 * drift.thinning,
      );
    }
    for (let g = 0; g < drift.count; g++) {
      expect(drift.depth_m[g]).toBeGreaterThanOrEqual(6);
      expect(drift.depth_m[g]).toBeLessThanOrEqual(6.2);
    }
  });

  it('make room for others like them when they leave it, at their own speed', () => {
    const view = fixtureView({ washOut: false });
    const drift = stretch();
    reconcile(drift, view, PXM, PXM);
    const before = drift.depth_m.slice(0, drift.count);
    const [i, k] = [Math.floor(before[0]! / view.hole!.dz_m), drift.sizeClass[0]!];
    const up_ms = view.hole!.up_ms[i]! - view.hole!.slip_ms[k * view.hole!.stride + i]!;
    advance(drift, view, 0.37);
    expect(drift.count).toBe(before.length);
    const moved_m = before[0]! - drift.depth_m[0]!;
    expect(((((up_ms * 0.37 - moved_m) % 0.2) + 0.3) % 0.2) - 0.1).toBeCloseTo(0, 6);
    advance(drift, view, 0);
    for (let g = 0; g < drift.count; g++) {
      expect(drift.depth_m[g]).toBeGreaterThan(6 - 1e-6);
      expect(drift.depth_m[g]).toBeLessThanOrEqual(6.2 + 1e-6);
    }
  });
});
