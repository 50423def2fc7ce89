// The class as a table, read back by somebody else's strict reader of RFC 4180.
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classCsv } from '../../../src/classroom/exports/classCsv';
import { CLASS } from './aClass';

type Row = Record<string, string>;
/** Lines end with CR LF and nothing else, every row has as many cells as the head, quotes stand where they may. */
const rowsOf = (text: string): Row[] =>
  parse(text, { bom: true, columns: true, record_delimiter: '\r\n', relax_column_count: false });

describe('the table of a class', () => {
  const text = classCsv(CLASS);
  const rows = rowsOf(text);

  test('begins with the mark of UTF-8 and has one row a result', () => {
    expect([...new TextEncoder().encode(text)].slice(0, 3)).toEqual([0xef, 0xbb, 0xbf]);
    expect(rows.length).toBe(CLASS.results.length);
    expect(text.endsWith('\r\n')).toBe(true);
  });

  test('brings figures and words back', () => {
    expect(rows[0]).toEqual({
      class: 'B7',
      learner: 'T-07',
      attempt: '1',
      counts: 'yes',
      repeats: 'no',
      same_run: 'no',
      practice: 'no',
      verdict: 'reproduced',
      why: '',
      score: '80.1',
      passed: 'yes',
      finished: 'yes',
      outcome: 'reached',
      hole: '30',
      hole_max: '30',
      log: '20.1',
      log_max: '30',
      economy: '30',
      economy_max: '40',
      item_clearedStops: '30',
      item_labelsTrue: '20.1',
      item_jobTime: '30',
      job_s: '5040',
      spent_s: '611.25',
      ground: '4294967295',
      own_ground: 'yes',
      taken: '2026-03-03T09:30:00.000Z',
      file: 'result-T-07.json',
      exercise: 'exercise-abcd',
      edition: '3',
      title: `'${CLASS.exercise.title}`,
      model: '1.2.3',
    });
  });

  test('leaves empty what is not known', () => {
    expect(rows[5]).toMatchObject({
      verdict: 'notReproduced',
      score: '',
      passed: '',
      hole: '',
      job_s: '',
      outcome: '',
    });
    expect(rows[1]).toMatchObject({ learner: 'fish', spent_s: '' });
    expect(rows[2]).toMatchObject({ class: '', attempt: '', own_ground: '' });
  });

  test('takes the sting out of what a spreadsheet would run', () => {
    expect(rows[5]!['file']).toBe(`'-1+cmd, "a"\r\nb`);
    expect(rows[6]).toMatchObject({ file: `'\t@x`, why: `'+another version` });
  });

  test('brings any text back as it was, or with an apostrophe before what a spreadsheet would run', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.string({ unit: 'binary' }), (title, from) => {
        const report = { ...CLASS, exercise: { ...CLASS.exercise, title }, results: [{ ...CLASS.results[0]!, from }] };
        const [row] = rowsOf(classCsv(report));
        for (const [was, is] of [
          [title, row!['title']!],
          [from, row!['file']!],
        ] as const) {
          expect(is).toBe(/^[=+\-@\t\r]/.test(was) ? `'${was}` : was);
          expect(is).not.toMatch(/^[=+\-@\t\r]/);
        }
      }),
    );
  });
});
