// The ground beside the hole, opened as far as the learner has logged it: what he or she believes, not what is there.

import { Container, Graphics, TilingSprite } from 'pixi.js';
import { patternOf } from '../charts/patterns';
import { halfOf, yOf, type Place } from './place';
import type { ShownOwnLayer } from './shown';
import { createMemory, markOfLog, type Part } from './part';
import { scatter } from './scatter';
import { dashedLine } from './strokes';

/** Distance between two points of the torn edge, px of the page. */
const TEAR_px = 7;

export function createOpened(): Part {
  const layer = new Container();
  const fills: TilingSprite[] = [];
  const torn = new Graphics();
  const lines = new Graphics();
  const bands = new Container();
  layer.addChild(bands, torn, lines);
  bands.mask = torn;
  const memory = createMemory(1);

  return {
    layer,
    draw(view, { place, look, textures, fresh }) {
      const shown = view.layers ? [] : view.ownLog;
      if (!memory(markOfLog(shown)) && !fresh) return;
      torn.clear();
      lines.clear();
      const half = halfOf(place, view.kit.bit_m / 2);
      const left = place.hole_x - half * 2.3 - 8;
      const right = place.hole_x + half * 1.62 + 6;
      for (let i = 0; i < Math.max(shown.length, fills.length); i++) {
        const one = shown[i];
        const kept = fills[i];
        if (!one) {
          if (kept) kept.visible = false;
          continue;
        }
        const texture = textures.pattern[patternOf(one.kind)];
        const fill = kept ?? new TilingSprite({ texture });
        if (!kept) {
          fills.push(fill);
          bands.addChild(fill);
        }
        const top = Math.max(0, Math.round(yOf(place, one.from_m)));
        const bottom = Math.min(place.height_px, Math.round(yOf(place, one.to_m)));
        fill.visible = bottom > top;
        if (!fill.visible) continue;
        fill.texture = texture;
        fill.alpha = 0.8;
        fill.position.set(left, top);
        fill.setSize(right - left, bottom - top);
        fill.tilePosition.set(place.hole_x - left, place.ground_y - top);
        // The opening is torn, not cut: nobody knows how far the layer goes.
        const edge: number[] = [];
        const step_m = (TEAR_px * place.zoom) / place.depth_pxm;
        const first = Math.floor(one.from_m / step_m);
        const last = Math.ceil(one.to_m / step_m);
        for (let s = first; s <= last; s++) edge.push(left + half * 0.9 * tear(s, 1), within(s * step_m, one, place));
        for (let s = last; s >= first; s--) edge.push(right - half * 0.5 * tear(s, 50), within(s * step_m, one, place));
        torn.poly(edge).fill(0xffffff);
        lines.poly(edge).stroke({ color: look.rule, width: 1, alpha: 0.9 });
        dashedLine(lines, right, bottom, place.axis_x - 2, bottom, 2, 4);
        lines.stroke({ color: look.ink, width: 0.9, alpha: 0.55 });
      }
    },
  };
}

/** Height of a point of the torn edge, kept inside its layer. */
function within(depth_m: number, layer: ShownOwnLayer, place: Place): number {
  return Math.round(yOf(place, Math.max(layer.from_m, Math.min(layer.to_m, depth_m))));
}

function tear(step: number, row: number): number {
  return 0.55 * scatter(step, row) + 0.45 * scatter(Math.floor(step / 3), row + 9);
}
