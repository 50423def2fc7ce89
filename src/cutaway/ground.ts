// The ground as an unopened mass: hatched, closed, with the bank's grass on top. What lies in it is not drawn here.

import { Container, Graphics, TilingSprite } from 'pixi.js';
import type { Part } from './part';
import { scatter } from './scatter';

export function createGround(): Part {
  const layer = new Container();
  const bank = new Graphics();
  let mass: TilingSprite | undefined;

  return {
    layer,
    draw(_view, { place, look, textures, fresh }) {
      if (!fresh) return;
      const { width_px, height_px, ground_y } = place;
      const top = Math.max(0, Math.floor(ground_y));
      if (!mass) {
        mass = new TilingSprite({ texture: textures.closed });
        layer.addChild(mass, bank);
      }
      mass.texture = textures.closed;
      mass.position.set(0, top);
      mass.setSize(width_px, Math.max(1, height_px - top));
      // The hatch belongs to the ground: it goes along when the picture is panned.
      mass.tilePosition.set(place.hole_x, ground_y - top);

      bank.clear();
      if (ground_y < -4) return;
      bank.rect(0, ground_y, width_px, 3).fill({ color: look.humus, alpha: 0.55 });
      bank.rect(0, ground_y - 2, width_px, 3.5).fill(look.grass);
      const blade = Math.max(2.5, 5 * place.gear_px);
      for (let i = 0; i * 9 < width_px; i++) {
        if (scatter(i, 11) < 0.45) continue;
        const x = i * 9 + 7 * scatter(i, 12);
        bank
          .moveTo(x, ground_y)
          .lineTo(x - 1.5 + 3 * scatter(i, 13), ground_y - blade * (0.6 + 0.8 * scatter(i, 14)))
          .stroke({ color: scatter(i, 15) < 0.5 ? look.grass : look.grassDark, width: 1.2 });
      }
    },
  };
}
