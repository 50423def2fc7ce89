// The bed: cuttings that fell to the bottom, round the bit and under it, its grains mixed as the bed is.

import { Container, Graphics } from 'pixi.js';
import { grainSize_px } from './grainSize';
import { radiusAt, slicePolygon } from './holeShape';
import { halfOf, yOf } from './place';
import { createMemory, type Part } from './part';
import { scatter } from './scatter';
import type { ShownHole } from './shown';

const MOST_DOTS = 400;
const MOST_IN_ROW = 900;
/** Dots are laid in rows of this height from the bottom up, so that they stay where they are as the bed grows, px. */
const ROW_px = 60;

/** Class of the dot with that number, so that classes cover the area in proportion to their share of the bed. */
function classOf(hole: ShownHole, pick: number): number {
  let sum = 0;
  for (let k = 0; k < hole.bed_frac.length; k++) {
    sum += hole.bed_frac[k];
    if (pick < sum) return k;
  }
  return hole.bed_frac.length - 1;
}

export function createBed(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(3);

  return {
    layer,
    draw(view, { place, look, fresh }) {
      const { hole } = view;
      layer.visible = hole !== null && hole.bed_m > 0.004;
      if (!hole || !layer.visible) return;
      if (!memory(Math.round(hole.bed_m * 1000), Math.round(hole.depth_m * 1000)) && !fresh) return;
      pen.clear();
      const top_m = Math.max(0, hole.depth_m - hole.bed_m);
      pen
        .poly(slicePolygon(hole, place, top_m, hole.depth_m))
        .fill(look.heap)
        .stroke({ color: look.ink, width: 1 });
      const top = yOf(place, top_m);
      const bottom = yOf(place, hole.depth_m);
      const seenTop = Math.max(top, 0);
      const first = Math.max(0, Math.floor((bottom - place.height_px) / ROW_px));
      const end = Math.ceil((bottom - seenTop) / ROW_px);
      let left = MOST_DOTS;
      for (let row = first; row < end; row++) {
        let left_px2 = ROW_px * halfOf(place, radiusAt(hole, hole.depth_m));
        for (let i = 0; i < MOST_IN_ROW && left_px2 > 0 && left > 0; i++) {
          const mark = row * MOST_IN_ROW + i;
          const k = classOf(hole, scatter(mark, 71));
          const d = Math.max(1.2, grainSize_px(k, view.kit.grain_m[k], place.across_pxm));
          left_px2 -= d * d * 1.6;
          const y = bottom - ROW_px * (row + scatter(mark, 72));
          if (y < top + d * 0.6 || y > bottom - d * 0.5) continue;
          left--;
          const half = halfOf(place, radiusAt(hole, (y - place.ground_y) / place.depth_pxm)) - d * 0.6;
          const x = place.hole_x + half * (2 * scatter(mark, 73) - 1);
          pen.circle(x, y, d / 2).fill(look.grainFills[mark % look.grainFills.length] ?? look.heap);
          if (d > 2) pen.circle(x, y, d / 2).stroke({ color: look.grainLine, width: 0.7, alpha: 0.8 });
        }
      }
    },
    thingAt(view, { place }, x, y) {
      const { hole } = view;
      if (!hole || hole.bed_m <= 0.004) return null;
      const inside = y >= yOf(place, hole.depth_m - hole.bed_m) - 3 && y <= yOf(place, hole.depth_m) + 3;
      return inside && Math.abs(x - place.hole_x) <= halfOf(place, radiusAt(hole, hole.depth_m)) + 2 ? 'bed' : null;
    },
  };
}
