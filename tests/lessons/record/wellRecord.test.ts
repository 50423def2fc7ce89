// The record of a whole well: what the crew poured, sounded, dipped and tested, in its order, and no figure of the true annulus.
import { beforeAll, describe, expect, it } from 'vitest';
import { recordOf, writeRecordCsv, writeRecordJson, type RecordSheet } from '../../../lessons';
import { sensesOf, type Run } from '../../../sim';
import { wellRunAt } from '../../browser/wellRun';

let run: Run;
let sheet: RecordSheet;
beforeAll(() => {
  run = wellRunAt('built');
  sheet = recordOf(run, { lesson: 'open-well' });
}, 120_000);

describe('the record of a well', () => {
  it('has the casing by its length and the screen above its lower end, as sensed', () => {
    const { casing, plan } = sensesOf(run).well!;
    expect(sheet.casing).toMatchObject({ kind: plan!.casing, pieces: casing.pieces, cap: plan!.cap });
    expect(sheet.casing!.shoe_m).toBeCloseTo(casing.shoe_m, 2);
    expect(sheet.casing!.stickUp_m).toBeCloseTo(casing.length_m - casing.shoe_m, 2);
    expect(sheet.screen!.to_m).toBeCloseTo(casing.shoe_m - plan!.sump_m, 2);
    expect(sheet.screen!.to_m - sheet.screen!.from_m).toBeCloseTo(plan!.screenTo_m - plan!.screenFrom_m, 2);
  });

  it('has each fill with its litres, its top only where it was sounded', () => {
    const poured = run.log.flatMap(([, action, { pack, seal, volume_L }]) =>
      action === 'pourPack' ? [['pack', pack, volume_L]] : action === 'placeSeal' ? [['seal', seal, volume_L]] : [],
    );
    expect(poured.map(([use]) => use)).toEqual(['pack', 'seal']);
    expect(sheet.fills.map(({ use, material, volume_L }) => [use, material, volume_L])).toEqual(poured);
    const sounded = sheet.soundings.map(({ depth_m }) => depth_m);
    expect(sounded.length).toBe(2);
    expect(sheet.fills.map(({ from_m }) => from_m)).toEqual(sounded);
    expect(sheet.fills[1]!.to_m).toBe(sounded[0]);
  });

  it('has development, test, disinfection and head works as they were done', () => {
    expect(sheet.development).toEqual([
      { method: 'surge', time_s: 3600 },
      { method: 'bail', time_s: 1800 },
    ]);
    expect(sheet.polymer).toEqual({ dose_mgL: 500, contact_s: 3600 });
    expect(sheet.disinfection).toEqual({ dose_mgL: 50, contact_s: 3600 });
    expect(sheet.headWorks).toMatchObject({ apron_m: 1, drain_m: 3, cap: true, lift: 'suction' });
    const { test } = sensesOf(run).well!;
    expect(sheet.test!.rows).toEqual(test!.rows);
    expect(sheet.test!.static_m).toBe(test!.static_m);
    expect(sheet.levels.length).toBeGreaterThan(0);
  });

  it('tells the stages in their order', () => {
    const { drilled, cased, developed, tested, handedOver } = sheet.done_s;
    expect(handedOver).toBeNull();
    const stages = [drilled, cased, developed, tested].map(Number);
    expect(stages).toEqual([...stages].sort((a, b) => a - b));
    expect(stages[0]).toBeGreaterThan(0);
  });

  it('does not change with what the crew cannot know: true annulus, true ring, true level', () => {
    const { completion, well } = run.state;
    const other: Run = {
      ...run,
      state: {
        ...run.state,
        completion: {
          ...completion,
          annulus: { ...completion.annulus!, fill_m3: new Float64Array(completion.annulus!.fill_m3.length) },
        },
        well: { ...well!, rest_m: 99, level_m: 99, sand_gL: 9 },
      },
    };
    expect(writeRecordJson(recordOf(other, { lesson: 'open-well' }))).toBe(writeRecordJson(sheet));
    expect(writeRecordCsv(sheet)).not.toMatch(/NaN|undefined|\[object/);
  });
});
