// Hands the tasks of a sweep to worker threads, each as soon as it is free.
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';

type Answer<Result> = { readonly result: Result } | { readonly problem: string };

/**
 * The results in the order of the tasks. A task that throws ends the sweep: a run that cannot finish is a fault to be
 * mended, not a score to be counted.
 */
export async function runAll<Task, Result>(
  sweepUrl: string,
  tasks: readonly Task[],
  threads: number = availableParallelism(),
): Promise<Result[]> {
  const results = new Array<Result>(tasks.length);
  let next = 0;
  const workers = Array.from({ length: Math.max(1, Math.min(threads, tasks.length)) }, () => startWorker(sweepUrl));
  try {
    await Promise.all(
      workers.map(async (worker) => {
        while (next < tasks.length) {
          const index = next++;
          const answer = await ask<Task, Result>(worker, tasks[index]);
          if ('problem' in answer) throw new Error(`task ${JSON.stringify(tasks[index])} failed:\n${answer.problem}`);
          results[index] = answer.result;
        }
      }),
    );
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
  return results;
}

function startWorker(sweepUrl: string): Worker {
  const tsconfig = fileURLToPath(new URL('../tsconfig.json', import.meta.url));
  return new Worker(new URL('./worker.mjs', import.meta.url), { workerData: { sweep: sweepUrl, tsconfig } });
}

function ask<Task, Result>(worker: Worker, task: Task): Promise<Answer<Result>> {
  return new Promise((resolve, reject) => {
    worker.removeAllListeners();
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error(`a thread of the sweep ended by itself with code ${code}`)));
    worker.postMessage(task);
  });
}
