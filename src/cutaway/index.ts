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
import { pageFor, roomIn, samePage } from './page';
import type { Scene } from './part';
import { placeOf } from './place';
import { listenTo } from './pointer';
import { keptTimes, siteOf, watched_m } from './shownNow';
import { createDrawer, resolutionHere, watchLoss } from './renderer';
import { createScene } from './scene';
import type { CutawayView } from './shown';
import { createTextures } from './textures';

export type { Cutaway, CutawayOptions } from './contract';
export type { CutawayView, ViewLevel } from './shown';
export type { Description } from './describe';
export type { LensPower } from './lensPlace';
export type { LensFacts } from './part';

export async function mountCutaway(host: HTMLElement, options: CutawayOptions): Promise<Cutaway> {
  const canvas = document.createElement('canvas');
  canvas.setAttribute('aria-hidden', 'true');
  canvas.style.cssText = 'display:block;position:absolute;inset:0;width:100%;height:100%;touch-action:pan-y';
  if (getComputedStyle(host).position === 'static') host.style.position = 'relative';
  host.append(canvas);
  const drawer = await createDrawer(canvas, options.renderer);

  const camera = createCamera();
  const motion = createMotion(options.reducedMotion);
  const things = createScene(resolutionHere());
  const labels = createLabels(resolutionHere());
  const lens = createLens(resolutionHere());
  const root = new Container();
  root.addChild(things.root, labels.layer, lens.root);
  const times = keptTimes();
  let view: CutawayView | null = null;
  let page: Composition | null = null;
  let room = roomIn(host);
  let scene: Scene | null = null;
  let theme: string | null = null;
  let shownSite = '';
  let widening: number | null = null;
  /** Everything has to be drawn anew; only the camera has moved. */
  let stale = true;
  let panned = false;
  /** The view or the camera is another than in the last picture. */
  let changed = true;
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
      place: scene?.place ?? placeOf(pageFor(view as CutawayView, room, widening), camera),
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
    const wanted = pageFor(now, room, widening);
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

  /** Draws anew what the view or the camera has changed. */
  function compose(now: CutawayView): Scene {
    const ready = prepare(now);
    motion.slower(now, ready);
    lens.aim(now, ready, slowerAt);
    things.draw(now, ready);
    lens.draw(now, ready, stale);
    changed = false;
    stale = false;
    ready.fresh = false;
    return ready;
  }

  /** One picture: what changed is drawn anew, what moves has moved on by so many shown job seconds. */
  function picture(shown_s: number): void {
    if (!view || drawer.isLost()) return;
    const before_ms = performance.now();
    const ready = changed || !scene ? compose(view) : scene;
    things.move(view, ready, shown_s);
    lens.move(view, ready, shown_s);
    drawer.render(root);
    times.keep(performance.now() - before_ms);
  }

  function redraw(): void {
    changed = true;
    picture(0);
  }

  function tick(now_ms: number): void {
    frame = 0;
    if (!view || !scene || drawer.isLost()) return;
    const wall_s = Math.min(0.1, Math.max(0, (now_ms - last_ms) / 1000));
    last_ms = now_ms;
    const moving = motion.advance(view, scene, wall_s);
    if (camera.follow && camera.zoom > 1) changed = true;
    picture(motion.shown_s);
    if (moving) keepGoing();
  }

  function keepGoing(): void {
    if (frame === 0) frame = requestAnimationFrame(tick);
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
      changed = true;
      const moving = motion.isMoving(next);
      // What moves is drawn with the next picture, once; what stands is drawn at once, but the first time in two parts, for then all is made.
      if (first) compose(next);
      else if (!moving) redraw();
      if (!first && !moving) return;
      if (frame === 0) last_ms = performance.now();
      keepGoing();
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
    frameTimes_ms: times.all,
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
    room = roomIn(host);
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
