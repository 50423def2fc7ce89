// What goes wrong in a lesson: the seed draws when, the ground holds its cobbles and its salt, and the crews answer as they should.
import { describe, expect, it } from 'vitest';
import { createRun, layerAt, sensesOf, step, act, type Run } from '../../sim';
import { checkLesson, lessonById, playCrew, scenarioOf, type Lesson } from '../../lessons';

const BASE = lessonById('first-rods')!;
const withFaults = (faults: Lesson['faults']): Lesson => ({ ...BASE, faults });

const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

describe('the moments', () => {
  it('are drawn by the seed between the two of the lesson, each fault for itself', () => {
    const lesson = withFaults([
      { id: 'pumpStops', from: { time_s: 600 }, to: { time_s: 1200 } },
      { id: 'hoseBursts', from: { depth_m: 1 }, to: { depth_m: 3 }, share_frac: [0.3, 0.7] },
      {
        id: 'helperAway',
        from: { event: 'flowStarted', delay_s: 10 },
        to: { event: 'flowStarted', delay_s: 90 },
        time_s: [300, 900],
      },
    ]);
    const drawn = SEEDS.map((seed) => scenarioOf(lesson, seed).faults!);
    for (const [engine, hose, helper] of drawn) {
      const { tick } = engine!.at as { tick: number };
      expect(tick >= 600 && tick <= 1200 && Number.isInteger(tick)).toBe(true);
      const { depth_m } = hose!.at as { depth_m: number };
      expect(depth_m >= 1 && depth_m <= 3 && hose!.share_frac! >= 0.3 && hose!.share_frac! <= 0.7).toBe(true);
      const { after, delay_s } = helper!.at as { after: string; delay_s: number };
      expect([after, delay_s >= 10 && delay_s <= 90]).toEqual(['flowStarted', true]);
    }
    expect(new Set(drawn.map(([engine]) => JSON.stringify(engine!.at))).size).toBeGreaterThan(5);
    expect(drawn).toEqual(SEEDS.map((seed) => scenarioOf(lesson, seed).faults!));
    const first = withFaults(lesson.faults.slice(0, 1));
    expect(SEEDS.map((seed) => scenarioOf(first, seed).faults![0])).toEqual(drawn.map(([engine]) => engine));
  });

  it('must be of one sort, the earlier first', () => {
    const problems = (fault: object) => {
      const check = checkLesson({ ...BASE, faults: [fault] });
      return check.ok ? [] : check.problems.map(({ field }) => field);
    };
    expect(problems({ id: 'pumpStops', from: { time_s: 5 }, to: { depth_m: 5 } })).toEqual(['faults.0']);
    expect(problems({ id: 'pumpStops', from: { time_s: 9 }, to: { time_s: 5 } })).toEqual(['faults.0']);
    expect(problems({ id: 'cobbles', from: { time_s: 1 }, to: { time_s: 5 }, thickness_m: [1, 1] })).not.toEqual([]);
    expect(problems({ id: 'rainFills', from: { time_s: 1 }, to: { time_s: 5 }, rain_mmh: [20, 40] })).toEqual([]);
  });
});

