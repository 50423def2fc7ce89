// All visible things in their order, back to front, and the words that belong to none of them.

import { Container, Graphics } from 'pixi.js';
import { t } from '../words';
import { createBed } from './bed';
import { createBit } from './bit';
import { createCake } from './cake';
import { createCrew } from './crew';
import { createRain } from './rain';
import { createChannel } from './channel';
import { describe, describeLayer, type Description } from './describe';
import { createDrive } from './drive';
import { createFalling } from './falling';
import { DENSER } from './grainSize';
import { createGrainKey } from './grainKey';
import { createGrains } from './grains';
import { createGround } from './ground';
import { createHole } from './hole';
import { createHoses } from './hoses';
import { createJets } from './jets';
import { createLayers } from './layers';
import { createNeighbours } from './neighbours';
import { createNominal } from './nominal';
import { createOpened } from './opened';
import { createOwnLog } from './ownLog';
import { createMemory, type Part, type Scene } from './part';
import { createPit } from './pit';
import { depthAt } from './place';
import { createPump } from './pump';
import { createRack } from './rack';
import { createRuler } from './ruler';
import type { CutawayView } from './shown';
import { createSeep } from './seep';
import { createCasing } from './casing';
import { createCone } from './cone';
import { createDrawn } from './drawn';
import { createFill } from './fill';
import { createHeadWorks } from './headWorks';
import { createInflow } from './inflow';
import { createSounded } from './sounded';
import { createSky } from './sky';
import { createStem } from './stem';
import { createStreaks } from './streaks';
import { createTripod } from './tripod';

export interface Stage {
  readonly root: Container;
  draw(view: CutawayView, scene: Scene): void;
  move(view: CutawayView, scene: Scene, shown_s: number): void;
  at(view: CutawayView, scene: Scene, x: number, y: number): Description | null;
}

export function createScene(resolution: number): Stage {
  const ofStem: Part[] = [createJets(), createStem(), createBit(), createDrive()];
  const [jets, stem, bit, drive] = ofStem as [Part, Part, Part, Part];
  const crew = createCrew();
  // What changes only with the page is drawn once, as one picture.
  const lasting: Part[] = [createSky(), createGround(), createLayers()];
  const parts: Part[] = [
    ...lasting,
    createOpened(),
    createNeighbours(),
    createRack(),
    createPit(),
    createChannel(),
    createNominal(),
    createSeep(),
    createHole(),
    createCake(),
    createBed(),
    jets,
    createGrains(),
    createFalling(),
    createCone(),
    createFill(),
    createCasing(),
    createInflow(),
    createSounded(),
    createTripod(),
    crew.bodies,
    stem,
    createStreaks(),
    bit,
    drive,
    createPump(),
    createHoses(),
    createDrawn(),
    crew.hands,
    createHeadWorks(),
    createRain(),
    createRuler(),
    createOwnLog(),
    createGrainKey(),
  ];
  const notesMemory = createMemory(4);
  const plate = new Graphics();
  const root = new Container();
  const back = new Container();
  for (const part of lasting) back.addChild(part.layer);
  back.cacheAsTexture({ resolution, antialias: true });
  root.addChild(back);
  for (const part of parts) if (!lasting.includes(part)) root.addChild(part.layer);
  root.addChild(plate);

  return {
    root,
    draw(view, scene) {
      for (const part of parts) part.draw(view, scene);
      if (scene.fresh) back.updateCacheTexture();
      for (const part of ofStem) part.layer.visible = !view.stem.out;
      if (
        notesMemory(scene.slower, scene.lens?.times ?? 0, scene.lens?.slower ?? 0, Number(view.stem.bottom_m > 0)) ||
        scene.fresh
      )
        drawNotes(view, scene, plate);
    },
    move(view, scene, shown_s) {
      for (const part of parts) part.move?.(view, scene, shown_s);
    },
    at(view, scene, x, y) {
      for (let i = parts.length - 1; i >= 0; i--) {
        if (view.stem.out && ofStem.includes(parts[i]!)) continue;
        const thing = parts[i]?.thingAt?.(view, scene, x, y);
        if (thing) return describe(view, thing);
      }
      if (y <= scene.place.ground_y) return null;
      return describeLayer(view, depthAt(scene.place, y)) ?? describe(view, 'ground');
    },
  };
}

/** What is not drawn to the same scale is said, at the foot of the picture. */
function drawNotes(view: CutawayView, scene: Scene, plate: Graphics): void {
  const { place, look, labels } = scene;
  labels.open('notes');
  const notes: string[] = [];
  const bank = place.bank_pxm / place.depth_pxm;
  const unseen = !view.hole && view.stem.bottom_m > 0;
  if (place.compact) {
    notes.push(t('cutaway.wideningShort', { n: place.widening }));
    if (view.hole && !view.well?.annulus) notes.push(t('cutaway.denserShort', { n: DENSER }));
    if (unseen) notes.push(t('cutaway.dottedShort'));
  } else {
    notes.push(t('cutaway.widening', { n: place.widening }));
    if (view.hole && !view.well?.annulus) notes.push(t('cutaway.denser', { n: DENSER }));
    if (unseen) notes.push(t('cutaway.dotted'));
    if (bank > 1.05) notes.push(t('cutaway.bank', { n: bank }));
  }
  const { lens } = scene;
  if (lens) notes.push(t(place.compact ? 'cutaway.lensShort' : 'cutaway.lens', { n: lens.times }));
  if (lens && lens.slower > 1) {
    const both = { n: scene.slower, lens: lens.slower };
    if (scene.slower > 1) notes.push(t('cutaway.slowerBoth', both));
    else notes.push(t('cutaway.slowerLens', both));
  } else if (scene.slower > 1) notes.push(t('cutaway.slower', { n: scene.slower }));
  const step = place.text_px * 1.35;
  const x = place.compact ? 5 : 20;
  plate.clear();
  let wide = 0;
  for (let i = 0; i < notes.length; i++) {
    const y = place.height_px - place.text_px * 0.95 - (notes.length - 1 - i) * step;
    const how = {
      tone: 'quiet',
      italic: true,
      size: 0.92,
      room_px: place.axis_x - 2.4 * place.text_px - x,
      ...(view.layers ? {} : { halo: look.closed }),
    } as const;
    wide = Math.max(wide, labels.put(`note${i}`, notes[i] ?? '', x, y, how));
  }
  labels.close();
  if (!view.layers) return;
  // Over opened ground the notes lie on paper.
  const high = notes.length * step + place.text_px * 0.4;
  plate.roundRect(x - 5, place.height_px - high - 1, wide + 10, high, 3).fill({ color: look.paper, alpha: 0.9 });
}
