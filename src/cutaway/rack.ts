// The rods that are left, leaning on their rack: one line for each.

import { Container, Graphics } from 'pixi.js';
import { createMemory, type Part } from './part';
import type { Place } from './place';

export function createRack(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(2);

  /** Left and right foot of the rack: as wide as all rods need, beside the heading of the log. */
  function spot(place: Place, rods: number): [number, number] {
    const left = place.log_x + Math.max(place.log_px + 6, 4.6 * place.text_px);
    return [left, Math.min(place.width_px - 7, left + 26 + 9 * Math.max(3, rods))];
  }

  return {
    layer,
    draw(view, { place, look, fresh }) {
      if (!memory(view.stem.rodsInRack) && !fresh) return;
      pen.clear();
      // The rack stands by the columns and keeps its size; it leaves the picture with the bank.
      if (place.ground_y < 0 || place.ground_y > place.height_px) return;
      const page_pxm = place.depth_pxm / place.zoom;
      const long = view.kit.rodLength_m * page_pxm;
      const [left, right] = spot(place, view.stem.rods + view.stem.rodsInRack);
      const ground = place.ground_y - 1;
      const frame = {
        color: look.woodDark,
        width: Math.max(2, 3.4 * (place.gear_px / place.zoom)),
        cap: 'round' as const,
      };
      const rail = ground - long * 0.62;
      pen
        .moveTo(left, ground)
        .lineTo(left + 4, rail - 4)
        .moveTo(right, ground)
        .lineTo(right - 4, rail - 4)
        .stroke(frame);
      pen.moveTo(left, rail).lineTo(right, rail).stroke(frame);
      const room = right - left - 14;
      const step = Math.min(9, room / Math.max(1, view.stem.rodsInRack));
      const wide = Math.max(1.6, Math.min(4, step * 0.55));
      for (let i = 0; i < view.stem.rodsInRack; i++) {
        const x = left + 8 + i * step;
        pen
          .moveTo(x - 3, ground)
          .lineTo(x + 3, ground - long)
          .stroke({ color: look.ink, width: wide + 1.2 });
        pen
          .moveTo(x - 3, ground)
          .lineTo(x + 3, ground - long)
          .stroke({ color: look.steel, width: wide });
        pen
          .moveTo(x + 2.4, ground - long + 6)
          .lineTo(x + 3, ground - long)
          .stroke({ color: look.accent, width: wide });
      }
    },
    thingAt(view, { place }, x, y) {
      const [left, right] = spot(place, view.stem.rods + view.stem.rodsInRack);
      const long = (view.kit.rodLength_m * place.depth_pxm) / place.zoom;
      return x > left - 4 && x < right + 4 && y < place.ground_y && y > place.ground_y - long ? 'rack' : null;
    },
  };
}