describe('in the ground', () => {
  const lesson: Lesson = {
    ...withFaults([
      { id: 'cobbles', from: { depth_m: 2 }, to: { depth_m: 3 }, thickness_m: [0.2, 0.4] },
      { id: 'saltyLayer', from: { depth_m: 1 }, to: { depth_m: 1.5 }, thickness_m: [1, 1], salt_gL: [10, 20] },
    ]),
    holes: 2,
  };

  it('a thin bed of cobbles and a salty stretch lie under the first hole, and under no other', () => {
    for (const seed of SEEDS) {
      const { ground, grounds } = scenarioOf(lesson, seed);
      const stones = ground.layers.filter(({ E_MPa }) => E_MPa === null);
      expect(stones).toHaveLength(1);
      const { top_m, bottom_m } = stones[0]!;
      expect([top_m >= 2 && top_m <= 3, bottom_m - top_m < 0.41]).toEqual([true, true]);
      // The layers still stand on each other without a gap.
      ground.layers.forEach((layer, i) => expect(layer.top_m).toBe(i === 0 ? 0 : ground.layers[i - 1]!.bottom_m));
      expect(layerAt(ground, top_m)).toBe(stones[0]);
      const salty = ground.salinity.filter(({ salt_gL }) => salt_gL >= 10);
      expect(salty).toHaveLength(1);
      expect(ground.salinity.at(-1)!.salt_gL).toBeLessThan(1);
      expect(grounds![0]).toBe(ground);
      expect(grounds![1]!.layers.every(({ E_MPa }) => E_MPa !== null)).toBe(true);
    }
  });

  it('cobbles knock under the bit within a minute, where a twin without them drills on', () => {
    const shallow: Lesson = withFaults([
      { id: 'cobbles', from: { depth_m: 0.5 }, to: { depth_m: 0.5 }, thickness_m: [0.3, 0.3] },
    ]);
    const onBottom = (of: Lesson): Run => {
      const scenario = scenarioOf(of, 1);
      const run = createRun({ ...scenario, opening: { ...scenario.opening, primed: true, starter_m: 0.48 } });
      act(run, 'setThrottle', { throttle_frac: 1 });
      act(run, 'setTurning', { on: true });
      act(run, 'setFeed', { feed_frac: 0.5 });
      for (let i = 0; i < 60; i++) step(run);
      return run;
    };
    expect(sensesOf(onBottom(shallow)).stem).toMatchObject({ sound: 'knock', sinking_mmin: 0 });
    expect(sensesOf(onBottom(BASE)).stem.sound).not.toBe('knock');
  });
});

describe('the crews', () => {
  const bad: Lesson = withFaults([
    { id: 'hoseBursts', from: { depth_m: 1 }, to: { depth_m: 1.2 } },
    { id: 'pumpStops', from: { depth_m: 2 }, to: { depth_m: 2.4 } },
    { id: 'rainFills', from: { depth_m: 1.6 }, to: { depth_m: 1.8 } },
  ]);
  const tickOf = (run: Run, name: string, what?: string): number =>
    run.record.events.find((event) => event.name === name && (what === undefined || event.data.what === what))?.tick ??
    Infinity;

  it('careful and steady mend at once and come to the end; green lets it spray', { timeout: 120_000 }, () => {
    const waited: Record<string, number> = {};
    for (const crew of ['careful', 'steady', 'green']) {
      const run = playCrew(bad, crew, 1);
      const burst = tickOf(run, 'hoseBurst');
      expect([crew, burst < Infinity]).toEqual([crew, true]);
      waited[crew] = tickOf(run, 'mended', 'hose') - burst;
      if (crew === 'green') continue;
      expect([crew, run.state.hole.depth_m > 4.3]).toEqual([crew, true]);
      expect(tickOf(run, 'mended', 'engine')).toBeLessThan(Infinity);
      expect(run.state.faults.ditch).toBe(true);
    }
    // Mending the hose takes five minutes of work.
    expect(waited.careful).toBeLessThan(300 + 60);
    expect(waited.steady).toBeLessThan(300 + 60);
    expect(waited.green).toBeGreaterThan(300 + 200);
  });

  it('careful works a lost tool aside and waits for a helper with the stream running', { timeout: 120_000 }, () => {
    const lesson = withFaults([
      { id: 'lostTool', from: { depth_m: 1.8 }, to: { depth_m: 2 } },
      { id: 'helperAway', from: { depth_m: 3 }, to: { depth_m: 3.1 }, time_s: [600, 600] },
    ]);
    const run = playCrew(lesson, 'careful', 1);
    expect(run.record.events.some(({ name }) => name === 'toolGone')).toBe(true);
    expect(run.state.hole.depth_m).toBeGreaterThan(4.3);
  });
});
