// The items of the single decisions on a well's record made by hand: what earns all, what loses, and why.

import { describe, expect, test } from 'vitest';
import { ITEMS, type ItemId, type Judged, type RunView } from '$lessons';
import type { LogEntry, RunEvent } from '$sim';
import { cameTo, cleanWell, planned, withWellEvents } from './handMadeWell';

const judgedBy = (id: ItemId, view: RunView, bands: Record<string, number> = {}): Judged => ITEMS[id](view, bands);
const withActs = (...more: LogEntry[]): RunView => cleanWell({ log: [...cleanWell().log, ...more] });
const withEvents = (...more: RunEvent[]): RunView => withWellEvents(() => false, more);
const told = (tick: number, name: RunEvent['name'], data: RunEvent['data'] = {}): RunEvent => ({ tick, name, data });
const keyOf = (judged: Judged): string => judged.reason.key;

describe('the stop: coarse from 5 m (medium) on, lowest water told at 5 m, 12 m deep', () => {
  const STOP = { full_m: 4.6, none_m: 2 };
  const DEEP = { want_m: 4.6, full_m: 0.8, none_m: 3, told_m: 15 };

  test('seven metres of good sand below the lowest level are room enough, three are little', () => {
    expect(judgedBy('stretchEnough', cleanWell(), STOP).share_frac).toBe(1);
    const short = judgedBy('stretchEnough', cleanWell({ depth_m: 8 }), STOP);
    expect(short.share_frac).toBeCloseTo((3 - 2) / (4.6 - 2), 6);
    expect(keyOf(short)).toBe('reason.stretchEnough.lost');
  });

  test('an hour of drilling past what was enough is paid for; who stops in time loses nothing', () => {
    const far = judgedBy('noDeeper', cleanWell(), DEEP);
    expect(far.share_frac).toBeLessThan(0.5);
    expect(keyOf(far)).toBe('reason.noDeeper.lost');
    expect(judgedBy('noDeeper', cleanWell({ depth_m: 10 }), DEEP).share_frac).toBe(1);
    expect(judgedBy('noDeeper', cleanWell({ depth_m: 8 }), DEEP).share_frac).toBe(1);
  });

  test('deeper than where neighbours met salt earns nothing', () => {
    expect(keyOf(judgedBy('noDeeper', cleanWell(), { ...DEEP, told_m: 11 }))).toBe('reason.noDeeper.told');
  });

  test('without a stop neither shows', () => {
    const going = withWellEvents(({ name }) => name === 'drillingStopped');
    expect(keyOf(judgedBy('stretchEnough', going, STOP))).toBe('reason.stretchEnough.none');
    expect(keyOf(judgedBy('noDeeper', going, DEEP))).toBe('reason.noDeeper.none');
  });
});

describe('what goes with a screen', () => {
  test('pack over the screen by .6 m (S-13); half of it earns half; without a pack nothing is asked', () => {
    const bands = { full_m: 0.6, none_m: 0 };
    expect(judgedBy('packCovers', cleanWell(), bands).share_frac).toBe(1);
    expect(judgedBy('packCovers', planned({ packTop_m: 7.7 }), bands).share_frac).toBeCloseTo(0.5, 6);
    expect(keyOf(judgedBy('packCovers', planned({ pack: 'none' }), bands))).toBe('reason.packCovers.without');
  });

  test('sump and cap, half each (S-22)', () => {
    const bands = { full_m: 0.5 };
    expect(judgedBy('screenFoot', cleanWell(), bands).share_frac).toBe(1);
    expect(judgedBy('screenFoot', planned({ sump_m: 0 }), bands).share_frac).toBe(0.5);
    expect(keyOf(judgedBy('screenFoot', planned({ cap: false }), bands))).toBe('reason.screenFoot.open');
  });
});

describe('the way down; the casing is run at 8100 s', () => {
  test('a joint has five minutes (P-F9) before it is loaded; the first piece is no joint', () => {
    const bands = { set_s: 300 };
    expect(judgedBy('jointsSet', withEvents(told(7900, 'casingJoined')), bands).share_frac).toBe(1);
    const fresh = withEvents(told(7700, 'casingJoined'), told(8040, 'casingJoined'));
    expect(judgedBy('jointsSet', fresh, bands).share_frac).toBeCloseTo(60 / 300, 6);
    expect(
      judgedBy('jointsSet', withEvents(told(7000, 'casingJoined'), told(7800, 'casingJoined')), bands).share_frac,
    ).toBe(1);
  });

  test('what never hung asks nothing; long goes and a parted pipe lose', () => {
    const bands = { full_s: 60, none_s: 150 };
    const hung = (time_s: number, ...more: RunEvent[]): RunView => ({
      ...withActs([8300, 'workCasing', { time_s }]),
      events: [...cleanWell().events, told(8250, 'casingHung'), ...more],
    });
    expect(keyOf(judgedBy('hungGently', cleanWell(), bands))).toBe('reason.hungGently.free');
    expect(judgedBy('hungGently', hung(60), bands).share_frac).toBe(1);
    expect(judgedBy('hungGently', hung(105), bands).share_frac).toBeCloseTo(0.5, 6);
    expect(keyOf(judgedBy('hungGently', hung(60, told(8320, 'casingSnapped')), bands))).toBe(
      'reason.hungGently.snapped',
    );
  });

  test('each jam of the pack costs half; a jam of cuttings, and what another crew pours, do not count', () => {
    const pour = told(8800, 'packPoured', { pack: 'pack1', volume_L: 12 });
    const jam = (tick: number, fill = 'pack1'): RunEvent => told(tick, 'packBridged', { fill, at_m: 6 });
    expect(keyOf(judgedBy('packFell', cleanWell()))).toBe('reason.packFell.none');
    expect(judgedBy('packFell', withEvents(pour)).share_frac).toBe(1);
    expect(judgedBy('packFell', withEvents(pour, jam(8700))).share_frac).toBe(0.5);
    expect(judgedBy('packFell', withEvents(pour, jam(8700, 'cuttings'))).share_frac).toBe(1);
    expect(judgedBy('packFell', withEvents(pour, told(8900, 'leftToCrew'), jam(9900))).share_frac).toBe(1);
  });
});

