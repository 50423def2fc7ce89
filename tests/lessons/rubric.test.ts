// Every rubric item on records made by hand: what it gives for a clean job, what a fault costs, what it says.

import { describe, expect, test } from 'vitest';
import {
  CATEGORY_OF,
  fittingNames,
  isWordKey,
  ITEMS,
  judge,
  lessonById,
  type ItemId,
  type Judged,
  type RunView,
} from '$lessons';
import { caught, cleanView, inTray, stop, steadyRows, traceOf, withEvents } from './handMade';

const lesson = lessonById('first-rods')!;

function judged(id: ItemId, view: RunView): Judged {
  const { bands } = lesson.rubric.find(({ item }) => item === id)!;
  return ITEMS[id](view, bands);
}

/** Points lost by category against a job without a fault. */
function lostBy(view: RunView): Record<string, number> {
  const clean = judge(cleanView(), lesson);
  const lost: Record<string, number> = {};
  judge(view, lesson).forEach((item, i) => {
    const points = clean[i]!.points - item.points;
    if (points > 0) lost[item.category] = (lost[item.category] ?? 0) + points;
  });
  return lost;
}

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
      [{ tick: 800, name: 'rodAdded', data: { rods: 2, buried_m: 0.3 } }],
    );
    const result = judged('notBuried', view);
    expect(result.share_frac).toBeGreaterThan(0);
    expect(result.share_frac).toBeLessThan(0.5);
    expect(result.reason).toEqual({ key: 'reason.notBuried.lost', data: { buried_cm: 30 } });
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

describe('the log', () => {
  test('a rod without a sample costs its third', () => {
    const view = withEvents((e) => e.name === 'sampleCaught' && e.tick === 1200, []);
    expect(judged('sampleEachRod', view)).toMatchObject({ share_frac: 2 / 3, reason: { data: { have: 2, rods: 3 } } });
    expect(Object.keys(lostBy(view))).toEqual(['log']);
  });

  test('two samples of one rod do not stand for two rods', () => {
    const view = withEvents((e) => e.name === 'sampleCaught' && e.tick === 1200, [caught(1000, 2, 1.3, 1.3)]);
    expect(judged('sampleEachRod', view).share_frac).toBeCloseTo(2 / 3, 10);
  });

  test('a label is judged against where the grains came from', () => {
    const view = withEvents((e) => e.name === 'sampleCaught' && e.tick === 2000, [caught(2000, 3, 4.4, 3.8)]);
    const result = judged('labelsTrue', view);
    expect(result.share_frac).toBeCloseTo(2 / 3, 10);
    expect(result.reason).toEqual({ key: 'reason.labelsTrue.lost', data: { label_m: 4.4, origin_m: 3.8 } });
  });

  test('half a metre off is still right, a little more is not', () => {
    const at = (off_m: number) =>
      withEvents(
        (e) => e.name === 'sampleCaught',
        [caught(1, 1, 2 + off_m, 2), caught(2, 2, 2, 2), caught(3, 3, 2, 2)],
      );
    expect(judged('labelsTrue', at(0.5)).share_frac).toBe(1);
    expect(judged('labelsTrue', at(0.501)).share_frac).toBeCloseTo(2 / 3, 10);
  });

  test('one good label does not stand for three', () => {
    const view = withEvents((e) => e.name === 'sampleCaught' && e.tick > 600, []);
    const result = judged('labelsTrue', view);
    expect(result.share_frac).toBeCloseTo(1 / 3, 10);
    expect(result.reason.key).toBe('reason.labelsTrue.few');
  });

  test('a name is judged against the grains in the tray, not against the ground', () => {
    const tray = [inTray(1, 1.2, [0, 0, 0.05, 0.25, 0.6, 0.1, 0, 0], 'silt'), ...cleanView().tray.slice(1)];
    const result = judged('namedRight', cleanView({ tray }));
    expect(result.share_frac).toBeCloseTo(2 / 3, 10);
    expect(result.reason).toEqual({ key: 'reason.namedRight.lost', data: { sample: 1 } });
  });

  test('a sample left without a name is said so', () => {
    const tray = [inTray(1, 1.2, [0, 1, 0, 0, 0, 0, 0, 0], null), ...cleanView().tray.slice(1)];
    expect(judged('namedRight', cleanView({ tray })).reason.key).toBe('reason.namedRight.unnamed');
  });

  test('silty sand needs both sand and silt; near shares allow both names', () => {
    expect(fittingNames([0, 0.3, 0.6, 0.1, 0, 0, 0, 0], 2)).toEqual(['fineSand', 'siltySand']);
    expect(fittingNames([0, 0, 0.9, 0.1, 0, 0, 0, 0], 2)).toEqual(['fineSand']);
    expect(fittingNames([0, 0, 0, 0.45, 0.5, 0.05, 0, 0], 2)).toEqual(['mediumSand', 'coarseSand']);
    expect(fittingNames([0, 0, 0, 0, 0.2, 0.3, 0.3, 0.2], 2)).toEqual(['gravel']);
    expect(fittingNames([0, 1, 0, 0, 0, 0, 0, 0], 0.5)).toContain('topsoil');
    expect(fittingNames([0, 1, 0, 0, 0, 0, 0, 0], 1)).not.toContain('topsoil');
  });
});

