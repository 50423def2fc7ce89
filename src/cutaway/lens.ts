// The hand lens: a round picture laid on the drawing that shows the bit, later the screen, close and in its true shape. It
// is drawn by the same parts from the same view, so it shows no more than the view level allows.

import { Container, Graphics } from 'pixi.js';
import { say } from '../words';
import { createBed } from './bed';
import { createBit } from './bit';
import { createCake } from './cake';
import { createCasing } from './casing';
import { describe, describeLayer, type Description } from './describe';
import { createFalling } from './falling';
import { createFill } from './fill';
import { createGrains } from './grains';
import { createGround } from './ground';
import { createHole } from './hole';
import { createInflow } from './inflow';
import { createJets } from './jets';
import { createLabels, type Labels } from './labels';
import { createLayers } from './layers';
import { lensAim, lensMark, lensPlace, lensSpot, lensTimes, type LensPower, type LensSpot } from './lensPlace';
import { createNominal } from './nominal';
import { createOpened } from './opened';
import { createMemory, type LensFacts, type Part, type Scene } from './part';
import { depthAt, yOf } from './place';
import { createSeep } from './seep';
import type { CutawayView } from './shown';
import { createStem } from './stem';
import { createStreaks } from './streaks';

export interface Lens {
  readonly root: Container;
  /** Its own words, on top of it. */
  readonly labels: Labels;
  hold(power: LensPower): void;
  /** Sets scene.lens, before anything is drawn. slower: how many times slower things are shown at a depth scale. */
  aim(view: CutawayView, scene: Scene, slower: (depth_pxm: number) => number): void;
  draw(view: CutawayView, scene: Scene, anew: boolean): void;
  move(view: CutawayView, scene: Scene, shown_s: number): void;
  at(view: CutawayView, scene: Scene, x: number, y: number): Description | null;
}

/** No words in the lens. */
const SILENT: Omit<Labels, 'layer'> = { dress() {}, open() {}, put: () => 0, close() {} };

const BARS_m = [0.05, 0.02, 0.01, 0.005, 0.002];
const RIM_px = 4;

