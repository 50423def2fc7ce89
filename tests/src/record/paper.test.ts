// The page of the record: names of soils, words that find their place, room on the paper, marks that stay in their box.
import { describe, expect, it } from 'vitest';
import { BLANK_SHEET, type RecordSheet } from '$lessons';
import { RECORD_FIELDS } from '$sim';
import { HATCHES, hatchOf } from '../../../src/charts/hatches';
import { marksIn } from '../../../src/charts/marks';
import { TILES } from '../../../src/charts/patterns';
import { joined, layerWords } from '../../../src/record/layerWords';
import { FOOT_FIELDS, HEAD_FIELDS, linesOf, paperRoom } from '../../../src/record/paper';
import { placeSection, placeWords, wrapped } from '../../../src/record/place';
import { fewReadings } from '../../../src/record/rows';
import { isoSymbol } from '../../../src/record/soilNames';
import { wellWords } from '../../../src/record/wellWords';
import { addMessages } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { FULL_SHEET } from '../../lessons/record/fullSheet';

addMessages(laterMessages);

const layer = (from_m: number, to_m: number, kind: 'clay' | 'fineSand' | 'unknown') =>
  ({ from_m, to_m, kind, secondary: [], colours: [], feels: [], samples: [] }) as const;

describe('names of soils', () => {
  // ISO 14688-1 (from memory): the main soil in capitals, what it is mixed with in small letters before it.
  it.each([
    ['clay', [], 'Cl'],
    ['siltySand', [], 'siSa'],
    ['coarseSand', ['gravel'], 'grCSa'],
    ['fineSand', ['silt'], 'siFSa'],
    ['silt', ['clay'], 'clSi'],
    ['gravel', ['coarseSand', 'fineSand'], 'saGr'],
    ['siltySand', ['silt'], 'siSa'],
    ['topsoil', [], ''],
    ['unknown', ['clay'], ''],
  ] as const)('%s with %j is %s', (main, mixed, symbol) => expect(isoSymbol(main, mixed)).toBe(symbol));

  it('stand in the words of a layer, with what was seen and felt', () => {
    const [, silt] = FULL_SHEET.layers;
    expect(layerWords(silt!)).toBe('silt with clay (clSi), brown, grey');
    expect(layerWords(silt!, 'symbol')).toBe('clSi');
    expect(layerWords(layer(0, 1, 'unknown'), 'symbol')).toBe('I cannot tell');
  });
});

it('neighbours of one name are one layer, others and gaps stay', () => {
  const list = joined([layer(2, 3, 'fineSand'), layer(0, 1, 'clay'), layer(1, 2, 'clay'), layer(4, 5, 'fineSand')]);
  expect(list.map(({ from_m, to_m }) => [from_m, to_m])).toEqual([
    [0, 2],
    [2, 3],
    [4, 5],
  ]);
});

describe('words at their depths', () => {
  it('are broken at spaces, and within a word where there is none', () => {
    expect(wrapped('a long line of words', 10 * 0.54, 1)).toEqual(['a long', 'line of', 'words']);
    expect(wrapped('abcdefghijkl', 5 * 0.54, 1)).toEqual(['abcde', 'fghij', 'kl']);
  });

  it('never cover one another and never leave the paper', () => {
    const said = Array.from({ length: 30 }, (_, i) => ({ y: 90 + (i % 3), words: `layer ${i} of many words` }));
    const placed = placeWords(said, 60, 10, 0, 1000);
    expect(placed.length).toBe(30);
    for (let i = 1; i < placed.length; i++)
      expect(placed[i]!.base_y).toBeGreaterThanOrEqual(
        placed[i - 1]!.base_y + placed[i - 1]!.lines.length * 11.5 - 1e-9,
      );
    const last = placed.at(-1)!;
    expect(last.base_y + (last.lines.length - 1) * 11.5).toBeLessThanOrEqual(1000);
    expect(placed[0]!.base_y).toBeGreaterThan(0);
  });

  it('are left out, the last first, where there is no room at all', () => {
    const said = Array.from({ length: 10 }, (_, i) => ({ y: i, words: 'x' }));
    expect(placeWords(said, 60, 10, 0, 50).length).toBe(4);
  });
});

