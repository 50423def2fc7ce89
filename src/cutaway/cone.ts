// How the water in the ground bends down to the pumped well; only where the ground is open, and only a hint: depths at the well
// are true, the way outwards is drawn by the eye.

import { Container, Graphics } from 'pixi.js';
import { yOf } from './place';
import { createMemory, type Part } from './part';
import { wallHalf_px } from './wellShape';

/** Less than this is no bend that can be drawn, m. */
const LEAST_m = 0.03;

export function createCone(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(2);

  return {
    layer,
    draw(view, { place, look, fresh }) {
      const rest_m = view.well?.rest_m ?? null;
      const level_m = view.well?.casing?.level_m ?? null;
      layer.visible = rest_m !== null && level_m !== null && level_m - rest_m > LEAST_m;
      if (!layer.visible || rest_m === null || level_m === null) return;
      if (!memory(Math.round(rest_m * 200), Math.round(level_m * 200)) && !fresh) return;
      pen.clear();
      const near = wallHalf_px(view, place, level_m);
      const reach = Math.max(near * 2, Math.min(place.hole_x, place.axis_x - place.hole_x - place.text_px * 2));
      for (const side of [-1, 1]) {
        const steps = 24;
        for (let i = 0; i <= steps; i++) {
          const off = near * Math.pow(reach / near, i / steps);
          const share = 1 - Math.log(off / near) / Math.log(reach / near);
          const y = yOf(place, rest_m + (level_m - rest_m) * share);
          if (i === 0) pen.moveTo(place.hole_x + side * off, y);
          else pen.lineTo(place.hole_x + side * off, y);
        }
      }
      pen.stroke({ color: look.paper, width: 4, alpha: 0.7 });
      for (const side of [-1, 1]) {
        const steps = 40;
        for (let i = 0; i < steps; i += 2) {
          for (const j of [i, i + 1]) {
            const off = near * Math.pow(reach / near, j / steps);
            const share = 1 - Math.log(off / near) / Math.log(reach / near);
            const y = yOf(place, rest_m + (level_m - rest_m) * share);
            if (j === i) pen.moveTo(place.hole_x + side * off, y);
            else pen.lineTo(place.hole_x + side * off, y);
          }
        }
      }
      pen.stroke({ color: look.waterText, width: 2 });
    },
    thingAt(view, { place }, x, y) {
      const rest_m = view.well?.rest_m ?? null;
      const level_m = view.well?.casing?.level_m ?? null;
      if (rest_m === null || level_m === null || level_m - rest_m <= LEAST_m) return null;
      const off = Math.abs(x - place.hole_x);
      const near = wallHalf_px(view, place, level_m);
      return off > near + 4 && off < near * 5 && y > yOf(place, rest_m) - 4 && y < yOf(place, level_m) ? 'cone' : null;
    },
  };
}
