// Where nobody sees into the hole: the depth at which the sounding rod met the fill. What lies under it is not known.

import { Container, Graphics } from 'pixi.js';
import { say } from '../words';
import { halfOf, yOf } from './place';
import { createMemory, type Part } from './part';
import { dashedLine } from './strokes';
import { pipeHalf_px } from './wellShape';

export function createSounded(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(2);

  return {
    layer,
    draw(view, { place, look, labels, fresh }) {
      const top_m = view.well?.sounded_m ?? null;
      const casing = view.well?.casing ?? null;
      if (!memory(top_m ?? -1, casing?.shoe_m ?? -1) && !fresh) return;
      pen.clear();
      labels.open('sounded');
      if (top_m !== null && casing) {
        const half = halfOf(place, view.kit.bit_m / 2);
        const { out } = pipeHalf_px(place, casing);
        const y = yOf(place, top_m);
        const bottom = yOf(place, view.stem.bottom_m);
        if (!view.hole) {
          for (const side of [-1, 1])
            for (let row = y + 5; row < bottom; row += 6)
              pen.moveTo(place.hole_x + side * (out + 2), row).lineTo(place.hole_x + side * (half - 2), row - 3);
          pen.stroke({ color: look.rule, width: 1.2 });
        }
        const x = place.hole_x - half - 4;
        const line_x = place.hole_x - (out + half) / 2;
        pen.moveTo(place.hole_x - out, y).lineTo(x - 8, y);
        pen.stroke({ color: look.accent, width: 2 });
        dashedLine(pen, line_x, place.ground_y, line_x, y - 5, 3, 4);
        pen.stroke({ color: look.accent, width: 1.2 });
        const words = say(place.compact ? 'cutaway.soundedShort' : 'cutaway.sounded', { top: top_m });
        const halo = view.layers ? look.paper : look.closed;
        labels.put('words', words, x - 11, y, { tone: 'accent', ax: 1, halo });
      }
      labels.close();
    },
    thingAt(view, { place }, x, y) {
      const top_m = view.well?.sounded_m ?? null;
      if (top_m === null || !view.well?.casing) return null;
      const half = halfOf(place, view.kit.bit_m / 2);
      const near = Math.abs(y - yOf(place, top_m)) < 5;
      return near && x < place.hole_x && x > place.hole_x - half - 14 ? 'sounded' : null;
    },
  };
}
