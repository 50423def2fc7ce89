// The hand-held drive that turns the stem and the swivel above it that lets the fluid into the turning steel.

import { Container, Graphics } from 'pixi.js';
import { gearShape } from './gear';
import { halfOf } from './place';
import { createMemory, type Part, type Scene } from './part';
import type { CutawayView } from './shown';

export function createDrive(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(2);

  /** Drawn with the stem's top at the origin; the layer is then set there. */
  function redraw(view: CutawayView, { place, look }: Scene): void {
    const u = place.gear_px;
    const line = { color: look.ink, width: Math.max(1, look.line_px * Math.min(1, u)) };
    const rod = halfOf(place, view.kit.rodOutside_m / 2);
    const drive = 25 * u;
    const swivel = 19 * u;
    pen.clear();
    // Two grips; the right one carries the trigger that stops the turning when it is let go.
    for (const side of [-1, 1] as const) {
      const grip = { width: Math.max(2.4, 4.6 * u), cap: 'round' as const };
      pen
        .moveTo(side * (rod + 4 * u), -drive * 0.45)
        .lineTo(side * (rod + 20 * u), -drive * 0.45 + 5 * u)
        .stroke({ color: look.ink, ...grip, width: grip.width + 1.8 });
      pen
        .moveTo(side * (rod + 4 * u), -drive * 0.45)
        .lineTo(side * (rod + 20 * u), -drive * 0.45 + 5 * u)
        .stroke({ color: look.hose, ...grip });
    }
    pen
      .moveTo(rod + 11 * u, -drive * 0.45 + 7.5 * u)
      .lineTo(rod + 18 * u, -drive * 0.45 + 9.5 * u)
      .stroke({ color: view.stem.turning ? look.accent : look.steelLight, width: Math.max(1.6, 3 * u), cap: 'round' });
    pen
      .rect(-rod * 0.8, -5 * u, rod * 1.6, 6 * u)
      .fill(look.steelDark)
      .stroke(line);
    pen
      .roundRect(-rod - 8 * u, -drive, 2 * rod + 16 * u, drive - 4 * u, 5 * u)
      .fill(look.body)
      .stroke(line);
    for (let i = -1; i <= 1; i++) {
      pen.moveTo(i * 5 * u - 3 * u, -drive + 6 * u).lineTo(i * 5 * u + 3 * u, -drive + 6 * u);
      pen.moveTo(i * 5 * u - 3 * u, -drive + 10 * u).lineTo(i * 5 * u + 3 * u, -drive + 10 * u);
    }
    pen.stroke({ color: look.bodyDark, width: Math.max(1, 1.4 * u) });
    // Swivel: body, inlet with the gooseneck to the hose, bail above.
    pen
      .rect(-13 * u, -drive - swivel * 0.72, 10 * u, swivel * 0.44)
      .fill(look.steel)
      .stroke(line);
    pen
      .rect(-18 * u, -drive - swivel * 0.82, 6 * u, swivel * 0.62)
      .fill(look.steelDark)
      .stroke(line);
    pen
      .roundRect(-9 * u, -drive - swivel, 18 * u, swivel, 3 * u)
      .fill(look.steelLight)
      .stroke(line);
    pen
      .rect(-11 * u, -drive - 5 * u, 22 * u, 5 * u)
      .fill(look.steelDark)
      .stroke(line);
    pen
      .moveTo(-6 * u, -drive - swivel)
      .quadraticCurveTo(0, -drive - swivel - 14 * u, 6 * u, -drive - swivel)
      .stroke({ color: look.ink, width: Math.max(1.4, 2.4 * u) });
  }

  return {
    layer,
    draw(view, scene) {
      if (memory(view.stem.turning ? 1 : 0, view.stem.rods) || scene.fresh) redraw(view, scene);
    },
    move(view, scene) {
      layer.position.set(scene.place.hole_x, gearShape(view, scene.place, scene.bit_m).stemTop_y);
    },
    thingAt(view, scene, x, y) {
      const { place, bit_m } = scene;
      const gear = gearShape(view, place, bit_m);
      const dx = Math.abs(x - place.hole_x);
      const reach = Math.max(12, 24 * place.gear_px);
      if (dx > reach || y > gear.stemTop_y + 2 || y < gear.hook_y - 4) return null;
      return y > gear.stemTop_y - gear.drive_px ? 'drive' : 'swivel';
    },
  };
}
