// Puts the drawing into an element: its canvas, what the element offers it, fingers over it, and the clock of its pictures. Who draws is for the caller to say.

import { currentLanguage } from '../words/language';
import type { Cutaway, CutawayOptions } from './contract';
import { createFlow } from './flow';
import type { MakeHand, News, Surroundings } from './orders';
import { roomIn } from './page';
import { listenTo } from './pointer';

const MOST_RESOLUTION = 2;
const resolutionHere = (): number => Math.min(MOST_RESOLUTION, Math.max(1, globalThis.devicePixelRatio || 1));

/** Attributes of the page that change its colours, its letters or its words. */
const LOOK = ['data-theme', 'data-text', 'lang'];

function canvasIn(host: HTMLElement): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.setAttribute('aria-hidden', 'true');
  canvas.style.cssText = 'display:block;position:absolute;inset:0;width:100%;height:100%;touch-action:pan-y';
  if (getComputedStyle(host).position === 'static') host.style.position = 'relative';
  host.append(canvas);
  return canvas;
}

/** Read once and told when it changes: reading makes the browser lay the page out. */
function surroundingsOf(host: HTMLElement): Surroundings {
  return {
    room: roomIn(host),
    theme: document.documentElement.dataset['theme'] ?? 'paper',
    font: getComputedStyle(host).fontFamily,
    language: currentLanguage(),
    resolution: resolutionHere(),
  };
}

/** Throws where the hand cannot draw; the element is then as it was. */
export async function mountWith(makeHand: MakeHand, host: HTMLElement, options: CutawayOptions): Promise<Cutaway> {
  const canvas = canvasIn(host);
  let zoom = 1;

  function hear(news: News): void {
    switch (news.kind) {
      case 'drawn':
        return flow.drawn(news.moving);
      case 'width':
        return options.onwidth?.(news.now, news.least, news.most);
      case 'camera':
        zoom = news.zoom;
        canvas.style.touchAction = zoom > 1 ? 'none' : 'pan-y';
        return options.oncamera?.(news.zoom, news.follow);
      case 'lens':
        return options.onlens?.(news.facts);
      case 'point':
        return options.onpoint?.(news.what, news.x_px, news.y_px);
      case 'lost':
        return options.onlost?.();
    }
  }

  const beginning = { renderer: options.renderer, still: options.reducedMotion, around: surroundingsOf(host) };
  const hand = await makeHand(canvas, beginning, hear).catch((cause: unknown) => {
    canvas.remove();
    throw cause;
  });
  const flow = createFlow((order) => hand.give(order));

  const cutaway: Cutaway = {
    kind: hand.kind,
    draw: (view, pace = 1) => flow.show(view, pace),
    zoom: (factor, x_px, y_px) =>
      hand.give({
        kind: 'zoom',
        factor,
        ...(x_px === undefined ? {} : { x_px }),
        ...(y_px === undefined ? {} : { y_px }),
      }),
    pan: (dx_px, dy_px) => hand.give({ kind: 'pan', dx_px, dy_px }),
    home: () => hand.give({ kind: 'home' }),
    followBit: (on) => hand.give({ kind: 'follow', on }),
    widen: (times) => hand.give({ kind: 'widen', times }),
    holdLens: (power) => hand.give({ kind: 'lens', power }),
    point: (x_px, y_px) => hand.give({ kind: 'point', x_px, y_px }),
    destroy() {
      flow.stop();
      sizes.disconnect();
      looks.disconnect();
      deaf();
      hand.stop();
      canvas.remove();
    },
  };

  const tellAround = (): void => hand.give({ kind: 'around', around: surroundingsOf(host) });
  const sizes = new ResizeObserver(tellAround);
  sizes.observe(host);
  const looks = new MutationObserver(tellAround);
  looks.observe(document.documentElement, { attributes: true, attributeFilter: LOOK });
  const deaf = listenTo(canvas, {
    zoom: (factor, x_px, y_px) => cutaway.zoom(factor, x_px, y_px),
    pan: (dx_px, dy_px) => cutaway.pan(dx_px, dy_px),
    point: (at) => (at ? cutaway.point(at.x_px, at.y_px) : options.onpoint?.(null, 0, 0)),
    zoomed: () => zoom > 1,
  });
  return cutaway;
}
