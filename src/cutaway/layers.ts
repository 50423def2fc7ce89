// The true layers of the ground, where the lesson or the debrief opens them.

import { Container, Graphics, TilingSprite } from 'pixi.js';
import { patternOf } from '../charts/patterns';
import { say } from '../words';
import { bankY, halfOf, scalesLeft, yOf } from './place';
import type { Part } from './part';
import { scatter } from './scatter';
import { dashedLine } from './strokes';

const water = { tone: 'water', italic: true } as const;

export function createLayers(): Part {
  const layer = new Container();
  const fills: TilingSprite[] = [];
  const lines = new Graphics();
  layer.addChild(lines);

  return {
    layer,
    draw(view, scene) {
      const { place, look, textures, labels, fresh, lens } = scene;
      if (!fresh) return;
      labels.open('layers');
      lines.clear();
      const shown = view.layers ?? [];
      const edge = place.compact ? 4 : 14;
      for (let i = 0; i < Math.max(shown.length, fills.length); i++) {
        const one = shown[i];
        let fill = fills[i];
        if (!one) {
          if (fill) fill.visible = false;
          continue;
        }
        const texture = textures.pattern[patternOf(one.kind)];
        if (!fill) {
          fill = new TilingSprite({ texture });
          fills.push(fill);
          layer.addChildAt(fill, i);
        }
        const top = Math.max(0, Math.min(place.height_px, Math.round(yOf(place, one.top_m))));
        const bottom = Math.min(place.height_px, Math.round(yOf(place, one.bottom_m)));
        fill.visible = bottom > top;
        if (!fill.visible) continue;
        fill.texture = texture;
        fill.position.set(0, top);
        fill.setSize(place.width_px, bottom - top);
        fill.tilePosition.set(place.hole_x, place.ground_y - top);
        if (i > 0) boundary(top, place.width_px, i, look.ink, look.line_px);
        const label_px = place.text_px * 1.5;
        const y = Math.max(top, place.ground_y + 2) + label_px * 0.6;
        // What the lens would hide of a name is left out whole: a tap tells it.
        if (bottom - top > label_px && !(lens && y > lens.top_px - label_px / 2)) {
          // The notes stand at the foot, at the left: a name that low goes to the other end where the hole leaves room.
          const low = y > place.height_px - place.text_px * (place.compact ? 3.6 : 5.2);
          const free = y - label_px > yOf(place, view.stem.bottom_m);
          const ax = low && free ? 1 : 0;
          const notes_x = edge + place.text_px * (place.compact ? 8.3 : 17);
          const x = ax === 1 ? scalesLeft(place) - (place.compact ? 2 : 8) : low ? notes_x : edge;
          labels.put(`layer${i}`, say(`cutaway.kind.${one.kind}`), x, y, {
            halo: scene.ink.fill[patternOf(one.kind)],
            strong: true,
            ax,
            ...(low ? { room_px: ax === 1 ? x - notes_x : scalesLeft(place) - x } : {}),
          });
        }
      }
      if (view.waterTable_m !== null) {
        const y = yOf(place, view.waterTable_m);
        dashedLine(lines, 0, y, place.width_px, y, 12, 5);
        lines.stroke({ color: look.waterText, width: 1.6 });
        // The mark stands right of the hole, the words left of it, below the pit.
        const half = halfOf(place, view.kit.bit_m / 2);
        const right = place.hole_x + half * 1.15 + 9;
        const roomy = right + 8 < scalesLeft(place);
        const x = roomy ? right : place.hole_x - half * 1.15 - 9;
        lines.poly([x - 6, y - 11, x + 6, y - 11, x, y - 1]).fill(look.waterText);
        if (!place.compact) {
          const pit_y = bankY(place, Math.max(view.pit.suction.depth_m, view.pit.settling.depth_m));
          const words_y = Math.max(y - 9, pit_y + place.text_px * 0.9);
          const how = { ...water, ax: 1, halo: look.paper };
          labels.put('waterTable', say('cutaway.waterTable'), place.hole_x - half * 1.3 - 8, words_y, how);
        }
      }
      labels.close();
    },
  };

  function boundary(y: number, width: number, index: number, colour: string, line_px: number): void {
    lines.moveTo(0, y);
    for (let x = 0; x <= width + 18; x += 18) lines.lineTo(x, y + 2.4 * (scatter(x, index) - 0.5));
    lines.stroke({ color: colour, width: line_px });
  }
}
