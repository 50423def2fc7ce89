// The record of a played run: the crew's own data, every bit of it, and not a word of the true ground.
import { describe, expect, it } from 'vitest';
import { BLANK_SHEET, lessonById, playCrew, recordOf, writeRecordCsv, writeRecordJson } from '../../../lessons';
import { fillsFrom } from '../../../lessons/record/wellEntries';
import { act, SOIL_KINDS } from '../../../sim';

const lesson = lessonById('first-rods')!;
const run = playCrew(lesson, 'careful', 7);
act(run, 'record', { field: 'place', text: 'Reedbank' });
const sheet = recordOf(run, { lesson: lesson.id, who: 'T-01', begun: '2026-11-27' });

describe('the record of a drilled hole', () => {
  it('has the layers as logged, the samples as named, the fields as written', () => {
    expect(sheet.layers.map(({ from_m, to_m, kind }) => ({ from_m, to_m, kind }))).toEqual(
      run.state.ownLog.map(({ from_m, to_m, kind }) => ({
        from_m: Math.round(from_m * 100) / 100,
        to_m: Math.round(to_m * 100) / 100,
        kind,
      })),
    );
    expect(sheet.samples.map(({ sample, main }) => [sample, main])).toEqual(
      run.state.samples.map(({ sample, named }) => [sample, named?.main ?? null]),
    );
    expect(sheet.written).toEqual({ place: 'Reedbank' });
  });

  it('tells rod by rod how long it took, and the depth by the tally', () => {
    expect(sheet.rods.map(({ rod }) => rod)).toEqual(sheet.rods.map((_, i) => i + 1));
    expect(sheet.rods.length).toBeGreaterThan(1);
    let before = 0;
    for (const { rod, to_m, time_s } of sheet.rods) {
      expect(to_m).toBeCloseTo(rod * sheet.hole!.rodLength_m, 0);
      expect(time_s).toBeGreaterThan(0);
      before += time_s;
    }
    expect(before).toBeLessThan(run.state.tick);
    expect(sheet.done_s.drilled).toBeGreaterThan(before);
  });

  it('says nothing that the crew did not: of a hole nobody logged or sampled there is no ground at all', () => {
    const bare = { ...run, state: { ...run.state, ownLog: [], samples: [] } };
    const text = writeRecordJson(recordOf(bare, { lesson: lesson.id }));
    for (const kind of SOIL_KINDS) expect(text).not.toContain(kind);
    expect(recordOf(bare, { lesson: lesson.id }).layers).toEqual([]);
  });

  it('has nothing of a well where none was asked for', () => {
    const { casing, screen, fills, levels, development, test, disinfection, headWorks } = sheet;
    expect({ casing, screen, fills, levels, development, test, disinfection, headWorks }).toEqual({
      casing: null,
      screen: null,
      fills: [],
      levels: [],
      development: [],
      test: null,
      disinfection: null,
      headWorks: null,
    });
  });

  it('holds finite plain data only', () => {
    expect(JSON.parse(writeRecordJson(sheet))).toEqual(sheet);
    expect(writeRecordCsv(sheet)).not.toMatch(/NaN|Infinity|undefined|\[object/);
    expect(Object.keys(sheet).sort()).toEqual(Object.keys(BLANK_SHEET).sort());
  });
});

describe('fills by sounding', () => {
  const pack = (tick: number, volume_L: number) => ({ tick, use: 'pack', material: 'pack1', volume_L }) as const;
  const seal = (tick: number) => ({ tick, use: 'seal', material: 'cement', volume_L: 10 }) as const;

  it('a fill reaches from the sounding after it down to the one before', () => {
    const soundings = [
      { time_s: 200, depth_m: 12 },
      { time_s: 300, depth_m: 11 },
      { time_s: 500, depth_m: 4 },
    ];
    expect(fillsFrom([pack(100, 20), pack(250, 5), seal(400)], soundings, 18)).toEqual([
      { use: 'pack', material: 'pack1', volume_L: 25, from_m: 11, to_m: 18 },
      { use: 'seal', material: 'cement', volume_L: 10, from_m: 4, to_m: 11 },
    ]);
  });

  it('what was not sounded is not known, above it and below', () => {
    expect(fillsFrom([pack(100, 20), seal(400)], [{ time_s: 500, depth_m: 4 }], 18)).toEqual([
      { use: 'pack', material: 'pack1', volume_L: 20, from_m: null, to_m: 18 },
      { use: 'seal', material: 'cement', volume_L: 10, from_m: 4, to_m: null },
    ]);
  });
});
