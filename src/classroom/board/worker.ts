// Judges results in a worker, one order after the other.
import type { ToHelper } from '../../app/sideWork';
import { carryOut, type Order } from './orders';

self.onmessage = ({ data }: MessageEvent<ToHelper<null, Order>>): void => {
  if (data.kind === 'about') return;
  for (const judged of carryOut(data.order)) if (judged) self.postMessage(judged);
  self.postMessage(null);
};
