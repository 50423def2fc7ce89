// What the neighbours say of their wells: a band of water levels, the only hint of the water that a crew has beforehand.

import { Container, Graphics } from 'pixi.js';
import { t } from '../words';
import { bankY, halfOf, yOf } from './place';
import type { Part } from './part';
import { dashedLine } from './strokes';

export function createNeighbours(): Part {
  const layer = new Container();
  const band = new Graphics();
  layer.addChild(band);

  function edges(place: { hole_x: number; across_pxm: number }, bit_m: number): [number, number] {
    return [0, place.hole_x - bit_m * 0.5 * place.across_pxm * 2.3 - 10];
  }

  return {
    layer,
    draw(view, { place, look, labels, fresh, lens }) {
      if (!fresh) return;
      band.clear();
      labels.open('neighbours');
      labels.close();
      const levels = view.neighbours;
      if (!levels) return;
      labels.open('neighbours');
      const [left, right] = edges(place, view.kit.bit_m);
      const top = yOf(place, levels.top_m);
      const bottom = Math.max(top + 2, yOf(place, levels.bottom_m));
      band.rect(left, top, right - left, bottom - top).fill({ color: look.waterBand, alpha: 0.22 });
      dashedLine(band, left, top, right, top, 7, 5);
      dashedLine(band, left, bottom, right, bottom, 7, 5);
      band.stroke({ color: look.waterText, width: 1.3, alpha: 0.8 });
      const inside = bottom - top > place.text_px * 1.4;
      const data = { top: levels.top_m, bottom: levels.bottom_m };
      const short = t('cutaway.neighboursShort', data);
      const words = place.compact ? short : t('cutaway.neighbours', data);
      // Names of opened layers stand at the left: there the words keep to the foot and the right end of the band.
      const aside = view.layers !== null;
      const within = aside ? bottom - place.text_px * 0.8 : (top + bottom) / 2;
      const y = inside ? within : bottom + place.text_px * 0.8;
      // A pit that reaches into the band leaves the words room below it.
      const { pit } = view;
      const pit_y = pit.dug ? bankY(place, Math.max(pit.suction.depth_m, pit.settling.depth_m)) : place.ground_y;
      const below = y - place.text_px * 0.7 < pit_y ? pit_y + place.text_px * 0.9 : y;
      // The notes on the scales stand at the foot of the picture.
      const notes_y = place.height_px - place.text_px * (place.compact ? 3.4 : 5);
      const free = below > notes_y ? Math.min(top, notes_y) - place.text_px * 0.8 : below;
      // The lens lies over the foot of the picture: the words keep above it, or a tap has to tell them.
      const clear = Math.min(free, lens ? lens.top_px - place.text_px : Infinity);
      if (clear < free && clear - place.text_px * 0.7 < pit_y) return labels.close();
      // In little room over opened ground the words would lie on the names of the layers: a tap tells them.
      if (aside && place.compact) return labels.close();
      const x = aside ? right - 6 : place.compact ? 5 : 20;
      const how = {
        tone: 'water',
        italic: true,
        ax: aside ? 1 : 0,
        halo: aside ? look.paper : inside && clear === y ? undefined : look.closed,
        room_px: (aside ? x - left : right - x) - 4,
      } as const;
      if (labels.put('neighbours', words, x, clear, how) === 0) labels.put('neighbours', short, x, clear, how);
      labels.close();
    },
    thingAt(view, { place }, x, y) {
      const levels = view.neighbours;
      if (!levels) return null;
      const [left, right] = edges(place, view.kit.bit_m);
      const inside =
        x >= left && x <= right && y >= yOf(place, levels.top_m) - 3 && y <= yOf(place, levels.bottom_m) + 3;
      return inside && halfOf(place, 1) > 0 ? 'neighbours' : null;
    },
  };
}
