// The record as a table for spreadsheets: RFC 4180 in UTF-8, one row for each thing, the same columns in every row (README.md here says what they mean).

import type { RecordSheet } from './sheet';

export const CSV_COLUMNS = [
  'part',
  'number',
  'from_m',
  'to_m',
  'what',
  'detail',
  'value',
  'unit',
  'time_s',
  'text',
] as const;
export type CsvColumn = (typeof CSV_COLUMNS)[number];
export type CsvRow = Partial<Record<CsvColumn, string | number | null>>;

const STARTS_A_FORMULA = /^[=+\-@\t\r]/;

/**
 * One cell. Text that a spreadsheet would take for a formula gets an apostrophe in front, for it may come from a stranger's
 * file; numbers stay numbers. Quotes are doubled, and the cell quoted, where RFC 4180 asks for it.
 * Worked value: =1+1, "a" -> "'=1+1, ""a""".
 */
export function csvCell(value: string | number | null | undefined): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') return String(value);
  const safe = STARTS_A_FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const at = (depth_m: number): CsvRow => ({ from_m: depth_m, to_m: depth_m });
const words = (...list: readonly (string | null)[]): string => list.filter((word) => word !== null).join('; ');
const numbered = <T>(list: readonly T[], part: string, row: (one: T) => CsvRow): CsvRow[] =>
  list.map((one, i) => ({ part, number: i + 1, ...row(one) }));

function headRows(sheet: RecordSheet): CsvRow[] {
  const { hole } = sheet;
  const head = (what: string, rest: CsvRow): CsvRow => ({ part: 'head', what, ...rest });
  const rows = [
    head('kind', { text: sheet.simulated ? 'simulated practice hole, not a real well' : 'real hole' }),
    head('lesson', { text: sheet.lesson }),
    head('ground', { value: sheet.seed }),
    head('model', { text: sheet.sim }),
    head('learner', { text: sheet.who }),
    head('begun', { text: sheet.begun }),
    head('cost', { value: sheet.cost_marks, unit: 'marks' }),
    head('time', { time_s: sheet.time_s }),
    ...Object.entries(sheet.done_s).flatMap(([what, time_s]) => (time_s === null ? [] : [head(what, { time_s })])),
  ];
  if (hole)
    rows.push(
      head('depth', at(hole.depth_m)),
      head('bit', { value: hole.bit_mm, unit: 'mm' }),
      head('rods', { value: hole.rods, detail: `${hole.rodLength_m} m` }),
      head('crew', { value: hole.crew }),
      head('water', { value: hole.water_L, unit: 'L' }),
      ...hole.flush.map(({ additive, mass_kg }) => head('flush', { detail: additive, value: mass_kg, unit: 'kg' })),
      ...hole.givenUp_m.map((depth_m) => head('holeGivenUp', at(depth_m))),
    );
  return rows;
}

function groundRows({ layers, samples, rods, noticed }: RecordSheet): CsvRow[] {
  return [
    ...numbered(layers, 'layer', ({ from_m, to_m, kind, secondary, colours, feels, samples }) => ({
      from_m,
      to_m,
      what: kind,
      detail: words(...secondary, ...colours, ...feels),
      text: samples.join('; '),
    })),
    ...samples.map(({ sample, depth_m, main, secondary, colour, feel }) => ({
      part: 'sample',
      number: sample,
      ...at(depth_m),
      what: main,
      detail: words(secondary, colour, feel),
    })),
    ...rods.map(({ rod, to_m, time_s }) => ({ part: 'rod', number: rod, to_m, time_s })),
    ...numbered(noticed, 'noticed', ({ time_s, event, depth_m }) => ({ ...at(depth_m), what: event, time_s })),
  ];
}

