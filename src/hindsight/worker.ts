// A hand in a worker: it is told the run once, then works off one order after the other.
import type { Past } from '$lessons';
import type { ToHelper } from '../app/sideWork';
import { carryOut, type Order } from './orders';

let past: Past | null = null;

self.onmessage = ({ data }: MessageEvent<ToHelper<Past, Order>>): void => {
  if (data.kind === 'about') {
    past = data.about;
    return;
  }
  for (const report of carryOut(past!, data.order)) if (report) self.postMessage(report);
  self.postMessage(null);
};
