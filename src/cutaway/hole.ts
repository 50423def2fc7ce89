// The hole drawn true: its wall cell by cell, the fluid in it coloured by what it carries, air where it stands empty, and
// how far down the fluid stands. Skin and falling ground are things of their own.

import { Container, Graphics } from 'pixi.js';
import { slicePolygon } from './holeShape';
import { say } from '../words';
import { bankY, halfOf, yOf } from './place';
import { createMemory, type Part, type Scene } from './part';
import { fluidColour } from './palette';
import type { CutawayView, ShownHole } from './shown';
import { dashedLine } from './strokes';

/** Silt and clay are the finest two size classes: they colour the fluid, coarser grains are drawn one by one. */
export const FINE_CLASSES = 2;

/** The level is told from here down: less is the play of a hole that runs over, m. An empty hole has none. */
const LEVEL_TOLD_m = 0.15;
const EMPTY_m = 0.03;
/** Where the wall stands so much off the bit's own width, that width is drawn as a dotted line, m. */
const OFF_TOLD_m = 0.006;

export function createHole(): Part {
  const layer = new Container();
  const fluid = new Graphics();
  const wall = new Graphics();
  const width = new Graphics();
  const mark = new Graphics();
  layer.addChild(fluid, wall, width, mark);
  const wallMemory = createMemory(4);
  let colours = new Int32Array(0);

  function finesOf(hole: ShownHole, cell: number): number {
    let sum = 0;
    for (let k = 0; k < FINE_CLASSES; k++) sum += hole.solids_frac[k * hole.stride + cell];
    return sum;
  }

  /** Colours by cell; true where one differs from what is on the screen. */
  function recolour(view: CutawayView, hole: ShownHole, { look }: Scene): boolean {
    let changed = false;
    if (colours.length !== hole.cells + 1) {
      colours = new Int32Array(hole.cells + 1);
      changed = true;
    }
    for (let i = 0; i < hole.cells; i++) {
      const colour = fluidColour(look, finesOf(hole, i), hole.polymer_gL, view.returns.colour);
      if (colours[i] !== colour) {
        colours[i] = colour;
        changed = true;
      }
    }
    const level = Math.round(hole.level_m * 500);
    if (colours[hole.cells] !== level) {
      colours[hole.cells] = level;
      changed = true;
    }
    return changed;
  }

  function drawFluid(hole: ShownHole, { place, look }: Scene): void {
    fluid.clear();
    if (hole.depth_m <= 0) return;
    const level_m = Math.max(0, Math.min(hole.depth_m, hole.level_m));
    if (level_m > 0) fluid.poly(slicePolygon(hole, place, 0, level_m)).fill(look.air);
    let start = Math.floor(level_m / hole.dz_m);
    for (let i = start + 1; i <= hole.cells; i++) {
      if (i < hole.cells && colours[i] === colours[start]) continue;
      const top_m = Math.max(level_m, start * hole.dz_m);
      const bottom_m = Math.min(hole.depth_m, i * hole.dz_m);
      if (bottom_m > top_m) fluid.poly(slicePolygon(hole, place, top_m, bottom_m)).fill(colours[start]);
      start = i;
    }
    if (level_m > 0.01) {
      const half = halfOf(place, hole.radius_m[Math.floor(level_m / hole.dz_m)] ?? 0);
      const y = Math.round(yOf(place, level_m));
      fluid
        .moveTo(place.hole_x - half, y)
        .lineTo(place.hole_x + half, y)
        .stroke({ color: look.streak, width: 1.6, alpha: 0.8 });
    }
  }

  function drawWall(hole: ShownHole, { place, look }: Scene): void {
    wall.clear();
    if (hole.depth_m <= 0) return;
    const points = slicePolygon(hole, place, 0, hole.depth_m);
    const half = points.length / 2;
    const side = (from: number, to: number, shift: number): void => {
      for (let i = from; i < to; i += 2) {
        const x = points[i] + shift;
        if (i === from) wall.moveTo(x, points[i + 1]);
        else wall.lineTo(x, points[i + 1]);
      }
    };
    // A shade along both walls gives the tube its roundness.
    for (const [shift, alpha] of [
      [1.5, 0.2],
      [4, 0.1],
    ] as const) {
      side(0, half, shift);
      side(half, points.length, -shift);
      wall.stroke({ color: look.ink, width: 3, alpha });
    }
    side(0, points.length, 0);
    wall.stroke({ color: look.ink, width: look.line_px * 1.25, join: 'round' });
  }

  /** The bit's own width beside a wall that has been washed out or has come in. */
  function drawWidth({ kit }: CutawayView, hole: ShownHole, { place, look }: Scene): void {
    width.clear();
    const half = halfOf(place, kit.bit_m / 2);
    for (let i = 0; i < hole.cells; i++) {
      if (Math.abs(hole.radius_m[i] - kit.bit_m / 2) < OFF_TOLD_m) continue;
      const top = Math.max(0, yOf(place, i * hole.dz_m));
      const bottom = Math.min(place.height_px, yOf(place, Math.min(hole.depth_m, (i + 1) * hole.dz_m)));
      if (bottom <= top) continue;
      for (const side of [-1, 1]) {
        const x = place.hole_x + side * half;
        dashedLine(width, x, top, x, bottom, 4, 3);
      }
    }
    width.stroke({ color: look.ink, width: 1.4, alpha: 0.7 });
  }

  /** How far down the fluid stands, left of the hole below the pit, with a line to where it stands. */
  function drawLevel(view: CutawayView, hole: ShownHole, { place, look, labels, inLens }: Scene): void {
    mark.clear();
    if (inLens) return;
    labels.open('level');
    if (hole.level_m >= LEVEL_TOLD_m && hole.level_m < hole.depth_m - EMPTY_m) {
      const y = yOf(place, hole.level_m);
      const half = halfOf(place, hole.radius_m[Math.floor(hole.level_m / hole.dz_m)] ?? view.kit.bit_m / 2);
      const { pit } = view;
      const pit_y = pit.dug ? bankY(place, Math.max(pit.suction.depth_m, pit.settling.depth_m)) : place.ground_y;
      let words_y = Math.max(y, pit_y + place.text_px);
      // The words give way to those on the ground water and on the neighbours' wells.
      const { waterTable_m, neighbours } = view;
      const water = waterTable_m === null ? null : yOf(place, waterTable_m);
      if (water !== null && Math.abs(water - words_y) < place.text_px * 1.4) words_y = water + place.text_px * 1.5;
      if (neighbours) {
        const low = yOf(place, neighbours.bottom_m) + place.text_px * 1.7;
        if (words_y > yOf(place, neighbours.top_m) - place.text_px && words_y < low) words_y = low;
      }
      const x = place.hole_x - half - (place.compact ? 7 : 12);
      const words = say(place.compact ? 'cutaway.levelDownShort' : 'cutaway.levelDown', { level: hole.level_m });
      const halo = view.layers ? look.paper : look.closed;
      labels.put('words', words, x - 3, words_y, { ax: 1, strong: true, tone: 'water', halo });
      mark
        .moveTo(x, words_y)
        .lineTo(place.hole_x - half, y)
        .stroke({ color: look.waterText, width: 1.2 });
    }
    labels.close();
  }

  return {
    layer,
    draw(view, scene) {
      const { hole } = view;
      layer.visible = hole !== null;
      if (!hole) {
        scene.labels.open('level');
        scene.labels.close();
        return;
      }
      const recoloured = recolour(view, hole, scene);
      let sum = 0;
      for (let i = 0; i < hole.cells; i++) sum += hole.radius_m[i] * (1 + i * 0.01);
      const reshaped = wallMemory(Math.round(hole.depth_m * 1000), Math.round(sum * 1e6), hole.cells);
      if (recoloured || reshaped || scene.fresh) drawFluid(hole, scene);
      if (reshaped || scene.fresh) {
        drawWall(hole, scene);
        drawWidth(view, hole, scene);
      }
      if (recoloured || reshaped || scene.fresh) drawLevel(view, hole, scene);
    },
    thingAt(view, { place }, x, y) {
      const { hole } = view;
      if (!hole || y < place.ground_y || y > yOf(place, hole.depth_m) + 2) return null;
      const i = Math.min(hole.cells - 1, Math.max(0, Math.floor((y - place.ground_y) / place.depth_pxm / hole.dz_m)));
      const half = halfOf(place, hole.radius_m[i]);
      const off = Math.abs(x - place.hole_x) - half;
      if (off > 3) return null;
      if (off > -2) return 'wall';
      return y < yOf(place, hole.level_m) ? 'air' : 'fluid';
    },
  };
}
