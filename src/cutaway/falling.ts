// Ground that falls from the wall: where it lets go the wall is ragged, and clods slip down to the bed.

import { Container, Graphics } from 'pixi.js';
import { radiusAt } from './holeShape';
import { halfOf, yOf, type Place } from './place';
import type { Part, Scene } from './part';
import { scatter } from './scatter';
import type { CutawayView, ShownHole } from './shown';

const MOST_CLODS = 48;
const CLODS_m = 10;
/** Wet ground slips down the wall about so fast: for the eye only. */
const SLIP_ms = 0.25;
/** How far a clod is followed, m; then the next lets go. */
const FALL_m = 0.8;
/** Half a clod's width, m to the scale across the hole, and px: it must be told from the grains on a phone too. */
const CLOD_m = 0.0085;
const LEAST_CLOD_px = 4.4;
const MOST_CLOD_px = 11;
/** Height of a tooth of the broken wall, px. */
const TOOTH_px = 5;

export function createFalling(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  let slipped_m = 0;
  let drawn = false;

  /** One clod as a ragged four-sided lump. */
  function clod(x: number, y: number, size: number, mark: number): void {
    const corner = (i: number): number => size * (0.55 + 0.6 * scatter(mark, 140 + i));
    pen.poly([
      x - corner(0),
      y - corner(1) * 0.4,
      x + corner(2) * 0.5,
      y - corner(3),
      x + corner(4),
      y + corner(5) * 0.5,
      x - corner(6) * 0.3,
      y + corner(7),
    ]);
  }

  function redraw(hole: ShownHole, { place, look }: Scene): void {
    pen.clear();
    drawn = false;
    const bedTop_m = hole.depth_m - hole.bed_m;
    const size = Math.max(LEAST_CLOD_px, Math.min(MOST_CLOD_px, CLOD_m * place.across_pxm));
    let left = MOST_CLODS;
    for (let i = hole.cells - 1; i >= 0 && left > 0; i--) {
      if (hole.falling[i] <= 0) continue;
      drawn = true;
      ragged(hole, i, place, look.accent);
      const count = Math.max(2, Math.round(hole.dz_m * CLODS_m));
      for (let c = 0; c < count && left > 0; c++, left--) {
        const mark = i * 31 + c;
        const side = c % 2 === 0 ? -1 : 1;
        const fall_m = (slipped_m + FALL_m * scatter(mark, 131)) % FALL_m;
        const at_m = Math.min(bedTop_m, (i + scatter(mark, 132)) * hole.dz_m + fall_m);
        const half = halfOf(place, radiusAt(hole, at_m));
        const inward = size * (0.4 + 1.4 * scatter(mark, 133)) * (0.4 + fall_m / FALL_m);
        clod(place.hole_x + side * Math.max(0, half - inward), yOf(place, at_m), size, mark);
        pen.fill(look.clod).stroke({ color: look.ink, width: 1.1 });
      }
    }
  }

  /** The wall where it lets go: a broken line instead of a smooth one. */
  function ragged(hole: ShownHole, cell: number, place: Place, colour: string): void {
    const top = yOf(place, cell * hole.dz_m);
    const bottom = yOf(place, Math.min(hole.depth_m, (cell + 1) * hole.dz_m));
    for (const side of [-1, 1]) {
      for (let y = top, step = 0; y < bottom; y += TOOTH_px, step++) {
        const half = halfOf(place, radiusAt(hole, (y - place.ground_y) / place.depth_pxm));
        const x = place.hole_x + side * (half + (step % 2 === 0 ? -1 : 1.5 + 2.5 * scatter(cell * 17 + step, 150)));
        if (step === 0) pen.moveTo(x, y);
        else pen.lineTo(x, y);
      }
    }
    pen.stroke({ color: colour, width: 2.2, join: 'round' });
  }

  return {
    layer,
    draw(view, scene) {
      layer.visible = view.hole !== null;
      if (view.hole) redraw(view.hole, scene);
    },
    move(view: CutawayView, scene, shown_s) {
      if (!view.hole || !drawn || shown_s <= 0) return;
      slipped_m = (slipped_m + SLIP_ms * shown_s) % FALL_m;
      redraw(view.hole, scene);
    },
    thingAt(view, { place }, x, y) {
      const { hole } = view;
      if (!hole) return null;
      const i = Math.floor((y - place.ground_y) / place.depth_pxm / hole.dz_m);
      if (i < 0 || i >= hole.cells || hole.falling[i] <= 0) return null;
      const half = halfOf(place, hole.radius_m[i]);
      const off = Math.abs(Math.abs(x - place.hole_x) - half);
      return off < 8 ? 'falling' : null;
    },
  };
}
