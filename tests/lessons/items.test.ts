// The items of log, additives and economy on records made by hand: what a fault costs and what is said.

import { describe, expect, test } from 'vitest';
import { fittingNames } from '$lessons';
import { caught, cleanView, inTray, judged, lostBy, steadyRows, stop, traceOf, withEvents } from './handMade';

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
    const view = cleanView({ ticks: 6300 });
    expect(judged('jobTime', view).share_frac).toBeCloseTo(0.5, 10);
    expect(lostBy(view)).toEqual({ economy: 3 });
  });

  test('giving up early does not count as quick', () => {
    const view = cleanView({ ticks: 60, depth_m: 1.1 });
    expect(judged('jobTime', view)).toMatchObject({ share_frac: 0.25, reason: { key: 'reason.jobTime.unfinished' } });
  });

  test('powder and water beyond need are named', () => {
    expect(judged('suppliesUsed', cleanView({ powderUsed_kg: 1.8 })).reason).toEqual({
      key: 'reason.suppliesUsed.powder',
      data: { powder_g: 1800, goal_g: 1300 },
    });
    expect(judged('suppliesUsed', cleanView({ waterUsed_L: 1000 })).reason.key).toBe('reason.suppliesUsed.water');
  });
});
