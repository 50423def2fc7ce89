// The painter: one canvas, one view, one camera. Works off orders one by one, in the page or in a worker, and knows of neither.

import { Container } from 'pixi.js';
import { groundInk } from '../charts/patterns';
import { createCamera, followBit, panCamera, zoomCamera } from './camera';
import type { Composition } from './composition';
import { createLabels } from './labels';
import { createLens } from './lens';
import { createMotion } from './motion';
import type { Beginning, Order, Surroundings, Tell } from './orders';
import { pageFor, samePage } from './page';
import { paletteFor } from './palette';
import { sameLens, type LensFacts, type Scene } from './part';
import { placeOf } from './place';
import { createDrawer, watchLoss, type RendererKind } from './renderer';
import { createScene } from './scene';
import type { CutawayView } from './shown';
import { createTextures } from './textures';
import { siteOf, watched_m } from './watched';

export interface Painter {
  readonly kind: RendererKind;
  carryOut(order: Order): void;
  destroy(): void;
}

/** No step of motion is longer, s: after a pause things go on, they do not jump. */
const LONGEST_STEP_s = 0.1;
/** So long sprites may still hold the pictures of the old colours, ms. */
const OLD_LOOK_ms = 1000;

export async function createPainter(
  canvas: HTMLCanvasElement | OffscreenCanvas,
  { renderer, still, around: begun }: Beginning,
  tell: Tell,
): Promise<Painter> {
  const { resolution } = begun;
  const drawer = await createDrawer(canvas, renderer, resolution);
  const camera = createCamera();
  const motion = createMotion(still);
  const things = createScene(resolution);
  const labels = createLabels(resolution);
  const lens = createLens(resolution);
  /** What the page was last told of the lens. */
  let told: LensFacts | null = null;
  const root = new Container();
  root.addChild(things.root, labels.layer, lens.root);
  let around: Surroundings = begun;
  let view: CutawayView | null = null;
  let page: Composition | null = null;
  let scene: Scene | null = null;
  let theme: string | null = null;
  let shownSite = '';
  let widening: number | null = null;
  /** Everything has to be drawn anew; only the camera has moved. */
  let stale = true;
  let panned = false;
  /** The view or the camera is another than in the last picture. */
  let changed = true;
  let moving = false;
  let last_ms = 0;

  function dress(now: CutawayView): Scene {
    if (scene && around.theme === theme) return scene;
    theme = around.theme;
    const look = paletteFor(theme);
    const ink = groundInk(theme);
    const old = scene?.textures;
    const made: Scene = {
      place: scene?.place ?? placeOf(pageFor(now, around.room, widening), camera),
      look,
      ink,
      textures: createTextures(look, ink),
      labels,
      fresh: true,
      bit_m: scene?.bit_m ?? 0,
      turn_rad: scene?.turn_rad ?? 0.5,
      slower: 1,
      inLens: false,
      lens: null,
    };
    stale = true;
    // Sprites let go of the old pictures while they are drawn anew.
    if (old) setTimeout(() => old.destroy(), OLD_LOOK_ms);
    return made;
  }

  function prepare(now: CutawayView): Scene {
    const ready = dress(now);
    scene = ready;
    const wanted = pageFor(now, around.room, widening);
    if (!page || !samePage(page, wanted)) {
      if (!page || page.width_px !== wanted.width_px || page.height_px !== wanted.height_px) {
        drawer.resize(wanted.width_px, wanted.height_px);
      }
      if (page?.widening !== wanted.widening || page.mostWidening !== wanted.mostWidening) {
        tell({ kind: 'width', now: wanted.widening, least: wanted.leastWidening, most: wanted.mostWidening });
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
      for (const words of [labels, lens.labels]) words.dress(ready.look, around.font, page.text_px);
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
    const { lens: at } = ready;
    if (!sameLens(at, told)) tellLens();
    return ready;
  }

  function tellLens(): void {
    told = scene?.lens ? { ...scene.lens } : null;
    tell({ kind: 'lens', facts: told });
  }

  /** One picture: what changed is drawn anew, what moves has moved on by so many shown job seconds. */
  function picture(shown_s: number): void {
    if (!view || drawer.isLost()) return;
    const ready = changed || !scene ? compose(view) : scene;
    things.move(view, ready, shown_s);
    lens.move(view, ready, shown_s);
    drawer.render(root);
  }

  function redraw(): void {
    changed = true;
    picture(0);
  }

  function anew(): void {
    stale = true;
    redraw();
  }

  function tick(now_ms: number): void {
    if (view && scene && !drawer.isLost()) {
      const wall_s = moving ? Math.min(LONGEST_STEP_s, Math.max(0, (now_ms - last_ms) / 1000)) : 0;
      moving = motion.advance(view, scene, wall_s);
      if (camera.follow && camera.zoom > 1) changed = true;
      picture(motion.shown_s);
    } else moving = false;
    last_ms = now_ms;
    tell({ kind: 'drawn', moving });
  }

  /** What moves is drawn with the time that has passed; what stands is drawn as it is. */
  function show(next: CutawayView, pace_ratio: number, now_ms: number): void {
    const first = view === null;
    const site = siteOf(next);
    if (first || site !== shownSite) stale = true;
    shownSite = site;
    view = next;
    scene = dress(next);
    motion.take(next, pace_ratio, scene, first);
    changed = true;
    if (motion.isMoving(next) && !first) return tick(now_ms);
    // The first time all is made: the picture itself comes with the next tick.
    if (first) compose(next);
    else redraw();
    last_ms = now_ms;
    moving = first;
    tell({ kind: 'drawn', moving });
  }

  function look(): void {
    anew();
    tell({ kind: 'camera', zoom: camera.zoom, follow: camera.follow });
  }

  function zoom(factor: number, x_px?: number, y_px?: number): void {
    if (!page) return;
    const following = camera.follow && scene !== null;
    const x = x_px ?? (following ? (scene as Scene).place.hole_x : page.width_px / 2);
    // Who zooms about a point looks there.
    if (x_px !== undefined) camera.follow = false;
    zoomCamera(camera, page, factor, x, y_px ?? page.height_px / 2);
    look();
  }

  function pan(dx_px: number, dy_px: number): void {
    if (!page || camera.zoom === 1) return;
    camera.follow = false;
    panCamera(camera, page, dx_px, dy_px);
    look();
  }

  function home(): void {
    camera.zoom = 1;
    camera.panX_px = 0;
    camera.panY_px = 0;
    look();
  }

  function point(x_px: number, y_px: number): void {
    const what = view && scene ? (lens.at(view, scene, x_px, y_px) ?? things.at(view, scene, x_px, y_px)) : null;
    tell({ kind: 'point', what, x_px, y_px });
  }

  const unwatch = watchLoss(canvas, drawer, anew, () => tell({ kind: 'lost' }));

  return {
    kind: drawer.kind,
    carryOut(order) {
      switch (order.kind) {
        case 'view':
          return show(order.view, order.pace_ratio, order.now_ms);
        case 'tick':
          return tick(order.now_ms);
        case 'around':
          around = order.around;
          return anew();
        case 'zoom':
          return zoom(order.factor, order.x_px, order.y_px);
        case 'pan':
          return pan(order.dx_px, order.dy_px);
        case 'home':
          return home();
        case 'follow':
          camera.follow = order.on;
          return look();
        case 'widen':
          widening = order.times;
          return redraw();
        case 'lens':
          lens.hold(order.power);
          anew();
          return tellLens();
        case 'point':
          return point(order.x_px, order.y_px);
      }
    },
    destroy() {
      unwatch();
      scene?.textures.destroy();
      root.destroy({ children: true });
      drawer.destroy();
    },
  };
}
