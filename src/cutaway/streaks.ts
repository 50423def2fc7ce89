// Short light strokes that go with the fluid: down the bore, up round the stem, each at the fluid's own speed. They show
// how far the grains lag behind. No flow, no strokes.

import { Container, Graphics } from 'pixi.js';
import { depthAt, halfOf, yOf } from './place';
import type { Part, Scene } from './part';
import { radiusAt } from './holeShape';
import { scatter } from './scatter';
import type { CutawayView, ShownHole } from './shown';

const ROUND = 26;
/** One stroke in the bore for this length of stem, m. */
const BORE_STEP_m = 0.55;
/** Looked at closely they stand closer, px. */
const MOST_STEP_px = 70;

const cellOf = (hole: ShownHole, at_m: number): number =>
  Math.min(hole.cells - 1, Math.max(0, Math.floor(at_m / hole.dz_m)));

export function createStreaks(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const depth_m = new Float64Array(ROUND);
  let bore_m = 0;
  let seeded = false;
  let drawn = false;

  function bore(view: CutawayView, scene: Scene, shown_s: number): void {
    const { place, bit_m } = scene;
    const step_m = Math.min(BORE_STEP_m, MOST_STEP_px / place.depth_pxm);
    bore_m = (bore_m + view.pump.bore_ms * shown_s) % step_m;
    const long = Math.max(5, Math.min(26, 0.05 * view.pump.bore_ms * place.depth_pxm));
    const inner = halfOf(place, view.kit.rodBore_m / 2) * 0.55;
    const top_m = bit_m - view.stem.rods * view.kit.rodLength_m;
    const low = yOf(place, bit_m) - 14;
    const high = yOf(place, top_m) + 4;
    const rows = Math.ceil((bit_m - top_m) / step_m) + 1;
    for (let i = Math.max(0, Math.floor((depthAt(place, 0) - top_m) / step_m) - 1); i < rows; i++) {
      const y = yOf(place, top_m + i * step_m + bore_m);
      if (y - long > place.height_px) break;
      const x = place.hole_x + inner * (2 * scatter(i % 5, 61) - 1);
      const from = Math.max(high, y - long);
      const to = Math.min(low, y);
      if (to - from > 2 && to > 0 && from < place.height_px) pen.moveTo(x, from).lineTo(x, to);
    }
    pen.stroke({ color: scene.look.streak, width: Math.max(1, Math.min(2, inner * 0.4)), alpha: 0.85, cap: 'round' });
  }

  function round(view: CutawayView, scene: Scene, shown_s: number): void {
    const { hole } = view;
    if (!hole || hole.cells === 0) return;
    const { place, bit_m } = scene;
    // What can be seen of the fluid round the stem.
    const reach_m = Math.min(bit_m, hole.depth_m, depthAt(place, place.height_px));
    const high_m = Math.max(hole.level_m, depthAt(place, 0));
    const long_m = reach_m - high_m;
    if (long_m * place.depth_pxm <= 2) return;
    for (let i = 0; i < ROUND; i++) {
      let at_m = seeded
        ? depth_m[i] - hole.up_ms[cellOf(hole, depth_m[i])] * shown_s
        : high_m + long_m * ((i + scatter(i, 63)) / ROUND);
      if (at_m <= high_m) at_m += long_m;
      if (at_m <= high_m || at_m > reach_m) at_m = high_m + long_m * scatter(i, 64);
      depth_m[i] = at_m;
      const wall = halfOf(place, radiusAt(hole, at_m)) - 3;
      const steel = halfOf(place, view.kit.rodOutside_m / 2) + 2;
      if (wall <= steel) continue;
      const side = i % 2 === 0 ? -1 : 1;
      const x = place.hole_x + side * (steel + (wall - steel) * (0.15 + 0.7 * scatter(i, 65)));
      const y = yOf(place, at_m);
      if (y < 0 || y > place.height_px) continue;
      const long = Math.max(5, Math.min(22, hole.up_ms[cellOf(hole, at_m)] * 0.7 * place.depth_pxm));
      pen.moveTo(x, y).lineTo(x, Math.min(y + long, yOf(place, reach_m)));
    }
    seeded = true;
    pen.stroke({ color: scene.look.streak, width: place.compact ? 0.9 : 1.2, alpha: 0.5, cap: 'round' });
  }

  return {
    layer,
    draw() {},
    move(view, scene, shown_s) {
      const flowing = view.pump.flow_m3s > 0 && view.pump.bore_ms > 0;
      if (!flowing && !drawn) return;
      pen.clear();
      drawn = flowing;
      if (!flowing) {
        seeded = false;
        return;
      }
      bore(view, scene, shown_s);
      if (view.returns.share_frac > 0 || (view.hole?.level_m ?? 0) > 0) round(view, scene, shown_s);
    },
  };
}
