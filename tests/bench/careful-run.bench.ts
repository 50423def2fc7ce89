// A whole careful run of three rods: how long it takes, how fast the ticks are, and which part of the model costs what.
import { playCrew, lessonById } from '$lessons';
import { act, createRun, hashRun, snapshotOf, step, type Run } from '$sim';
import { Session, type Profiler } from 'node:inspector/promises';
import { scenarioOf } from '$lessons';
import { medianTime_s, type Bench, type Row } from './bench';

const SEED = 1;
const RUNS = 5;

const bench: Bench = {
  title: `the careful crew's first rods, seed ${SEED}, middle of ${RUNS} runs`,
  async run(): Promise<Row[]> {
    const lesson = lessonById('first-rods')!;
    let run: Run = playCrew(lesson, 'careful', SEED);
    const whole_s = medianTime_s(RUNS, () => {
      run = playCrew(lesson, 'careful', SEED);
    });
    // The same log without the crew's looking and deciding: the model alone.
    const steps_s = medianTime_s(RUNS, () => {
      const again = createRun(scenarioOf(lesson, SEED));
      let next = 0;
      for (let tick = 0; tick < run.state.tick; tick++) {
        while (next < run.log.length && run.log[next][0] === tick) act(again, run.log[next][1], run.log[next++][2]);
        step(again);
      }
    });
    const ticks = run.state.tick;
    const heap_bytes = process.memoryUsage().heapUsed;
    return [
      { what: 'ticks of the job', value: ticks, unit: 's' },
      { what: 'whole run, crew and all', value: whole_s * 1000, unit: 'ms' },
      { what: 'the model alone', value: ticks / steps_s, unit: 'ticks/s' },
      { what: 'snapshot', value: JSON.stringify(snapshotOf(run)).length / 1000, unit: 'kB' },
      { what: 'hash of a state', value: medianTime_s(RUNS, () => void hashRun(run)) * 1000, unit: 'ms' },
      { what: 'memory in use after the runs', value: heap_bytes / 1e6, unit: 'MB' },
      ...(await shares(() => playCrew(lesson, 'careful', SEED))),
    ];
  },
};
export default bench;

/** The share of time spent in each folder, by sampling: a function's own time goes to the folder it is written in. */
async function shares(run: () => unknown): Promise<Row[]> {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.setSamplingInterval', { interval: 100 });
  await session.post('Profiler.start');
  for (let i = 0; i < RUNS; i++) run();
  const { profile } = await session.post('Profiler.stop');
  session.disconnect();

  const folders = new Map(profile.nodes.map((node) => [node.id, folderOf(node)]));
  const times = new Map<string, number>();
  (profile.samples ?? []).forEach((id, index) => {
    const folder = folders.get(id)!;
    times.set(folder, (times.get(folder) ?? 0) + (profile.timeDeltas?.[index] ?? 0));
  });
  const total = [...times.values()].reduce((sum, time) => sum + time, 0);
  return [...times]
    .map(([folder, time]) => ({ what: `share of ${folder}`, value: (time / total) * 100, unit: '%' }))
    .filter(({ value }) => value >= 0.1)
    .sort((a, b) => b.value - a.value);
}

function folderOf({ callFrame }: Profiler.ProfileNode): string {
  const own = /\/(sim\/[^/]+|lessons)\//.exec(callFrame.url);
  if (own) return own[1];
  if (/\/@stdlib\//.test(callFrame.url)) return 'special functions';
  if (callFrame.functionName === '(garbage collector)') return 'clearing memory';
  return 'the rest (engine, loading)';
}
