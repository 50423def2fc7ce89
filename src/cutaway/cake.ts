// The skin on the wall: what the fluid left there as it went into the ground. True to the scale across the hole, but never
// thinner than a line.

import { Container, Graphics } from 'pixi.js';
import { betweenCells, cornersInto, radiusAt } from './holeShape';
import { halfOf, yOf, type Place } from './place';
import { createMemory, type Part } from './part';
import type { ShownHole } from './shown';
import { skinned } from './skin';

const LEAST_px = 1.6;

export function createCake(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(3);

  return {
    layer,
    draw(view, { place, look, fresh }) {
      const { hole } = view;
      layer.visible = hole !== null;
      if (!hole) return;
      let sum = 0;
      let shape = 0;
      for (let i = 0; i < hole.cells; i++) {
        sum += hole.cake_m[i] * (1 + i * 0.01);
        shape += hole.radius_m[i] * (1 + i * 0.01);
      }
      if (!memory(Math.round(sum * 2e5), Math.round(shape * 1e5), Math.round(hole.depth_m * 200)) && !fresh) return;
      pen.clear();
      for (const [from_m, to_m] of skinned(hole)) {
        pen.poly(band(hole, place, from_m, to_m, -1)).fill(look.cake);
        pen.poly(band(hole, place, from_m, to_m, 1)).fill(look.cake);
      }
    },
  };
}

const corners: number[] = [];

/** Outline of the skin on one side: down along the wall, up again along its inner face. */
function band(hole: ShownHole, place: Place, from_m: number, to_m: number, side: 1 | -1): number[] {
  const count = cornersInto(corners, hole, from_m, to_m);
  const points: number[] = [];
  for (let i = 0; i < count; i++) {
    const half = halfOf(place, radiusAt(hole, corners[i]));
    points.push(place.hole_x + side * half, Math.round(yOf(place, corners[i])));
  }
  for (let i = count - 1; i >= 0; i--) {
    const at_m = corners[i];
    const half = halfOf(place, radiusAt(hole, at_m));
    const thick = Math.max(LEAST_px, halfOf(place, betweenCells(hole, hole.cake_m, at_m)));
    points.push(place.hole_x + side * Math.max(0, half - thick), Math.round(yOf(place, at_m)));
  }
  return points;
}
