// Fluid that goes from the hole into the opened ground, or ground water that comes in: arrows across the wall, the longer
// the more. Only where the ground is open: nobody at a real hole can see it.

import { Container, Graphics } from 'pixi.js';
import { radiusAt } from './holeShape';
import { halfOf, yOf } from './place';
import { createMemory, type Part } from './part';
import type { ShownHole } from './shown';

/** One arrow for so much of the picture's height, px. */
const STEP_px = 15;
/** A metre of hole that loses or takes less is drawn without an arrow: 0.3 L/min. */
const LEAST_m2s = 5e-6;
/** 75 L/min on a metre of hole is clean coarse sand under a metre of head: the longest arrow. */
const MOST_m2s = 1.25e-3;

/** Mean flow across the wall between two depths, m2/s. */
function meanSeep(hole: ShownHole, seep_m2s: Float64Array, top_m: number, bottom_m: number): number {
  let sum = 0;
  let long_m = 0;
  const first = Math.max(0, Math.floor(top_m / hole.dz_m));
  for (let i = first; i < hole.cells && i * hole.dz_m < bottom_m; i++) {
    const part_m = Math.min(bottom_m, (i + 1) * hole.dz_m) - Math.max(top_m, i * hole.dz_m);
    sum += seep_m2s[i] * part_m;
    long_m += part_m;
  }
  return long_m > 0 ? sum / long_m : 0;
}

export function createSeep(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(3);

  return {
    layer,
    draw(view, { place, look, fresh }) {
      const { hole } = view;
      const seep_m2s = hole?.seep_m2s ?? null;
      layer.visible = seep_m2s !== null;
      if (!hole || !seep_m2s) return;
      let sum = 0;
      for (let i = 0; i < hole.cells; i++) sum += seep_m2s[i] * (1 + i * 0.01);
      if (!memory(Math.round(sum * 1e6), Math.round(hole.depth_m * 100), Math.round(hole.level_m * 50)) && !fresh)
        return;
      pen.clear();
      const step_m = STEP_px / place.depth_pxm;
      const reach = Math.max(9, 3.4 * halfOf(place, view.kit.bit_m / 2));
      for (let top_m = 0; top_m < hole.depth_m; top_m += step_m) {
        const bottom_m = Math.min(hole.depth_m, top_m + step_m);
        const flow = meanSeep(hole, seep_m2s, top_m, bottom_m);
        const size = Math.abs(flow);
        if (size < LEAST_m2s) continue;
        const long = 6 + reach * Math.min(1, Math.sqrt(size / MOST_m2s));
        const at_m = (top_m + bottom_m) / 2;
        const y = yOf(place, at_m);
        const half = halfOf(place, radiusAt(hole, at_m)) + 3;
        for (const side of [-1, 1]) {
          const near = place.hole_x + side * half;
          const far = near + side * long;
          const tip = flow > 0 ? far : near;
          const back = flow > 0 ? -side * 5 : side * 5;
          pen.moveTo(near, y).lineTo(far, y);
          pen
            .moveTo(tip + back, y - 3.2)
            .lineTo(tip, y)
            .lineTo(tip + back, y + 3.2);
        }
      }
      pen.stroke({ color: look.waterText, width: place.compact ? 1.4 : 1.8, cap: 'round', join: 'round' });
    },
    thingAt(view, { place }, x, y) {
      const { hole } = view;
      if (!hole?.seep_m2s || y < place.ground_y) return null;
      const at_m = (y - place.ground_y) / place.depth_pxm;
      const i = Math.floor(at_m / hole.dz_m);
      if (i >= hole.cells || Math.abs(hole.seep_m2s[i]) < LEAST_m2s) return null;
      const half = halfOf(place, hole.radius_m[i]);
      const off = Math.abs(x - place.hole_x) - half;
      return off > 4 && off < 9 + 3.4 * halfOf(place, view.kit.bit_m / 2) ? 'seep' : null;
    },
  };
}
