// Who lets crews play an exercise: a worker made from a text inside the program, so that the one file opened from a folder has it too; or, where
// there is none, the page itself in short slices. One order at a time.
import { carryOut, type Order, type Told } from './orders';

/** So long the page is held up at a time, ms, and so long it is left alone between, so that it stays alive. */
const SLICE_ms = 24;
const REST_ms = 8;

type Tell = (told: Told) => void;

/** Works in the page; returns what stops it. */
function inPage(order: Order, tell: Tell): () => void {
  const task = carryOut(order);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const work = (): void => {
    const until_ms = performance.now() + SLICE_ms;
    let last: Told | null = null;
    while (performance.now() < until_ms) {
      const { done, value } = task.next();
      if (done) {
        if (last) tell(last);
        return;
      }
      last = value;
    }
    if (last) tell(last);
    timer = setTimeout(work, REST_ms);
  };
  timer = setTimeout(work, 0);
  return () => clearTimeout(timer);
}

/** Works in a worker, and where that cannot be in the page. */
function begin(order: Order, tell: Tell): () => void {
  let stop: (() => void) | null = null;
  let stopped = false;
  const fallBack = (): void => {
    if (!stopped) stop = inPage(order, tell);
  };
  const start = async (): Promise<void> => {
    const { default: ExaminerWorker } = await import('./worker?worker&inline');
    if (stopped) return;
    const worker = new ExaminerWorker();
    stop = () => worker.terminate();
    worker.onmessage = ({ data }: MessageEvent<Told>) => tell(data);
    worker.onerror = (event) => {
      event.preventDefault();
      worker.terminate();
      fallBack();
    };
    worker.postMessage(order);
  };
  start().catch(fallBack);
  return () => {
    stopped = true;
    stop?.();
  };
}

type Step = Extract<Told, { kind: 'step' }>['step'];

export class Examiner {
  order: Order | null = $state.raw(null);
  step: Step | null = $state.raw(null);
  /** Since when it has been at it, ms of the page's clock. */
  since_ms = 0;
  #stop: (() => void) | null = null;

  /** Works an order off; null when it is stopped before its end. */
  async carryOut(order: Order): Promise<Exclude<Told, { kind: 'step' }> | null> {
    this.stop();
    this.order = order;
    this.step = null;
    this.since_ms = performance.now();
    return new Promise((resolve) => {
      const stop = begin(order, (told) => {
        if (told.kind === 'step') {
          this.step = told.step;
          return;
        }
        this.#stop = null;
        this.order = null;
        resolve(told);
      });
      this.#stop = () => {
        stop();
        resolve(null);
      };
    });
  }

  stop(): void {
    this.#stop?.();
    this.#stop = null;
    this.order = null;
    this.step = null;
  }
}
