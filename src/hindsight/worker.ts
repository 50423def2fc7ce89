// A hand in a worker: it is told the run once, then works off one order after the other.
import type { Past } from '$lessons';
import { carryOut, type Order } from './orders';

export type ToWorker =
  { readonly kind: 'past'; readonly past: Past } | { readonly kind: 'order'; readonly order: Order };

let past: Past | null = null;

self.onmessage = ({ data }: MessageEvent<ToWorker>): void => {
  if (data.kind === 'past') {
    past = data.past;
    return;
  }
  for (const report of carryOut(past!, data.order)) if (report) self.postMessage(report);
  self.postMessage(null);
};