export function createLens(resolution: number): Lens {
  const ofStem: Part[] = [createJets(), createStem(), createBit()];
  const [jets, stem, bit] = ofStem as [Part, Part, Part];
  const parts: Part[] = [
    createGround(),
    createLayers(),
    createOpened(),
    createNominal(),
    createSeep(),
    createHole(),
    createCake(),
    createBed(),
    jets,
    createGrains(),
    createFalling(),
    createFill(),
    createCasing(),
    createInflow(),
    stem,
    createStreaks(),
    bit,
  ];
  const root = new Container();
  const mark = new Graphics();
  const glass = new Container();
  const back = new Graphics();
  const inner = new Container();
  const round = new Graphics();
  const rim = new Graphics();
  for (const part of parts) inner.addChild(part.layer);
  const labels = createLabels(resolution);
  glass.addChild(back, inner, round, rim);
  inner.mask = round;
  root.addChild(mark, glass, labels.layer);
  root.visible = false;

  const shapeMemory = createMemory(6);
  const markMemory = createMemory(6);
  const facts: LensFacts = { times: 1, across_m: 1, slower: 1, at: 'bit', close: false, top_px: 0 };
  let power: LensPower = 0;
  let spot: LensSpot = { x: 0, y: 0, diameter_px: 1 };
  let anchor_m = Number.NaN;
  let seen: Scene | null = null;

  function dressGlass({ look, place }: Scene): void {
    const r = spot.diameter_px / 2;
    glass.position.set(spot.x - r, spot.y - r);
    back.clear().circle(r, r, r).fill(look.skyLow);
    round.clear().circle(r, r, r).fill(0xffffff);
    rim.clear();
    rim.circle(r, r, r).stroke({ color: look.ink, width: RIM_px + 2.4 });
    rim.circle(r, r, r).stroke({ color: look.steelLight, width: RIM_px });
    // A bar of a known length: the longest that fits well.
    const pxm = place.depth_pxm * facts.times;
    const bar_m = BARS_m.find((one) => one * pxm <= spot.diameter_px * 0.42) ?? 0.001;
    const bar = bar_m * pxm;
    const y = spot.diameter_px * 0.9;
    const plate = Math.max(bar + 10, place.text_px * 3.4);
    rim
      .roundRect(r - plate / 2, y - place.text_px * 1.25, plate, place.text_px * 1.25 + 5, 3)
      .fill({ color: look.paper, alpha: 0.92 });
    rim
      .moveTo(r - bar / 2, y - 3)
      .lineTo(r - bar / 2, y + 1)
      .lineTo(r + bar / 2, y + 1)
      .lineTo(r + bar / 2, y - 3)
      .stroke({ color: look.ink, width: 1.6 });
    labels.open('lens');
    labels.put('bar', say('cutaway.lensBar', { cm: bar_m * 100 }), spot.x, spot.y - r + y - place.text_px * 0.6, {
      ax: 0.5,
      size: 0.92,
    });
    labels.close();
  }

  /** An outline round what the lens shows, and a line from it to the lens. */
  function drawMark(view: CutawayView, { place, look, bit_m }: Scene): void {
    const [x, y, rx, ry] = lensMark(place, lensAim(view, bit_m, facts.close), facts.across_m);
    // Looked at closely the bit is plain to see: no outline is wanted.
    mark.visible = place.zoom === 1;
    if (!mark.visible || !markMemory(x, y, rx, ry, spot.x, spot.y)) return;
    mark.clear();
    const dx = spot.x - (x - rx);
    const dy = spot.y - y;
    const long = Math.max(1, Math.hypot(dx, dy));
    const reach = long - spot.diameter_px / 2;
    for (const [width, color] of [
      [3.4, look.paper],
      [1.6, look.accent],
    ] as const) {
      mark.ellipse(x, y, rx, ry).stroke({ color, width });
      if (reach > 4) {
        mark
          .moveTo(x - rx, y)
          .lineTo(x - rx + (dx * reach) / long, y + (dy * reach) / long)
          .stroke({ color, width });
      }
    }
  }

  /** Sets what is drawn so that what the lens is held to stands in its middle; true when it has to be drawn anew. */
  function follow(view: CutawayView, scene: Scene): boolean {
    if (!seen) return false;
    const { depth_m, off_m } = lensAim(view, scene.bit_m, facts.close);
    const pxm = scene.place.depth_pxm * facts.times;
    const room_px = (seen.place.height_px - spot.diameter_px) / 2;
    let moved = false;
    if (!(Math.abs(depth_m - anchor_m) * pxm < room_px)) {
      anchor_m = depth_m;
      seen.place = lensPlace(scene.place, spot.diameter_px, facts.times, anchor_m, off_m);
      moved = true;
    }
    inner.position.set(0, Math.round(spot.diameter_px / 2 - yOf(seen.place, depth_m)));
    seen.bit_m = scene.bit_m;
    seen.turn_rad = scene.turn_rad;
    return moved;
  }

  function drawParts(view: CutawayView): void {
    for (const part of parts) part.draw(view, seen!);
    for (const part of ofStem) part.layer.visible = !view.stem.out;
  }

  return {
    root,
    labels,
    hold(next) {
      power = next;
      anchor_m = Number.NaN;
    },
    aim(view, scene, slower) {
      root.visible = power > 0;
      scene.lens = null;
      if (power === 0) return;
      facts.close = power === 2;
      facts.at = lensAim(view, scene.bit_m, facts.close).at;
      spot = lensSpot(view, scene.place);
      facts.top_px = spot.y - spot.diameter_px / 2;
      facts.times = lensTimes(scene.place, view.kit.bit_m, spot.diameter_px, facts.close);
      const pxm = scene.place.depth_pxm * facts.times;
      facts.across_m = spot.diameter_px / pxm;
      facts.slower = slower(pxm);
      scene.lens = facts;
    },
    draw(view, scene, anew) {
      if (!scene.lens) return;
      const { off_m } = lensAim(view, scene.bit_m, facts.close);
      const shaped = shapeMemory(spot.x, spot.y, spot.diameter_px, facts.times, scene.place.depth_pxm, off_m);
      if (!seen || shaped || anew) anchor_m = Number.NaN;
      seen = {
        ...scene,
        place: seen?.place ?? scene.place,
        labels: { ...SILENT, layer: scene.labels.layer },
        inLens: true,
      };
      const moved = follow(view, scene);
      seen.fresh = moved || shaped || anew;
      if (shaped || scene.fresh) dressGlass(scene);
      if (scene.fresh) markMemory(Number.NaN, 0, 0, 0, 0, 0);
      drawParts(view);
      seen.fresh = false;
    },
    move(view, scene, shown_s) {
      if (!scene.lens || !seen) return;
      if (follow(view, scene)) {
        seen.fresh = true;
        drawParts(view);
        seen.fresh = false;
      }
      drawMark(view, scene);
      const own_s = (shown_s * scene.slower) / facts.slower;
      for (const part of parts) part.move?.(view, seen, own_s);
    },
    at(view, scene, x, y) {
      if (!scene.lens || !seen) return null;
      if (Math.hypot(x - spot.x, y - spot.y) > spot.diameter_px / 2) return null;
      const lx = x - glass.x - inner.x;
      const ly = y - glass.y - inner.y;
      for (let i = parts.length - 1; i >= 0; i--) {
        if (view.stem.out && ofStem.includes(parts[i]!)) continue;
        const thing = parts[i]?.thingAt?.(view, seen, lx, ly);
        if (thing) return describe(view, thing);
      }
      return describeLayer(view, depthAt(seen.place, ly)) ?? describe(view, 'ground');
    },
  };
}
