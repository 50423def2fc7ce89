// What every visible thing of the drawing has in common.

import type { Container } from 'pixi.js';
import type { GroundInk } from '../charts/patterns';
import type { Labels } from './labels';
import type { Palette } from './palette';
import type { Place } from './place';
import type { CutawayView, ShownOwnLayer } from './shown';
import type { Textures } from './textures';
import type { Thing } from './describe';

/** How the lens shows things: so many times the depth scale, both ways alike, and its own flow so many times slower. */
export interface LensFacts {
  times: number;
  across_m: number;
  slower: number;
  /** What it is held to, and whether it looks at the wall there. */
  at: 'bit' | 'screen' | 'casing' | 'bottom';
  close: boolean;
  /** Upper edge of its glass in the picture. */
  top_px: number;
}

/** Whether two lenses do the same to the picture. */
export const sameLens = (a: LensFacts | null, b: LensFacts | null): boolean =>
  a === b ||
  (a !== null &&
    b !== null &&
    a.times === b.times &&
    a.across_m === b.across_m &&
    a.slower === b.slower &&
    a.at === b.at &&
    a.close === b.close &&
    a.top_px === b.top_px);

export interface Scene {
  place: Place;
  look: Palette;
  ink: GroundInk;
  textures: Textures;
  labels: Labels;
  /** Size, camera, colours or words changed: everything has to be drawn anew. */
  fresh: boolean;
  /** Bit depth to draw: between two ticks it runs from the last state to the present one. */
  bit_m: number;
  /** Turn of the stem, radians. */
  turn_rad: number;
  /** How many times slower than the run things move on the screen. */
  slower: number;
  /** This is what the lens shows: no words in it, and its figures are told elsewhere. */
  inLens: boolean;
  /** What the lens does to the picture; null when it is put away. */
  lens: LensFacts | null;
}

export interface Part {
  readonly layer: Container;
  draw(view: CutawayView, scene: Scene): void;
  /** Moves what moves, by so many shown job seconds. */
  move?(view: CutawayView, scene: Scene, shown_s: number): void;
  thingAt?(view: CutawayView, scene: Scene, x: number, y: number): Thing | null;
}

/** Remembers a handful of figures and tells whether any of them changed since the last time. */
export function createMemory(size: number): (...now: number[]) => boolean {
  const before = new Float64Array(size).fill(Number.NaN);
  return (...now) => {
    let changed = false;
    for (let i = 0; i < size; i++) {
      const value = now[i];
      if (before[i] !== value) {
        before[i] = value;
        changed = true;
      }
    }
    return changed;
  };
}

/** A figure that changes whenever the learner's log does: entries may be overwritten in place. */
export function markOfLog(log: readonly ShownOwnLayer[]): number {
  let mark = log.length;
  for (const one of log) {
    mark = mark * 31 + one.from_m * 7 + one.to_m * 13;
    for (let i = 0; i < one.kind.length; i++) mark += one.kind.charCodeAt(i) * (i + 1);
    mark %= 1e9;
  }
  return mark;
}
