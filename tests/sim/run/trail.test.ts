// A trail of snapshots leads to any moment of a run, equal to the last bit, also after going back.
import { describe, expect, it } from 'vitest';
import {
  act,
  createStream,
  createTrail,
  cutTrail,
  hashRun,
  layMark,
  replayRun,
  runAt,
  step,
  trailOf,
  type Run,
  type Trail,
} from '../../../sim';
import { rigScenario } from '../../rig';
import { playRandom } from '../random/crew';

const scenario = rigScenario({ seed: 11, rods: 2, starter_m: 1.2, maxDepth_m: 12 });
const TICKS = 900;
const STEP_s = 200;
const throughText = (trail: Trail): Trail => JSON.parse(JSON.stringify(trail)) as Trail;

function played(): { run: Run; trail: Trail; hashes: string[] } {
  const trail = createTrail(STEP_s);
  const hashes: string[] = [];
  // The hash of a tick is taken when its acts are done: just before the step that ends it.
  const { run } = playRandom(scenario, 'trail', TICKS, (one) => layMark(trail, one));
  for (let tick = 0; tick < TICKS; tick += 37) hashes[tick] = hashRun(replayRun(scenario, run.log, tick));
  return { run, trail, hashes };
}

describe('trail', () => {
  const { run, trail, hashes } = played();

  it('lays a mark each so many seconds', () => {
    expect(trail.marks.map(({ tick }) => tick)).toEqual([200, 400, 600, 800]);
    expect(run.log.length).toBeGreaterThan(20);
  });

  it('leads to any moment, forwards and backwards, as if played from the start', () => {
    const kept = throughText(trail);
    const ticks = Object.keys(hashes).map(Number);
    const stream = createStream('moments');
    ticks.sort(() => stream.uniform() - 0.5);
    for (const tick of [...ticks, 0]) {
      const there = runAt(scenario, run.log, kept, tick);
      expect(there.state.tick).toBe(tick);
      expect(hashRun(there)).toBe(hashes[tick]);
      expect(there.log).toEqual(run.log.filter(([at]) => at <= tick));
    }
  });

  it('a run taken from it plays on to the same end', () => {
    const there = runAt(scenario, run.log, trail, 450);
    for (const [tick, action, payload] of run.log.slice(there.log.length)) {
      while (there.state.tick < tick) step(there);
      act(there, action, payload);
    }
    while (there.state.tick < TICKS) step(there);
    expect(hashRun(there)).toBe(hashRun(run));
  });

  it('can be laid afterwards from the log alone', () => {
    const late = trailOf(scenario, run.log, TICKS, STEP_s);
    expect(late.marks.map(({ tick }) => tick)).toEqual([200, 400, 600, 800]);
    for (const tick of [199, 200, 201, 640]) {
      expect(hashRun(runAt(scenario, run.log, late, tick))).toBe(hashRun(replayRun(scenario, run.log, tick)));
    }
  });

  it('is cut where a run goes back, and goes on from there', () => {
    const cut = throughText(trail);
    cutTrail(cut, 600);
    expect(cut.marks.map(({ tick }) => tick)).toEqual([200, 400]);
    const again = replayRun(
      scenario,
      run.log.filter(([tick]) => tick < 600),
      600,
    );
    act(again, 'setFeed', { feed_frac: 0 });
    act(again, 'lift', { distance_m: 0.2, speed_ms: 0.1 });
    while (again.state.tick < 700) {
      step(again);
      layMark(cut, again);
    }
    expect(cut.marks.map(({ tick }) => tick)).toEqual([200, 400, 601]);
    const wanted = hashRun(replayRun(scenario, again.log, 650));
    expect(hashRun(runAt(scenario, again.log, cut, 650))).toBe(wanted);
  });

  it('a snapshot of another form or with a damaged row is turned away', () => {
    const mark = trail.marks[0];
    const other = { ...trail, marks: [{ ...mark, snapshot: { ...mark.snapshot, form: 1 } }] };
    expect(() => runAt(scenario, run.log, other, 300)).toThrow('form');
    const damaged = JSON.parse(JSON.stringify(trail).replace(/"f64":"/g, '"f64":"!')) as Trail;
    expect(() => runAt(scenario, run.log, damaged, 300)).toThrow(RangeError);
  });
});
