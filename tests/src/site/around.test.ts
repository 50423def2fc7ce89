// What lies round a spot: distances and directions by plain geometry.
import { describe, expect, it } from 'vitest';
import { ground } from '$sim';
import { aroundSpot, directionTo, distance_m, nearestOn, neighboursOf } from '../../../src/site/around';
import { clearPlace, edgeTowards, onSheet, sheetFor } from '../../../src/site/drawing';

const at = (east_m: number, north_m: number) => ({ east_m, north_m });

describe('distance and direction', () => {
  it('are those of a right triangle of 3, 4 and 5', () => expect(distance_m(at(10, 10), at(13, 14))).toBe(5));

  it.each([
    [0, 10, 'n'],
    [10, 10, 'ne'],
    [10, 0, 'e'],
    [10, -10, 'se'],
    [0, -10, 's'],
    [-10, -10, 'sw'],
    [-10, 0, 'w'],
    [-10, 10, 'nw'],
  ])('%d east and %d north is %s', (east_m, north_m, direction) =>
    expect(directionTo(at(0, 0), at(east_m, north_m))).toBe(direction),
  );

  it('to a line end at its ends', () => {
    const line = { from: at(0, 0), to: at(10, 0) };
    expect(nearestOn(line, at(4, 7))).toEqual(at(4, 0));
    expect(nearestOn(line, at(-3, 4))).toEqual(at(0, 0));
    expect(nearestOn(line, at(15, 1))).toEqual(at(10, 0));
  });
});

describe('on grounds of many seeds', () => {
  const grounds = Array.from({ length: 40 }, (_, seed) => ground('flood-plain', seed));

  it('every spot is told the flood, every source and the line where there is one', () => {
    for (const one of grounds)
      for (const spot of one.site.spots) {
        const around = aroundSpot(one, spot);
        expect(around.aboveFlood_m).toBeCloseTo(spot.rise_m - one.site.floodLine_m, 9);
        expect(around.sources).toHaveLength(one.contamination.length);
        expect(around.line === null).toBe(one.site.overheadLine === null);
      }
    expect(grounds.some((one) => one.site.overheadLine)).toBe(true);
  });

  it('arrows to the neighbours stand on the edge of the plan, and point outwards', () => {
    for (const one of grounds) {
      const sheet = sheetFor(one.site, 500, 14);
      const low = onSheet(sheet, one.site, at(0, 0));
      const high = onSheet(sheet, one.site, at(one.site.width_m, one.site.breadth_m));
      for (const { well } of neighboursOf(one)) {
        const { x, y, dx, dy } = edgeTowards(sheet, one.site, well);
        const off = Math.min(Math.abs(x - low.x), Math.abs(x - high.x), Math.abs(y - low.y), Math.abs(y - high.y));
        expect(off).toBeLessThan(1e-6);
        const there = onSheet(sheet, one.site, well);
        expect((there.x - x) * dx + (there.y - y) * dy).toBeGreaterThan(0);
      }
    }
  });
});

it('words keep clear of pegs where any of their places does', () => {
  const sheet = sheetFor(ground('flood-plain', 1).site, 400, 14);
  const [bad, good] = [
    { x: 100, y: 100 },
    { x: 100, y: 200 },
  ];
  expect(clearPlace([bad, good], [{ x: 105, y: 98 }], 40, 14, sheet)).toEqual(good);
  expect(clearPlace([bad], [{ x: 105, y: 98 }], 40, 14, sheet)).toEqual(bad);
});
