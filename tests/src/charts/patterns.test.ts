// Patterns of the ground: one for every kind, the standard's style by its number, marks that do not break at the seams.
import { describe, expect, it } from 'vitest';
import { KIND_WORDS, SOIL_KINDS, SOILS } from '$sim';
import { groundInk, patternOf, TILES, type PatternName } from '../../../src/charts/patterns';

describe('patterns', () => {
  it('know every kind of the model and every word of the learner', () => {
    for (const kind of SOIL_KINDS) expect(patternOf(kind), kind).not.toBe('unknown');
    for (const kind of KIND_WORDS) if (kind !== 'unknown') expect(patternOf(kind), kind).not.toBe('unknown');
    expect(patternOf('unknown')).toBe('unknown');
    expect(patternOf('never heard of')).toBe('unknown');
  });

  it('draw kinds of one number of the standard alike, sands by their size', () => {
    const byNumber: Record<number, PatternName[]> = {
      601: ['gravel'],
      607: ['mediumSand', 'coarseSand'],
      608: ['fineSand'],
      612: ['siltySand'],
      616: ['silt'],
      620: ['clay'],
      657: ['peat'],
    };
    const seen = new Set<number>();
    for (const kind of SOIL_KINDS) {
      const number = SOILS[kind].fgdc;
      if (number === null) continue;
      seen.add(number);
      expect(byNumber[number], `${kind} ${number}`).toContain(patternOf(kind));
    }
    expect(seen.size).toBe(7);
  });

  it('keep every mark inside its tile', () => {
    for (const [name, tile] of Object.entries(TILES)) {
      for (const mark of tile.marks) {
        const [left, right, top, bottom] =
          mark.kind === 'dot'
            ? [mark.x - mark.r, mark.x + mark.r, mark.y - mark.r, mark.y + mark.r]
            : mark.kind === 'ring'
              ? [
                  mark.x - mark.rx - mark.w / 2,
                  mark.x + mark.rx + mark.w / 2,
                  mark.y - mark.ry - mark.w / 2,
                  mark.y + mark.ry + mark.w / 2,
                ]
              : [
                  Math.min(mark.x1, mark.x2),
                  Math.max(mark.x1, mark.x2),
                  Math.min(mark.y1, mark.y2),
                  Math.max(mark.y1, mark.y2),
                ];
        expect(Math.min(left, top), name).toBeGreaterThanOrEqual(0);
        expect(right, name).toBeLessThanOrEqual(tile.width);
        expect(bottom, name).toBeLessThanOrEqual(tile.height);
      }
    }
  });

  it('differ from one another, and have a fill in every theme', () => {
    const drawings = Object.values(TILES).map((tile) => JSON.stringify(tile.marks));
    expect(new Set(drawings).size).toBe(drawings.length);
    for (const theme of ['paper', 'night', 'sun']) {
      for (const name of Object.keys(TILES) as PatternName[])
        expect(groundInk(theme).fill[name]).toMatch(/^#[0-9a-f]{6}$/);
    }
  });

  it('hold more ink the coarser the sand', () => {
    const inkOf = (name: PatternName): number =>
      TILES[name].marks.reduce((sum, mark) => sum + (mark.kind === 'dot' ? mark.r * mark.r : 0), 0) /
      (TILES[name].width * TILES[name].height);
    expect(inkOf('mediumSand')).toBeGreaterThan(inkOf('fineSand'));
    expect(inkOf('coarseSand')).toBeGreaterThan(inkOf('mediumSand'));
  });
});
