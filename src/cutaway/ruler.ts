// The depth scale: metres on one side, rods on the other in the accent colour, and a pointer where the bit is.

import { Container, Graphics } from 'pixi.js';
import { formatNumber, t } from '../words';
import { depthAt, scalesLeft, yOf } from './place';
import type { Part } from './part';

const STEPS_m = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20];

export function createRuler(): Part {
  const layer = new Container();
  const page = new Graphics();
  const ticks = new Graphics();
  const pointer = new Graphics();
  layer.addChild(page, ticks, pointer);

  return {
    layer,
    draw(view, scene) {
      const { place, look, labels, fresh } = scene;
      if (!fresh) return;
      const { axis_x, height_px, text_px } = place;
      labels.open('ruler');
      ticks.clear();
      page.clear();
      // Over opened ground, and when the picture is looked at closely, ruler and log lie on a page of their own.
      if (view.layers || place.zoom > 1) {
        const left = scalesLeft(place);
        page
          .rect(left, Math.max(0, place.ground_y), place.width_px - left, height_px)
          .fill({ color: look.paper, alpha: 0.93 });
        page.moveTo(left, Math.max(0, place.ground_y)).lineTo(left, height_px).stroke({ color: look.rule, width: 1 });
      }
      const top = Math.max(0, place.ground_y);
      ticks.moveTo(axis_x, top).lineTo(axis_x, height_px).stroke({ color: look.ink, width: look.line_px });
      const least_px = text_px * 2.5;
      const step_m = STEPS_m.find((step) => step * place.depth_pxm >= least_px) ?? 50;
      const small_m = step_m * place.depth_pxm > least_px * 2 ? step_m / 2 : step_m;
      const first = Math.max(0, Math.floor(depthAt(place, top) / small_m));
      for (let i = first; i < first + 400; i++) {
        const depth_m = i * small_m;
        const y = Math.round(yOf(place, depth_m)) + 0.5;
        if (y > height_px) break;
        if (y < top - 1) continue;
        const named = Math.abs(depth_m / step_m - Math.round(depth_m / step_m)) < 1e-6;
        ticks.moveTo(axis_x - (named ? 7 : 4), y).lineTo(axis_x, y);
        if (named && y > text_px * 0.4 && y < height_px - text_px * 0.45) {
          labels.put(`m${Math.round(depth_m / step_m)}`, formatNumber(depth_m, 1), axis_x - 10, y, {
            ax: 1,
            halo: view.layers || place.zoom > 1 ? look.paper : look.closed,
          });
        }
      }
      ticks.stroke({ color: look.ink, width: 1.2 });
      const rod_px = view.kit.rodLength_m * place.depth_pxm;
      const reach = place.compact ? 7 : 11;
      for (let k = 0; k < 200; k++) {
        const y = Math.round(yOf(place, k * view.kit.rodLength_m)) + 0.5;
        if (y > height_px) break;
        if (y < top - 1) continue;
        ticks.moveTo(axis_x, y).lineTo(axis_x + reach, y);
        if (k > 0 && !place.compact && rod_px > text_px * 1.3 && y < height_px - 6) {
          labels.put(`rod${k}`, formatNumber(k, 0), axis_x + reach + 4, y, {
            tone: 'accent',
            size: 0.92,
            halo: view.layers || place.zoom > 1 ? look.paper : look.closed,
          });
        }
      }
      ticks.stroke({ color: look.accent, width: 2.2 });
      if (place.ground_y > text_px && !place.compact) {
        labels.put('m', t('cutaway.metres'), axis_x - 10, place.ground_y - text_px * 0.95, { ax: 1, size: 0.92 });
        labels.put('rods', t('cutaway.rods'), axis_x + 2, place.ground_y - text_px * 0.95, {
          tone: 'accent',
          size: 0.92,
        });
      }
      labels.close();
      pointer
        .clear()
        .poly([axis_x + 1, 0, axis_x - 10, -5, axis_x - 10, 5])
        .fill(look.accent)
        .stroke({ color: look.paper, width: 1 });
    },
    move(view, scene) {
      const y = yOf(scene.place, scene.bit_m);
      pointer.visible = y > 4 && !view.stem.out;
      pointer.y = y;
    },
    thingAt(_view, { place }, x, y) {
      return y > place.ground_y && x > place.axis_x - 2.4 * place.text_px && x < place.axis_x + 14 ? 'ruler' : null;
    },
  };
}
