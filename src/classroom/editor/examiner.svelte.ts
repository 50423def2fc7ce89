// Who lets crews play an exercise: a worker, or where there is none the page itself in short slices. One order at a time.
import { inSlices, workersHere, type Helper, type HelperTalk } from '../../app/sideWork';
import { carryOut, type Order, type Told } from './orders';

type Tell = (told: Told) => void;

/** Begins in a worker, and where that cannot be in the page; returns what stops it. */
function begin(order: Order, tell: Tell): () => void {
  let helper: Helper<Order> | null = null;
  let stopped = false;
  const talk: HelperTalk<Told> = {
    report: (told) => told && tell(told),
    failed: () => {
      helper?.stop();
      inPage();
    },
  };
  const give = (made: Helper<Order>): void => {
    helper = made;
    made.give(order);
  };
  const inPage = (): void => {
    if (!stopped) give(inSlices(carryOut, { ...talk, failed: () => tell({ kind: 'broken' }) }));
  };
  const start = async (): Promise<void> => {
    const inWorker = await workersHere();
    if (!stopped) give(inWorker<Order, Told>('examine', null, talk));
  };
  start().catch(inPage);
  return () => {
    stopped = true;
    helper?.stop();
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
        // The worker holds the model in its memory: it is not kept for a next time.
        stop();
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
