// What stands in the annulus: pack as grains, seals as their own stuff, ground that has come in; and what is on its way down.

import { Container, Graphics } from 'pixi.js';
import { depthAt, yOf } from './place';
import { createMemory, type Part, type Scene } from './part';
import { scatter } from './scatter';
import type { CutawayView, ShownAnnulus } from './shown';
import { bandsOf, pipeHalf_px, voidsOf, wallHalf_px, type Band } from './wellShape';

const MOST_GRAINS = 900;
const MOST_FALLING = 90;
/** Speed of what falls, for the eye only; its place by cell is the state's. */
const FALL_ms = 0.12;
const LEAST_GRAIN_px = 2.2;
/** Part of a band's area that its grains are drawn on. */
const COVER_frac = 0.5;

export function createFill(): Part {
  const layer = new Container();
  const ground = new Graphics();
  const grains = new Graphics();
  const falling = new Graphics();
  layer.addChild(ground, grains, falling);
  const memory = createMemory(3);
  let fallen_m = 0;

  /** Outline of a band on one side, or right across below the pipe. */
  function outline(view: CutawayView, { place }: Scene, from_m: number, to_m: number, side: -1 | 0 | 1): number[] {
    const casing = view.well!.casing!;
    const { out } = pipeHalf_px(place, casing);
    const steps = Math.max(1, Math.ceil((to_m - from_m) / 0.125));
    const points: number[] = [];
    const first = side === 0 ? -1 : side;
    for (let i = 0; i <= steps; i++) {
      const at_m = from_m + ((to_m - from_m) * i) / steps;
      points.push(place.hole_x + first * wallHalf_px(view, place, at_m), Math.round(yOf(place, at_m)));
    }
    for (let i = steps; i >= 0; i--) {
      const at_m = from_m + ((to_m - from_m) * i) / steps;
      const x = side === 0 ? place.hole_x + wallHalf_px(view, place, at_m) : place.hole_x + side * out;
      points.push(x, Math.round(yOf(place, at_m)));
    }
    return points;
  }

  /** The band above the pipe's end on both sides of it, and what of it lies below right across. */
  function fillBand(pen: Graphics, view: CutawayView, scene: Scene, band: Band, colour: string): void {
    const { shoe_m } = view.well!.casing!;
    const cased_m = Math.min(band.to_m, shoe_m);
    if (cased_m > band.from_m) {
      for (const side of [-1, 1] as const)
        pen
          .poly(outline(view, scene, band.from_m, cased_m, side))
          .fill(colour)
          .stroke({ color: scene.look.ink, width: 1, alpha: 0.7 });
    }
    if (band.to_m > Math.max(band.from_m, shoe_m))
      pen
        .poly(outline(view, scene, Math.max(band.from_m, shoe_m), band.to_m, 0))
        .fill(colour)
        .stroke({ color: scene.look.ink, width: 1, alpha: 0.7 });
  }

  function drawGrains(view: CutawayView, scene: Scene, annulus: ShownAnnulus, band: Band, left: number): number {
    const { place, look } = scene;
    const casing = view.well!.casing!;
    const { out } = pipeHalf_px(place, casing);
    const d = Math.max(LEAST_GRAIN_px, annulus.grain_m[band.fill]! * place.across_pxm);
    const middle_m = (band.from_m + band.to_m) / 2;
    const gap = Math.max(1, wallHalf_px(view, place, middle_m) - (middle_m > casing.shoe_m ? 0 : out));
    const area = 2 * gap * (band.to_m - band.from_m) * place.depth_pxm;
    const all = Math.max(1, Math.round((COVER_frac * area) / (d * d)));
    // Only those in the picture; where there are too many, every second, third ... of them.
    const row_m = (band.to_m - band.from_m) / all;
    const first = Math.max(0, Math.floor((depthAt(place, 0) - band.from_m) / row_m) - 1);
    const end = Math.min(all, Math.ceil((depthAt(place, place.height_px) - band.from_m) / row_m));
    const step = Math.max(1, Math.ceil((end - first) / Math.max(1, left)));
    let count = 0;
    for (let g = Math.ceil(first / step) * step; g < end && count < left; g += step) {
      count++;
      const at_m = band.from_m + (band.to_m - band.from_m) * ((g + scatter(g, 201)) / all);
      const inner = at_m > casing.shoe_m ? 0 : out + d * 0.5;
      const wall = wallHalf_px(view, place, at_m) - d * 0.5;
      if (wall <= inner) continue;
      const off = inner + (wall - inner) * scatter(g, 202);
      const x = place.hole_x + (scatter(g, 203) < 0.5 ? -1 : 1) * off;
      grains.circle(x, yOf(place, at_m), d / 2).fill(look.packGrains[g % look.packGrains.length]!);
      if (d > 2.6) grains.circle(x, yOf(place, at_m), d / 2).stroke({ color: look.grainLine, width: 0.7, alpha: 0.7 });
    }
    return left - count;
  }

  /** Lumps and strokes that tell the seals apart without their colour. */
  function drawMarks(view: CutawayView, { place, look }: Scene, band: Band, name: string): void {
    const casing = view.well!.casing!;
    const { out } = pipeHalf_px(place, casing);
    const top = yOf(place, band.from_m);
    const bottom = yOf(place, band.to_m);
    const step = name === 'cement' ? 4 : 7;
    for (let row = Math.max(0, Math.floor(-top / step)); row * step < Math.min(bottom, place.height_px) - top; row++) {
      const y = top + (row + 0.5) * step;
      if (y >= bottom) break;
      const at_m = (y - place.ground_y) / place.depth_pxm;
      const wall = wallHalf_px(view, place, at_m);
      for (const side of [-1, 1]) {
        const near = place.hole_x + side * (at_m > casing.shoe_m ? 1 : out + 1);
        const far = place.hole_x + side * (wall - 1);
        if (name === 'cement') grains.circle(near + (far - near) * scatter(row, side + 3), y, 0.9);
        else if (name === 'ground' || name === 'cuttings')
          grains.circle(near + (far - near) * scatter(row, side + 5), y, 1.3);
        else grains.moveTo(near, y).lineTo(far, y + (name === 'clay' ? 0 : row % 2 === 0 ? 3 : -3));
      }
    }
    if (name === 'cement' || name === 'ground' || name === 'cuttings') grains.fill({ color: look.ink, alpha: 0.8 });
    else grains.stroke({ color: look.paper, width: 1.2, alpha: 0.75 });
  }

  /** Cement that has run into the pores of what stands under it. */
  function drawClogged(view: CutawayView, scene: Scene, annulus: ShownAnnulus): void {
    for (let i = 0; i < annulus.cells; i++) {
      if (annulus.clogged_frac[i]! < 0.05) continue;
      for (const side of [-1, 1] as const)
        grains
          .poly(outline(view, scene, i * annulus.dz_m, (i + 1) * annulus.dz_m, side))
          .fill({ color: scene.look.fills['cement']!, alpha: Math.min(0.85, 0.25 + annulus.clogged_frac[i]!) });
    }
  }

  function redraw(view: CutawayView, scene: Scene, annulus: ShownAnnulus): void {
    ground.clear();
    grains.clear();
    let left = MOST_GRAINS;
    const bands = bandsOf(annulus);
    for (const band of bands) {
      const name = annulus.fills[band.fill]!;
      fillBand(ground, view, scene, band, scene.look.fills[name] ?? scene.look.fills['pack']!);
      if (annulus.grain_m[band.fill]! > 0) left = drawGrains(view, scene, annulus, band, left);
      else drawMarks(view, scene, band, name);
    }
    drawClogged(view, scene, annulus);
    drawVoids(view, scene, annulus, bands);
  }

  /** Where a bridge holds the fill up, nothing stands below: the bridge as a line, as it would be felt by the rod. */
  function drawVoids(view: CutawayView, { place, look }: Scene, annulus: ShownAnnulus, bands: readonly Band[]): void {
    const casing = view.well!.casing!;
    const { out } = pipeHalf_px(place, casing);
    for (const [from_m] of voidsOf(annulus, bands)) {
      const wall = wallHalf_px(view, place, from_m);
      const y = yOf(place, from_m);
      for (const side of [-1, 1])
        ground
          .moveTo(place.hole_x + side * out, y)
          .quadraticCurveTo(place.hole_x + (side * (out + wall)) / 2, y - 5, place.hole_x + side * wall, y);
    }
    ground.stroke({ color: look.accent, width: 2.4 });
  }

  /** What is on its way down, more of it where more is. */
  function drawFalling(view: CutawayView, { place, look }: Scene, annulus: ShownAnnulus): void {
    falling.clear();
    const casing = view.well!.casing!;
    const { out } = pipeHalf_px(place, casing);
    let left = MOST_FALLING;
    for (let f = 0; f < annulus.fills.length; f++) {
      const grain_m = annulus.grain_m[f]!;
      const d = Math.max(LEAST_GRAIN_px, (grain_m > 0 ? grain_m : 0.004) * place.across_pxm);
      const colour = grain_m > 0 ? look.packGrains[0]! : (look.fills[annulus.fills[f]!] ?? look.heap);
      for (let i = 0; i < annulus.cells && left > 0; i++) {
        const share = annulus.falling_frac[f * annulus.stride + i]!;
        if (share < 1e-4) continue;
        const count = Math.min(left, 1 + Math.round(share * 40));
        left -= count;
        for (let g = 0; g < count; g++) {
          const mark = i * 61 + g;
          const part = (scatter(mark, 221) + fallen_m / annulus.dz_m) % 1;
          const at_m = (i + part) * annulus.dz_m;
          const inner = at_m > casing.shoe_m ? 0 : out + d / 2;
          const wall = Math.max(inner, wallHalf_px(view, place, at_m) - d / 2);
          const x = place.hole_x + (g % 2 === 0 ? -1 : 1) * (inner + (wall - inner) * scatter(mark, 222));
          falling
            .circle(x, yOf(place, at_m), d / 2)
            .fill(colour)
            .stroke({ color: look.grainLine, width: 0.8 });
        }
      }
    }
  }

  const standing = (view: CutawayView): ShownAnnulus | null =>
    view.well?.casing && view.hole ? view.well.annulus : null;

  return {
    layer,
    draw(view, scene) {
      const annulus = standing(view);
      layer.visible = annulus !== null;
      if (!annulus) return;
      let sum = 0;
      for (let f = 0; f < annulus.fills.length; f++)
        for (let i = 0; i < annulus.cells; i++)
          sum += annulus.rest_frac[f * annulus.stride + i]! * (1 + f * 7 + i * 0.01);
      let clogged = 0;
      for (let i = 0; i < annulus.cells; i++) clogged += annulus.clogged_frac[i]!;
      if (memory(Math.round(sum * 2000), Math.round(clogged * 100), view.well!.casing!.shoe_m) || scene.fresh)
        redraw(view, scene, annulus);
      drawFalling(view, scene, annulus);
    },
    move(view, scene, shown_s) {
      const annulus = standing(view);
      if (!annulus || shown_s <= 0) return;
      fallen_m = (fallen_m + FALL_ms * shown_s) % annulus.dz_m;
      drawFalling(view, scene, annulus);
    },
    thingAt(view, { place }, x, y) {
      const annulus = standing(view);
      if (!annulus || y < place.ground_y) return null;
      const at_m = (y - place.ground_y) / place.depth_pxm;
      if (Math.abs(x - place.hole_x) > wallHalf_px(view, place, at_m) + 2) return null;
      const bands = bandsOf(annulus);
      const band = bands.find((one) => at_m >= one.from_m && at_m < one.to_m);
      if (!band) return voidsOf(annulus, bands).some(([from_m, to_m]) => at_m >= from_m && at_m < to_m) ? 'void' : null;
      if (annulus.grain_m[band.fill]! > 0) return 'pack';
      return annulus.fills[band.fill] === 'ground' ? 'cavedIn' : 'seal';
    },
  };
}
