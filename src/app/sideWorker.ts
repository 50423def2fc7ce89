// Long work in a worker: it is told its job once, then works off one order after the other.
import { carryOut as judge } from '../classroom/board/orders';
import { carryOut as examine } from '../classroom/editor/orders';
import { carryOut as lookBack } from '../hindsight/orders';
import type { JobName, ToHelper } from './sideWork';

const JOBS: Readonly<Record<JobName, (about: never, order: never) => Generator<unknown, void>>> = {
  lookBack,
  judge: (_about, order) => judge(order),
  examine: (_about, order) => examine(order),
};

let carryOut: ((order: never) => Generator<unknown, void>) | null = null;

self.onmessage = ({ data }: MessageEvent<ToHelper>): void => {
  if (data.kind === 'job') {
    const { job, about } = data;
    carryOut = (order) => JOBS[job](about as never, order);
    return;
  }
  for (const report of carryOut!(data.order as never)) if (report) self.postMessage(report);
  self.postMessage(null);
};
