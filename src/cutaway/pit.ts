// The two-chamber pit: real levels, colour of the fluid, sand heap and floor, strainer at its true height, stick gauge.

import { Container, Graphics } from 'pixi.js';
import { DENSER } from './grainSize';
import { drawGrass } from './grass';
import { fluidColour, type Palette } from './palette';
import { createMemory, type Part, type Scene } from './part';
import { pitShape, wallX, type ChamberShape, type PitShape } from './pitShape';
import { scatter } from './scatter';
import type { CutawayView, ShownChamber } from './shown';

export function createPit(): Part {
  const layer = new Container();
  const pen = new Graphics();
  layer.addChild(pen);
  const memory = createMemory(12);

  return {
    layer,
    draw(view, scene) {
      const { pit } = view;
      layer.visible = pit.dug;
      const changed = memory(
        Math.round(pit.settling.level_m * 2000),
        Math.round(pit.suction.level_m * 2000),
        Math.round(pit.settling.deposit_m * 2000),
        Math.round(pit.suction.deposit_m * 2000),
        fluidColour(scene.look, pit.settling.fines_frac, pit.polymer_gL, view.returns.colour),
        fluidColour(scene.look, pit.suction.fines_frac, pit.polymer_gL, view.returns.colour),
        pit.strainer_m,
        Math.round(pit.strainerBlocked_frac * 40),
        Math.round(pit.settling.sand_frac * 20000),
        Math.round(pit.suction.sand_frac * 20000),
      );
      if (!changed && !scene.fresh) return;
      pen.clear();
      const shape = pitShape(view, scene.place);
      drawCut(pen, shape, scene);
      drawFluid(pen, view, shape, scene);
      drawHeap(pen, shape.settling, pit.settling, scene, true);
      drawHeap(pen, shape.suction, pit.suction, scene, false);
      drawSand(pen, shape.settling, pit.settling, scene, 31);
      drawSand(pen, shape.suction, pit.suction, scene, 57);
      drawWalls(pen, shape, scene);
      drawStick(pen, shape.suction, scene);
      drawStrainer(pen, shape, pit.strainerBlocked_frac, scene);
      drawGrass(pen, shape, pit.strainerBlocked_frac, scene);
    },
    thingAt(view, { place }, x, y) {
      if (!view.pit.dug) return null;
      const shape = pitShape(view, place);
      const near = Math.max(9, 0.12 * place.bank_pxm);
      if (Math.abs(x - shape.strainer_x) < near && Math.abs(y - shape.strainer_y) < near) return 'strainer';
      if (y < place.ground_y - 4 || y > Math.max(shape.settling.floor, shape.suction.floor) + 4) return null;
      if (x >= shape.suction.left && x <= shape.suction.right) return 'suction';
      if (x >= shape.settling.left && x <= shape.settling.right) {
        return y > shape.settling.deposit && view.pit.settling.deposit_m > 0.005 ? 'heap' : 'settling';
      }
      return null;
    },
  };
}

function chamberPath(shape: ChamberShape, top: number): number[] {
  return [
    wallX(shape, top, -1),
    top,
    wallX(shape, shape.floor, -1),
    shape.floor,
    wallX(shape, shape.floor, 1),
    shape.floor,
    wallX(shape, top, 1),
    top,
  ];
}

/** The empty cut: both chambers, the notch and the channel up to the hole. */
function drawCut(pen: Graphics, shape: PitShape, { look }: Scene): void {
  const { settling, suction } = shape;
  pen.poly(chamberPath(settling, settling.rim)).fill(look.cut);
  pen.poly(chamberPath(suction, suction.rim)).fill(look.cut);
  pen
    .poly([
      suction.right - 2,
      suction.rim,
      suction.right - 2,
      shape.notch,
      settling.left + 2,
      shape.notch,
      settling.left + 2,
      suction.rim,
    ])
    .fill(look.cut);
  pen
    .poly([
      settling.right - 1,
      settling.rim,
      settling.right - settling.slant * 0.2,
      shape.channelFloorLeft,
      shape.channelRight + 1,
      shape.channelFloorRight,
      shape.channelRight + 1,
      settling.rim,
    ])
    .fill(look.cut);
}

function drawFluid(pen: Graphics, view: CutawayView, shape: PitShape, { look }: Scene): void {
  const { pit, returns } = view;
  const colour = (chamber: ShownChamber): number =>
    fluidColour(look, chamber.fines_frac, pit.polymer_gL, returns.colour);
  for (const [box, chamber] of [
    [shape.settling, pit.settling],
    [shape.suction, pit.suction],
  ] as const) {
    if (box.floor - box.fluid < 0.5) continue;
    pen.poly(chamberPath(box, box.fluid)).fill(colour(chamber));
  }
  // Over the notch the fluid of both chambers is one sheet.
  const sheet = Math.max(shape.settling.fluid, shape.suction.fluid);
  if (sheet < shape.notch) {
    pen
      .poly([
        wallX(shape.suction, shape.suction.fluid, 1) - 1,
        shape.suction.fluid,
        shape.suction.right - shape.suction.slant * 0.1,
        shape.notch,
        shape.settling.left + shape.settling.slant * 0.1,
        shape.notch,
        wallX(shape.settling, shape.settling.fluid, -1) + 1,
        shape.settling.fluid,
      ])
      .fill(colour(pit.suction));
  }
  for (const box of [shape.settling, shape.suction]) {
    if (box.floor - box.fluid < 1) continue;
    pen
      .moveTo(wallX(box, box.fluid, -1), box.fluid)
      .lineTo(wallX(box, box.fluid, 1), box.fluid)
      .stroke({ color: look.streak, width: 1.6, alpha: 0.75 });
  }
}

