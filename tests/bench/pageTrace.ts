// The app in Chromium with its main thread watched: what each picture cost it, and its longest task.
import { chromium, type Browser, type CDPSession, type Page } from 'playwright-core';
import { fileURLToPath } from 'node:url';
import { buildIfNeeded } from '../../src/serve/build.mjs';
import { createAppServer, listen } from '../../src/serve/server.mjs';
import { CHROMIUM_ARGS, findBrowser } from '../run/browsers.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));

export interface AppPage {
  readonly page: Page;
  readonly origin: string;
  readonly devtools: CDPSession;
  close(): Promise<void>;
}

/** Builds where sources are newer, serves the app on a port of its own, and opens a page of the given size. Throws where there is no Chromium. */
export async function openApp(width: number, height: number): Promise<AppPage> {
  buildIfNeeded(root);
  const server = createAppServer(`${root}dist`);
  const port = 20_000 + (process.pid % 12_000);
  await listen(server, { host: '127.0.0.1', port, tries: 20 });
  const executablePath = findBrowser('chromium');
  if (executablePath === null) throw new Error('Chromium is missing.');
  const browser: Browser = await chromium.launch({
    executablePath,
    args: [...CHROMIUM_ARGS, '--enable-precise-memory-info'],
  });
  const page = await browser.newPage({ viewport: { width, height } });
  const address = server.address();
  const origin = `http://127.0.0.1:${typeof address === 'object' && address ? address.port : port}`;
  return {
    page,
    origin,
    devtools: await page.context().newCDPSession(page),
    async close() {
      await browser.close();
      server.close();
    },
  };
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly dur?: number;
  /** Time of the processor that the thread had, us: what else the machine does is not in it. */
  readonly tdur?: number;
  readonly pid: number;
  readonly tid: number;
  readonly args?: { readonly name?: string };
}

/** Work of the page's main thread; `ran` counts only the time of the processor that it had. */
export interface Work {
  /** Between one picture and the next, ms, sorted. */
  readonly perFrame_ms: readonly number[];
  readonly perFrameRan_ms: readonly number[];
  /** The longest task, ms. */
  readonly longest_ms: number;
  readonly longestRan_ms: number;
}

/** Traces the page while something goes on in it. */
export async function traced({ devtools }: AppPage, goesOn: () => Promise<void>): Promise<Work> {
  const events: TraceEvent[] = [];
  const collect = ({ value }: { value: unknown[] }): void => void events.push(...(value as TraceEvent[]));
  devtools.on('Tracing.dataCollected', collect);
  await devtools.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['toplevel', 'devtools.timeline', '__metadata'] },
  });
  await goesOn();
  const complete = new Promise((resolve) => devtools.once('Tracing.tracingComplete', resolve));
  await devtools.send('Tracing.end');
  await complete;
  devtools.off('Tracing.dataCollected', collect);
  return workIn(events);
}

/** Tasks of the renderer's main thread, cut where a picture begins. */
function workIn(events: readonly TraceEvent[]): Work {
  // A worker that draws has frames of its own: they are not the page's.
  const mains = events.filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain');
  const frames = events.filter(
    ({ name, pid, tid }) => name === 'FireAnimationFrame' && mains.some((main) => main.pid === pid && main.tid === tid),
  );
  // A page that draws no pictures of its own accord is the one that works most.
  const thread = frames[0] ?? busiest(events, mains);
  if (!thread) return { perFrame_ms: [], perFrameRan_ms: [], longest_ms: 0, longestRan_ms: 0 };
  const own = ({ pid, tid }: TraceEvent): boolean => pid === thread.pid && tid === thread.tid;
  const tasks = outermost(
    events.filter((event) => own(event) && event.ph === 'X' && /RunTask$/.test(event.name)).sort((a, b) => a.ts - b.ts),
  );
  const starts = frames
    .filter(own)
    .map(({ ts }) => ts)
    .sort((a, b) => a - b);
  const took: TimeOf = ({ dur = 0 }) => dur;
  const ran: TimeOf = ({ tdur = 0 }) => tdur;
  const longest_ms = (time: TimeOf): number => tasks.reduce((most, task) => Math.max(most, time(task)), 0) / 1000;
  return {
    perFrame_ms: betweenPictures_ms(tasks, starts, took),
    perFrameRan_ms: betweenPictures_ms(tasks, starts, ran),
    longest_ms: longest_ms(took),
    longestRan_ms: longest_ms(ran),
  };
}

type TimeOf = (task: TraceEvent) => number;

function busiest(events: readonly TraceEvent[], mains: readonly TraceEvent[]): TraceEvent | undefined {
  const worked = ({ pid, tid }: TraceEvent): number =>
    events.reduce((sum, one) => sum + (one.pid === pid && one.tid === tid && one.ph === 'X' ? (one.dur ?? 0) : 0), 0);
  return [...mains].sort((a, b) => worked(b) - worked(a))[0];
}

/** A task inside a task is counted once. */
function outermost(tasks: readonly TraceEvent[]): TraceEvent[] {
  let end_us = -Infinity;
  return tasks.filter(({ ts, dur = 0 }) => {
    if (ts < end_us) return false;
    end_us = ts + dur;
    return true;
  });
}

function betweenPictures_ms(tasks: readonly TraceEvent[], starts: readonly number[], time: TimeOf): number[] {
  const sums_ms: number[] = [];
  let next = 0;
  let sum_us = 0;
  for (const task of tasks) {
    const end_us = task.ts + (task.dur ?? 0);
    if (next < starts.length && end_us > starts[next]!) {
      if (next > 0) sums_ms.push(sum_us / 1000);
      sum_us = 0;
      while (next < starts.length && starts[next]! < end_us) next++;
    }
    sum_us += time(task);
  }
  return sums_ms.sort((a, b) => a - b);
}

export const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
