// Going back and forth in a run of six hours: what log and snapshots weigh, what the state holds, how long a jump takes.
import { createCrew, isOver, jobOf, practiceFor, scenarioOf } from '$lessons';
import { act, createRun, createTrail, layMark, runAt, sensesOf, step, TRAIL_STEP_s, type Run, type Trail } from '$sim';
import type { Bench, Row } from './bench';

const SEED = 4;
const DEPTH_m = 30;
const JUMPS = 60;
const SIX_HOURS_s = 6 * 3600;
const practice = practiceFor('open-hole', { depth_m: DEPTH_m, setting: 'flood-plain' })!;

const bench: Bench = {
  title: `a trail along a hole of ${DEPTH_m} m by the careful crew, one mark each ${TRAIL_STEP_s} s`,
  run(): Row[] {
    const { run, trail, most_bytes } = marked();
    const ticks = run.state.tick;
    const log_kB = JSON.stringify(run.log).length / 1000;
    const trail_kB = JSON.stringify(trail).length / 1000;
    const sizes_kB = trail.marks.map((mark) => JSON.stringify(mark).length / 1000);
    const times_ms = jumps(run, trail);
    return [
      { what: 'job', value: ticks / 3600, unit: 'h' },
      { what: 'depth reached', value: run.state.hole.depth_m, unit: 'm' },
      { what: 'live state, at most', value: most_bytes / 1000, unit: 'kB' },
      { what: 'log', value: log_kB, unit: 'kB' },
      { what: `${trail.marks.length} snapshots as JSON`, value: trail_kB, unit: 'kB' },
      { what: 'largest snapshot', value: Math.max(...sizes_kB), unit: 'kB' },
      { what: 'log and snapshots of 6 h', value: ((log_kB + trail_kB) * SIX_HOURS_s) / ticks, unit: 'kB' },
      { what: `middle of ${JUMPS} jumps to any moment`, value: times_ms[JUMPS / 2], unit: 'ms' },
      { what: 'longest of the jumps', value: times_ms[JUMPS - 1], unit: 'ms' },
    ];
  },
};
export default bench;

/** Plays the hole and lays the trail as a debrief would have it. */
function marked(): { run: Run; trail: Trail; most_bytes: number } {
  const run = createRun(scenarioOf(practice, SEED));
  const crew = createCrew('careful', jobOf(practice));
  const trail = createTrail();
  let most_bytes = 0;
  while (!isOver(run, practice)) {
    const deed = crew.decide(sensesOf(run));
    if (deed !== null) act(run, deed.action, deed.payload);
    if (isOver(run, practice)) break;
    step(run);
    layMark(trail, run);
    if (run.state.tick % TRAIL_STEP_s === 0) most_bytes = Math.max(most_bytes, heldBytes(run.state));
  }
  return { run, trail, most_bytes };
}

/** Times of jumps spread over the run, in order of length; the first few, which warm up, are left out. */
function jumps(run: Run, trail: Trail): number[] {
  const times_ms: number[] = [];
  for (let n = -5; n < JUMPS; n++) {
    // A step that shares no factor with the spacing of the marks meets every distance from a mark.
    const tick = ((n + 5) * 7919) % run.state.tick;
    const start_ms = performance.now();
    runAt(run.scenario, run.log, trail, tick);
    if (n >= 0) times_ms.push(performance.now() - start_ms);
  }
  return times_ms.sort((a, b) => a - b);
}

/** Bytes that a value holds: 8 for a number or a reference, 2 for a letter, the buffers of typed arrays. */
function heldBytes(value: unknown): number {
  if (ArrayBuffer.isView(value)) return value.byteLength;
  if (typeof value === 'string') return 2 * value.length;
  if (typeof value !== 'object' || value === null) return 8;
  return Object.values(value).reduce<number>((sum, part) => sum + 8 + heldBytes(part), 0);
}
