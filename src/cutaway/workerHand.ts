// A worker draws, so that the page stays free for fingers and for the run. Made from a text inside the program, so that the one file
// opened from a folder has it too.

import type { MakeHand } from './orders';
import type { FromWorker, ToWorker } from './worker';

/** A worker has failed on this page: the page draws from then on. */
let broken = false;

/** Whether this browser lets a worker draw on a canvas of the page. */
export const workersDraw = (): boolean =>
  !broken &&
  typeof Worker !== 'undefined' &&
  typeof OffscreenCanvas !== 'undefined' &&
  'transferControlToOffscreen' in HTMLCanvasElement.prototype;

/** Throws where the worker cannot be made or cannot draw: the canvas is then spoilt. */
export const workerHand: MakeHand = async (canvas, beginning, tell) => {
  const { default: PainterWorker } = await import('./worker?worker&inline');
  const worker = new PainterWorker();
  const post = (message: ToWorker, moved: Transferable[] = []): void => worker.postMessage(message, moved);
  let began = false;
  const kind = await new Promise<'webgl' | 'canvas'>((ready, failed) => {
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
      if (data.kind === 'news') tell(data.news);
      else if (data.kind === 'ready') ready(data.renderer);
      else failed(new Error(data.why));
    };
    worker.onerror = (event) => {
      event.preventDefault();
      broken = true;
      failed(new Error(event.message));
      // Later on the page is told as of a picture that was taken away.
      if (began) tell({ kind: 'lost' });
    };
    const moved = canvas.transferControlToOffscreen();
    post({ kind: 'begin', canvas: moved, beginning }, [moved]);
  }).catch((cause: unknown) => {
    broken = true;
    worker.terminate();
    throw cause;
  });
  began = true;
  return { kind, give: (order) => post({ kind: 'order', order }), stop: () => worker.terminate() };
};
