// A whole hole of 30 m by the careful crew: how long it takes, how fast the ticks are, how much memory it holds and saves.
import { jobOf, createCrew, isOver, playCrew, practiceFor, scenarioOf } from '$lessons';
import { act, createRun, sensesOf, snapshotOf, step, type Run } from '$sim';
import { medianTime_s, type Bench, type Row } from './bench';

/** The first ground of the usual setting on which the whole depth is reached. */
const SEED = 4;
const DEPTH_m = 30;
const RUNS = 5;
/** A snapshot each so many job seconds, so that any moment is at most so many ticks away. */
const SNAPSHOT_EVERY_s = 900;
const practice = practiceFor('open-hole', { depth_m: DEPTH_m, setting: 'flood-plain' })!;

const bench: Bench = {
  title: `a whole hole of ${DEPTH_m} m by the careful crew, seed ${SEED}, middle of ${RUNS} runs`,
  run(): Row[] {
    let run: Run = playCrew(practice, 'careful', SEED);
    const whole_s = medianTime_s(RUNS, () => {
      run = playCrew(practice, 'careful', SEED);
    });
    const model_s = medianTime_s(RUNS, () => again(run));
    const ticks = run.state.tick;
    const log_kB = JSON.stringify(run.log).length / 1000;
    const snapshots_kB = snapshots(SNAPSHOT_EVERY_s);
    return [
      { what: 'depth reached', value: run.state.hole.depth_m, unit: 'm' },
      { what: 'job', value: ticks / 3600, unit: 'h' },
      { what: 'whole run, crew and all', value: whole_s * 1000, unit: 'ms' },
      { what: 'whole run', value: ticks / whole_s, unit: 'ticks/s' },
      { what: 'the model alone', value: model_s * 1000, unit: 'ms' },
      { what: 'the model alone', value: ticks / model_s, unit: 'ticks/s' },
      { what: 'live state', value: heldBytes(run.state) / 1000, unit: 'kB' },
      { what: 'scratch memory of a tick', value: heldBytes(run.work) / 1000, unit: 'kB' },
      { what: 'log', value: log_kB, unit: 'kB' },
      { what: `snapshots, one each ${SNAPSHOT_EVERY_s} s, as JSON`, value: snapshots_kB, unit: 'kB' },
      { what: 'log and snapshots of 6 h', value: ((log_kB + snapshots_kB) * 6 * 3600) / ticks, unit: 'kB' },
    ];
  },
};
export default bench;

/** The same log without the crew's looking and deciding. */
function again(run: Run): void {
  const other = createRun(scenarioOf(practice, SEED));
  let next = 0;
  for (let tick = 0; tick < run.state.tick; tick++) {
    while (next < run.log.length && run.log[next][0] === tick) act(other, run.log[next][1], run.log[next++][2]);
    step(other);
  }
}

/** Size of all snapshots of the run together. */
function snapshots(every_s: number): number {
  const run = createRun(scenarioOf(practice, SEED));
  const crew = createCrew('careful', jobOf(practice));
  let sum_kB = 0;
  while (!isOver(run, practice)) {
    if (run.state.tick % every_s === 0) sum_kB += JSON.stringify(snapshotOf(run)).length / 1000;
    const deed = crew.decide(sensesOf(run));
    if (deed !== null) act(run, deed.action, deed.payload);
    if (!isOver(run, practice)) step(run);
  }
  return sum_kB;
}

/** Bytes that a value holds: 8 for a number or a reference, 2 for a letter, the buffers of typed arrays. */
function heldBytes(value: unknown): number {
  if (ArrayBuffer.isView(value)) return value.byteLength;
  if (typeof value === 'string') return 2 * value.length;
  if (typeof value !== 'object' || value === null) return 8;
  return Object.values(value).reduce<number>((sum, part) => sum + 8 + heldBytes(part), 0);
}
