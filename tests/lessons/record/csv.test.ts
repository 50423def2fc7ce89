// The record as a table: RFC 4180 (lines end with CR LF, quotes doubled, all rows of one length), read back by a reader written from that text.
import { describe, expect, it } from 'vitest';
import { BLANK_SHEET, csvCell, CSV_COLUMNS, writeRecordCsv, writeRecordJson } from '../../../lessons';
import { FULL_SHEET } from './fullSheet';

/** RFC 4180 section 2, rules 1 to 7. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const sign = text[i];
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (text[i + 1] === '"') cell += text[++i];
      else quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === ',') {
      row.push(cell);
      cell = '';
    } else if (sign === '\r' && text[i + 1] === '\n') {
      i++;
      rows.push([...row, cell]);
      row = [];
      cell = '';
    } else cell += sign;
  }
  expect([quoted, row, cell]).toEqual([false, [], '']);
  return rows;
}

const rowsOf = (text: string): Record<string, string>[] => {
  const [head, ...rows] = readCsv(text);
  expect(head).toEqual([...CSV_COLUMNS]);
  return rows.map((cells) => {
    expect(cells.length).toBe(CSV_COLUMNS.length);
    return Object.fromEntries(cells.map((cell, i) => [CSV_COLUMNS[i], cell]));
  });
};

describe('a cell', () => {
  it.each([
    ['plain', 'plain'],
    ['a, b', '"a, b"'],
    ['he said "no"', '"he said ""no"""'],
    ['two\r\nlines', '"two\r\nlines"'],
    ['=1+1, "a"', '"\'=1+1, ""a"""'],
    ['+256 3', "'+256 3"],
    ['-', "'-"],
    ['@place', "'@place"],
    ['\tx', "'\tx"],
    ['\rx', '"\'\rx"'],
    [-0.5, '-0.5'],
    [0, '0'],
    [null, ''],
    [undefined, ''],
  ])('%j is written %j', (value, written) => expect(csvCell(value)).toBe(written));
});

describe('the table', () => {
  const rows = rowsOf(writeRecordCsv(FULL_SHEET));
  const part = (name: string) => rows.filter((row) => row.part === name);

  it('has a row for each thing of the record', () => {
    expect(part('layer').length).toBe(FULL_SHEET.layers.length);
    expect(part('sample').length).toBe(FULL_SHEET.samples.length);
    expect(part('rod').length).toBe(FULL_SHEET.rods.length);
    expect(part('fill').length).toBe(FULL_SHEET.fills.length);
    expect(part('testReading').length).toBe(FULL_SHEET.test!.rows.length);
    expect(part('written').length).toBe(Object.keys(FULL_SHEET.written).length);
  });

  it('brings depths and words back as they were', () => {
    FULL_SHEET.layers.forEach((layer, i) =>
      expect(part('layer')[i]).toMatchObject({
        from_m: String(layer.from_m),
        to_m: String(layer.to_m),
        what: layer.kind,
      }),
    );
    expect(part('fill').at(-1)).toMatchObject({ from_m: '', to_m: '2.1', detail: 'cement', value: '9', unit: 'L' });
    expect(part('written').find((row) => row.what === 'remarks')?.text).toBe(`'=1+1 is "two", said the clerk`);
    expect(part('casing')[0]).toMatchObject({ from_m: '-0.5', to_m: '18.4', what: 'pvc63' });
    expect(part('head')[0]?.text).toBe('simulated practice hole, not a real well');
  });

  it('of a blank form holds no figure', () => {
    const blank = rowsOf(writeRecordCsv(BLANK_SHEET));
    expect(new Set(blank.map((row) => row.part))).toEqual(new Set(['head']));
  });
});

it('JSON brings the whole sheet back', () => {
  expect(JSON.parse(writeRecordJson(FULL_SHEET))).toEqual(FULL_SHEET);
  expect(FULL_SHEET).toMatchObject({ format: 'hand-jetting-record', version: 1 });
});
