// Grains in the fluid, by class and size. Their number comes from the state, their motion from its speeds (drift.ts).

import { Container, Sprite } from 'pixi.js';
import { acrossOf_px, advance, createDrift, reconcile } from './drift';
import { grainSize_px } from './grainSize';
import { depthAt, yOf } from './place';
import type { Part, Scene } from './part';
import type { CutawayView } from './shown';
import { SPECK_PX, STONE_FROM_px, STONE_PX } from './textures';

const ROOM = 700;
const ROOM_SMALL = 380;
/** Grains of the whole hole, or with a lens those of the stretch that it shows. */
export function createGrains(): Part {
  const layer = new Container();
  const wide = createDrift(ROOM);
  const narrow = createDrift(ROOM_SMALL);
  let drift = wide;
  const sprites: Sprite[] = [];

  function place(view: CutawayView, scene: Scene): void {
    const { hole } = view;
    const count = hole ? drift.count : 0;
    for (let g = 0; g < count && hole; g++) {
      let sprite = sprites[g];
      if (!sprite) {
        sprite = new Sprite({ anchor: 0.5 });
        sprites.push(sprite);
        layer.addChild(sprite);
      }
      const k = drift.sizeClass[g];
      const mark = drift.mark[g];
      const size = grainSize_px(k, view.kit.grain_m[k], scene.place.across_pxm);
      const { stones, specks } = scene.textures;
      const stone = size >= STONE_FROM_px;
      const texture = stone ? stones[mark % stones.length] : specks[mark % specks.length];
      if (texture && sprite.texture !== texture) sprite.texture = texture;
      sprite.scale.set(stone ? size / (STONE_PX * 0.88) : size / SPECK_PX);
      sprite.rotation = stone ? mark : 0;
      sprite.position.set(
        scene.place.hole_x + acrossOf_px(drift, g, view, hole, size, scene.place.across_pxm),
        yOf(scene.place, drift.depth_m[g]),
      );
      sprite.visible = true;
    }
    for (let g = count; g < sprites.length; g++) {
      const sprite = sprites[g];
      if (sprite) sprite.visible = false;
    }
  }

  return {
    layer,
    draw(view, scene) {
      layer.visible = view.hole !== null;
      const chosen = scene.place.compact ? narrow : wide;
      if (chosen !== drift) {
        drift.count = 0;
        drift = chosen;
      }
      drift.from_m = scene.inLens ? Math.max(0, depthAt(scene.place, 0)) : 0;
      drift.to_m = scene.inLens ? depthAt(scene.place, scene.place.height_px) : Infinity;
      reconcile(drift, view, scene.place.depth_pxm, scene.place.across_pxm);
    },
    move(view, scene, shown_s) {
      if (shown_s > 0) advance(drift, view, shown_s);
      place(view, scene);
    },
  };
}
