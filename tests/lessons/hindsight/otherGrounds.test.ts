// Other grounds below what was met: the run cannot tell them apart until it drills on.
import { describe, expect, it } from 'vitest';
import { groundOf, hashRun, playLog, type Run } from '$sim';
import { costElsewhere, atOnce, costsThere, elsewhere, lessonById, runAtMark, scenarioOf } from '$lessons';
import { playStretch } from './stretch';
import { finished, lookedBack } from './runs';

const { past, marks, run } = lookedBack(finished('first-rods', 'green', 7), 6);
/** A moment of rest with some depth drilled: nothing is drilled in the minute after it. */
const mark = marks[3]!;

const atRest = (other: Run): string => {
  playStretch(other, 120);
  return hashRun(other);
};

describe('another ground', () => {
  const here = runAtMark(past, mark);
  const depth_m = here.state.hole.depth_m;
  const others = [0, 1, 2, 3, 4, 5, 6, 7].map((n) => elsewhere(past.lesson, here, n));

  it('is had eight times for a run that has met some of it, always the same', () => {
    expect(depth_m).toBeGreaterThan(0.5);
    expect(others.filter((other) => other !== null).length).toBe(8);
    expect(elsewhere(past.lesson, here, 2)).toEqual(others[2]);
    expect(new Set(others.map((other) => JSON.stringify(other!.ground.layers))).size).toBeGreaterThan(6);
  });

  it('is the same as far as it was met, in layers and heads, and another below', () => {
    const met = groundOf(here);
    for (const other of others) {
      const { layers, heads } = other!.ground;
      const reached = met.layers.filter(({ top_m }) => top_m <= depth_m);
      expect(layers.slice(0, reached.length - 1)).toEqual(reached.slice(0, -1));
      expect(layers[reached.length - 1]).toEqual({ ...reached.at(-1), bottom_m: expect.any(Number) as number });
      expect(heads.filter(({ top_m }) => top_m <= depth_m).map(({ head_m }) => head_m)).toEqual(
        met.heads.filter(({ top_m }) => top_m <= depth_m).map(({ head_m }) => head_m),
      );
      layers.slice(1).forEach(({ top_m }, i) => expect(top_m).toBe(layers[i]!.bottom_m));
    }
  });

  it('lets a run that is not drilled deeper go on to the last bit as it does here', () => {
    const still = atRest(runAtMark(past, mark));
    for (const other of others) expect(atRest(runAtMark({ ...past, scenario: other! }, mark))).toBe(still);
  });

  it('shows itself once the run drills on', () => {
    const ends = others.map((other) => {
      const on = runAtMark({ ...past, scenario: other! }, mark);
      playLog(on, past.log, mark.entries, run.state.tick);
      return hashRun(on);
    });
    expect(new Set(ends).size).toBeGreaterThan(1);
  });

  it('keeps clear of settings as well: a practice ground is joined where its beds fit', () => {
    const lesson = lessonById('open-hole');
    if (!lesson) throw new Error('no practice');
    const begun = { ...runAtMark(past, mark), scenario: scenarioOf(lesson, 3) };
    const found = [0, 1, 2, 3].map((n) => elsewhere(lesson, begun, n)).filter((other) => other !== null);
    expect(found.length).toBeGreaterThan(0);
    for (const { ground } of found) expect(ground.layers.at(-1)!.bottom_m).toBe(ground.depth_m);
  });
});

describe('luck', { timeout: 120_000 }, () => {
  it('is the cost of the same acts on another ground', () => {
    const last = marks.length - 2;
    const cost = atOnce(costElsewhere(past, marks[last]!, marks[last + 1]!, 1));
    expect(cost).toBe(atOnce(costElsewhere(past, marks[last]!, marks[last + 1]!, 1)));
    expect(cost!).toBeGreaterThan(0);
  });

  it('counts the grounds on which it costs at least half as much', () => {
    expect(costsThere(10, [5, 4.9, 20, 0, -3])).toBe(2);
  });
});
