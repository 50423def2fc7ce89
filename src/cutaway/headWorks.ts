// What stands over the finished well: apron and drain, the cap, the pump that was fitted.

import { Container, Graphics } from 'pixi.js';
import { createMemory, type Part, type Scene } from './part';
import type { CutawayView, ShownWell } from './shown';
import { pitShape } from './pitShape';
import { pipeHalf_px } from './wellShape';

type Head = NonNullable<ShownWell['head']>;
/** Thickness of the slab, m of the bank's scale. */
const SLAB_m = 0.12;

export function createHeadWorks(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(3);

  const slabHalf = (head: Head, { place }: Scene): number =>
    Math.min(head.apron_m * place.bank_pxm, place.axis_x - place.hole_x - place.text_px);

  function drawSlab(view: CutawayView, head: Head, scene: Scene): void {
    const { place, look } = scene;
    const half = slabHalf(head, scene);
    const high = Math.max(5, SLAB_m * place.bank_pxm);
    const y = place.ground_y;
    if (half > 2) {
      pen
        .poly([place.hole_x - half, y + 2, place.hole_x - half, y - high * 0.6, place.hole_x, y - high])
        .poly([place.hole_x, y - high, place.hole_x + half, y - high * 0.6, place.hole_x + half, y + 2])
        .rect(place.hole_x - half, y - high * 0.6, half * 2, high * 0.6 + 2)
        .fill(look.apron)
        .stroke({ color: look.ink, width: 1.2 });
      for (const side of [-1, 1]) pen.rect(place.hole_x + side * half - 2.5, y - high * 1.25, 5, high * 1.25 + 2);
      pen.fill(look.apron).stroke({ color: look.ink, width: 1.2 });
    }
    if (head.drain_m > 0) {
      // Drawn as far as it was built, or to the rim of the pit, behind which it goes on.
      const rim = view.pit.dug ? pitShape(view, place).settling.right + 6 : 4;
      const built = place.hole_x - half - head.drain_m * place.bank_pxm;
      const end = Math.min(place.hole_x - half - 14, Math.max(rim, built));
      pen.poly([end, y + 5, end, y, place.hole_x - half, y - 3, place.hole_x - half, y + 5]).fill(look.apron);
      pen
        .moveTo(place.hole_x - half, y - 1)
        .lineTo(end, y + 3)
        .stroke({ color: look.waterBand, width: 2.4 });
    }
  }

  /** A pump as a plain figure: with a handle, or a pipe bend over a cable. */
  function drawPump(view: CutawayView, head: Head, { place, look }: Scene): void {
    const casing = view.well?.casing;
    const u = Math.max(0.8, place.gear_px);
    const half = casing ? pipeHalf_px(place, casing).out : 6;
    const y = place.ground_y - Math.max(5, SLAB_m * place.bank_pxm);
    const line = { color: look.ink, width: Math.max(1.2, look.line_px) };
    const wide = Math.max(half + 3, 8 * u);
    if (head.cap) {
      pen
        .rect(place.hole_x - wide, y - 6 * u, wide * 2, 6 * u)
        .fill(look.steelDark)
        .stroke(line);
    }
    if (head.lift === 'submersible') {
      pen
        .moveTo(place.hole_x, y - 6 * u)
        .lineTo(place.hole_x, y - 30 * u)
        .lineTo(place.hole_x + 26 * u, y - 30 * u)
        .lineTo(place.hole_x + 26 * u, y - 20 * u)
        .stroke({ color: look.ink, width: 7 * u, join: 'round' });
      pen
        .moveTo(place.hole_x, y - 6 * u)
        .lineTo(place.hole_x, y - 30 * u)
        .lineTo(place.hole_x + 26 * u, y - 30 * u)
        .lineTo(place.hole_x + 26 * u, y - 20 * u)
        .stroke({ color: look.steelLight, width: 4.5 * u, join: 'round' });
      return;
    }
    const tall = (head.lift === 'deepPiston' ? 46 : 36) * u;
    pen
      .roundRect(place.hole_x - 7 * u, y - 6 * u - tall, 14 * u, tall, 3 * u)
      .fill(look.body)
      .stroke(line);
    pen
      .rect(place.hole_x + 7 * u, y - tall * 0.62, 14 * u, 5 * u)
      .fill(look.steel)
      .stroke(line);
    pen
      .rect(place.hole_x + 16 * u, y - tall * 0.62, 5 * u, 9 * u)
      .fill(look.steel)
      .stroke(line);
    pen
      .moveTo(place.hole_x + 3 * u, y - tall - 2 * u)
      .lineTo(place.hole_x - 34 * u, y - tall * 0.55)
      .stroke({ color: look.ink, width: 5 * u, cap: 'round' });
    pen
      .moveTo(place.hole_x + 3 * u, y - tall - 2 * u)
      .lineTo(place.hole_x - 34 * u, y - tall * 0.55)
      .stroke({ color: look.wood, width: 3 * u, cap: 'round' });
  }

  return {
    layer,
    draw(view, scene) {
      const head = view.well?.head ?? null;
      layer.visible = head !== null;
      if (!head || (!memory(head.apron_m, head.drain_m, head.cap ? 1 : 0) && !scene.fresh)) return;
      pen.clear();
      drawSlab(view, head, scene);
      drawPump(view, head, scene);
    },
    thingAt(view, scene, x, y) {
      const head = view.well?.head;
      if (!head) return null;
      const { place } = scene;
      const u = Math.max(0.8, place.gear_px);
      if (y > place.ground_y + 6 || y < place.ground_y - 64 * u) return null;
      const off = Math.abs(x - place.hole_x);
      if (y > place.ground_y - Math.max(6, SLAB_m * place.bank_pxm * 1.3))
        return off < slabHalf(head, scene) + 4 ? 'apron' : null;
      return off < 34 * u ? 'wellPump' : null;
    },
  };
}
