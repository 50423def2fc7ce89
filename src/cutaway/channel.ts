// The returns: fluid from the mouth down the channel into the settling chamber, with the grains that it carries.

import { Container, Graphics } from 'pixi.js';
import { DENSER, grainSize_px } from './grainSize';
import { fluidColour } from './palette';
import { createMemory, type Part, type Scene } from './part';
import { pitShape, type PitShape } from './pitShape';
import { scatter } from './scatter';
import type { CutawayView } from './shown';

/** Depth and speed of the sheet of fluid at full returns: some 2 L/s over a channel two hands wide. */
const SHEET_m = 0.05;
const SHEET_ms = 0.25;
const MOST_GRAINS = 60;

export function createChannel(): Part {
  const layer = new Container();
  const sheet = new Graphics();
  const grains = new Graphics();
  layer.addChild(sheet, grains);
  const memory = createMemory(4);
  let run_m = 0;

  function running(view: CutawayView): number {
    return view.pump.flow_m3s > 0 ? Math.min(1, view.returns.share_frac) : 0;
  }

  function drawSheet(view: CutawayView, shape: PitShape, { look, place }: Scene): void {
    const { settling } = shape;
    const colour = fluidColour(look, view.returns.fines_frac, view.pit.polymer_gL, view.returns.colour);
    const deep = SHEET_m * place.bank_pxm * running(view);
    const left = settling.right - settling.slant * 0.2;
    sheet.clear();
    if (deep >= 0.4) {
      sheet
        .poly([
          left - 3,
          Math.max(settling.rim + 1, shape.channelFloorLeft - deep),
          left - 3,
          shape.channelFloorLeft,
          shape.channelRight + 2,
          shape.channelFloorRight,
          shape.channelRight + 2,
          shape.channelFloorRight - deep,
        ])
        .fill(colour);
      sheet
        .moveTo(left - 3, Math.max(settling.rim + 1, shape.channelFloorLeft - deep))
        .lineTo(shape.channelRight, shape.channelFloorRight - deep)
        .stroke({ color: look.streak, width: 1.3, alpha: 0.7 });
      if (settling.fluid > shape.channelFloorLeft + 1) {
        const thick = Math.max(2, deep * 0.8);
        sheet
          .moveTo(left - 2, shape.channelFloorLeft - deep / 2)
          .quadraticCurveTo(left - thick - 4, shape.channelFloorLeft, left - thick - 5, settling.fluid + 2)
          .stroke({ color: colour, width: thick, cap: 'round' });
      }
    }
    // A pit that stands higher than the channel's floor floods it.
    if (settling.fluid < shape.channelFloorLeft - 0.5) {
      const y = settling.fluid;
      const rise = shape.channelFloorLeft - shape.channelFloorRight;
      const reach = Math.min(1, (shape.channelFloorLeft - y) / rise);
      const end = left + (shape.channelRight - left) * reach;
      sheet
        .poly([left - 3, y, left - 3, shape.channelFloorLeft, end, shape.channelFloorLeft - rise * reach, end, y])
        .fill(colour);
    }
  }

  /** Grains by class, as dense as in the hole. */
  function drawGrains(view: CutawayView, scene: Scene): void {
    grains.clear();
    const share = running(view);
    if (share < 0.02) return;
    const { place, look } = scene;
    const shape = pitShape(view, place);
    const left = shape.settling.right;
    const long = shape.channelRight - left;
    const deep = SHEET_m * place.bank_pxm * share;
    if (long < 4 || deep < 1) return;
    const shift = ((run_m * place.bank_pxm) % long) / long;
    let drawn = 0;
    for (let k = 2; k < view.returns.grains_frac.length; k++) {
      const d = grainSize_px(k, view.kit.grain_m[k], place.across_pxm);
      const wanted = (DENSER * view.returns.grains_frac[k] * long * deep) / (0.785 * d * d);
      // Less than one grain is drawn as one for that share of the places it could have.
      const count = Math.floor(wanted + scatter(Math.floor(run_m * 2), k));
      for (let i = 0; i < count && drawn < MOST_GRAINS; i++, drawn++) {
        const at = (scatter(i, 80 + k) - shift + 1) % 1;
        const x = left + at * long;
        const floor = shape.channelFloorLeft + (shape.channelFloorRight - shape.channelFloorLeft) * at;
        const y = floor - d * 0.5 - scatter(i, 90 + k) * Math.max(0, deep - d) * 0.8;
        grains.circle(x, y, d / 2).fill(look.grainFills[(i + k) % look.grainFills.length] ?? look.heap);
        if (d > 2) grains.circle(x, y, d / 2).stroke({ color: look.grainLine, width: 0.7 });
      }
    }
  }

  return {
    layer,
    draw(view, scene) {
      const { settling } = view.pit;
      layer.visible = view.pit.dug;
      const colour = fluidColour(scene.look, view.returns.fines_frac, view.pit.polymer_gL, view.returns.colour);
      if (!memory(Math.round(running(view) * 40), Math.round(settling.level_m * 2000), colour) && !scene.fresh) return;
      drawSheet(view, pitShape(view, scene.place), scene);
    },
    move(view, scene, shown_s) {
      run_m += SHEET_ms * shown_s;
      drawGrains(view, scene);
    },
    thingAt(view, { place }, x, y) {
      if (!view.pit.dug) return null;
      const shape = pitShape(view, place);
      const inside = x > shape.settling.right && x < shape.channelRight && y > place.ground_y - 5;
      return inside && y < shape.channelFloorLeft + 8 ? 'channel' : null;
    },
  };
}
