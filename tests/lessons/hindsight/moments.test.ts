// Moments of a run: where it may be parted, how few stretches are left, and that a mark is the run as it stood.
import { describe, expect, it } from 'vitest';
import { hashRun, playLog } from '$sim';
import { marksAlong, MOST_STRETCHES, momentsOf, runAtMark } from '$lessons';
import { finished, lookedBack } from './runs';

const careful = finished('first-rods', 'careful', 3);

describe('moments', () => {
  it('begin and end with the run, rise, and part it into at most sixty stretches', () => {
    const moments = momentsOf(careful);
    expect(moments[0]).toEqual({ tick: 0, entries: 0 });
    expect(moments.at(-1)).toEqual({ tick: careful.state.tick, entries: careful.log.length });
    expect(moments.length).toBeGreaterThan(10);
    expect(moments.length - 1).toBeLessThanOrEqual(MOST_STRETCHES);
    for (let i = 1; i < moments.length; i++) {
      expect(moments[i]!.tick).toBeGreaterThan(moments[i - 1]!.tick);
      expect(moments[i]!.entries).toBeGreaterThanOrEqual(moments[i - 1]!.entries);
    }
  });

  it('part before an act: no entry before it lies later, none after it earlier', () => {
    for (const { tick, entries } of momentsOf(careful)) {
      for (const [at] of careful.log.slice(0, entries)) expect(at).toBeLessThanOrEqual(tick);
      for (const [at] of careful.log.slice(entries)) expect(at).toBeGreaterThanOrEqual(tick);
    }
  });

  it('keep the edges at acts that settle something when only few are left', () => {
    const kept = momentsOf(careful, 8);
    expect(kept.length).toBe(9);
    // A rod is added after a burst of small acts that belong to it.
    for (const [tick, action] of careful.log)
      if (action === 'addRod' || action === 'stopDrilling')
        expect(kept.some((moment) => moment.tick <= tick && tick - moment.tick <= 10)).toBe(true);
  });

  it('look at a long wait at each fifth minute of the job, and join bursts of acts', () => {
    const log = [10, 12, 14, 16].map((tick) => [tick, 'lift', {}] as [number, 'lift', object]);
    const run = { log, record: { events: [] }, state: { tick: 1000 } } as unknown as Parameters<typeof momentsOf>[0];
    expect(momentsOf(run).map(({ tick }) => tick)).toEqual([0, 10, 300, 600, 900, 1000]);
  });

  it('of a wait hold as many entries as were written before them', () => {
    const log = [
      [280, 'addRod', {}],
      [320, 'setFeed', {}],
      [900, 'addRod', {}],
    ] as [number, string, object][];
    const run = { log, record: { events: [] }, state: { tick: 1000 } } as unknown as Parameters<typeof momentsOf>[0];
    // The small act is too near its neighbour to part the run.
    expect(momentsOf(run).map(({ tick, entries }) => [tick, entries])).toEqual([
      [0, 0],
      [280, 0],
      [300, 1],
      [600, 2],
      [900, 2],
      [1000, 3],
    ]);
  });

  it('begin where the learner took the run over, and end where it was left to a crew', () => {
    const log = [
      [50, 'setOut', {}],
      [100, 'relieveCrew', {}],
      [200, 'addRod', {}],
      [300, 'leaveToCrew', {}],
      [400, 'planWell', {}],
    ] as [number, string, object][];
    const state = { tick: 1000, relief: { tick: 100 } };
    const run = { log, record: { events: [] }, state } as unknown as Parameters<typeof momentsOf>[0];
    expect(momentsOf(run)).toEqual([
      { tick: 100, entries: 2 },
      { tick: 200, entries: 2 },
      { tick: 300, entries: 3 },
      { tick: 1000, entries: 5 },
    ]);
  });
});

describe('a mark', () => {
  const { past, marks, run } = lookedBack(finished('first-rods', 'green', 7), 6);

  it('is the run as it stood, record and log included: played on it ends alike', () => {
    for (const mark of marks) {
      const again = runAtMark(past, mark);
      expect(again.state.tick).toBe(mark.tick);
      playLog(again, run.log, mark.entries, run.state.tick);
      expect(hashRun(again)).toBe(hashRun(run));
      expect(again.log).toEqual(run.log);
      expect(again.record.events).toEqual(run.record.events);
      expect(again.record.trace.length).toBe(run.record.trace.length);
      const rows = again.record.trace.length;
      expect(again.record.trace.columns.bed_m.slice(0, rows)).toEqual(run.record.trace.columns.bed_m.slice(0, rows));
    }
  });

  it('is the same laid by a replay from the beginning or from marks known before', () => {
    const moments = marks.map(({ tick, entries }) => ({ tick, entries }));
    const known = [marks[1]!, marks[4]!];
    const again = [...marksAlong(past, moments, known)].filter((mark) => mark !== null);
    expect(again).toEqual(marks);
  });

  it('is not changed by what is played from it', () => {
    const before = JSON.stringify(marks[2]!.snapshot);
    const rows = run.record.trace.columns.depth_m.slice(0, run.record.trace.length);
    playLog(runAtMark(past, marks[2]!), run.log, marks[2]!.entries, run.state.tick);
    expect(JSON.stringify(marks[2]!.snapshot)).toBe(before);
    expect(run.record.trace.columns.depth_m.slice(0, run.record.trace.length)).toEqual(rows);
  });
});