function buildRows({ casing, screen, fills, soundings, levels, headWorks }: RecordSheet): CsvRow[] {
  const rows: CsvRow[] = [];
  if (casing) {
    const { outside_mm, wall_mm, stickUp_m, shoe_m, kind, joint, pieces, length_m, cap, centralisers } = casing;
    rows.push(
      { part: 'casing', from_m: -stickUp_m, to_m: shoe_m, what: kind, detail: joint, value: length_m, unit: 'm' },
      { part: 'casing', what: 'outside', value: outside_mm, unit: 'mm' },
      { part: 'casing', what: 'wall', value: wall_mm, unit: 'mm' },
      { part: 'casing', what: 'pieces', value: pieces },
      { part: 'casing', what: 'cap', text: cap ? 'yes' : 'no' },
      { part: 'casing', what: 'centralisers', value: centralisers },
    );
  }
  if (screen)
    rows.push(
      { part: 'screen', from_m: screen.from_m, to_m: screen.to_m, what: 'cloth', detail: screen.cloth },
      { part: 'screen', what: 'sump', value: screen.sump_m, unit: 'm' },
      { part: 'screen', what: 'slotWidth', value: screen.slotWidth_mm, unit: 'mm' },
      { part: 'screen', what: 'slotRows', value: screen.slotRows },
      { part: 'screen', what: 'slotArc', value: screen.slotArc_mm, unit: 'mm' },
      { part: 'screen', what: 'slotSpacing', value: screen.slotSpacing_mm, unit: 'mm' },
    );
  rows.push(
    ...numbered(fills, 'fill', ({ use, material, volume_L, from_m, to_m }) => ({
      from_m,
      to_m,
      what: use,
      detail: material,
      value: volume_L,
      unit: 'L',
    })),
    ...numbered(soundings, 'sounding', ({ time_s, depth_m }) => ({ ...at(depth_m), time_s })),
    ...numbered(levels, 'level', ({ time_s, depth_m }) => ({ ...at(depth_m), time_s })),
  );
  if (headWorks)
    rows.push(
      { part: 'headWorks', what: 'apron', value: headWorks.apron_m, unit: 'm' },
      { part: 'headWorks', what: 'drain', value: headWorks.drain_m, unit: 'm' },
      { part: 'headWorks', what: 'cap', text: headWorks.cap ? 'yes' : 'no' },
      { part: 'headWorks', what: 'lift', detail: headWorks.lift },
    );
  return rows;
}

function waterRows({ development, polymer, jar, sand, test, disinfection }: RecordSheet): CsvRow[] {
  const dose = (part: string, given: RecordSheet['polymer']): CsvRow[] =>
    given ? [{ part, what: 'chlorine', value: given.dose_mgL, unit: 'mg/L', time_s: given.contact_s }] : [];
  const rows: CsvRow[] = [
    ...numbered(development, 'development', ({ method, time_s }) => ({ what: method, time_s })),
    ...dose('polymerBroken', polymer),
  ];
  if (jar !== null) rows.push({ part: 'jar', what: jar, detail: sand });
  if (test) {
    const level = (what: string, depth_m: number | null): CsvRow[] =>
      depth_m === null ? [] : [{ part: 'test', what, ...at(depth_m) }];
    rows.push(
      { part: 'test', what: 'lift', detail: test.lift },
      ...level('static', test.static_m),
      ...level('lowest', test.lowest_m),
      ...level('recovered', test.recovered_m),
      { part: 'test', what: 'perMetre', value: test.perMetre_Lminm, unit: 'L/min/m' },
      { part: 'test', what: 'brokenOff', detail: test.brokenOff },
      ...numbered(test.rows, 'testReading', ({ time_s, rate_Lmin, level_m }) => ({
        ...at(level_m),
        value: rate_Lmin,
        unit: 'L/min',
        time_s,
      })),
    );
  }
  return [...rows, ...dose('disinfection', disinfection)];
}

/** The rows of the table, head first. */
export function csvRows(sheet: RecordSheet): CsvRow[] {
  return [
    ...headRows(sheet),
    ...Object.entries(sheet.written).map(([what, text]) => ({ part: 'written', what, text })),
    ...groundRows(sheet),
    ...buildRows(sheet),
    ...waterRows(sheet),
    ...numbered(sheet.notes, 'note', ({ time_s, text }) => ({ time_s, text })),
  ];
}

export function writeRecordCsv(sheet: RecordSheet): string {
  const lines = csvRows(sheet).map((row) => CSV_COLUMNS.map((column) => csvCell(row[column])).join(','));
  return [CSV_COLUMNS.join(','), ...lines, ''].join('\r\n');
}

/** The record as JSON: the sheet as it is, its fields as README.md here says. */
export function writeRecordJson(sheet: RecordSheet): string {
  return `${JSON.stringify(sheet, null, 2)}\n`;
}
