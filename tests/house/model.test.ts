// sim/MODEL.md says what the code says. Three kinds of table are held against it: one constant a row ('In the code'),
// a grid over a record or a list, and figures that are worked out anew.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CONSTANTS, SIM, numbersIn } from './constants';
import { FIGURES } from './figures';

const MODEL = readFileSync(join(SIM, 'MODEL.md'), 'utf8');

/** 'file#NAME.field[0]', or 'file: piece of code' for a number that has no name. */
const NAMED = /^`([\w/]+\.ts)#([A-Za-z_0-9]+)([\w.[\]-]*)`$/;
const QUOTED = /^`([\w/]+\.ts): (.+)`$/;
const FIGURED = /^<!-- figures: (\w+) -->$/;

interface Table {
  readonly head: string[];
  readonly rows: string[][];
  /** The line above it. */
  readonly over: string;
}

function tablesIn(text: string): Table[] {
  const lines = text.split('\n');
  const cells = (line: string): string[] =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim());
  const tables: Table[] = [];
  for (let i = 0; i < lines.length; i++) {
    if (!lines[i].startsWith('|')) continue;
    const from = i;
    while (lines[i + 1]?.startsWith('|')) i++;
    tables.push({ head: cells(lines[from]), rows: lines.slice(from + 2, i + 1).map(cells), over: lines[from - 1] });
  }
  return tables;
}

/** What a path such as `.settling.area_m2` or `[3]` leads to; in a list, a word leads to the entry of that id. */
function along(value: unknown, path: string): unknown {
  let at = value as never;
  for (const key of path.split(/[.[\]]+/).filter((part) => part !== '')) {
    if (at === null || at === undefined) return at;
    const list: unknown = at;
    at = Array.isArray(list) && !/^\d+$/.test(key) ? (list.find(({ id }) => id === key) as never) : at[key];
  }
  return at;
}

/** A value as the tables write it. The fields of an act are written as their limits. */
function written(value: unknown): string {
  if (value === null) return 'none';
  if (typeof value !== 'object') return String(value);
  if (!Array.isArray(value)) {
    const { type, name, min, max } = value as Record<string, unknown>;
    if (type !== undefined) return min === undefined ? '' : `${name} ${min} to ${max}`;
    return Object.entries(value)
      .map(([key, part]) => `${key} ${written(part)}`)
      .join(', ');
  }
  return (
    value
      .map(written)
      .filter((part) => part !== '')
      .join(', ') || 'none'
  );
}

function agrees(cell: string, value: unknown): boolean {
  if (cell === written(value)) return true;
  const read = numbersIn(cell);
  const wanted = Array.isArray(value) ? value : [value];
  return read.length > 0 && read.length === wanted.length && read.every((part, i) => part === wanted[i]);
}

const UNITS = new Map(
  `m=m mm=mm m2=m2 m3=m3 m3s=m3/s ms=m/s MS=m/s MS2=m/s2 kg=kg kgm3=kg/m3 KGM3=kg/m3 gL=g/L Pa=Pa Pas=Pa_s Pasn=Pa_s^n N=N Nm=N_m W=W rpm=1/min
   C=C s=s 1s=1/s frac=- ratio=- L=L Ls=L/s marks=marks 100g=100_g m3Ns=m3/(N_s) 1m=1/m`
    .split(/\s+/)
    .map((pair) => pair.replaceAll('_', ' ').split('=') as [string, string]),
);

function suffixOf(name = ''): string | undefined {
  // Hazen's C is no temperature.
  const [, over, own] = /(?:_(N|Nm))?(?<!HAZEN)_([A-Za-z0-9]+)(?:\[\d+\])?$/.exec(name) ?? [];
  const unit = UNITS.get(own ?? '');
  return over && unit ? `${UNITS.get(over)}/${unit}` : unit;
}

