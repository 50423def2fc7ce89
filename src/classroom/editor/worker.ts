// The examiner in a worker: it works off one order, and tells how far it is some ten times a second.
import { carryOut, type Order } from './orders';

const TELL_ms = 100;

self.onmessage = ({ data }: MessageEvent<Order>): void => {
  let told_ms = -Infinity;
  for (const told of carryOut(data)) {
    const now_ms = performance.now();
    if (told.kind === 'step' && now_ms - told_ms < TELL_ms) continue;
    told_ms = now_ms;
    self.postMessage(told);
  }
};
