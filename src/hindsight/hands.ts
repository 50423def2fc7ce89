// Who does the looking back: workers made from a text inside the program, so that the one file opened from a folder has them too;
// or, where there are none, the page itself in short slices.
import type { Past } from '$lessons';
import { carryOut, type Order, type Report } from './orders';
import type { ToWorker } from './worker';

export interface Hand {
  /** Works an order off. One at a time. */
  give(order: Order): void;
  stop(): void;
}

export interface HandTalk {
  /** A result; null when the order is done. */
  report(report: Report | null): void;
  /** The hand cannot go on. */
  failed(): void;
}

export type MakeHand = (past: Past, talk: HandTalk) => Hand;

/** As many workers as there are processors besides the page's own, at least one; on two processors two, for the page waits meanwhile. */
export function handCount(processors: number): number {
  return processors <= 2 ? Math.max(1, processors) : Math.min(4, processors - 1);
}

/** A hand in a worker. Throws where the browser has no workers or forbids them. */
export async function workerHand(): Promise<MakeHand> {
  const { default: HindsightWorker } = await import('./worker?worker&inline');
  return (past, talk) => {
    const worker = new HindsightWorker();
    const tell = (message: ToWorker): void => worker.postMessage(message);
    worker.onmessage = ({ data }: MessageEvent<Report | null>) => talk.report(data);
    worker.onerror = (event) => {
      event.preventDefault();
      talk.failed();
    };
    tell({ kind: 'past', past });
    return { give: (order) => tell({ kind: 'order', order }), stop: () => worker.terminate() };
  };
}

/** So long the page is held up at a time, ms, and so long it is left alone between, so that it stays alive. */
const SLICE_ms = 24;
const REST_ms = 8;

/** A hand in the page. */
export const slicedHand: MakeHand = (past, talk) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const work = (task: Generator<Report | null, void>): void => {
    const until_ms = performance.now() + SLICE_ms;
    while (performance.now() < until_ms) {
      const next = task.next();
      if (next.done) {
        talk.report(null);
        return;
      }
      if (next.value) talk.report(next.value);
    }
    timer = setTimeout(() => work(task), REST_ms);
  };
  return {
    give(order) {
      timer = setTimeout(() => work(carryOut(past, order)), 0);
    },
    stop: () => clearTimeout(timer),
  };
};
