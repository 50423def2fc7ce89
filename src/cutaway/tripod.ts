// Tripod, pulley, rope and winch: the rope carries the stem. The winch's crank stands where the paid-out rope has it.

import { Container, Graphics } from 'pixi.js';
import { gearShape, winchHandle } from './gear';
import { createMemory, type Part, type Scene } from './part';
import type { CutawayView } from './shown';

export function createTripod(): Part {
  const layer = new Container();
  const legs = new Graphics();
  const rope = new Graphics();
  layer.addChild(legs, rope);
  const memory = createMemory(3);

  function drawLegs(view: CutawayView, { place, look, bit_m }: Scene): void {
    const gear = gearShape(view, place, bit_m);
    const u = place.gear_px;
    const thick = Math.max(3, 6 * u);
    legs.clear();
    const pole = (x: number, y: number, width: number, dark: boolean): void => {
      const from = gear.apex_y - 5 * u;
      const lean = (place.hole_x - x) * 0.03;
      for (const [w, color] of [
        [width + 1.8, look.ink],
        [width, dark ? look.woodDark : look.wood],
      ] as const) {
        legs
          .moveTo(place.hole_x + lean, from)
          .lineTo(x, y)
          .stroke({ width: w, color, cap: 'round' });
      }
    };
    pole(place.hole_x + (gear.legRight_x - place.hole_x) * 0.3, place.ground_y - 7 * u, thick * 0.8, true);
    pole(gear.legLeft_x, place.ground_y + 1, thick, false);
    pole(gear.legRight_x, place.ground_y + 1, thick, false);
    // Lashing.
    legs
      .roundRect(place.hole_x - 6 * u, gear.apex_y - 3 * u, 12 * u, 7 * u, 2 * u)
      .fill(look.rope)
      .stroke({ color: look.ink, width: 1 });
    // Pulley block.
    legs
      .circle(place.hole_x, gear.apex_y + 10 * u, 5.5 * u)
      .fill(look.steel)
      .stroke({ color: look.ink, width: 1.2 });
    legs.circle(place.hole_x, gear.apex_y + 10 * u, 1.6 * u).fill(look.ink);
  }

  function drawRope(view: CutawayView, { place, look, bit_m }: Scene): void {
    const gear = gearShape(view, place, bit_m);
    const u = place.gear_px;
    const wide = Math.max(1.3, 2 * u);
    rope.clear();
    const pulleyLeft = place.hole_x - 1.5 * u;
    const pulleyRight = place.hole_x + 5.5 * u;
    // Taut when it carries the stem; the more weight the crew lets on the bit, the slacker it hangs.
    const slack = view.stem.feed_frac * 9 * u;
    rope
      .moveTo(pulleyLeft, gear.apex_y + 12 * u)
      .quadraticCurveTo(pulleyLeft + slack, (gear.apex_y + gear.hook_y) / 2, place.hole_x, gear.hook_y)
      .stroke({ color: look.ink, width: wide });
    rope
      .moveTo(pulleyRight, gear.apex_y + 10 * u)
      .quadraticCurveTo(
        (pulleyRight + gear.winch_x) / 2 - slack * 0.6,
        (gear.apex_y + gear.winch_y) / 2 + slack,
        gear.winch_x - 4 * u,
        gear.winch_y,
      )
      .stroke({ color: look.ink, width: wide });
    // Drum and crank.
    rope
      .circle(gear.winch_x, gear.winch_y, 8 * u)
      .fill(look.rope)
      .stroke({ color: look.ink, width: 1.3 });
    rope.circle(gear.winch_x, gear.winch_y, 4.5 * u).stroke({ color: look.ink, width: 0.8 });
    const [cx, cy] = winchHandle(view, place, bit_m);
    rope
      .moveTo(gear.winch_x, gear.winch_y)
      .lineTo(cx, cy)
      .stroke({ color: look.steelDark, width: Math.max(1.6, 2.6 * u), cap: 'round' });
    rope
      .circle(cx, cy, 2.6 * u)
      .fill(look.wood)
      .stroke({ color: look.ink, width: 1 });
  }

  return {
    layer,
    draw(view, scene) {
      if (!scene.fresh) return;
      memory(Number.NaN, 0, 0);
      drawLegs(view, scene);
    },
    move(view, scene) {
      layer.visible = !view.well?.head;
      const hung_m = view.stem.out ? (view.well?.casing?.top_m ?? -1) : scene.bit_m;
      if (memory(hung_m, view.stem.rods, view.stem.feed_frac)) drawRope(view, scene);
    },
    thingAt(view, { place, bit_m }, x, y) {
      if (view.well?.head) return null;
      const gear = gearShape(view, place, bit_m);
      const u = place.gear_px;
      if (Math.hypot(x - gear.winch_x, y - gear.winch_y) < Math.max(12, 16 * u)) return 'winch';
      if (Math.abs(x - place.hole_x) < 6 && y > gear.apex_y && y < gear.hook_y) return 'rope';
      if (y < gear.apex_y - 8 || y > place.ground_y) return null;
      const share = (y - gear.apex_y) / Math.max(1, place.ground_y - gear.apex_y);
      const left = place.hole_x + (gear.legLeft_x - place.hole_x) * share;
      const right = place.hole_x + (gear.legRight_x - place.hole_x) * share;
      return Math.abs(x - left) < 7 || Math.abs(x - right) < 7 ? 'tripod' : null;
    },
  };
}