describe('the additives', () => {
  const water = cleanView({
    log: cleanView().log.filter(([, action]) => action !== 'addAdditive'),
    trace: traceOf(steadyRows(4.45, { soaked_gL: 0 })),
    powderUsed_kg: 0,
  });

  test('without powder and with grains left below, nothing is ready', () => {
    const view = {
      ...water,
      events: water.events.map((e) => (e.tick === 2500 ? stop(2500, 4.45, { bed_m: 0.5 }) : e)),
    };
    expect(judged('fluidReady', view).share_frac).toBe(0);
    expect(judged('fluidReady', view).reason.key).toBe('reason.fluidReady.lost');
  });

  test('whoever lifts the grains without powder has chosen well too', () => {
    expect(judged('fluidReady', water)).toMatchObject({ share_frac: 1, reason: { key: 'reason.fluidReady.lifted' } });
  });

  test('powder that soaks only after the third rod began is late', () => {
    const rows = steadyRows(4.45).map((row) => ({ ...row, soaked_gL: row.depth_m! < 3.2 ? 0.05 : 0.8 }));
    const events = cleanView().events.map((e) => (e.tick === 2500 ? stop(2500, 4.45, { bed_m: 0.5 }) : e));
    expect(judged('fluidReady', cleanView({ trace: traceOf(rows), events })).share_frac).toBe(0);
  });

  test('too much powder costs only the additives', () => {
    const view = cleanView({ trace: traceOf(steadyRows(4.45, { soaked_gL: 2.5 })) });
    expect(judged('notTooThick', view)).toMatchObject({
      share_frac: 0,
      reason: { key: 'reason.notTooThick.lost', data: { dose_gL: 2.5 } },
    });
    expect(Object.keys(lostBy(view))).toEqual(['additives']);
  });

  test('dumped powder costs by its share; a refused dose does not count', () => {
    const dumped = [100, 'addAdditive', { additive: 'polymer', mass_g: 700, manner: 'dumped' }] as const;
    const clean = cleanView();
    expect(judged('noFishEyes', cleanView({ log: [...clean.log, dumped] })).share_frac).toBeCloseTo(0.5, 10);
    const refused = { tick: 100, name: 'refused' as const, data: { action: 'addAdditive', reason: 'noPowder' } };
    expect(
      judged('noFishEyes', cleanView({ log: [...clean.log, dumped], events: [...clean.events, refused] })).share_frac,
    ).toBe(1);
  });
});

describe('the economy', () => {
  test('a slow job loses by the minute, and nothing else', () => {
    const view = cleanView({ ticks: 7200 });
    expect(judged('jobTime', view).share_frac).toBeCloseTo(0.5, 10);
    expect(lostBy(view)).toEqual({ economy: 3 });
  });

  test('giving up early does not count as quick', () => {
    const view = cleanView({ ticks: 60, depth_m: 1.1 });
    expect(judged('jobTime', view)).toMatchObject({ share_frac: 0.25, reason: { key: 'reason.jobTime.unfinished' } });
  });

  test('powder and water beyond need are named', () => {
    expect(judged('suppliesUsed', cleanView({ powderUsed_kg: 1.4 })).reason).toEqual({
      key: 'reason.suppliesUsed.powder',
      data: { powder_g: 1400, goal_g: 1000 },
    });
    expect(judged('suppliesUsed', cleanView({ waterUsed_L: 1000 })).reason.key).toBe('reason.suppliesUsed.water');
  });
});

describe('safety', () => {
  test('a caution read after the stem turned comes too late', () => {
    const log = cleanView().log.map((entry) =>
      entry[1] === 'readCaution' && entry[2].caution === 'rods' ? ([300, 'readCaution', entry[2]] as const) : entry,
    );
    const view = cleanView({ log });
    expect(judged('cautionsRead', view)).toMatchObject({ share_frac: 0.5, reason: { data: { have: 1, all: 2 } } });
    expect(lostBy(view)).toEqual({ safety: 3 });
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
