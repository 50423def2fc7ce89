// Lessons that begin where another crew stopped, and end with one: the start is played anew, the learner answers for the learner's own part only.
import { beforeAll, describe, expect, it } from 'vitest';
import {
  createCrew,
  entriesBefore,
  grade,
  isOver,
  jobFor,
  lessonById,
  openStart,
  outcomeOf,
  playOn,
  replayFile,
  runFileOf,
  startRun,
  startTick,
  viewOf,
  type Lesson,
} from '$lessons';
import { act, hashRun, replayRun, restoreRun, snapshotOf, step, type Run } from '$sim';

const rods = lessonById('first-rods')!;
const well = lessonById('open-well')!;
const SEED = 3;

const secondRod: Lesson = { ...rods, prologue: { crew: 'careful', until: { depth_m: 1.6 } } };
const lastAct: Lesson = {
  ...well,
  prologue: { crew: 'careful', until: { event: 'drillingStopped' } },
  leaves: { crew: 'careful', from: 'wellPlanned' },
};

describe('a lesson that begins in the middle', () => {
  let begun: Run;
  beforeAll(() => {
    begun = startRun(secondRod, SEED);
  });

  it('begins at the depth the other crew was to reach, with its acts in the log', () => {
    expect(begun.state.hole.depth_m).toBeGreaterThanOrEqual(1.6);
    expect(begun.state.hole.depth_m).toBeLessThan(1.7);
    expect(begun.log.at(-1)).toEqual([startTick(begun), 'relieveCrew', {}]);
    expect(entriesBefore(begun)).toBe(begun.log.length);
  });

  it('is the same run played from its log alone, and from a snapshot', () => {
    const again = replayRun(begun.scenario, begun.log, begun.state.tick);
    expect(hashRun(again)).toBe(hashRun(begun));
    const restored = restoreRun(begun.scenario, snapshotOf(begun));
    expect(hashRun(restored)).toBe(hashRun(begun));
    expect(startTick(restored)).toBe(startTick(begun));
  });

  it('is the same played in small parts', () => {
    const start = openStart(secondRod, SEED);
    let last = 0;
    while (!start.advance(50)) {
      expect(start.share_frac).toBeGreaterThanOrEqual(last);
      last = start.share_frac;
    }
    expect(start.share_frac).toBe(1);
    expect(hashRun(start.run)).toBe(hashRun(begun));
  });

  it('counts time, powder, deeds and samples from there', () => {
    const run = startRun(secondRod, SEED);
    const view = viewOf(run, secondRod);
    expect(view.log).toEqual([]);
    expect(view.events).toEqual([]);
    expect(view.powderUsed_kg).toBe(0);
    expect(view.powderBefore_kg).toBeGreaterThan(0);
    expect(view.start_tick).toBe(run.state.tick);
    const items = Object.fromEntries(grade(run, secondRod).items.map((item) => [item.id, item]));
    // The crew before read its cautions and caught a sample: neither is the learner's.
    expect(items.cautionsRead!.points).toBe(0);
    expect(items.namedRight!.points).toBe(0);
    // It took an hour; that is not counted against the learner.
    expect(items.jobTime!.reason.data.time_min).toBe(0);
    for (let i = 0; i < 600; i++) step(run);
    const later = viewOf(run, secondRod);
    expect(later.trace.columns.time_s[0]).toBeGreaterThanOrEqual(startTick(run));
    expect(later.trace.length).toBeGreaterThanOrEqual(119);
  });

  it('is over when the time from the start is up', () => {
    const short: Lesson = { ...secondRod, end: { ...secondRod.end, cap_s: 60 } };
    const run = startRun(short, SEED);
    for (let i = 0; i < 59; i++) step(run);
    expect(isOver(run, short)).toBe(false);
    step(run);
    expect(isOver(run, short)).toBe(true);
    expect(outcomeOf(run, short).key).toBe('outcome.timeUp');
  });

  it('is played again from its file, and another start is found out', () => {
    const run = startRun(secondRod, SEED);
    act(run, 'readCaution', { caution: 'rods' });
    for (let i = 0; i < 30; i++) step(run);
    const file = runFileOf(run, secondRod);
    expect(file.start_tick).toBe(startTick(run));
    expect(replayFile(file, secondRod).problem).toBeNull();
    const earlier = { ...file, start_tick: file.start_tick! - 1 };
    expect(replayFile(earlier, secondRod).problem?.problem).toBe('problem.file.otherStart');
    const altered = { ...file, log: file.log.filter(([, action]) => action !== 'nameSample') };
    expect(replayFile(altered, secondRod).problem?.problem).toBe('problem.file.otherStart');
  });

  it('relieves a crew only once, and only where there is one', () => {
    const run = startRun(secondRod, SEED);
    expect(act(run, 'relieveCrew', {})).toEqual({ kind: 'refused', reason: 'notOffered' });
    expect(act(startRun(rods, SEED), 'relieveCrew', {})).toEqual({ kind: 'refused', reason: 'notOffered' });
  });

  it('says so when the crew before never gets there', () => {
    const never: Lesson = { ...rods, prologue: { crew: 'careful', until: { event: 'casingLanded' } } };
    expect(() => startRun(never, SEED)).toThrow(RangeError);
  });
});

describe('leaving the rest to a crew', () => {
  it('is refused where it is not offered, and before its time', () => {
    expect(act(startRun(rods, SEED), 'leaveToCrew', {})).toEqual({ kind: 'refused', reason: 'notOffered' });
    const early: Lesson = { ...rods, leaves: { crew: 'careful', from: 'sampleCaught' } };
    const run = startRun(early, SEED);
    expect(act(run, 'leaveToCrew', {})).toEqual({ kind: 'refused', reason: 'tooSoonToLeave' });
  });

  it('goes on by itself to the end once the decision is made, and once only', () => {
    const run = startRun(lastAct, SEED);
    expect(run.state.well).toBeNull();
    expect(run.state.leaving).toBeUndefined();
    playOn(run, lastAct, createCrew('careful', jobFor(run, lastAct)));
    expect(outcomeOf(run, lastAct).key).toBe('outcome.handedOver');
    expect(run.state.leaving).toBe('left');
    expect(run.log.filter(([, action]) => action === 'leaveToCrew')).toHaveLength(1);
    expect(act(run, 'leaveToCrew', {})).toEqual({ kind: 'refused', reason: 'ended' });
  }, 120_000);
});

describe('a lesson with a well in view that ends with the hole', () => {
  it('ends when the drilling is stopped, however deep', () => {
    const hole: Lesson = { ...well, end: { ...well.end, at: 'stopped' } };
    const run = startRun(hole, SEED);
    playOn(run, hole, createCrew('careful', jobFor(run, hole)));
    expect(outcomeOf(run, hole).key).toBe('outcome.drilled');
    expect(run.log.some(([, action]) => action === 'joinCasing' || action === 'planWell')).toBe(false);
    expect(run.log.some(([, action]) => action === 'logLayer')).toBe(true);
    expect(act(run, 'pullOut', { speed_ms: 0.1, topUp: true })).toEqual({ kind: 'refused', reason: 'ended' });
  }, 120_000);
});
