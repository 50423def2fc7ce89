// The items of a whole well on records made by hand: what a fault costs and what is said.

import { describe, expect, test } from 'vitest';
import type { RunEvent } from '$sim';
import { CATEGORY_OF, isWordKey, ITEMS, judge, lessonById, LESSONS, type Judged } from '$lessons';
import { traceOf } from './handMade';
import { cameTo, cleanWell, planned, PLAN, well, wellJudged, wellLost, withWellEvents } from './handMadeWell';

test('a well without a fault earns every point', () => {
  for (const item of judge(cleanWell(), well)) expect([item.id, item.points]).toEqual([item.id, item.max]);
});

test('a run in which nothing was done earns nothing', () => {
  const empty = cleanWell(
    { log: [], events: [], trace: traceOf([]), tray: [], depth_m: 0, powderUsed_kg: 0, waterUsed_L: 0, cost_marks: 0 },
    { handedOver: false, spot: '', plan: null, ownLog: [], verdict: null },
  );
  for (const item of judge(empty, well)) expect([item.id, item.points]).toEqual([item.id, 0]);
});

test('every reason is a message, in the category of its item', () => {
  const views = [cleanWell(), cleanWell({}, { verdict: null, plan: null }), cameTo({ water: { class: 'saline' } })];
  for (const view of views)
    for (const item of judge(view, well)) {
      expect([item.id, isWordKey(item.reason.key)]).toEqual([item.id, true]);
      expect(item.category).toBe(CATEGORY_OF[item.id]);
    }
});

test('no item changes what it judges', () => {
  const view = cleanWell();
  const before = JSON.stringify(view);
  judge(view, well);
  expect(JSON.stringify(view)).toBe(before);
});

/** Each mistake: what it costs its category, and no other category anything. Points are those of the lesson. */
test.each([
  ['a spot by the latrine, under the line, in the flood', cleanWell({}, { spot: 'A' }), { safety: 15 }],
  [
    'a screen in the fine sand above, too fine for its pack',
    planned({ screenFrom_m: 1, screenTo_m: 4 }),
    { screen: 13 },
  ],
  ['a third of the screen above the lowest level', planned({ screenFrom_m: 4, screenTo_m: 7 }), { screen: 1.7 }],
  ['slots of 3 mm and no pack', planned({ slotWidth_mm: 3, pack: 'none' }), { screen: 8 }],
  ['a pack that runs out through the slots', planned({ slotWidth_mm: 3 }), { screen: 8 }],
  ['one slot a decimetre', planned({ slotSpacing_mm: 100, slotRows: 1 }), { screen: 1 }],
  ['sand that never stops', cameTo({ sand_mgL: 120 }), { screen: 7 }],
  ['half of the yield shut up by mud', cameTo({ yield: { share_frac: 0.4 } }), { screen: 7 }],
  ['cloudy water', cameTo({ turbidity_NTU: 80 }), { screen: 7 }],
  ['a poor yield', cameTo({ yield: { dry_Lmin: 2 } }), { screen: 3 }],
  ['salt water', cameTo({ water: { class: 'brackish', salt_gL: 3 } }), { screen: 3 }],
  ['a pump that cannot reach', cameTo({ fittedWorks: false }), { screen: 1 }],
  ['no seal', cameTo({ leak: { annulus_d: 0.2, sealFrom_m: 0, sealTo_m: 0, sealedLength_m: 0 } }), { seal: 15 }],
  ['one metre of seal', cameTo({ leak: { annulus_d: 9000, sealTo_m: 1, sealedLength_m: 1 } }), { seal: 5 }],
  ['a seal that leaks', cameTo({ leak: { annulus_d: 20 } }), { seal: 10 }],
  ['a seal on the screen', cameTo({ leak: { sealTo_m: 9, sealedLength_m: 9 } }), { seal: 5.5 }],
  ['nobody sounds the pack', withWellEvents((e) => e.name === 'sounded'), { seal: 1 }],
  ['no head works', cameTo({ headWorks: { apron_m: 0, drain_m: 0, cap: false } }), { seal: 3 }],
  ['no cap', cameTo({ headWorks: { cap: false } }), { seal: 0.7 }],
  ['the casing two metres too high', cameTo({ casing: { depth_m: 9.5 } }), { hole: 1 }],
  ['a snapped casing', cameTo({ casing: { snapped: true } }), { hole: 1 }],
  ['a pipe that folds', cameTo({ casing: { collapse_ratio: 0.8 } }), { hole: 1 }],
  [
    'two hours before the casing',
    withWellEvents((e) => e.name === 'casingLanded', [{ tick: 15200, name: 'casingLanded', data: {} }]),
    { hole: 2 },
  ],
  [
    'layers of the book that the samples deny',
    cleanWell({}, { ownLog: [{ from_m: 0, to_m: 12, kind: 'clay' }] }),
    { log: 2 },
  ],
  ['an empty record', cleanWell({ log: cleanWell().log.filter(([, a]) => a !== 'record') }), { log: 2 }],
  ['no disinfection', cameTo({ disinfection: { done: false, enough: false } }), { safety: 3 }],
  ['three days and more', cleanWell({ ticks: 260000 }), { economy: 1 }],
] as const)('%s costs its category alone', (_name, view, lost) => {
  expect(wellLost(view)).toEqual(lost);
});

test('the level let down while the rods come out costs by its depth', () => {
  const { trace } = cleanWell();
  const { time_s, holeLevel_m } = trace.columns;
  for (let row = 0; row < trace.length; row++) if (time_s[row]! > 7500 && time_s[row]! < 8000) holeLevel_m[row] = 2.5;
  expect(wellLost(cleanWell({ trace }))).toEqual({ hole: 3 });
});

