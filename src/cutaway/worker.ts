// The painter in a worker: it is given the canvas once, then works off one order after the other.

import { DOMAdapter, type Adapter, type ICanvas } from 'pixi.js';
import { addMessages } from '../words';
import { cutaway } from '../words/en/cutaway';
import { setLanguage } from '../words/language';
import type { Beginning, News, Order } from './orders';
import { createPainter, type Painter } from './painter';
import type { RendererKind } from './renderer';

export type ToWorker =
  | { readonly kind: 'begin'; readonly canvas: OffscreenCanvas; readonly beginning: Beginning }
  | { readonly kind: 'order'; readonly order: Order };

export type FromWorker =
  | { readonly kind: 'ready'; readonly renderer: RendererKind }
  | { readonly kind: 'failed'; readonly why: string }
  | { readonly kind: 'news'; readonly news: News };

/** What the drawing library needs of a browser, where there is no page. */
const ADAPTER: Adapter = {
  createCanvas: (width = 1, height = 1) => new OffscreenCanvas(width, height) as unknown as ICanvas,
  createImage: () => {
    throw new Error('no pictures from files');
  },
  getCanvasRenderingContext2D: () => OffscreenCanvasRenderingContext2D as never,
  getWebGLRenderingContext: () => WebGLRenderingContext as never,
  getNavigator: () => navigator,
  getBaseUrl: () => '',
  getFontFaceSet: () => null,
  fetch: () => Promise.reject(new Error('nothing is fetched')),
  parseXML: () => {
    throw new Error('nothing is parsed');
  },
};
DOMAdapter.set(ADAPTER);
// The library asks of each picture whether it is one of a page's canvases, also where there is no such thing.
Object.assign(globalThis, { HTMLCanvasElement: class {} });
addMessages(cutaway);

let painter: Painter | null = null;
const post = (message: FromWorker): void => self.postMessage(message);

function begin(canvas: OffscreenCanvas, beginning: Beginning): void {
  setLanguage(beginning.around.language);
  createPainter(canvas, beginning, (news) => post({ kind: 'news', news })).then(
    (made) => {
      painter = made;
      post({ kind: 'ready', renderer: made.kind });
    },
    (cause: unknown) => post({ kind: 'failed', why: String(cause) }),
  );
}

self.onmessage = ({ data }: MessageEvent<ToWorker>): void => {
  if (data.kind === 'begin') return begin(data.canvas, data.beginning);
  if (data.order.kind === 'around') setLanguage(data.order.around.language);
  painter?.carryOut(data.order);
};