/** Mean height is the state's; the sand lies highest where it comes in, under the channel. */
function heapTop(box: ChamberShape, share: number, inlet: boolean): number {
  const mean = box.floor - box.deposit;
  const factor = inlet ? 0.3 + 1.4 * share * share * (3 - 2 * share) : 0.9 + 0.2 * scatter(Math.round(share * 12), 5);
  return Math.max(box.rim, box.floor - mean * factor);
}

function drawHeap(pen: Graphics, box: ChamberShape, chamber: ShownChamber, { look }: Scene, inlet: boolean): void {
  if (chamber.deposit_m < 0.002) return;
  const points: number[] = [wallX(box, box.floor, 1), box.floor, wallX(box, box.floor, -1), box.floor];
  const steps = 12;
  for (let i = 0; i <= steps; i++) {
    const y = heapTop(box, i / steps, inlet);
    const left = wallX(box, y, -1);
    points.push(left + ((wallX(box, y, 1) - left) * i) / steps, y);
  }
  pen.poly(points).fill(look.heap).stroke({ color: look.ink, width: 1, alpha: 0.7 });
  const count = Math.min(160, Math.round(((box.right - box.left) * (box.floor - box.deposit)) / 26));
  for (let i = 0; i < count; i++) {
    const s = scatter(i, inlet ? 21 : 22);
    const top = heapTop(box, s, inlet) + 2;
    if (top > box.floor - 3) continue;
    const y = top + (box.floor - 2 - top) * scatter(i, 23);
    const left = wallX(box, y, -1) + 2;
    pen
      .circle(left + (wallX(box, y, 1) - 4 - left) * s, y, 0.5 + 0.7 * scatter(i, 24))
      .fill({ color: look.grainLine, alpha: 0.6 });
  }
}

/** Sand still in suspension, as dense as in the hole. */
function drawSand(pen: Graphics, box: ChamberShape, chamber: ShownChamber, { look }: Scene, row: number): void {
  const area_px = (box.right - box.left) * Math.max(0, box.deposit - box.fluid);
  const r = 0.9;
  const count = Math.min(240, Math.round((DENSER * area_px * chamber.sand_frac) / (Math.PI * r * r)));
  for (let i = 0; i < count; i++) {
    const y = box.fluid + 3 + (box.deposit - box.fluid - 5) * scatter(i, row);
    const left = wallX(box, y, -1) + 3;
    pen.circle(left + (wallX(box, y, 1) - 6 - left) * scatter(i, row + 1), y, r).fill(grainFill(look, i));
  }
}

const grainFill = (look: Palette, i: number): string => look.grainFills[i % look.grainFills.length] ?? look.heap;

function drawWalls(pen: Graphics, shape: PitShape, { look }: Scene): void {
  const { settling, suction, notch } = shape;
  const line = { color: look.ink, width: look.line_px, join: 'round' as const, cap: 'round' as const };
  pen
    .moveTo(suction.left - suction.slant, suction.rim)
    .lineTo(wallX(suction, suction.floor, -1), suction.floor)
    .lineTo(wallX(suction, suction.floor, 1), suction.floor)
    .lineTo(wallX(suction, notch, 1), notch)
    .lineTo(wallX(settling, notch, -1), notch)
    .lineTo(wallX(settling, settling.floor, -1), settling.floor)
    .lineTo(wallX(settling, settling.floor, 1), settling.floor)
    .lineTo(wallX(settling, shape.channelFloorLeft, 1), shape.channelFloorLeft)
    .lineTo(shape.channelRight, shape.channelFloorRight)
    .stroke(line);
}

/** A stick with a mark every 10 cm, standing in the suction chamber. */
function drawStick(pen: Graphics, box: ChamberShape, { look, place }: Scene): void {
  const width = Math.max(3.5, 0.055 * place.bank_pxm);
  const x = box.left + (box.right - box.left) * 0.8;
  const top = box.rim - 0.22 * place.bank_pxm;
  pen
    .rect(x, top, width, box.floor - top)
    .fill(look.notLogged)
    .stroke({ color: look.ink, width: 1 });
  const step = 0.1 * place.bank_pxm;
  for (let i = 0; top + 4 + i * step < box.floor - 2; i++) {
    const y = top + 4 + i * step;
    pen.moveTo(x, y).lineTo(x + width * (i % 5 === 0 ? 1 : 0.5), y);
  }
  pen.stroke({ color: look.ink, width: 1 });
}

function drawStrainer(pen: Graphics, shape: PitShape, blocked_frac: number, { look, place }: Scene): void {
  const w = Math.max(8, 0.14 * place.bank_pxm);
  const h = Math.max(9, 0.17 * place.bank_pxm);
  const x = shape.strainer_x - w / 2;
  const y = shape.strainer_y - h;
  pen
    .roundRect(x, y, w, h, w * 0.18)
    .fill(look.steelLight)
    .stroke({ color: look.ink, width: 1.2 });
  const rows = 4;
  for (let r = 1; r < rows; r++) pen.moveTo(x + 1, y + (h * r) / rows).lineTo(x + w - 1, y + (h * r) / rows);
  for (let c = 1; c < 3; c++) pen.moveTo(x + (w * c) / 3, y + 1).lineTo(x + (w * c) / 3, y + h - 1);
  pen.stroke({ color: look.ink, width: 0.8 });
  // What sits on the strainer covers as much of it as is blocked.
  const clogs = Math.round(26 * blocked_frac);
  for (let i = 0; i < clogs; i++) {
    pen.circle(x + w * scatter(i, 41), y + h * scatter(i, 42), w * 0.1).fill(look.mud['brown'] ?? look.heap);
  }
}
