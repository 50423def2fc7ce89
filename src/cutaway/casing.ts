// The casing, cut open: wall, joints, slots, cloth over them, cap below, centralisers, the water in it, a break.

import { Container, Graphics } from 'pixi.js';
import { blend, fluidColour } from './palette';
import { yOf } from './place';
import { createMemory, type Part, type Scene } from './part';
import type { CutawayView, ShownCasing } from './shown';
import { dashedLine } from './strokes';
import { pipeHalf_px, pipeTop_px, wallHalf_px } from './wellShape';

/** Slots closer together than this on the picture are drawn this far apart: told apart, not counted. */
const LEAST_SLOT_px = 4;

export function createCasing(): Part {
  const layer = new Container();
  const water = new Graphics();
  const pipe = new Graphics();
  const fittings = new Graphics();
  layer.addChild(water, pipe, fittings);
  const memory = createMemory(8);

  function drawWater(view: CutawayView, casing: ShownCasing, { place, look }: Scene): void {
    water.clear();
    const { inner } = pipeHalf_px(place, casing);
    const top = pipeTop_px(place, casing);
    const bottom = yOf(place, casing.shoe_m);
    // Where it is empty one looks at the pipe's own back.
    water.rect(place.hole_x - inner, top, inner * 2, bottom - top).fill(blend(look.casing, look.ink, 0.12));
    if (casing.level_m === null) return;
    const y = Math.max(top, Math.min(bottom, yOf(place, casing.level_m)));
    const colour = fluidColour(look, view.well?.drawnFines_frac ?? 0, 0, view.returns.colour);
    if (casing.dipped) {
      // Nobody has seen it: a mark where the dipper met it, and no more.
      dashedLine(water, place.hole_x - inner, y, place.hole_x + inner, y, 4, 3);
      water.stroke({ color: look.streak, width: 2 });
      return;
    }
    water.rect(place.hole_x - inner, y, inner * 2, bottom - y).fill(colour);
    water
      .moveTo(place.hole_x - inner, y)
      .lineTo(place.hole_x + inner, y)
      .stroke({ color: look.streak, width: 1.6, alpha: 0.9 });
  }

  function drawPipe(casing: ShownCasing, { place, look }: Scene): void {
    const { out, inner } = pipeHalf_px(place, casing);
    const top = pipeTop_px(place, casing);
    const bottom = yOf(place, casing.shoe_m);
    pipe.clear();
    for (const side of [-1, 1]) {
      const x = side < 0 ? place.hole_x - out : place.hole_x + inner;
      pipe.rect(x, top, out - inner, bottom - top);
    }
    pipe.fill(look.casing);
    for (const side of [-1, 1]) {
      for (const edge of [inner, out]) {
        pipe.moveTo(place.hole_x + side * edge, top).lineTo(place.hole_x + side * edge, bottom);
      }
    }
    pipe.stroke({ color: look.ink, width: Math.max(1, look.line_px * 0.9) });
    if (casing.screen) drawSlots(casing, casing.screen, { place, look } as Scene);
    // Joints: a collar every piece, counted from the lower end.
    for (let at_m = casing.shoe_m - casing.piece_m; at_m > casing.top_m + 0.2; at_m -= casing.piece_m) {
      const y = yOf(place, at_m);
      if (y < top + 3) continue;
      for (const side of [-1, 1]) {
        const x = side < 0 ? place.hole_x - out - 1.5 : place.hole_x + inner;
        pipe.rect(x, y - 3, out - inner + 1.5, 6);
      }
      pipe.fill(look.casing).stroke({ color: look.ink, width: 1 });
    }
    if (casing.cap) {
      pipe
        .roundRect(place.hole_x - out - 1.5, bottom - 3, out * 2 + 3, 5, 1.5)
        .fill(look.casing)
        .stroke({ color: look.ink, width: 1.2 });
    }
  }

  function drawSlots(casing: ShownCasing, screen: { from_m: number; to_m: number }, { place, look }: Scene): void {
    const { out, inner } = pipeHalf_px(place, casing);
    const top = Math.max(pipeTop_px(place, casing), yOf(place, screen.from_m));
    const bottom = yOf(place, screen.to_m);
    const step = Math.max(LEAST_SLOT_px, casing.slotSpacing_m * place.depth_pxm);
    const above = Math.max(0, Math.floor(-top / step));
    for (let y = top + (above + 0.5) * step; y < Math.min(bottom, place.height_px); y += step) {
      pipe.moveTo(place.hole_x - out, y).lineTo(place.hole_x - inner, y);
      pipe.moveTo(place.hole_x + inner, y).lineTo(place.hole_x + out, y);
    }
    pipe.stroke({ color: look.ink, width: Math.max(1.4, casing.slotWidth_m * place.depth_pxm) });
    if (!casing.cloth) return;
    for (const side of [-1, 1]) {
      const x = place.hole_x + side * (out + 1.6);
      pipe.moveTo(x, top).lineTo(x, bottom).stroke({ color: look.cloth, width: 3 });
      dashedLine(pipe, x, top, x, bottom, 2, 2);
      pipe.stroke({ color: look.ink, width: 1, alpha: 0.8 });
    }
  }

  function drawFittings(view: CutawayView, casing: ShownCasing, { place, look }: Scene): void {
    fittings.clear();
    const { out } = pipeHalf_px(place, casing);
    // Spread evenly over the pipe below ground: bows from the pipe to the wall.
    const room_m = casing.shoe_m;
    for (let i = 0; i < casing.centralisers && room_m > 0; i++) {
      const at_m = casing.shoe_m - (room_m * (i + 0.5)) / casing.centralisers;
      const y = yOf(place, at_m);
      const wall = wallHalf_px(view, place, at_m) - 1;
      const high = Math.max(5, Math.min(10, 0.12 * place.depth_pxm));
      for (const side of [-1, 1]) {
        fittings
          .moveTo(place.hole_x + side * out, y - high)
          .quadraticCurveTo(place.hole_x + side * (2 * wall - out), y, place.hole_x + side * out, y + high);
      }
    }
    fittings.stroke({ color: look.ink, width: 1.6 });
    if (casing.snapped_m === null) return;
    const y = yOf(place, casing.snapped_m);
    fittings.moveTo(place.hole_x - out - 4, y + 2);
    for (let i = 1; i <= 6; i++)
      fittings.lineTo(place.hole_x - out - 4 + (i * (2 * out + 8)) / 6, y + (i % 2 === 0 ? 3 : -4));
    fittings.stroke({ color: look.accent, width: 3, join: 'round' });
  }

  return {
    layer,
    draw(view, scene) {
      const casing = view.well?.casing ?? null;
      // While rods hang in the hole the joined pipe lies beside it.
      layer.visible = casing !== null && (view.stem.out || casing.shoe_m > 0);
      if (!casing || !layer.visible) return;
      const level = casing.level_m === null ? -1 : Math.round(casing.level_m * 200);
      const colour = Math.round((view.well?.drawnFines_frac ?? 0) * 1e5);
      const place_m = Math.round(casing.shoe_m * 500) + Math.round(casing.top_m * 500) * 1e6;
      const fit = casing.centralisers + (casing.snapped_m ?? 0) * 100;
      if (!memory(level, colour, place_m, fit, casing.screen ? casing.screen.from_m : -1) && !scene.fresh) return;
      drawWater(view, casing, scene);
      drawPipe(casing, scene);
      drawFittings(view, casing, scene);
    },
    thingAt(view, { place }, x, y) {
      const casing = view.well?.casing;
      if (!casing || !layer.visible) return null;
      const { out, inner } = pipeHalf_px(place, casing);
      const off = Math.abs(x - place.hole_x);
      if (off > out + 5 || y < pipeTop_px(place, casing) || y > yOf(place, casing.shoe_m) + 3) return null;
      const screen = casing.screen;
      const slotted = screen !== null && y >= yOf(place, screen.from_m) && y <= yOf(place, screen.to_m);
      if (off < inner && casing.level_m !== null && y > yOf(place, casing.level_m) && !casing.dipped && !slotted)
        return 'casingWater';
      return slotted ? 'screen' : 'casing';
    },
  };
}
