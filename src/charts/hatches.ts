// How what stands round a casing is drawn: our own hatches, told apart in grey as well, of the same marks as the patterns of the ground.
import type { Tile } from './patterns';

export interface Hatch {
  readonly tile: Tile;
  /** On a grey ground. */
  readonly grey?: boolean;
}

export const HATCHES: Readonly<Record<'pack' | 'bentonite' | 'cement' | 'clay' | 'cuttings' | 'ground', Hatch>> = {
  /** Grains of the pack: rings. */
  pack: {
    tile: {
      width: 9,
      height: 9,
      marks: [
        { kind: 'ring', x: 2.5, y: 2.5, rx: 1.6, ry: 1.6, w: 0.8 },
        { kind: 'ring', x: 6.8, y: 6.8, rx: 1.6, ry: 1.6, w: 0.8 },
      ],
    },
  },
  /** Bentonite: crossed lines. */
  bentonite: {
    tile: {
      width: 7,
      height: 7,
      marks: [
        { kind: 'dash', x1: 0, y1: 0, x2: 7, y2: 7, w: 0.8 },
        { kind: 'dash', x1: 7, y1: 0, x2: 0, y2: 7, w: 0.8 },
      ],
    },
  },
  /** Cement: one slant, on grey. */
  cement: { tile: { width: 5, height: 5, marks: [{ kind: 'dash', x1: 0, y1: 5, x2: 5, y2: 0, w: 0.8 }] }, grey: true },
  /** Clay: short level strokes. */
  clay: {
    tile: {
      width: 8,
      height: 8,
      marks: [
        { kind: 'dash', x1: 0.6, y1: 2, x2: 4.6, y2: 2, w: 0.9 },
        { kind: 'dash', x1: 4, y1: 6, x2: 7.4, y2: 6, w: 0.9 },
      ],
    },
  },
  /** Cuttings: loose points. */
  cuttings: {
    tile: {
      width: 10,
      height: 10,
      marks: [
        { kind: 'dot', x: 2.5, y: 2.5, r: 0.8 },
        { kind: 'dot', x: 7, y: 5, r: 0.8 },
        { kind: 'dot', x: 4, y: 8, r: 0.8 },
      ],
    },
  },
  /** Ground that caved in: small heaps. */
  ground: {
    tile: {
      width: 10,
      height: 8,
      marks: [
        { kind: 'dash', x1: 1, y1: 3.5, x2: 2.5, y2: 1, w: 0.8 },
        { kind: 'dash', x1: 2.5, y1: 1, x2: 4, y2: 3.5, w: 0.8 },
        { kind: 'dash', x1: 6, y1: 7.5, x2: 7.5, y2: 5, w: 0.8 },
        { kind: 'dash', x1: 7.5, y1: 5, x2: 9, y2: 7.5, w: 0.8 },
      ],
    },
  },
};
export type HatchName = keyof typeof HATCHES;

/** The hatch of what was put in: grains of a pack, a seal, cuttings, or ground that came by itself. */
export function hatchOf(material: string): HatchName {
  if (material === 'cement' || material === 'clay' || material === 'cuttings' || material === 'ground') return material;
  return material.startsWith('pack') ? 'pack' : 'bentonite';
}