it('the section keeps its deepest point on the paper, and is without words where they have no room', () => {
  for (const width of [250, 460, 900]) {
    const place = placeSection({ width, height: 600, em: 10 }, 18.9);
    expect(place.ground_y + 18.9 * place.perMetre).toBeLessThanOrEqual(600);
    expect(place.well_x + place.halfHole).toBeLessThanOrEqual(width);
    expect(place.wordy).toBe(width >= 440);
    if (place.wordy) expect(Math.min(place.wordsRoom, place.wellRoom)).toBeGreaterThan(80);
  }
});

describe('room on paper', () => {
  it('every field that is written by hand has its place, once', () => {
    expect([...HEAD_FIELDS, ...FOOT_FIELDS].flat().sort()).toEqual([...RECORD_FIELDS].sort());
  });

  it.each([
    ['', 10, 1],
    ['one two', 10, 1],
    ['one two three', 10, 2],
    ['abcdefghijklmno', 10, 2],
    ['WWWWWWWWWW', 10, 2],
  ])('%j in lines of %i letters takes %i', (text, letters, lines) => expect(linesOf(text, letters)).toBe(lines));

  it('the drawing gives way to long words, down to what the tables beside it need', () => {
    const written = (text: string): RecordSheet => ({
      ...BLANK_SHEET,
      written: Object.fromEntries(RECORD_FIELDS.map((field) => [field, text])),
    });
    const short = paperRoom(written('short'));
    const long = paperRoom(written('a word or two more '.repeat(9).slice(0, 160)));
    const widest = paperRoom(written('W'.repeat(160)));
    expect(short.crowded).toBe(false);
    expect(long.drawing_mm).toBeLessThan(short.drawing_mm);
    expect(widest.crowded).toBe(true);
    expect(widest.drawing_mm).toBeLessThanOrEqual(long.drawing_mm);
  });
});

it('readings are picked evenly, first and last among them', () => {
  const rows = Array.from({ length: 30 }, (_, i) => i);
  const few = fewReadings(rows, 7);
  expect([few.length, few[0], few.at(-1)]).toEqual([7, 0, 29]);
  expect(fewReadings([1, 2], 7)).toEqual([1, 2]);
});

it('the words of the well follow its depths; a fill that nobody sounded says so', () => {
  const words = wellWords(FULL_SHEET);
  expect(words.map(({ depth_m }) => depth_m)).toEqual([...words.map(({ depth_m }) => depth_m)].sort((a, b) => a - b));
  expect(words.some((one) => one.words === 'Seal: cement, up from 2.1 m, top not sounded')).toBe(true);
  expect(wellWords(BLANK_SHEET)).toEqual([]);
});

describe('marks and hatches', () => {
  it('cover the box from edge to edge', () => {
    const { dots } = marksIn(TILES.fineSand, { x: 100, y: 55, width: 40, height: 30 }, 1);
    const places = [...dots.matchAll(/M([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
    expect(places.length).toBeGreaterThanOrEqual(2 * 4 * 3);
    expect(Math.min(...places.map(([x]) => x!))).toBeLessThan(110);
    expect(Math.max(...places.map(([x]) => x!))).toBeGreaterThan(130);
    expect(Math.max(...places.map(([, y]) => y!))).toBeGreaterThan(75);
  });

  it('tell pack, seals and fallen ground apart', () => {
    const names = ['pack1', 'bentonitePellets', 'cement', 'clay', 'cuttings', 'ground'].map(hatchOf);
    expect(new Set(names).size).toBe(6);
    const tiles = names.map((name) => JSON.stringify(HATCHES[name]));
    expect(new Set(tiles).size).toBe(6);
  });
});
