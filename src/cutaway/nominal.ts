// In a blind lesson nobody sees the hole: a tube as wide as the bit, its wall dotted, down to where the rods have been.

import { Container, Graphics } from 'pixi.js';
import { halfOf, yOf } from './place';
import { createMemory, type Part } from './part';

export function createNominal(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(1);

  return {
    layer,
    draw(view, { place, look, fresh }) {
      layer.visible = view.hole === null;
      if (!layer.visible) return;
      if (!memory(view.stem.bottom_m) && !fresh) return;
      pen.clear();
      if (view.stem.bottom_m <= 0) return;
      const half = halfOf(place, view.kit.bit_m / 2);
      const top = Math.round(place.ground_y);
      const bottom = Math.round(yOf(place, view.stem.bottom_m));
      pen.rect(place.hole_x - half, top, half * 2, bottom - top).fill(look.paper);
      const step = 6;
      for (let y = top + 3; y <= bottom; y += step) {
        pen.circle(place.hole_x - half, y, 1.3).circle(place.hole_x + half, y, 1.3);
      }
      for (let x = -half + step; x < half; x += step) pen.circle(place.hole_x + x, bottom, 1.3);
      pen.fill(look.ink);
    },
    thingAt(view, { place }, x, y) {
      if (view.hole) return null;
      const half = halfOf(place, view.kit.bit_m / 2);
      const inside =
        Math.abs(x - place.hole_x) < half + 3 && y > place.ground_y && y < yOf(place, view.stem.bottom_m) + 3;
      return inside ? 'nominal' : null;
    },
  };
}
