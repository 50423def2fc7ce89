// A key to what is drawn in the hole, at the foot of the picture: each class of grains, the fluid's streaks, and the skin once there is one.

import { Container, Graphics, Sprite } from 'pixi.js';
import { t } from '../words';
import { grainSize_px } from './grainSize';
import { halfOf } from './place';
import { createMemory, type Part } from './part';
import { scatter } from './scatter';
import { skinShare } from './skin';
import { SPECK_PX, STONE_FROM_px, STONE_PX } from './textures';

const CLASSES = [
  [2, 'cutaway.kind.fineSand'],
  [3, 'cutaway.kind.mediumSand'],
  [4, 'cutaway.kind.coarseSand'],
  [5, 'cutaway.kind.fineGravel'],
  [6, 'cutaway.kind.mediumGravel'],
] as const;

/** Grains shown of each class. */
const EACH = 4;

export function createGrainKey(): Part {
  const layer = new Container();
  const grains = CLASSES.map(() => Array.from({ length: EACH }, () => new Sprite({ anchor: 0.5 })));
  for (const row of grains) layer.addChild(...row);
  const stroke = new Graphics();
  layer.addChild(stroke);
  const memory = createMemory(1);

  return {
    layer,
    draw(view, { place, look, labels, textures, fresh, lens }) {
      const skin = view.hole !== null && skinShare(view.hole) > 0;
      if (!memory(Number(skin)) && !fresh) return;
      labels.open('grainKey');
      const step = place.text_px * 1.4;
      const foot = place.height_px - place.text_px * 6.9;
      const head = foot - step * (CLASSES.length + (skin ? 2 : 1));
      const low = place.ground_y + view.pit.suction.depth_m * place.bank_pxm + 20;
      const bandLow = place.ground_y + (view.neighbours?.bottom_m ?? 0) * place.depth_pxm + 10;
      const room_px = place.hole_x - halfOf(place, view.kit.bit_m / 2) * 2.3 - 60;
      layer.visible =
        view.hole !== null &&
        !view.well?.annulus &&
        !view.layers &&
        !lens &&
        !place.compact &&
        place.zoom === 1 &&
        head - step > Math.max(low, bandLow) &&
        room_px > place.text_px * 8;
      if (layer.visible) {
        const x = 28;
        labels.put('head', t('cutaway.grainKey'), 20, head - step * 0.2, {
          tone: 'quiet',
          italic: true,
          size: 0.92,
          halo: look.closed,
          room_px,
        });
        CLASSES.forEach(([k, name], row) => {
          const y = Math.round(head + step * (row + 0.8));
          const size = grainSize_px(k, view.kit.grain_m[k], place.across_pxm);
          grains[row]?.forEach((grain, i) => {
            const stone = size >= STONE_FROM_px;
            const set = stone ? textures.stones : textures.specks;
            grain.texture = set[(i + row) % set.length] ?? grain.texture;
            grain.scale.set(stone ? size / (STONE_PX * 0.88) : size / SPECK_PX);
            grain.position.set(x + i * Math.max(7, size * 0.9), y + 3 * (scatter(i, row) - 0.5));
            grain.visible = i < Math.max(1, Math.floor(26 / Math.max(6, size)));
          });
          labels.put(`class${k}`, t(name), x + 34, y, { tone: 'quiet', size: 0.92, halo: look.closed, room_px });
        });
        const y = head + step * (CLASSES.length + 0.8);
        stroke.clear();
        for (const dx of [0, 11, 22]) stroke.moveTo(x + dx, y - 5 + (dx % 2) * 3).lineTo(x + dx, y + 4);
        stroke.stroke({ color: look.streak, width: 1.6, cap: 'round' });
        labels.put('fluid', t('cutaway.grainKeyFluid'), x + 34, y, {
          tone: 'quiet',
          size: 0.92,
          halo: look.closed,
          room_px,
        });
        if (skin) {
          stroke.rect(x, y + step - 2.5, 22, 5).fill(look.cake);
          labels.put('skin', t('cutaway.grainKeySkin'), x + 34, y + step, {
            tone: 'quiet',
            size: 0.92,
            halo: look.closed,
            room_px,
          });
        }
      }
      labels.close();
    },
  };
}
