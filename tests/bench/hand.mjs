// A thread that looks back on a run, as a worker of the page does.
import { parentPort, workerData } from 'node:worker_threads';
import { register } from 'tsx/esm/api';

register({ tsconfig: workerData.tsconfig });
const { carryOut } = await import(workerData.orders);
/** @type {unknown} */
let past = null;
parentPort?.on('message', (message) => {
  if (message.kind === 'past') {
    past = message.past;
    return;
  }
  for (const report of carryOut(past, message.order)) if (report) parentPort?.postMessage(report);
  parentPort?.postMessage(null);
});
parentPort?.postMessage('ready');