test('a caution counts when it was read before its own act: cement before the seal, not before the stem turns', () => {
  const log = cleanWell().log.map((entry) =>
    entry[1] === 'readCaution' && entry[2].caution === 'cement' ? ([9500, 'readCaution', entry[2]] as const) : entry,
  );
  const sealedAt = (tick: number) => cleanWell({ log: [...log, [tick, 'placeSeal', { seal: 'cement' }]] });
  expect(wellJudged('cautionsRead', sealedAt(10000)).share_frac).toBe(1);
  expect(wellJudged('cautionsRead', sealedAt(9400)).share_frac).toBeLessThan(1);
});

describe('essential items', () => {
  const failed = (view: ReturnType<typeof cleanWell>) =>
    judge(view, well)
      .filter((item) => item.failed)
      .map(({ id }) => id);
  test('spot, seal and disinfection are; a well without fault fails none', () => {
    expect(failed(cleanWell())).toEqual([]);
    expect(failed(cleanWell({}, { spot: 'A' }))).toEqual(['siteChosen']);
    expect(failed(cameTo({ leak: { annulus_d: 20 } }))).toEqual(['sealMade']);
    expect(failed(cameTo({ disinfection: { done: true, enough: false } }))).toEqual(['disinfected']);
    expect(failed(cameTo({ sand_mgL: 500 }))).toEqual([]);
  });
});

describe('an item in the measure of another', () => {
  const screen = lessonById('the-screen')!;
  const earned = (view: ReturnType<typeof cleanWell>, id: string) =>
    judge(view, screen).find((item) => item.id === id)!;

  test('earns all of its own where that one is whole, and nothing where it is lost, with that one said', () => {
    expect(earned(cleanWell(), 'slotFits')).toMatchObject({ points: 18, failed: false });
    // A third of it above the lowest water: (2/3 - .4)/.6 of its place is right, and that much of what hangs on it.
    const high = planned({ screenFrom_m: 4, screenTo_m: 7 });
    expect(earned(high, 'slotFits')).toMatchObject({ points: 8, failed: true });
    expect(earned(high, 'slotFits').reason.key).toBe('reason.screenPlace.dry');
    // Two metres above it: nothing.
    expect(earned(planned({ screenFrom_m: 1, screenTo_m: 3 }), 'slotFits')).toMatchObject({ points: 0, failed: true });
  });

  test.each(
    LESSONS.flatMap(({ id, rubric }) =>
      rubric.filter(({ inMeasureOf }) => inMeasureOf).map((one) => [id, one] as const),
    ),
  )('%s: it is one of the same lesson, and not itself', (id, { item, inMeasureOf }) => {
    expect(inMeasureOf).not.toBe(item);
    expect(lessonById(id)!.rubric.map((other) => other.item)).toContain(inMeasureOf);
  });
});

describe('what the crew could know', () => {
  test('the true ground is not looked at: a screen that the samples call coarse is right, wherever it came to stand', () => {
    const view = cameTo({ screen: { inAquifer_frac: 0, belowLowest_frac: 0 } });
    expect(wellJudged('screenPlace', view).share_frac).toBe(1);
  });

  test('cloth that holds the sand is as good as a pack', () => {
    const cloth = planned({ pack: 'none', cloth: 'medium' });
    expect(wellJudged('slotFits', cloth).share_frac).toBe(1);
    expect(wellJudged('slotFits', planned({ pack: 'none', slotWidth_mm: 0.5 })).share_frac).toBe(1);
  });

  test('17 L/min through 2 rows of 40 x 1 mm every 20 mm, 3 m long, enter at 2.4 cm/s', () => {
    // Reference row S-01: .03 m/s; here 2.833e-4 m3/s over .012 m2.
    expect(wellJudged('openAreaEnough', cleanWell()).evidence[0]!.value).toBeCloseTo(0.0236, 4);
    expect(PLAN.slotRows * PLAN.slotArc_mm * PLAN.slotWidth_mm).toBe(80);
  });
});

describe('what breaks and is mended', () => {
  const bands = { full_s: 720, none_s: 2400 };
  const broken = (...events: RunEvent[]): Judged =>
    ITEMS.mendedSoon(
      withWellEvents(() => false, events),
      bands,
    );
  const at = (tick: number, name: RunEvent['name'], what?: string): RunEvent => ({
    tick,
    name,
    data: what === undefined ? {} : { what },
  });

  test('within twelve minutes earns all, in 26 minutes half; the longest counts', () => {
    const quick = broken(at(3000, 'engineStopped'), at(3600, 'mended', 'engine'));
    expect([quick.share_frac, quick.reason.key]).toEqual([1, 'reason.mendedSoon.full']);
    const slow = broken(
      at(3000, 'engineStopped'),
      at(3600, 'mended', 'engine'),
      at(4000, 'hoseBurst'),
      at(5560, 'mended', 'hose'),
    );
    expect(slow.share_frac).toBeCloseTo(0.5, 6);
    expect(slow.reason).toEqual({ key: 'reason.mendedSoon.lost', data: { time_min: 26 } });
  });

  test('is not mended by the ditch, nor by mending something else', () => {
    const left = broken(at(3000, 'hoseBurst'), at(3300, 'mended', 'ditch'), at(3500, 'mended', 'engine'));
    expect([left.share_frac, left.reason.key]).toEqual([0, 'reason.mendedSoon.lost']);
  });

  test('shows nothing where nothing broke', () => {
    expect(broken().reason.key).toBe('reason.mendedSoon.none');
    expect(broken().share_frac).toBe(0);
  });
});
