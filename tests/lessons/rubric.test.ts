// The rubric as a whole and the items of hole and safety, on records made by hand: what a fault costs and what is said.

import { describe, expect, test } from 'vitest';
import { CATEGORY_OF, isWordKey, judge } from '$lessons';
import { cleanView, judged, lesson, lostBy, steadyRows, stop, traceOf, withEvents } from './handMade';

test('a job without a fault earns every point', () => {
  for (const item of judge(cleanView(), lesson)) expect([item.id, item.points]).toEqual([item.id, item.max]);
});

test('a run in which nothing was done earns nothing but what no one could spoil', () => {
  const empty = cleanView({
    log: [],
    events: [],
    trace: traceOf([]),
    tray: [],
    depth_m: 0,
    powderUsed_kg: 0,
    waterUsed_L: 0,
    cost_marks: 0,
  });
  const points = judge(empty, lesson).reduce((sum, item) => sum + item.points, 0);
  expect(points).toBe(0);
});

test('every reason is a message and fills all its slots', () => {
  const views = [cleanView(), cleanView({ events: [], trace: traceOf([]), tray: [], log: [], depth_m: 0 })];
  for (const view of views) {
    for (const item of judge(view, lesson)) {
      expect(isWordKey(item.reason.key)).toBe(true);
      expect(item.category).toBe(CATEGORY_OF[item.id]);
    }
  }
});

describe('the hole', () => {
  test('cuttings left hanging at one of three stops cost the share of that stop', () => {
    const view = withEvents(
      (e) => e.name === 'flowStopped' && e.tick === 1300,
      [stop(1300, 2.98, { coarse_m3: 0.004 })],
    );
    const result = judged('clearedStops', view);
    expect(result.share_frac).toBeCloseTo(2 / 3, 10);
    expect(result.reason.key).toBe('reason.clearedStops.lost');
    expect(lostBy(view)).toEqual({ hole: expect.any(Number) });
  });

  test('4 litres of grains make 0.85 m of bed in a 100 mm hole at packing 0.6', () => {
    const view = withEvents((e) => e.name === 'flowStopped', [stop(1300, 2.98, { coarse_m3: 0.004 })]);
    expect(judged('clearedStops', view).evidence[0]!.value).toBeCloseTo(0.004 / (0.6 * 0.25 * Math.PI * 0.01), 3);
  });

  test("a stop within arm's reach of the surface is not judged", () => {
    const view = withEvents(() => false, [stop(100, 0.2, { coarse_m3: 0.01 })]);
    expect(judged('clearedStops', view).share_frac).toBe(1);
  });

  test('a bed over the bit costs by its height', () => {
    const view = withEvents(
      (e) => e.name === 'rodAdded' && e.tick === 800,
      [{ tick: 800, name: 'rodAdded', data: { rods: 2, buried_m: 0.07 } }],
    );
    const result = judged('notBuried', view);
    expect(result.share_frac).toBeGreaterThan(0);
    expect(result.share_frac).toBeLessThan(0.5);
    expect(result.reason).toEqual({ key: 'reason.notBuried.lost', data: { buried_cm: 7 } });
    expect(lostBy(view)).toEqual({ hole: expect.any(Number) });
  });

  test('an overloaded stream costs by its share of the drilling time', () => {
    const rows = steadyRows(4.45).map((row, i) => (i % 2 === 0 ? { ...row, loading_frac: 0.09 } : row));
    const result = judged('fairFeed', cleanView({ trace: traceOf(rows) }));
    expect(result.share_frac).toBe(0);
    expect(result.reason.key).toBe('reason.fairFeed.loaded');
  });

  test('three jams spoil the feed whatever the stream carried', () => {
    const jams = [1, 2, 3].map((i) => ({ tick: i * 100, name: 'stalled' as const, data: {} }));
    const result = judged(
      'fairFeed',
      withEvents(() => false, jams),
    );
    expect(result.share_frac).toBe(0);
    expect(result.reason).toEqual({ key: 'reason.fairFeed.jammed', data: { times: 3 } });
  });

  test('half the way down earns part of the depth', () => {
    const view = cleanView({ depth_m: 2.95 });
    expect(judged('depthReached', view).share_frac).toBeCloseTo(0.5, 10);
    expect(judged('depthReached', view).reason.key).toBe('reason.depthReached.lost');
  });
});

describe('safety', () => {
  test('a caution read after the stem turned comes too late', () => {
    const log = cleanView().log.map((entry) =>
      entry[1] === 'readCaution' && entry[2].caution === 'rods' ? ([300, 'readCaution', entry[2]] as const) : entry,
    );
    const view = cleanView({ log });
    expect(judged('cautionsRead', view)).toMatchObject({ share_frac: 0.5, reason: { data: { have: 1, all: 2 } } });
    expect(lostBy(view)).toEqual({ safety: 4 });
  });

  test('the same caution twice counts once, an unknown one not at all', () => {
    const log = cleanView().log.map((entry) =>
      entry[1] === 'readCaution' ? ([0, 'readCaution', { caution: 'rods' }] as const) : entry,
    );
    expect(judged('cautionsRead', cleanView({ log })).share_frac).toBe(0.5);
  });

  test('a refused turn is not a turn', () => {
    const clean = cleanView();
    const log = [
      [0, 'setTurning', { on: true }] as const,
      ...clean.log.filter(([, a]) => a !== 'readCaution'),
      ...clean.log.filter(([, a]) => a === 'readCaution').map((e) => [50, e[1], e[2]] as const),
    ];
    const events = [
      { tick: 0, name: 'refused' as const, data: { action: 'setTurning', reason: 'handsBusy' } },
      ...clean.events,
    ];
    expect(judged('cautionsRead', cleanView({ log, events })).share_frac).toBe(1);
    expect(judged('cautionsRead', cleanView({ log })).share_frac).toBe(0);
  });

  test('a hand on the rod while the stem turns costs half, twice all', () => {
    const grab = (tick: number, reason: string) => ({
      tick,
      name: 'refused' as const,
      data: { action: 'addRod', reason },
    });
    expect(
      judged(
        'rodsHandledStill',
        withEvents(() => false, [grab(1, 'turningOn')]),
      ).share_frac,
    ).toBe(0.5);
    expect(
      judged(
        'rodsHandledStill',
        withEvents(() => false, [grab(1, 'turningOn'), grab(2, 'flowOn')]),
      ).share_frac,
    ).toBe(0);
    expect(
      judged(
        'rodsHandledStill',
        withEvents(() => false, [grab(1, 'rodNotDown')]),
      ).share_frac,
    ).toBe(1);
  });

  test('a bit left on the bottom when the flow stops costs its stop', () => {
    const view = withEvents((e) => e.name === 'flowStopped' && e.tick === 700, [stop(700, 1.48, { bit_m: 1.48 })]);
    expect(judged('liftedBeforeStop', view)).toMatchObject({
      share_frac: 2 / 3,
      reason: { data: { times: 1, stops: 3 } },
    });
    expect(Object.keys(lostBy(view))).toEqual(['safety']);
  });
});

test('no item changes what it judges, and each gives the same twice', () => {
  const view = cleanView();
  const before = JSON.stringify(view);
  const first = judge(view, lesson);
  expect(judge(view, lesson)).toEqual(first);
  expect(JSON.stringify(view)).toBe(before);
});