/** The unit that a name carries; a field of a record with a unit counts in that, per its own. */
function unitOf(name: string, path: string): string | undefined {
  const field = suffixOf(path.split('.').at(-1));
  const whole = suffixOf(name);
  const [, per] = /Per(Kg|Hour|L|M)$/.exec(path) ?? [];
  if (whole && per) return `${whole}/${{ Kg: 'kg', Hour: 'h', L: 'L', M: 'm' }[per]}`;
  return path !== '' && whole && field ? `${whole}/${field}` : (field ?? whole);
}

/** Every number, word and null inside a value, by its path; an entry of a list by its id where it has one. */
function leaves(value: unknown, path = ''): string[] {
  if (value === null || typeof value !== 'object') return value === undefined ? [] : [path];
  if (Array.isArray(value))
    return value.flatMap((part, i) => leaves(part, `${path}${part?.id ? `.${part.id}` : `[${i}]`}`));
  return Object.entries(value).flatMap(([key, part]) => leaves(part, `${path}.${key}`));
}

const constantAt = (file: string, name: string) => CONSTANTS.get(file)?.get(name);

/** All that is wrong in the tables, and what they speak of: file#NAME with the path of each value. */
function checkTables(text: string): { problems: string[]; told: Set<string> } {
  const problems: string[] = [];
  const told = new Set<string>();

  function hold(file: string, name: string, path: string, cell: string): void {
    const value = along(constantAt(file, name)?.value, path);
    const what = `${file}#${name}${path}`;
    if (value === undefined) problems.push(`${what}: there is no such number`);
    else if (!agrees(cell, value)) problems.push(`${what}: ${cell} stands for ${written(value)}`);
    for (const leaf of leaves(value)) told.add(what + leaf);
  }

  function holdRow(row: string[], head: string[]): void {
    const [cell, unit, source, code] = ['Value', 'Unit', 'Source or reason', 'In the code'].map(
      (title) => row[head.indexOf(title)],
    );
    const quoted = QUOTED.exec(code);
    const named = NAMED.exec(code);
    if (quoted) {
      const [, file, piece] = quoted;
      const text = CONSTANTS.has(file) ? readFileSync(join(SIM, file), 'utf8').replace(/\s+/g, ' ') : '';
      if (!text.includes(piece)) problems.push(`${file}: '${piece}' is not there`);
      const parts = numbersIn(cell);
      if (parts.length === 0) problems.push(`${file}: ${cell} is no number`);
      for (const part of parts)
        if (!piece.match(/\d[\d.e-]*\d|\d/g)?.some((number) => Number(number) === part))
          problems.push(`${file}: ${part} is not in '${piece}'`);
    } else if (named) {
      const [, file, name, path] = named;
      hold(file, name, path, cell);
      const wanted = unitOf(name, path);
      if (wanted !== undefined && unit !== wanted) problems.push(`${code}: the unit is ${wanted}, not ${unit}`);
      if (constantAt(file, name)?.assumed && !file.startsWith('materials/') && !/ASSUMED/.test(source))
        problems.push(`${code}: the code calls it ASSUMED`);
    } else problems.push(`no constant is named by ${code}`);
    if (!source) problems.push(`${code}: no source or reason`);
  }

  for (const { head, rows, over } of tablesIn(text)) {
    const grid = NAMED.exec(head[0]);
    const figure = FIGURED.exec(over)?.[1];
    for (const row of rows) {
      if (row.length !== head.length) problems.push(`a row has ${row.length} cells, not ${head.length}: ${row[0]}`);
      else if (head.includes('In the code')) holdRow(row, head);
      else if (grid) {
        head.forEach((title, i) => {
          const [, file, name, path] = grid;
          if (i > 0 && title.startsWith('`')) hold(file, name, `${path}.${row[0]}.${title.slice(1, -1)}`, row[i]);
        });
      } else if (figure) {
        row.slice(1).forEach((cell, i) => {
          const column = head[i + 1].split(' ')[0];
          const value = FIGURES[figure]?.(row[0].split(' ')[0], column, i);
          const shown =
            typeof value === 'number' ? value.toFixed(/\.(\d+)/.exec(cell)?.[1].length ?? 0) : String(value);
          if (cell !== shown)
            problems.push(`figures ${figure}, ${row[0]}, ${head[i + 1]}: ${cell} stands for ${shown}`);
        });
      } else if (/\.ts[#:]/.test(row.join())) problems.push(`a row that nothing holds: ${row.join()}`);
    }
  }
  return { problems, told };
}

/** Every number that the tables must tell: all of sim/materials, and elsewhere those with a unit or ASSUMED over them. */
function owed(): string[] {
  return [...CONSTANTS].flatMap(([file, found]) =>
    [...found].flatMap(([name, { value, assumed }]) => {
      if (/^(numeric|index)/.test(file) || !(file.startsWith('materials/') || assumed || suffixOf(name))) return [];
      const told = leaves(value).filter((path) => Number.isFinite(along(value, path)));
      return told.map((path) => `${file}#${name}${path}`);
    }),
  );
}

const { problems, told } = checkTables(MODEL);
const untold = (text: Set<string>): string[] => owed().filter((path) => !text.has(path));

describe('the model for teachers', () => {
  it('gives every value as the code has it', () => expect(problems).toEqual([]));

  it('leads every link to a heading', () => {
    const headings = [...MODEL.matchAll(/^#+ (.*)$/gm)].map(([, words]) =>
      words
        .toLowerCase()
        .replace(/[^a-z0-9 -]/g, '')
        .replaceAll(' ', '-'),
    );
    const links = [...MODEL.matchAll(/\]\(#([^)]*)\)/g)].map(([, link]) => link);
    expect(links.length).toBeGreaterThan(20);
    expect(links.filter((link) => !headings.includes(link))).toEqual([]);
  });

  it('leaves no constant of the physics out', () => {
    expect(owed().length).toBeGreaterThan(300);
    expect(untold(told)).toEqual([]);
  });

  it.each(['DEFAULT_KIT', 'POLYMER', 'DURATION_s', 'PRICE_marks', 'FUNNEL'])('tells every field of %s', (name) => {
    const fields = owed().filter((path) => path.includes(`#${name}.`));
    expect(fields.length).toBeGreaterThan(3);
    expect(fields.filter((path) => !told.has(path))).toEqual([]);
  });

  it.each(Object.keys(FIGURES))('shows the figures of %s', (name) =>
    expect(MODEL).toContain(`<!-- figures: ${name} -->\n|`),
  );
});

describe('on a planted mistake', () => {
  const head = '| What it is | Value | Unit | Source or reason | In the code |\n|---|---|---|---|---|\n';
  const row = (value: string, unit: string, source: string, code: string): string[] =>
    checkTables(`${head}| x | ${value} | ${unit} | ${source} | \`${code}\` |\n`).problems;

  it('a true row passes', () => expect(row('0.5', 'm', 'ASSUMED', 'drilling/pull.ts#CHANCE_m')).toEqual([]));
  it.each([
    ['another value', row('0.51', 'm', 'ASSUMED', 'drilling/pull.ts#CHANCE_m')],
    ['another unit', row('0.5', 's', 'ASSUMED', 'drilling/pull.ts#CHANCE_m')],
    ['a name that is gone', row('0.5', 'm', 'ASSUMED', 'drilling/pull.ts#LUCK_m')],
    ['a field that is gone', row('0.5', 'm', 'ASSUMED', 'materials/kit.ts#DEFAULT_KIT.luck_m')],
    ['no ASSUMED', row('0.5', 'm', 'a book', 'drilling/pull.ts#CHANCE_m')],
    ['a piece of code that is gone', row('7', '-', 'ASSUMED', 'run/senses.ts: share > 7')],
    ['a cell of a grid', checkTables('\n| `materials/soils.ts#SOILS` | `d50_mm` |\n|-|-|\n| silt | 9 |').problems],
    ['a row left out', untold(checkTables(MODEL.replace(/^.*#CHANCE_m.*\n/m, '')).told)],
    ['a figure', checkTables('<!-- figures: flow -->\n| Bit | L/min |\n|-|-|\n| 20 | 1.0 |').problems],
  ])('%s is found', (_what, found) => expect(found).toHaveLength(1));
});
