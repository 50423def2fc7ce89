// Who does long work beside the page's own: workers made from a text inside the program, so that the one file opened from a folder has them too;
// or, where there are none, the page itself in short slices.

/** Works orders off, one at a time. */
export interface Helper<Order> {
  give(order: Order): void;
  stop(): void;
}

export interface HelperTalk<Report> {
  /** A result; null when the order is done. */
  report(report: Report | null): void;
  /** It cannot go on. */
  failed(): void;
}

/** As many workers as there are processors besides the page's own, at least one; on two processors two, for the page waits meanwhile. */
export function helperCount(processors: number): number {
  return processors <= 2 ? Math.max(1, processors) : Math.min(4, processors - 1);
}

/** What can be done beside the page: looking back on a run, judging results, letting crews play an exercise. */
export type JobName = 'lookBack' | 'judge' | 'examine';

/** What a worker is told: once its job and what it is about, then its orders. It answers with reports, and with null after each order. */
export type ToHelper =
  | { readonly kind: 'job'; readonly job: JobName; readonly about: unknown }
  | { readonly kind: 'order'; readonly order: unknown };

export type MakeInWorker = <Order, Report>(job: JobName, about: unknown, talk: HelperTalk<Report>) => Helper<Order>;

/** Workers for any job: all that stand on the model share one text, for it is large. Throws where the browser has none or forbids them. */
export async function workersHere(): Promise<MakeInWorker> {
  const { default: SideWorker } = await import('./sideWorker?worker&inline');
  return (job, about, talk) => {
    const worker = new SideWorker();
    const tell = (message: ToHelper): void => worker.postMessage(message);
    worker.onmessage = ({ data }: MessageEvent) => talk.report(data);
    worker.onerror = (event) => {
      event.preventDefault();
      talk.failed();
    };
    tell({ kind: 'job', job, about });
    return { give: (order) => tell({ kind: 'order', order }), stop: () => worker.terminate() };
  };
}

/** So long the page is held up at a time, ms, and so long it is left alone between, so that it stays alive. */
const SLICE_ms = 24;
const REST_ms = 8;

/** In the page. `carryOut`: works an order off; yields each report when it is there, and null now and then. */
export function inSlices<Order, Report>(
  carryOut: (order: Order) => Generator<Report | null, void>,
  talk: HelperTalk<Report>,
): Helper<Order> {
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
      timer = setTimeout(() => work(carryOut(order)), 0);
    },
    stop: () => clearTimeout(timer),
  };
}
