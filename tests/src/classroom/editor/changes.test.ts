// What can be done to ground and site: whatever order it is done in, the exercise stays one.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lessonOfExercise, LESSON_ORDER, scenarioOf, SOURCES, type Exercise } from '../../../../lessons/index';
import { SOIL_KINDS } from '../../../../sim/index';
import {
  addLayer,
  bedsOf,
  gripsOf,
  laidFrom,
  moveLayer,
  movedTo,
  removeLayer,
  setKind,
  type Laid,
} from '../../../../src/classroom/editor/ground';
import { groundShown } from '../../../../src/classroom/editor/previewGround';
import {
  addSource,
  addSpot,
  addWell,
  drawnSite,
  freeSpot,
  moved,
  removed,
  siteFrom,
  thingAt,
  wellFrom,
  wellPlace,
} from '../../../../src/classroom/editor/site';
import { fresh, full, wrongFields } from './made';

const laid = full.ground as Laid;
const site = full.site!;

describe('a ground laid by hand', () => {
  test('knows where each bed lies, the last one going on', () => {
    expect(bedsOf(laid).map(({ kind, top_m, bottom_m, last }) => [kind, top_m, bottom_m, last])).toEqual([
      ['topsoil', 0, 0.5, false],
      ['firmClay', 0.5, 3.5, false],
      ['mediumSand', 3.5, 8.5, true],
    ]);
  });

  test('a new layer is of a kind that neither neighbour is', () => {
    for (let below = -1; below < laid.layers.length; below++) {
      const more = addLayer(laid, below);
      const kinds = more.layers.map(({ kind }) => kind);
      expect(kinds).toHaveLength(4);
      expect(kinds[below + 1]).not.toBe(kinds[below]);
      expect(kinds[below + 1]).not.toBe(kinds[below + 2]);
    }
  });

  test('layers change places, go, and one stays', () => {
    expect(moveLayer(laid, 0, 1).layers.map(({ kind }) => kind)).toEqual(['firmClay', 'topsoil', 'mediumSand']);
    expect(moveLayer(laid, 0, -1)).toBe(laid);
    expect(moveLayer(laid, 2, 1)).toBe(laid);
    const one = removeLayer(removeLayer(laid, 0), 0);
    expect(one.layers.map(({ kind }) => kind)).toEqual(['mediumSand']);
    expect(removeLayer(one, 0)).toBe(one);
  });

  test('a boundary that is dragged stays between its neighbours, and what lies below stays', () => {
    const deeper = movedTo(laid, 0, 2.04);
    expect(bedsOf(deeper).map(({ bottom_m }) => bottom_m)).toEqual([2, 3.5, 8.5]);
    expect(bedsOf(movedTo(laid, 0, -3))[0]!.bottom_m).toBe(0.1);
    expect(bedsOf(movedTo(laid, 0, 30)).map(({ bottom_m }) => bottom_m)).toEqual([3.4, 3.5, 8.5]);
    // The last layer has no bottom to keep.
    expect(bedsOf(movedTo(laid, 1, 12)).map(({ top_m }) => top_m)).toEqual([0, 0.5, 12]);
  });

  test('the water is dragged, and the dry season falls as far below it as before', () => {
    const water = movedTo(laid, 'water', 5.02);
    expect([water.waterTable_m, water.swing_m]).toEqual([5, 1.5]);
    expect(movedTo(laid, 'dry', 6).swing_m).toBe(3);
    expect(movedTo(laid, 'dry', 1).swing_m).toBe(0);
    expect(gripsOf(laid).map(({ grip, depth_m }) => [grip, depth_m])).toEqual([
      [0, 0.5],
      [1, 3.5],
      ['water', 3],
      ['dry', 4.5],
    ]);
  });

  test('any changes in any order leave an exercise that can be played', () => {
    const change = fc.oneof(
      fc.integer({ min: -1, max: 12 }).map((i) => (one: Laid) => addLayer(one, Math.min(i, one.layers.length - 1))),
      fc.nat(12).map((i) => (one: Laid) => (i < one.layers.length ? removeLayer(one, i) : one)),
      fc.tuple(fc.nat(12), fc.boolean()).map(
        ([i, up]) =>
          (one: Laid) =>
            moveLayer(one, i, up ? -1 : 1),
      ),
      fc.tuple(fc.nat(12), fc.constantFrom(...SOIL_KINDS)).map(
        ([i, kind]) =>
          (one: Laid) =>
            i < one.layers.length ? setKind(one, i, kind) : one,
      ),
      fc.tuple(fc.nat(14), fc.double({ min: -5, max: 80, noNaN: true })).map(([i, depth_m]) => (one: Laid) => {
        const grips = gripsOf(one);
        return movedTo(one, grips[i % grips.length]!.grip, depth_m);
      }),
    );
    fc.assert(
      fc.property(fc.array(change, { maxLength: 25 }), (changes) => {
        const ground = changes.reduce((one, edit) => edit(one), laid);
        const exercise: Exercise = { ...fresh(), ground };
        expect(wrongFields(exercise)).toEqual([]);
        const { layers } = scenarioOf(lessonOfExercise(exercise), 1).ground;
        expect(layers).toHaveLength(ground.layers.length);
      }),
      { numRuns: 150 },
    );
  });

  test.each(LESSON_ORDER)('begins as a copy of the ground of %s', (id) => {
    const exercise = fresh(id);
    for (const seed of [1, 2, 3, 4]) {
      const shown = groundShown(exercise, seed)!;
      const copy = laidFrom(shown.ground, shown.goal_m + 1, seed);
      const changed: Exercise = { ...exercise, ground: copy };
      expect(wrongFields(changed)).toEqual([]);
      const again = groundShown(changed, 99)!;
      const kindAt = (ground: typeof shown, depth_m: number): string =>
        ground.beds.find((bed) => depth_m >= bed.top_m && depth_m < bed.bottom_m)!.kind;
      // In the middle of each bed that is not too thin for a tenth of a metre.
      for (const { top_m, bottom_m } of shown.beds)
        if (bottom_m - top_m > 0.4)
          expect(kindAt(again, (top_m + bottom_m) / 2)).toBe(kindAt(shown, (top_m + bottom_m) / 2));
      expect(again.ground.waterTable_m).toBeCloseTo(shown.ground.waterTable_m, 0);
    }
  });
});

