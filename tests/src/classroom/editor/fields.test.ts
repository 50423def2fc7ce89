// Fields by their paths: read, changed, with the limits of the form, in people's units, each in its part.
import { expect, test } from 'vitest';
import {
  figureOf,
  keptAs,
  limitsShown,
  shownAs,
  steppedBy,
  typedFigure,
} from '../../../../src/classroom/editor/figures';
import { limitsOf } from '../../../../src/classroom/editor/limits';
import { hasPart, partOf, PARTS } from '../../../../src/classroom/editor/parts';
import { valueAt, withAt } from '../../../../src/classroom/editor/paths';
import { fresh, full, wrongFields } from './made';

/** The paths of all figures that can be set. */
function figuresIn(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, inside]) => figuresIn(inside, path === '' ? name : `${path}.${name}`));
}
const FIGURES = figuresIn(full).filter((path) => !['version', 'edition', 'hints'].includes(path));

test('the exercise of these tests is one, and has many figures', () => {
  expect(wrongFields(full)).toEqual([]);
  expect(FIGURES.length).toBeGreaterThan(80);
});

test('a value is changed at its path and nowhere else', () => {
  const changed = withAt(full, 'ground.layers.1.thickness_m', 4);
  expect(valueAt(changed, 'ground.layers.1.thickness_m')).toBe(4);
  expect(withAt(changed, 'ground.layers.1.thickness_m', 3)).toEqual(full);
  expect(valueAt(full, 'ground.layers.1.thickness_m')).toBe(3);
  expect(Object.keys(changed)).toEqual(Object.keys(full));
});

test('a field that may be left out comes and goes', () => {
  const dry = withAt(fresh(), 'season', 'dry');
  expect(dry.season).toBe('dry');
  expect(withAt(dry, 'season', undefined)).toEqual(fresh());
  expect(valueAt(fresh(), 'site.spots.0.east_m')).toBeUndefined();
});

test.each(FIGURES)('%s: one beyond a limit is refused at that field, the limit itself is not for its size', (path) => {
  const limits = limitsOf(full, path)!;
  const step = limits.whole ? 1 : 0.001;
  for (const beyond of [limits.min - step, limits.max + step, Number.NaN]) {
    const fields = wrongFields(withAt(full, path, beyond));
    // A moment is told as a whole.
    expect(fields.some((field) => field === path || path.startsWith(`${field}.`))).toBe(true);
  }
  for (const edge of [limits.min, limits.max]) {
    const changed = withAt(full, path, edge);
    // At its limit a figure may still not fit the others, but then it is not the figure that is told of.
    const alone = wrongFields(changed).filter((field) => field === path && field !== 'ground.salt.from_m');
    expect(alone).toEqual([]);
  }
});

test.each(FIGURES)('%s is shown in a unit and comes back as it was kept', (path) => {
  const figure = figureOf(full, path);
  const value = valueAt(full, path) as number;
  expect(keptAs(figure, shownAs(figure, value), limitsOf(full, path)!.whole)).toBeCloseTo(value, 6);
  const { min, max } = limitsShown(full, path)!;
  expect(min).toBeLessThan(max);
  expect(Object.is(min, -0)).toBe(false);
  for (const edge of [min, max]) {
    const kept = keptAs(figure, edge, limitsOf(full, path)!.whole);
    expect(kept).toBeGreaterThanOrEqual(limitsOf(full, path)!.min);
    expect(kept).toBeLessThanOrEqual(limitsOf(full, path)!.max);
  }
});

test('a path that is no figure has no limits', () => {
  for (const path of ['title', 'ground', 'ground.perched', 'faults.0.rain_mmh.0', 'nothing.at.all'])
    expect(limitsOf(full, path)).toBeNull();
});

test('a short job is told in minutes, a long one in hours', () => {
  expect(figureOf(fresh(), 'cap_s').unit).toBe('min');
  expect(figureOf(full, 'cap_s').unit).toBe('h');
  expect(shownAs(figureOf(fresh(), 'cap_s'), 10800)).toBe(180);
});

test.each([
  ['1.5', 1.5],
  ['1,5', 1.5],
  ['1,500', 1500],
  ['12,500', 12500],
  ['1,234,567', 1234567],
  ['1,50', 1.5],
  [' 3 ', 3],
  ['−0.4', -0.4],
  ['', Number.NaN],
  ['deep', Number.NaN],
])('what is typed as "%s" is %s', (text, value) => {
  expect(typedFigure(text)).toBe(value);
});

test('a press goes one step and stays within the limits', () => {
  const limits = { min: 0.1, max: 60 };
  expect(steppedBy(0.3, 0.1, limits)).toBe(0.4);
  expect(steppedBy(0.1, -0.1, limits)).toBe(0.1);
  expect(steppedBy(59.9, 1, limits)).toBe(60);
  expect(steppedBy(Number.NaN, 0.1, limits)).toBe(0.2);
});

test('every field belongs to a part, and every part has one', () => {
  const fixed = ['format', 'version', 'sim', 'id', 'edition', 'lesson'];
  const fields = [...Object.keys(full), 'season', 'bands', 'pool'].filter((name) => !fixed.includes(name));
  for (const field of fields) expect(hasPart(field), field).toBe(true);
  expect(new Set(fields.map(partOf))).toEqual(new Set(PARTS));
  expect(partOf('ground.layers.2.thickness_m')).toBe('ground');
});
