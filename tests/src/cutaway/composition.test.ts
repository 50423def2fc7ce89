// The page at every size: nothing outside it, nothing over another, and scales that are what they are said to be.
import { describe, expect, it } from 'vitest';
import { compose, shownDepth_m, CHAMBER_GAP_m, type Measures } from '../../../src/cutaway/composition';
import { createCamera, followBit, panCamera, zoomCamera } from '../../../src/cutaway/camera';
import { PUMP_UNITS } from '../../../src/cutaway/gear';
import { depthAt, halfOf, placeOf, yOf } from '../../../src/cutaway/place';

const SIZES = [
  [320, 200, 11.5],
  [390, 400, 11.5],
  [424, 343, 11.5],
  [742, 576, 12.8],
  [812, 700, 12.8],
  [1280, 900, 12.8],
  [320, 240, 14.5],
] as const;
const DEPTHS_m = [0.3, 4.5, 12, 29];

const measures = (
  width_px: number,
  height_px: number,
  text_px: number,
  depth_m: number,
  widening: number | null = null,
): Measures => ({
  width_px,
  height_px,
  text_px,
  shown_m: shownDepth_m(depth_m),
  above_m: 1.6,
  bit_m: 0.1,
  suctionLength_m: 0.775,
  settlingLength_m: 0.775,
  pitDepth_m: 0.8,
  widening,
});

const cases = SIZES.flatMap(([w, h, text]) => DEPTHS_m.map((depth_m) => [w, h, text, depth_m] as const));

describe('the page', () => {
  it.each(cases)('%i x %i, letters of %f px, hole of %f m: all stands inside, in its order', (w, h, text, depth_m) => {
    const page = compose(measures(w, h, text, depth_m));
    const half = 0.05 * page.depth_pxm * page.widening;
    const pit_px = (0.775 * 2 + CHAMBER_GAP_m) * page.bank_pxm;
    expect(page.pit_x + pit_px).toBeLessThan(page.hole_x - half);
    expect(page.hole_x + half).toBeLessThan(page.axis_x - text);
    expect(page.axis_x).toBeLessThan(page.log_x);
    expect(page.log_x + page.log_px).toBeLessThan(page.words_x);
    expect(page.words_x).toBeLessThan(w);
    expect(page.ground_y + depth_m * page.depth_pxm).toBeLessThanOrEqual(h);
    expect(page.ground_y - 1.5 * page.depth_pxm).toBeGreaterThan(0);
    expect(page.ground_y + 0.8 * page.bank_pxm).toBeLessThan(h);
    expect(page.pit_x - (PUMP_UNITS + 4) * page.gear_px).toBeGreaterThanOrEqual(-2);
  });

  it.each(cases)(
    '%i x %i, letters of %f px, hole of %f m: the hole is a whole number of times wider',
    (w, h, text, depth_m) => {
      const page = compose(measures(w, h, text, depth_m));
      expect(Number.isInteger(page.widening)).toBe(true);
      const place = placeOf(page, { zoom: 1, panX_px: 0, panY_px: 0 });
      expect(halfOf(place, 0.05) / (yOf(place, 0.05) - yOf(place, 0))).toBeCloseTo(page.widening, 9);
    },
  );

  it.each(cases)(
    '%i x %i, letters of %f px, hole of %f m: as wide as is asked, in whole numbers, as far as all still stands inside',
    (w, h, text, depth_m) => {
      const own = compose(measures(w, h, text, depth_m));
      expect(own.leastWidening).toBeLessThanOrEqual(own.widening);
      expect(own.mostWidening).toBeGreaterThanOrEqual(own.widening);
      for (const asked of [1, own.leastWidening, own.widening + 1, own.mostWidening, 5000]) {
        const page = compose(measures(w, h, text, depth_m, asked));
        expect(page.widening).toBe(Math.min(own.mostWidening, Math.max(own.leastWidening, asked)));
        expect(Number.isInteger(page.widening)).toBe(true);
        const half = 0.05 * page.depth_pxm * page.widening;
        expect(half).toBeGreaterThanOrEqual(9 - 1e-9);
        expect(page.pit_x + (0.775 * 2 + CHAMBER_GAP_m) * page.bank_pxm).toBeLessThan(page.hole_x - half);
        expect(page.hole_x + half).toBeLessThan(page.axis_x - text);
        expect(page.pit_x - (PUMP_UNITS + 4) * page.gear_px).toBeGreaterThanOrEqual(-2);
      }
    },
  );

  it('reaches below the bit, in steps', () => {
    expect(shownDepth_m(0)).toBe(6);
    expect(shownDepth_m(4.9)).toBe(6);
    expect(shownDepth_m(5.1)).toBe(8);
    for (let depth_m = 0; depth_m < 150; depth_m += 0.7)
      expect(shownDepth_m(depth_m)).toBeGreaterThanOrEqual(depth_m + 1);
  });
});

describe('the camera', () => {
  const page = compose(measures(812, 700, 12.8, 8));

  it('keeps the point under the fingers where it is', () => {
    const camera = createCamera();
    const before = placeOf(page, camera);
    const depth_m = depthAt(before, 400);
    zoomCamera(camera, page, 2.5, 300, 400);
    const after = placeOf(page, camera);
    expect(yOf(after, depth_m)).toBeCloseTo(400, 6);
    expect((300 - after.hole_x) / after.across_pxm).toBeCloseTo((300 - before.hole_x) / before.across_pxm, 9);
  });

  it('never shows what lies beside the page, and keeps the widening', () => {
    const camera = createCamera();
    zoomCamera(camera, page, 3, 0, 0);
    panCamera(camera, page, 1e5, 1e5);
    expect([camera.panX_px, camera.panY_px]).toEqual([0, 0]);
    panCamera(camera, page, -1e5, -1e5);
    expect(camera.panX_px).toBeCloseTo(-2 * page.width_px, 6);
    expect(camera.panY_px).toBeCloseTo(-2 * page.height_px, 6);
    const place = placeOf(page, camera);
    expect(place.across_pxm / place.depth_pxm).toBeCloseTo(page.widening, 9);
    zoomCamera(camera, page, 1e-6, 5, 5);
    expect([camera.zoom, camera.panX_px, camera.panY_px]).toEqual([1, 0, 0].map((value) => expect.closeTo(value, 9)));
  });

  it('keeps the bit in the picture while it follows', () => {
    const camera = createCamera();
    zoomCamera(camera, page, 4, 0, 0);
    for (const bit_m of [0.3, 4, 8]) {
      followBit(camera, page, bit_m);
      const y = yOf(placeOf(page, camera), bit_m);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(page.height_px);
    }
  });
});
