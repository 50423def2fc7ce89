// The petrol pump on the bank: tank, engine, volute on a skid. A lamp-like dot would be an invention: the throttle
// lever stands where the throttle stands.

import { Container, Graphics } from 'pixi.js';
import { gearShape } from './gear';
import { createMemory, type Part } from './part';

export function createPump(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(2);

  return {
    layer,
    draw(view, { place, look, fresh, bit_m }) {
      if (!memory(Math.round(view.pump.throttle_frac * 50)) && !fresh) return;
      const u = place.gear_px;
      const { pump_x: x, pump_y: y } = gearShape(view, place, bit_m);
      const line = { color: look.ink, width: Math.max(1, look.line_px * Math.min(1, u)) };
      pen.clear();
      pen.rect(x - 2 * u, y - 3.5 * u, 66 * u, 3.5 * u).fill(look.steelDark);
      pen.rect(x + 5 * u, y - 1 * u, 7 * u, 3 * u).fill(look.woodDark);
      pen.rect(x + 46 * u, y - 1 * u, 7 * u, 3 * u).fill(look.woodDark);
      pen.roundRect(x - 4 * u, y - 27 * u, 6 * u, 9 * u, 2 * u).fill(look.steelDark);
      pen
        .roundRect(x + 2 * u, y - 29 * u, 31 * u, 25.5 * u, 3 * u)
        .fill(look.body)
        .stroke(line);
      for (let i = 0; i < 4; i++) {
        pen.moveTo(x + (8 + i * 5) * u, y - 24 * u).lineTo(x + (8 + i * 5) * u, y - 9 * u);
      }
      pen.stroke({ color: look.bodyDark, width: Math.max(1, 1.6 * u) });
      pen
        .roundRect(x + 3 * u, y - 42 * u, 29 * u, 13 * u, 4 * u)
        .fill(look.tank)
        .stroke(line);
      pen.roundRect(x + 13 * u, y - 45 * u, 9 * u, 4 * u, 1.5 * u).fill(look.bodyDark);
      // Volute with outlet upwards and inlet to the side.
      pen
        .rect(x + 41 * u, y - 33 * u, 10 * u, 12 * u)
        .fill(look.steel)
        .stroke(line);
      pen
        .rect(x + 54 * u, y - 21.5 * u, 7 * u, 9 * u)
        .fill(look.steel)
        .stroke(line);
      pen
        .circle(x + 45 * u, y - 17 * u, 13 * u)
        .fill(look.steel)
        .stroke(line);
      pen.circle(x + 45 * u, y - 17 * u, 8 * u).stroke({ color: look.steelDark, width: Math.max(1, 1.4 * u) });
      pen.circle(x + 45 * u, y - 17 * u, 2.6 * u).fill(look.steelDark);
      // Throttle lever: upright when shut, laid over when open.
      const angle = -Math.PI / 2 + view.pump.throttle_frac * 1.25;
      const px = x + 29 * u;
      const py = y - 27 * u;
      pen
        .moveTo(px, py)
        .lineTo(px + 9 * u * Math.cos(angle), py + 9 * u * Math.sin(angle))
        .stroke({ color: view.pump.running ? look.accent : look.ink, width: Math.max(1.4, 2.2 * u), cap: 'round' });
    },
    thingAt(view, { place, bit_m }, x, y) {
      const { pump_x, pump_y } = gearShape(view, place, bit_m);
      const u = place.gear_px;
      return x > pump_x - 6 * u && x < pump_x + 64 * u && y > pump_y - 48 * u && y < pump_y + 4 ? 'pump' : null;
    },
  };
}