describe('the seal: soundings at 7.1 m (9000 s) and .05 m (12000 s)', () => {
  const bands = { full_m: 2.8, none_m: 1, from_m: 0.5 };
  const cement: LogEntry = [10000, 'placeSeal', { seal: 'cement', volume_L: 20, rate_Lmin: 2 }];
  const placed = told(10600, 'sealPlaced', { seal: 'cement', volume_L: 20 });
  const sealed = (log: LogEntry[], ...events: RunEvent[]): RunView => ({
    ...withActs(...log),
    events: [...cleanWell().events, ...events].sort((a, b) => a.tick - b.tick),
  });

  test('its length is what the line shows before and after; 3 m and more (A-08)', () => {
    expect(judgedBy('sealInterval', sealed([cement]), bands).share_frac).toBe(1);
    const short = sealed([cement], told(9900, 'sounded', { top_m: 1.95 }));
    expect(judgedBy('sealInterval', short, bands).share_frac).toBeCloseTo((1.9 - 1) / 1.8, 6);
    expect(keyOf(judgedBy('sealInterval', cleanWell(), bands))).toBe('reason.sealInterval.none');
    expect(keyOf(judgedBy('sealInterval', sealed([[13000, 'placeSeal', cement[2]]]), bands))).toBe(
      'reason.sealInterval.blind',
    );
  });

  test('what another crew seals is not the learner\u2019s', () => {
    expect(keyOf(judgedBy('sealInterval', sealed([cement], told(9500, 'leftToCrew')), bands))).toBe(
      'reason.sealInterval.none',
    );
  });

  test('cement wants a day (A-21): washed after a quarter of it, a quarter is earned; washed later, all', () => {
    const washedAt = (tick: number): RunView => sealed([[tick, 'develop', { method: 'surge', time_s: 3600 }]], placed);
    expect(judgedBy('sealWaited', washedAt(10600 + 86400 / 4)).share_frac).toBeCloseTo(0.25, 6);
    expect(judgedBy('sealWaited', washedAt(10600 + 86400)).share_frac).toBe(1);
    expect(keyOf(judgedBy('sealWaited', cleanWell()))).toBe('reason.sealWaited.none');
  });
});

describe('fit for people', () => {
  test('chlorine against the polymer by dose and hours (Y-10); the best go counts', () => {
    const bands = { full_mgL: 500, none_mgL: 100, full_s: 7200, none_s: 0 };
    const go = (dose_mgL: number, contact_s: number): LogEntry => [20000, 'breakPolymer', { dose_mgL, contact_s }];
    expect(judgedBy('polymerBreak', withActs(go(1000, 21600)), bands).share_frac).toBe(1);
    expect(judgedBy('polymerBreak', withActs(go(500, 3600)), bands).share_frac).toBe(0.5);
    expect(judgedBy('polymerBreak', withActs(go(100, 3600), go(300, 7200)), bands).share_frac).toBe(0.5);
    expect(keyOf(judgedBy('polymerBreak', cleanWell(), bands))).toBe('reason.polymerBreak.none');
  });

  test('two hours of test and half an hour of recovery (Y-19); one that broke off shows nothing', () => {
    const bands = { test_s: 7200, recovery_s: 1800 };
    const tested = (step_s: number, recovery_s: number, refusal = ''): RunView => ({
      ...withActs([40000, 'yieldTest', { lift: 'suction', rate1_Lmin: 14, step_s, recovery_s }]),
      events: [...cleanWell().events, told(50000, 'testDone', { lift: 'suction', lowest_m: 5, refusal })],
    });
    expect(judgedBy('testRun', tested(7200, 1800), bands).share_frac).toBeCloseTo(1, 9);
    expect(judgedBy('testRun', tested(3600, 0), bands).share_frac).toBeCloseTo(0.35, 9);
    expect(keyOf(judgedBy('testRun', tested(7200, 1800, 'ranDry'), bands))).toBe('reason.testRun.broken');
    expect(keyOf(judgedBy('testRun', cleanWell(), bands))).toBe('reason.testRun.none');
  });

  test('chlorine left at the hand-over: .5 mg/L (C-02)', () => {
    const bands = { full_mgL: 0.5, none_mgL: 5 };
    expect(judgedBy('chlorineGone', cleanWell(), bands).share_frac).toBe(1);
    expect(judgedBy('chlorineGone', cameTo({ disinfection: { left_mgL: 2.75 } }), bands).share_frac).toBeCloseTo(
      0.5,
      9,
    );
    expect(keyOf(judgedBy('chlorineGone', cameTo({ disinfection: { done: false } }), bands))).toBe(
      'reason.chlorineGone.none',
    );
  });
});
