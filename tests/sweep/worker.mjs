// A thread of the sweep: loads one sweep and runs the tasks it is sent, one at a time.
import { parentPort, workerData } from 'node:worker_threads';
import { register } from 'tsx/esm/api';

register({ tsconfig: workerData.tsconfig });
const { default: sweep } = await import(workerData.sweep);
parentPort?.on('message', async (task) => {
  try {
    parentPort?.postMessage({ result: await sweep.run(task) });
  } catch (error) {
    parentPort?.postMessage({ problem: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});
