// Door of the drawing: mounts it in an element, draws views into it, answers what is where. Load it with import(),
// so that Pixi stays out of the first screen.

import { Container } from 'pixi.js';
import { groundInk } from '../charts/patterns';
import { createCamera, followBit, panCamera, zoomCamera } from './camera';
import type { Composition } from './composition';
import type { Cutaway, CutawayOptions } from './contract';
import { createLabels } from './labels';
import { createLens } from './lens';
import { createMotion } from './motion';
import { paletteFor } from './palette';
import { pageFor, samePage } from './page';
import type { Scene } from './part';
import { placeOf } from './place';
import { listenTo } from './pointer';
import { createDrawer, resolutionHere, watchLoss } from './renderer';
import { createScene } from './scene';
import type { CutawayView } from './shown';
import { createTextures } from './textures';

export type { Cutaway, CutawayOptions } from './contract';
export type { CutawayView, ViewLevel } from './shown';
export type { Description } from './describe';
export type { LensPower } from './lensPlace';
export type { LensFacts } from './part';

const KEPT_FRAMES = 120;

/** What lies in the picture for good until the crew moves on or digs: when it changes, everything is drawn anew. */
const siteOf = ({ level, holeNumber, pit, kit, stem, well }: CutawayView): string =>
  [
    level,
    holeNumber,
    kit.bit_m,
    stem.out,
    well?.head,
    well?.casing?.look,
    pit.dug,
    pit.settling.area_m2,
    pit.suction.area_m2,
  ].join(' ');

/** What a close look follows: the bit, or, when the rods are out, the lower end of the casing. */
const watched_m = ({ stem, well }: CutawayView, bit_m: number): number =>
  stem.out ? (well?.casing?.shoe_m ?? 0) : bit_m;

