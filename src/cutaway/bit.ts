// The three-winged drag bit. Its wings turn as the stem turns; under still motion they stand.

import { Container, Graphics } from 'pixi.js';
import { halfOf, yOf, type Place } from './place';
import { createMemory, type Part, type Scene } from './part';
import type { CutawayView } from './shown';

const WINGS = 3;

/** Drawn height of the bit: its true 15 cm, or what can still be seen. */
export function bitHeight_px(place: Place, bit_m: number): number {
  return Math.max(0.15 * place.depth_pxm, halfOf(place, bit_m / 2) * 0.85, 9);
}

export function createBit(): Part {
  const layer = new Container();
  const body = new Graphics();
  layer.addChild(body);
  const memory = createMemory(2);

  function redraw(view: CutawayView, scene: Scene): void {
    const { place, turn_rad } = scene;
    const reach = halfOf(place, view.kit.bit_m / 2);
    const shank = Math.max(3.6, halfOf(place, view.kit.rodOutside_m / 2) * 1.15);
    const tall = bitHeight_px(place, view.kit.bit_m);
    body.clear();
    const turns = Array.from({ length: WINGS }, (_, i) => turn_rad + (2 * Math.PI * i) / WINGS);
    turns.sort((a, b) => Math.sin(a) - Math.sin(b));
    for (const angle of turns) if (Math.sin(angle) <= 0) wing(scene, Math.cos(angle) * reach, tall, shank, false);
    drawShank(scene, shank, tall);
    for (const angle of turns) if (Math.sin(angle) > 0) wing(scene, Math.cos(angle) * reach, tall, shank, true);
  }

  /** One wing from the side: shoulder, gauge, the step, and the pilot that leads the way. Turned away it is narrower. */
  function wing({ look }: Scene, out: number, tall: number, shank: number, near: boolean): void {
    const side = out < 0 ? -1 : 1;
    const root = side * shank * 0.35;
    const gauge = Math.abs(out) < shank * 0.5 ? side * shank * 0.5 : out;
    body
      .poly([
        root,
        -tall * 0.92,
        gauge * 0.62,
        -tall * 0.8,
        gauge,
        -tall * 0.6,
        gauge,
        -tall * 0.3,
        gauge * 0.64,
        -tall * 0.24,
        gauge * 0.56,
        -tall * 0.02,
        root,
        0,
      ])
      .fill(near ? look.steel : look.steelDark)
      .stroke({ color: look.ink, width: 1.1, join: 'round' });
    body
      .moveTo(gauge, -tall * 0.52)
      .lineTo(gauge, -tall * 0.3)
      .lineTo(gauge * 0.64, -tall * 0.24)
      .lineTo(gauge * 0.56, -tall * 0.02)
      .lineTo(root, 0)
      .stroke({ color: near ? look.steelLight : look.steel, width: Math.max(1, tall * 0.045), join: 'round' });
  }

  function drawShank({ look }: Scene, shank: number, tall: number): void {
    body
      .poly([
        -shank,
        -tall * 1.35,
        shank,
        -tall * 1.35,
        shank,
        -tall * 0.5,
        shank * 0.55,
        -tall * 0.12,
        -shank * 0.55,
        -tall * 0.12,
        -shank,
        -tall * 0.5,
      ])
      .fill(look.steelDark)
      .stroke({ color: look.ink, width: 1.1, join: 'round' });
    body.rect(-shank * 0.7, -tall * 1.3, shank * 0.4, tall * 0.8).fill({ color: look.steelLight, alpha: 0.5 });
  }

  return {
    layer,
    draw(_view, scene) {
      if (scene.fresh) memory(Number.NaN, Number.NaN);
    },
    move(view, scene) {
      if (memory(scene.turn_rad, scene.place.across_pxm)) redraw(view, scene);
      layer.position.set(scene.place.hole_x, yOf(scene.place, scene.bit_m));
    },
    thingAt(view, { place, bit_m }, x, y) {
      const reach = Math.max(9, halfOf(place, view.kit.bit_m / 2));
      const bottom = yOf(place, bit_m);
      const tall = Math.max(14, bitHeight_px(place, view.kit.bit_m) * 1.2);
      return Math.abs(x - place.hole_x) <= reach && y <= bottom + 3 && y >= bottom - tall ? 'bit' : null;
    },
  };
}
