// Rain while it rains: strokes in the sky, rings on the fluid of the pit. It falls while the run goes on and stands when it stands.

import { Container, Graphics } from 'pixi.js';
import { createMemory, type Part, type Scene } from './part';
import { pitShape, wallX } from './pitShape';
import { scatter } from './scatter';
import type { CutawayView } from './shown';

const DROPS = { dry: 0, rain: 70, downpour: 170 } as const;
const RINGS = { dry: 0, rain: 3, downpour: 7 } as const;
/** Drops fall some 6 m/s; no farther in one picture than the eye can follow, px. */
const FALL_ms = 6;
const MOST_STEP_px = 9;
const SLANT = 0.18;

export function createRain(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(3);
  let fallen_px = 0;

  function redraw(view: CutawayView, { place, look }: Scene): void {
    pen.clear();
    const drops = DROPS[view.sky];
    const high = place.ground_y;
    if (drops === 0 || high <= 0) return;
    const long = view.sky === 'downpour' ? 13 : 8;
    for (let i = 0; i < drops; i++) {
      const y = (high * scatter(i, 301) + fallen_px * (0.8 + 0.4 * scatter(i, 302))) % high;
      const x = place.width_px * scatter(i, 303);
      const end = Math.min(high, y + long);
      pen.moveTo(x, y).lineTo(x - SLANT * (end - y), end);
    }
    pen.stroke({ color: look.waterBand, width: 1.3, alpha: 0.9, cap: 'round' });
    if (!view.pit.dug) return;
    const pit = pitShape(view, place);
    for (const box of [pit.settling, pit.suction]) {
      if (box.floor - box.fluid < 2) continue;
      const left = wallX(box, box.fluid, -1);
      const wide = wallX(box, box.fluid, 1) - left;
      for (let i = 0; i < RINGS[view.sky]; i++) {
        const step = Math.floor(fallen_px / 30 + scatter(i, 305) * 3);
        pen.ellipse(left + wide * (0.08 + 0.84 * scatter(i + step * 11, 304)), box.fluid, 3.5, 1.3);
      }
    }
    pen.stroke({ color: look.streak, width: 1.1 });
  }

  const wetness = (view: CutawayView): number => DROPS[view.sky];
  const level = ({ pit }: CutawayView): number => Math.round((pit.settling.level_m + 3 * pit.suction.level_m) * 500);

  return {
    layer,
    draw(view, scene) {
      if (memory(wetness(view), fallen_px, level(view)) || scene.fresh) redraw(view, scene);
    },
    move(view, scene, shown_s) {
      if (shown_s <= 0 || view.sky === 'dry') return;
      fallen_px += Math.min(MOST_STEP_px, FALL_ms * shown_s * scene.place.depth_pxm);
      redraw(view, scene);
    },
  };
}