describe('a plan laid by hand', () => {
  test('begins as a copy of the drawn one', () => {
    for (let seed = 1; seed < 40; seed++) {
      const { ground } = groundShown(fresh('open-well'), seed)!;
      const plan = siteFrom(ground);
      const exercise: Exercise = { ...fresh('open-well'), site: plan };
      expect(wrongFields(exercise)).toEqual([]);
      expect(groundShown(exercise, seed + 100)!.ground.site).toEqual(ground.site);
      expect(drawnSite(plan)).toEqual({ site: ground.site, contamination: ground.contamination });
    }
  });

  test('is drawn without what is just being typed', () => {
    const typing = {
      ...site,
      spots: [{ ...site.spots[0]!, east_m: Number.NaN }, site.spots[1]!],
      overheadLine: { ...site.overheadLine!, height_m: Number.NaN },
    };
    expect(drawnSite(typing).site).toMatchObject({ spots: [site.spots[1]], overheadLine: null });
  });

  test('a thing is found under a finger and moved, by half metres, on the plan', () => {
    expect(thingAt(site, { east_m: 11, north_m: 12 }, 5)).toEqual({ list: 'spots', index: 0 });
    expect(thingAt(site, { east_m: 39, north_m: 10 }, 5)).toEqual({ list: 'sources', index: 0 });
    expect(thingAt(site, { east_m: 30, north_m: 30 }, 5)).toBeNull();
    const put = moved(site, { list: 'sources', index: 0 }, { east_m: 92, north_m: 20.26 });
    expect(put.sources[0]).toEqual({ source: 'latrine', east_m: 80, north_m: 20.5, bottom_m: 2 });
  });

  test('a well lies so far off in a direction, and is found there again', () => {
    for (const direction of ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const)
      expect(wellFrom(wellPlace(400, direction))).toEqual({ distance_m: 400, direction });
  });

  test('any changes in any order leave a plan that can be played', () => {
    type Plan = typeof site;
    const change = fc.oneof(
      fc.constant((plan: Plan) => addSpot(plan)),
      fc.constantFrom(...SOURCES).map((source) => (plan: Plan) => addSource(plan, source)),
      fc.constant((plan: Plan) => addWell(plan)),
      fc.tuple(fc.constantFrom('sources', 'wells', 'spots'), fc.nat(5)).map(([list, i]) => (plan: Plan) => {
        const name = list as 'spots' | 'sources' | 'wells';
        const least = name === 'spots' ? 2 : 1;
        return plan[name].length >= least && i < plan[name].length ? removed(plan, name, i) : plan;
      }),
      fc
        .tuple(
          fc.nat(5),
          fc.double({ min: -50, max: 150, noNaN: true }),
          fc.double({ min: -50, max: 150, noNaN: true }),
        )
        .map(
          ([i, east_m, north_m]) =>
            (plan: Plan) =>
              i < plan.spots.length ? moved(plan, { list: 'spots', index: i }, { east_m, north_m }) : plan,
        ),
    );
    fc.assert(
      fc.property(fc.array(change, { maxLength: 30 }), (changes) => {
        const plan = changes.reduce((one, edit) => edit(one), site);
        expect(wrongFields({ ...fresh('open-well'), site: plan })).toEqual([]);
        // What comes new lies on nothing else.
        if (freeSpot(plan)) {
          const places = addSpot(plan).spots.map(({ east_m, north_m }) => `${east_m} ${north_m}`);
          expect(new Set(places).size).toBeGreaterThanOrEqual(
            new Set(plan.spots.map((one) => `${one.east_m} ${one.north_m}`)).size,
          );
        }
      }),
      { numRuns: 150 },
    );
  });
});
