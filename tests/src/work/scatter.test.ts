// The picture of a sample: the same each time, of the right grains, in the right amounts.
import { describe, expect, it } from 'vitest';
import { SIZE_CLASSES } from '$sim';
import { cardPatch, drawingChance, PICTURE, SCALE_per_mm, scatterGrains, smearOf } from '../../../src/notebook/scatter';

const classOf = (id: string): number => SIZE_CLASSES.findIndex((size) => size.id === id);
const shares = (parts: Record<string, number>): number[] => SIZE_CLASSES.map((size) => parts[size.id] ?? 0);

describe('the picture of a sample', () => {
  it('is the same each time for one sample, and another for the next', () => {
    const sand = shares({ mediumSand: 0.6, coarseSand: 0.4 });
    expect(scatterGrains(3, sand)).toEqual(scatterGrains(3, sand));
    expect(scatterGrains(4, sand)).not.toEqual(scatterGrains(3, sand));
  });

  it('shows no grain of clay or silt, but a smear as large as their share', () => {
    const mud = shares({ clay: 0.3, silt: 0.5, fineSand: 0.2 });
    expect(scatterGrains(1, mud).map((mark) => mark.classIndex)).toEqual([classOf('fineSand')]);
    expect(smearOf(mud)).toBeCloseTo(0.8, 12);
  });

  it('draws each class at the scale of the card', () => {
    for (const mark of scatterGrains(1, shares({ mediumSand: 0.5, fineGravel: 0.5 }))) {
      const size = SIZE_CLASSES[mark.classIndex]!;
      expect(mark.size).toBeCloseTo(size.d_mm * SCALE_per_mm, 12);
      expect(cardPatch(mark.classIndex).size).toBeCloseTo(mark.size, 12);
    }
  });

  it('covers half the picture when all grains are coarse enough to be counted', () => {
    const [mark] = scatterGrains(1, shares({ coarseSand: 1 }));
    const covered = (mark!.count * Math.PI * mark!.size ** 2) / 4 / (PICTURE.width * PICTURE.height);
    expect(covered).toBeGreaterThan(0.4);
    expect(covered).toBeLessThan(0.6);
  });

  it('shows more grains of a class for a larger share of it', () => {
    const count = (share: number): number => scatterGrains(1, shares({ coarseSand: share }))[0]?.count ?? 0;
    expect(count(0.1)).toBeLessThan(count(0.3));
    expect(count(0.3)).toBeLessThan(count(0.9));
    expect(count(0.01)).toBe(0);
  });
});

describe('the chance of a drawing', () => {
  it('spreads evenly from 0 to below 1', () => {
    const chance = drawingChance(11);
    const bins = new Array<number>(10).fill(0);
    for (let i = 0; i < 10_000; i++) {
      const value = chance();
      expect(value >= 0 && value < 1).toBe(true);
      bins[Math.floor(value * 10)]! += 1;
    }
    for (const count of bins) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});
