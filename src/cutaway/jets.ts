// The jets from the nozzles between the wings. Their reach goes with the speed of the fluid in them, and ends at the
// bottom of the hole, where they spread; no flow, no jet.

import { Container, Graphics } from 'pixi.js';
import { bitHeight_px } from './bit';
import { halfOf, yOf } from './place';
import { createMemory, type Part, type Scene } from './part';
import type { CutawayView } from './shown';

/** Speed at which a jet is drawn at its full reach, m/s, and that reach in nozzle-to-bottom heights of the bit. */
const FULL_JET_ms = 18;
const FULL_REACH_ratio = 1.6;

export function createJets(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(3);

  /** Drawn with the bit's lower edge at the origin. */
  function redraw(view: CutawayView, { place, look, bit_m }: Scene): void {
    pen.clear();
    const strength = Math.min(1, view.pump.jet_ms / FULL_JET_ms);
    if (strength <= 0.01 || !view.hole) return;
    const reach = halfOf(place, view.kit.bit_m / 2);
    const tall = bitHeight_px(place, view.kit.bit_m);
    const floor_m = view.hole.depth_m - bit_m;
    const room = Math.max(0, floor_m * place.depth_pxm) + tall * 0.4;
    const long = Math.min(room, tall * FULL_REACH_ratio * strength);
    const hits = long >= room - 1;
    const wide = Math.max(1.2, reach * 0.07);
    const alpha = 0.45 + 0.45 * strength;
    for (const side of [-1, 1] as const) {
      const x = side * reach * 0.42;
      const y = -tall * 0.4;
      const tip = x + side * Math.min(reach * 0.36, long * 0.4);
      pen
        .poly([x - wide * 0.6, y, x + wide * 0.6, y, tip + wide * 1.7, y + long, tip - wide * 1.7, y + long])
        .fill({ color: look.jet, alpha: alpha * 0.8 });
      pen
        .moveTo(x, y)
        .lineTo(tip, y + long * 0.85)
        .stroke({ color: look.jet, width: wide, alpha, cap: 'round' });
      if (!hits) continue;
      const end = y + long;
      pen
        .moveTo(tip, end - 1)
        .quadraticCurveTo(side * reach * 0.92, end, side * reach * 0.93, end - tall * 0.5 * strength)
        .stroke({ color: look.jet, width: wide * 0.8, alpha: alpha * 0.7, cap: 'round' });
    }
  }

  return {
    layer,
    draw(_view, scene) {
      if (scene.fresh) memory(Number.NaN, 0, 0);
    },
    move(view, scene) {
      if (memory(Math.round(view.pump.jet_ms * 4), scene.bit_m, view.stem.bottom_m)) redraw(view, scene);
      layer.position.set(scene.place.hole_x, yOf(scene.place, scene.bit_m));
    },
  };
}