export async function mountCutaway(host: HTMLElement, options: CutawayOptions): Promise<Cutaway> {
  const canvas = document.createElement('canvas');
  canvas.setAttribute('aria-hidden', 'true');
  canvas.style.cssText = 'display:block;position:absolute;inset:0;width:100%;height:100%;touch-action:pan-y';
  if (getComputedStyle(host).position === 'static') host.style.position = 'relative';
  host.append(canvas);
  const drawer = await createDrawer(canvas, options.renderer);

  const camera = createCamera();
  const motion = createMotion(options.reducedMotion);
  const things = createScene();
  const labels = createLabels(resolutionHere());
  const lens = createLens(resolutionHere());
  const root = new Container();
  root.addChild(things.root, labels.layer, lens.root);
  const times: number[] = [];
  let view: CutawayView | null = null;
  let page: Composition | null = null;
  let scene: Scene | null = null;
  let theme: string | null = null;
  let shownSite = '';
  let widening: number | null = null;
  /** Everything has to be drawn anew; only the camera has moved. */
  let stale = true;
  let panned = false;
  let frame = 0;
  let last_ms = 0;

  function dress(): Scene {
    const wanted = document.documentElement.dataset['theme'] ?? 'paper';
    if (scene && wanted === theme) return scene;
    theme = wanted;
    const look = paletteFor(theme);
    const ink = groundInk(theme);
    const old = scene?.textures;
    const made: Scene = {
      place: scene?.place ?? placeOf(pageFor(view as CutawayView, host, widening), camera),
      look,
      ink,
      textures: createTextures(look, ink),
      labels,
      fresh: true,
      still: options.reducedMotion,
      bit_m: scene?.bit_m ?? 0,
      turn_rad: scene?.turn_rad ?? 0.5,
      slower: 1,
      inLens: false,
      lens: null,
    };
    stale = true;
    // Sprites let go of the old pictures while they are drawn anew.
    if (old) setTimeout(() => old.destroy(), 1000);
    return made;
  }

  function prepare(now: CutawayView): Scene {
    const ready = dress();
    scene = ready;
    const wanted = pageFor(now, host, widening);
    if (!page || !samePage(page, wanted)) {
      if (!page || page.width_px !== wanted.width_px || page.height_px !== wanted.height_px) {
        drawer.resize(wanted.width_px, wanted.height_px);
      }
      if (page?.widening !== wanted.widening || page.mostWidening !== wanted.mostWidening) {
        options.onwidth?.(wanted.widening, wanted.leastWidening, wanted.mostWidening);
      }
      page = wanted;
      stale = true;
    }
    const panY_px = camera.panY_px;
    const panX_px = camera.panX_px;
    followBit(camera, page, watched_m(now, ready.bit_m));
    panned = camera.panX_px !== panX_px || camera.panY_px !== panY_px;
    if (stale || panned) {
      ready.place = placeOf(page, camera);
      for (const words of [labels, lens.labels]) {
        words.dress(ready.look, getComputedStyle(host).fontFamily, page.text_px);
      }
    }
    ready.fresh = stale || panned;
    return ready;
  }

  const slowerAt = (depth_pxm: number): number => motion.slowerAt(view as CutawayView, depth_pxm);

  function redraw(): void {
    if (!view || drawer.isLost()) return;
    const before_ms = performance.now();
    const ready = prepare(view);
    motion.slower(view, ready);
    lens.aim(view, ready, slowerAt);
    things.draw(view, ready);
    lens.draw(view, ready, stale);
    things.move(view, ready, 0);
    lens.move(view, ready, 0);
    stale = false;
    ready.fresh = false;
    drawer.render(root);
    keepTime(performance.now() - before_ms);
  }

  function tick(now_ms: number): void {
    frame = 0;
    if (!view || !scene || drawer.isLost()) return;
    const wall_s = Math.min(0.1, Math.max(0, (now_ms - last_ms) / 1000));
    last_ms = now_ms;
    const before_ms = performance.now();
    const moving = motion.advance(view, scene, wall_s);
    if (camera.follow && camera.zoom > 1) {
      redraw();
    } else {
      things.move(view, scene, motion.shown_s);
      lens.move(view, scene, motion.shown_s);
      drawer.render(root);
      keepTime(performance.now() - before_ms);
    }
    if (moving) keepGoing();
  }

  function keepGoing(): void {
    if (frame === 0) frame = requestAnimationFrame(tick);
  }

  function keepTime(time_ms: number): void {
    times.push(time_ms);
    if (times.length > KEPT_FRAMES) times.shift();
  }

  function look(): void {
    stale = true;
    canvas.style.touchAction = camera.zoom > 1 ? 'none' : 'pan-y';
    redraw();
    options.oncamera?.(camera.zoom, camera.follow);
  }

  const cutaway: Cutaway = {
    kind: drawer.kind,
    draw(next, pace = 1) {
      const first = view === null;
      const site = siteOf(next);
      if (first || site !== shownSite) stale = true;
      shownSite = site;
      view = next;
      scene = dress();
      motion.take(next, pace, scene, first);
      redraw();
      if (motion.isMoving(next)) {
        if (frame === 0) last_ms = performance.now();
        keepGoing();
      }
    },
    zoom(factor, x_px, y_px) {
      if (!page) return;
      const following = camera.follow && view !== null && scene !== null;
      const x = x_px ?? (following && scene ? scene.place.hole_x : page.width_px / 2);
      zoomCamera(camera, page, factor, x, y_px ?? page.height_px / 2);
      look();
    },
    pan(dx_px, dy_px) {
      if (!page || camera.zoom === 1) return;
      camera.follow = false;
      panCamera(camera, page, dx_px, dy_px);
      look();
    },
    home() {
      camera.zoom = 1;
      camera.panX_px = 0;
      camera.panY_px = 0;
      look();
    },
    followBit(on) {
      camera.follow = on;
      look();
    },
    widen(times) {
      widening = times;
      redraw();
    },
    holdLens(power) {
      lens.hold(power);
      stale = true;
      redraw();
    },
    lens: () => scene?.lens ?? null,
    describeAt(x_px, y_px) {
      if (!view || !scene) return null;
      return lens.at(view, scene, x_px, y_px) ?? things.at(view, scene, x_px, y_px);
    },
    setReducedMotion(on) {
      motion.setStill(on);
      if (view) cutaway.draw(view, motion.pace_ratio);
    },
    frameTimes_ms: () => times.slice(),
    destroy() {
      if (frame !== 0) cancelAnimationFrame(frame);
      sizes.disconnect();
      themes.disconnect();
      deaf();
      unwatch();
      scene?.textures.destroy();
      root.destroy({ children: true });
      drawer.destroy();
      canvas.remove();
    },
  };

  const anew = (): void => {
    stale = true;
    redraw();
  };
  const unwatch = watchLoss(canvas, drawer, anew, () => options.onlost?.());
  const sizes = new ResizeObserver(anew);
  sizes.observe(host);
  const themes = new MutationObserver(anew);
  themes.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme', 'data-text', 'lang'] });
  const deaf = listenTo(canvas, {
    zoom: (factor, x_px, y_px) => {
      camera.follow = false;
      cutaway.zoom(factor, x_px, y_px);
    },
    pan: (dx_px, dy_px) => cutaway.pan(dx_px, dy_px),
    point: (at) => options.onpoint?.(at ? cutaway.describeAt(at.x_px, at.y_px) : null, at?.x_px ?? 0, at?.y_px ?? 0),
    zoomed: () => camera.zoom > 1,
  });
  return cutaway;
}
