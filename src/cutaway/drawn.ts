// Water that is brought out of the well: it runs from the pipe's mouth into a bucket, in the colour that it has.

import { Container, Graphics } from 'pixi.js';
import { fluidColour } from './palette';
import { createMemory, type Part } from './part';
import { pipeHalf_px, pipeTop_px } from './wellShape';

const LEAST_m3s = 1e-6;
/** This much makes the widest stream, m3/s. */
const MOST_m3s = 1e-3;

export function createDrawn(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(3);

  return {
    layer,
    draw(view, { place, look, fresh }) {
      const casing = view.well?.casing ?? null;
      const flow = view.well?.drawn_m3s ?? 0;
      layer.visible = casing !== null && flow > LEAST_m3s;
      if (!casing || !layer.visible) return;
      const colour = fluidColour(look, view.well!.drawnFines_frac, 0, view.returns.colour);
      if (!memory(Math.round(flow * 1e5), colour) && !fresh) return;
      pen.clear();
      const u = Math.max(0.7, place.gear_px);
      const { out } = pipeHalf_px(place, casing);
      const top = Math.min(place.ground_y - 12 * u, pipeTop_px(place, casing) + 3);
      const x = place.hole_x + out + 30 * u;
      const ground = place.ground_y;
      const wide = 3 + 5 * Math.min(1, Math.sqrt(flow / MOST_m3s)) * u;
      // Bucket.
      pen
        .poly([x - 12 * u, ground - 20 * u, x + 12 * u, ground - 20 * u, x + 9 * u, ground, x - 9 * u, ground])
        .fill(look.steelLight)
        .stroke({ color: look.ink, width: 1.3 });
      pen.poly([
        x - 11 * u,
        ground - 15 * u,
        x + 11 * u,
        ground - 15 * u,
        x + 9 * u,
        ground - 1,
        x - 9 * u,
        ground - 1,
      ]);
      pen.fill(colour);
      for (const [width, color] of [
        [wide + 2, look.ink],
        [wide, colour],
      ] as const) {
        pen
          .moveTo(place.hole_x, top)
          .lineTo(place.hole_x + out + 12 * u, top)
          .quadraticCurveTo(x, top, x, ground - 15 * u)
          .stroke({ color, width, cap: 'round', join: 'round' });
      }
    },
    thingAt(view, { place }, x, y) {
      const casing = view.well?.casing;
      if (!casing || (view.well?.drawn_m3s ?? 0) <= LEAST_m3s) return null;
      const u = Math.max(0.7, place.gear_px);
      const off = x - place.hole_x - pipeHalf_px(place, casing).out;
      const top = Math.min(place.ground_y - 12 * u, pipeTop_px(place, casing) + 3);
      return off > 4 && off < 44 * u && y > top - 6 && y < place.ground_y ? 'drawn' : null;
    },
  };
}
