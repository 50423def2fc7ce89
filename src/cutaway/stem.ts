// The stem, cut open: steel wall, fluid in the bore, a collar with an accent ring at every joint between rods.

import { Container, Graphics } from 'pixi.js';
import { fluidColour } from './palette';
import { halfOf, yOf } from './place';
import { createMemory, type Part } from './part';

export function createStem(): Part {
  const layer = new Container();
  const steel = new Graphics();
  const rings = new Graphics();
  layer.addChild(steel, rings);
  const memory = createMemory(3);

  return {
    layer,
    draw(view, scene) {
      const { place, look, fresh } = scene;
      const bore = fluidColour(look, view.pit.suction.fines_frac, view.pit.polymer_gL, view.returns.colour);
      if (!memory(view.stem.rods, bore) && !fresh) return;
      // The bit's lower edge is at the origin; the layer is then set to its depth.
      const rod_px = view.kit.rodLength_m * place.depth_pxm;
      const top = -view.stem.rods * rod_px;
      const out = Math.max(3, halfOf(place, view.kit.rodOutside_m / 2));
      const inner = Math.max(1.6, Math.min(out - 1.4, halfOf(place, view.kit.rodBore_m / 2)));
      steel.clear();
      steel.rect(-out, top, out * 2, -top).fill(look.steel);
      steel.rect(-out, top, (out - inner) * 0.8, -top).fill(look.steelLight);
      steel.rect(out - (out - inner), top, out - inner, -top).fill(look.steelDark);
      steel.rect(-inner, top, inner * 2, -top).fill(bore);
      steel.rect(-inner, top, inner * 2, -top).fill({ color: look.streak, alpha: 0.14 });
      steel.rect(-inner, top, inner * 0.5, -top).fill({ color: look.streak, alpha: 0.18 });
      steel
        .moveTo(-out, top)
        .lineTo(-out, 0)
        .moveTo(out, top)
        .lineTo(out, 0)
        .stroke({ color: look.ink, width: Math.max(1, look.line_px * (place.compact ? 0.8 : 1)) });
      steel
        .moveTo(-inner, top)
        .lineTo(-inner, 0)
        .moveTo(inner, top)
        .lineTo(inner, 0)
        .stroke({ color: look.ink, width: 0.7, alpha: 0.7 });
      rings.clear();
      const tall = Math.max(3.5, Math.min(10, 0.11 * place.depth_pxm));
      const over = Math.max(1.2, out * 0.18);
      for (let k = 1; k < view.stem.rods; k++) {
        const y = -k * rod_px;
        rings
          .rect(-out - over, y - tall, (out + over) * 2, tall * 2)
          .fill(look.steelDark)
          .stroke({ color: look.ink, width: 1 });
        rings.rect(-out - over, y - 1.1, (out + over) * 2, 2.2).fill(look.accent);
      }
      // The uppermost thread, where the drive sits.
      rings
        .rect(-out - over * 0.5, top, (out + over * 0.5) * 2, tall)
        .fill(look.steelDark)
        .stroke({ color: look.ink, width: 1 });
    },
    move(_view, scene) {
      layer.position.set(scene.place.hole_x, yOf(scene.place, scene.bit_m));
    },
    thingAt(view, { place, bit_m }, x, y) {
      const out = Math.max(6, halfOf(place, view.kit.rodOutside_m / 2) + 2);
      if (Math.abs(x - place.hole_x) > out) return null;
      const top = yOf(place, bit_m - view.stem.rods * view.kit.rodLength_m);
      return y >= top && y <= yOf(place, bit_m) ? 'stem' : null;
    },
  };
}
