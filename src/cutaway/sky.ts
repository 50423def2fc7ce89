// Sky above the bank: a quiet wash, a low far line, and the grass of the bank.

import { Container, Graphics } from 'pixi.js';
import { blend } from './palette';
import type { Part } from './part';
import { scatter } from './scatter';

const BANDS = 14;

export function createSky(): Part {
  const layer = new Container();
  const wash = new Graphics();
  layer.addChild(wash);

  return {
    layer,
    draw(_view, { place, look, fresh }) {
      if (!fresh) return;
      wash.clear();
      const { width_px, ground_y } = place;
      if (ground_y <= 0) return;
      for (let i = 0; i < BANDS; i++) {
        const top = Math.floor((ground_y * i) / BANDS);
        const bottom = Math.floor((ground_y * (i + 1)) / BANDS);
        wash.rect(0, top, width_px, bottom - top).fill(blend(look.skyTop, look.skyLow, i / (BANDS - 1)));
      }
      // The far edge of the plain: low, and never higher than a twelfth of the sky.
      const reach = Math.min(0.085 * ground_y, 16);
      const points = [0, ground_y];
      for (let x = 0; x <= width_px + 24; x += 24) {
        points.push(
          x,
          ground_y - reach * (0.35 + 0.65 * scatter(Math.floor(x / 96), 3) * 0.5 + 0.32 * scatter(x / 24, 5)),
        );
      }
      points.push(width_px + 24, ground_y);
      wash.poly(points).fill({ color: blend(look.skyLow, look.grass, 0.34) });
    },
  };
}
