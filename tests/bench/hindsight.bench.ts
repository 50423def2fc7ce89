// Looking back on a whole well with two threads, as a page on two cores does: when the first figure, the three dearest and all are there.
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { hashRun, type Run } from '$sim';
import { isScored, lessonById, playCrew } from '$lessons';
import type { Hand, MakeHand } from '../../src/hindsight/hands';
import { LookBack, type Progress } from '../../src/hindsight/lookBack';
import type { Report } from '../../src/hindsight/orders';
import { bookOf } from '../lessons/hindsight/runs';
import type { Bench, Row } from './bench';

const THREADS = 2;
const RUNS = [
  ['first-rods', 'green', 7],
  ['open-well', 'steady', 3],
] as const;

const bench: Bench = {
  title: `looking back with ${THREADS} threads`,
  async run(): Promise<Row[]> {
    const rows: Row[] = [];
    for (const [id, crew, seed] of RUNS) rows.push(...(await measured(id, crew, seed)));
    return rows;
  },
};
export default bench;

/** Threads that have loaded everything: a page does that while the learner answers. */
async function threads(): Promise<Worker[]> {
  const at = (path: string): string => new URL(path, import.meta.url).href;
  const workerData = {
    tsconfig: fileURLToPath(at('../tsconfig.json')),
    orders: at('../../src/hindsight/orders.ts'),
  };
  const made = Array.from(
    { length: THREADS },
    () => new Worker(new URL('./hand.mjs', import.meta.url), { workerData }),
  );
  await Promise.all(made.map((worker) => new Promise((resolve) => worker.once('message', resolve))));
  return made;
}

async function measured(id: string, crew: string, seed: number): Promise<Row[]> {
  const lesson = lessonById(id)!;
  const run: Run = playCrew(lesson, crew, seed);
  const { marks: taken } = bookOf(run);
  const waiting = await threads();
  const makeHand: MakeHand = (past, talk): Hand => {
    const worker = waiting.pop()!;
    worker.on('message', (report: Report | null) => talk.report(report));
    worker.postMessage({ kind: 'past', past });
    return {
      give: (order) => worker.postMessage({ kind: 'order', order }),
      stop: () => void worker.terminate(),
    };
  };
  const start_ms = performance.now();
  const cpuAtStart_us = process.cpuUsage().user;
  const since = (): number => (performance.now() - start_ms) / 1000;
  const at: { first?: number; marks?: number; settled?: number; all?: number; luck?: number } = {};
  let last: Progress | null = null;
  let cpuAll_s = 0;
  let valued = 0;
  await new Promise<void>((resolve) => {
    const lookBack = new LookBack({
      run,
      lesson,
      scored: isScored(lesson),
      kept: null,
      hash: hashRun(run),
      taken,
      makeHand,
      hands: THREADS,
      onchange(progress) {
        last = progress;
        if (progress.known > 1) at.first ??= since();
        if (progress.marks.every((mark) => mark !== undefined)) at.marks ??= since();
        if (progress.settled) at.settled ??= since();
        if (progress.all && at.all === undefined) {
          at.all = since();
          valued = progress.known;
          cpuAll_s = (process.cpuUsage().user - cpuAtStart_us) / 1e6;
        }
        if (!progress.done) return;
        at.luck = since();
        lookBack.stop();
        resolve();
      },
    });
    lookBack.start();
  });
  const { moments, dearest } = last!;
  const what = (text: string): string => `${id}, ${crew}: ${text}`;
  return [
    { what: what('stretches'), value: moments.length - 1, unit: '' },
    { what: what('moments valued'), value: valued, unit: '' },
    { what: what('marks laid'), value: at.marks!, unit: 's' },
    { what: what('first figure'), value: at.first!, unit: 's' },
    { what: what(`${dearest.length} dearest`), value: at.settled!, unit: 's' },
    { what: what('all'), value: at.all!, unit: 's' },
    { what: what('all, time of processors'), value: cpuAll_s, unit: 's' },
    { what: what('and luck'), value: at.luck!, unit: 's' },
  ];
}
