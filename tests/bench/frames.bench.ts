// What drawing costs the page's main thread in the busiest scene: a deep hole that falls in, at sixty times true speed; and what stays in memory.
import { act, sensesOf, step, type Run } from '$sim';
import { createCrew, isOver, jobFor, practiceFor, startRun, writeRunFile, type Lesson } from '$lessons';
import type { Bench, Row } from './bench';
import { heap_MB } from './heap';
import { openApp, quantile, traced, type AppPage, type Work } from './pageTrace';

const DEEP_m = 30;
/** Real seconds watched, as it is and slowed down; real minutes until the memory is read (BENCH_MINUTES; wanted: 20). */
const WATCHED_s = 15;
const SLOWER = 6;
const MINUTES = Number(process.env.BENCH_MINUTES ?? 2);
/** Both ways of drawing, or the one that BENCH_RENDERER names. */
const RENDERERS = process.env.BENCH_RENDERER ? [process.env.BENCH_RENDERER] : ['webgl', 'canvas'];

const bench: Bench = {
  title: `pictures at the hole in Chromium, ${DEEP_m} m deep, 60 times true speed`,
  async run(): Promise<Row[]> {
    const lesson = practiceFor('open-hole', { depth_m: DEEP_m, setting: 'old-channel' })!;
    const file = writeRunFile(fallingIn(lesson), lesson, { who: 'T-01', name: 'Busy' });
    const rows: Row[] = [];
    for (const renderer of RENDERERS) {
      const app = await openApp(1280, 800);
      try {
        await takeUp(app, file, renderer);
        rows.push(...(await measured(app, renderer)));
      } finally {
        await app.close();
      }
    }
    return rows;
  },
};
export default bench;

/** A green crew's run when ground falls from the wall of its deep hole; the deepest such moment of a few grounds. */
function fallingIn(lesson: Lesson): Run {
  let best: { seed: number; tick: number; depth_m: number } | null = null;
  for (let seed = 1; seed <= 4; seed++)
    play(lesson, seed, Infinity, ({ state }) => {
      const { depth_m } = state.hole;
      if (state.machine.hole === 'sloughing' && depth_m > (best?.depth_m ?? 0))
        best = { seed, tick: state.tick, depth_m };
    });
  const { seed, tick } = best ?? { seed: 1, tick: 3600 };
  return play(lesson, seed, tick, () => undefined);
}

function play(lesson: Lesson, seed: number, tick: number, look: (run: Run) => void): Run {
  const run = startRun(lesson, seed);
  const crew = createCrew('steady', jobFor(run, lesson));
  while (run.state.tick < tick && !isOver(run, lesson)) {
    const deed = crew.decide(sensesOf(run));
    if (deed) act(run, deed.action, deed.payload);
    step(run);
    look(run);
  }
  return run;
}

async function takeUp({ page, origin }: AppPage, file: string, renderer: string): Promise<void> {
  await page.goto(`${origin}/?renderer=${renderer}#/runs`);
  await page.getByText('Or paste the text of a run').click();
  await page.getByRole('textbox', { name: 'Text of a run file' }).fill(file);
  await page.getByRole('button', { name: 'Open this text' }).click();
  await page.getByRole('button', { name: 'Go on with Busy' }).click({ timeout: 120_000 });
  await page.getByRole('timer').waitFor({ timeout: 60_000 });
  await page.getByText('The drawing is being made').waitFor({ state: 'detached', timeout: 60_000 });
}

/** Keeps the clock going: whatever happened may have slowed it down. */
async function running({ page }: AppPage, time_s: number): Promise<void> {
  // By its label: a look by its role would have the page reckon the roles of all there is, and that would be counted as its work.
  const fast = page.locator('button[aria-label="60 times true speed"]');
  for (const end_ms = performance.now() + 1000 * time_s; performance.now() < end_ms;) {
    if ((await fast.getAttribute('aria-pressed')) !== 'true') await fast.click();
    await page.waitForTimeout(500);
  }
}

/** Who draws: the chip's or the imitating program's own name, for a picture in WebGL; and where. */
async function drawnBy({ page }: AppPage, renderer: string): Promise<string> {
  const place = page.workers().length > 0 ? 'in a worker' : 'in the page';
  if (renderer === 'canvas') return `2D canvas, ${place}`;
  const name = await page.evaluate(() => {
    const gl = document.createElement('canvas').getContext('webgl2');
    const named = gl?.getExtension('WEBGL_debug_renderer_info');
    return String(gl?.getParameter(named ? named.UNMASKED_RENDERER_WEBGL : gl.RENDERER));
  });
  return `${name}, ${place}`;
}

/** Job seconds on the clock. */
async function jobTime_s({ page }: AppPage): Promise<number> {
  const [h = 0, min = 0, s = 0] = (await page.getByRole('timer').innerText()).split(':').map(Number);
  return h * 3600 + min * 60 + s;
}

/** What a stretch of work cost, and how much of the job was done in it. */
async function watched(app: AppPage): Promise<Work & { job_s: number }> {
  const from_s = await jobTime_s(app);
  const work = await traced(app, () => running(app, WATCHED_s));
  return { ...work, job_s: (await jobTime_s(app)) - from_s };
}

async function measured(app: AppPage, name: string): Promise<Row[]> {
  console.log(`  ${name}: drawn by ${await drawnBy(app, name)}`);
  const free = await watched(app);
  await app.devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const slow = await watched(app);
  await app.devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const before_MB = await heap_MB(app);
  await running(app, 60 * MINUTES);
  const after_MB = await heap_MB(app);
  const rows = (what: string, { perFrame_ms, perFrameRan_ms, longest_ms, job_s }: typeof free): Row[] => [
    { what: `${name}, ${what}: pictures`, value: perFrame_ms.length, unit: '' },
    { what: `${name}, ${what}: job seconds in each real one`, value: job_s / WATCHED_s, unit: '' },
    { what: `${name}, ${what}: work a picture, middle`, value: quantile(perFrame_ms, 0.5), unit: 'ms' },
    { what: `${name}, ${what}: work a picture, p95`, value: quantile(perFrame_ms, 0.95), unit: 'ms' },
    {
      what: `${name}, ${what}: the same of the processor alone, middle`,
      value: quantile(perFrameRan_ms, 0.5),
      unit: 'ms',
    },
    {
      what: `${name}, ${what}: the same of the processor alone, p95`,
      value: quantile(perFrameRan_ms, 0.95),
      unit: 'ms',
    },
    { what: `${name}, ${what}: longest task`, value: longest_ms, unit: 'ms' },
  ];
  return [
    ...rows('as it is', free),
    ...rows(`${SLOWER} times slower`, slow),
    { what: `${name}: heap before`, value: before_MB, unit: 'MB' },
    { what: `${name}: heap after ${MINUTES} min at 60 times`, value: after_MB, unit: 'MB' },
  ];
}
