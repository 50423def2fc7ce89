// Ground water that comes in through the slots while the well is pumped: arrows at the screen, longer for more.

import { Container, Graphics } from 'pixi.js';
import { yOf } from './place';
import { createMemory, type Part } from './part';
import { pipeHalf_px, pipeTop_px, wallHalf_px } from './wellShape';

const STEP_px = 22;
/** However close one looks, the heads of the arrows stay near the slots. */
const MOST_INSIDE_px = 40;
/** Less than this cannot be seen, and this much makes the longest arrow, m3/s. */
const LEAST_m3s = 1e-6;
const MOST_m3s = 1e-3;

export function createInflow(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(3);

  return {
    layer,
    draw(view, { place, look, fresh }) {
      const casing = view.well?.casing ?? null;
      const flow = view.well?.inflow_m3s ?? 0;
      layer.visible = casing !== null && casing.screen !== null && Math.abs(flow) > LEAST_m3s;
      if (!casing?.screen || !layer.visible) return;
      const { from_m, to_m } = casing.screen;
      if (!memory(Math.round(flow * 1e6), from_m, to_m) && !fresh) return;
      pen.clear();
      const { inner } = pipeHalf_px(place, casing);
      const long = 6 + 22 * Math.min(1, Math.sqrt(Math.abs(flow) / MOST_m3s));
      const top = Math.max(pipeTop_px(place, casing), yOf(place, from_m));
      const bottom = yOf(place, to_m);
      const count = Math.max(1, Math.floor((bottom - top) / STEP_px));
      for (let i = 0; i < count; i++) {
        const y = top + ((bottom - top) * (i + 0.5)) / count;
        for (const side of [-1, 1]) {
          const tip = place.hole_x + side * Math.max(inner * 0.35, inner - MOST_INSIDE_px);
          const tail = place.hole_x + side * (wallHalf_px(view, place, (y - place.ground_y) / place.depth_pxm) + long);
          const [from, to] = flow > 0 ? [tail, tip] : [tip, tail];
          const back = Math.sign(from - to) * 6;
          pen.moveTo(from, y).lineTo(to, y);
          pen
            .moveTo(to + back, y - 4)
            .lineTo(to, y)
            .lineTo(to + back, y + 4);
        }
      }
      pen.stroke({ color: look.streak, width: 4.2, cap: 'round', join: 'round', alpha: 0.9 });
      for (let i = 0; i < count; i++) {
        const y = top + ((bottom - top) * (i + 0.5)) / count;
        for (const side of [-1, 1]) {
          const tip = place.hole_x + side * Math.max(inner * 0.35, inner - MOST_INSIDE_px);
          const tail = place.hole_x + side * (wallHalf_px(view, place, (y - place.ground_y) / place.depth_pxm) + long);
          const [from, to] = flow > 0 ? [tail, tip] : [tip, tail];
          const back = Math.sign(from - to) * 6;
          pen.moveTo(from, y).lineTo(to, y);
          pen
            .moveTo(to + back, y - 4)
            .lineTo(to, y)
            .lineTo(to + back, y + 4);
        }
      }
      pen.stroke({ color: look.waterText, width: 1.8, cap: 'round', join: 'round' });
    },
    thingAt(view, { place }, x, y) {
      const casing = view.well?.casing;
      const flow = view.well?.inflow_m3s ?? 0;
      if (!casing?.screen || Math.abs(flow) <= LEAST_m3s) return null;
      if (y < yOf(place, casing.screen.from_m) || y > yOf(place, casing.screen.to_m)) return null;
      const wall = wallHalf_px(view, place, (y - place.ground_y) / place.depth_pxm);
      const off = Math.abs(x - place.hole_x);
      return off > wall + 2 && off < wall + 30 ? 'inflow' : null;
    },
  };
}
