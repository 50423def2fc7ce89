// The ground without its colours: every kind of ground is told from its neighbours by its marks alone, and the marks stand out for every eye.
import { describe, expect, it } from 'vitest';
import { groundInk, TILES, type Mark, type PatternName } from '../../../src/charts/patterns';
import { contrastOf, linearOf, luminanceOf, type Rgb } from '../wcag';

type Matrix = readonly [Rgb, Rgb, Rgb];

/**
 * What an eye that lacks one kind of cone sees, in linear RGB. Source: Machado, Oliveira & Fernandes 2009, "A physiologically-based model for
 * simulation of color vision deficiency", table for severity 1.0 (from memory). Grey: luminance alone, the case in which no colour is left.
 */
const EYES: Readonly<Record<string, Matrix>> = {
  'all colours': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  'no red cones': [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  'no green cones': [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  'no blue cones': [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
  grey: [
    [0.2126, 0.7152, 0.0722],
    [0.2126, 0.7152, 0.0722],
    [0.2126, 0.7152, 0.0722],
  ],
};

const seen = (matrix: Matrix, [r, g, b]: Rgb): Rgb => {
  const row = (i: 0 | 1 | 2): number =>
    Math.min(1, Math.max(0, matrix[i][0] * r + matrix[i][1] * g + matrix[i][2] * b));
  return [row(0), row(1), row(2)];
};
const GROUNDS = (Object.keys(TILES) as PatternName[]).filter((name) => name !== 'unknown');
/** Marks against what they lie on: graphics of WCAG 2.2, criterion 1.4.11. */
const GRAPHICS_ratio = 3;

describe.each(Object.entries(EYES))('for an eye with %s', (_, matrix) => {
  it.each(['paper', 'night', 'sun'])('marks stand out from the ground, theme %s', (theme) => {
    const ink = groundInk(theme);
    const mark = luminanceOf(seen(matrix, linearOf(ink.mark)));
    const faint = GROUNDS.filter(
      (name) => contrastOf(luminanceOf(seen(matrix, linearOf(ink.fill[name]))), mark) < GRAPHICS_ratio,
    );
    expect(faint).toEqual([]);
  });
});

const sizeOf = (mark: Mark): number =>
  mark.kind === 'dot' ? mark.r : mark.kind === 'ring' ? mark.rx : Math.hypot(mark.x2 - mark.x1, mark.y2 - mark.y1) / 2;

/** What is left of a tile without its colour: of each kind of mark the largest, and its slope where it is a dash. */
function shapeOf(name: PatternName): Record<string, number> {
  const shape: Record<string, number> = {};
  for (const mark of TILES[name].marks) {
    const steep = mark.kind === 'dash' && Math.abs(mark.x2 - mark.x1) < 2 * Math.abs(mark.y2 - mark.y1);
    const kind = steep ? 'steep dash' : mark.kind;
    shape[kind] = Math.max(shape[kind] ?? 0, sizeOf(mark));
  }
  return shape;
}

/** Marks of one kind are told apart when one is so much larger. ASSUMED: our own eyes at the drawing's scale. */
const LARGER_ratio = 1.4;

function differ(one: PatternName, other: PatternName): boolean {
  const a = shapeOf(one);
  const b = shapeOf(other);
  const kinds = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  return kinds.some((kind) => {
    const [x, y] = [a[kind] ?? 0, b[kind] ?? 0];
    return Math.max(x, y) >= LARGER_ratio * Math.min(x, y) && x !== y;
  });
}

it('any two kinds of ground differ by their marks alone', () => {
  const alike = GROUNDS.flatMap((one, i) =>
    GROUNDS.slice(i + 1)
      .filter((other) => !differ(one, other))
      .map((other) => [one, other]),
  );
  expect(alike).toEqual([]);
});
