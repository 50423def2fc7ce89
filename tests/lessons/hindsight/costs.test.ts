// Costs of stretches: they add up to what was given away, and the dearest is where the mistake was made.
import { describe, expect, it } from 'vitest';
import { complete, grade, costsOf, dearest, nextIndex, settled, valueAt, valueOf, type Value } from '$lessons';
import { PLANTED, spoiltCrew } from '../planted';
import { finished, lookedBack, type LookedBack } from './runs';

const tenths = (points: number): number => Math.round(points * 10);
const scored = (score: number): Value => ({ score, short: [], well: null, ticks: 0 });

function valued(back: LookedBack): Value[] {
  return back.marks.map((mark) => valueAt(back.past, mark));
}

// A few plays of a drill each: long only on a machine that does much else.
describe('costs', { timeout: 120_000 }, () => {
  it.each([
    ['green', 7, 3],
    ['careful', 5, 2],
  ] as const)('of a %s run on ground %i add up to V(0) less the score, to the tenth', (crew, seed, most) => {
    const back = lookedBack(finished('first-rods', crew, seed), most);
    const values = valued(back);
    const { score } = grade(back.run, back.past.lesson);
    expect(values.at(-1)!.score).toBe(score);
    expect(values.at(-1)).toEqual(valueOf(back.run, back.past.lesson));
    const sum = costsOf(back.moments, values).reduce((all, { points }) => all + tenths(points), 0);
    expect(sum).toBe(tenths(values[0]!.score) - tenths(score));
    // The careful crew loses little by taking over from itself, a green one gives much away.
    if (crew === 'careful') expect(Math.abs(sum)).toBeLessThanOrEqual(50);
    if (crew === 'green') expect(sum).toBeGreaterThan(400);
  });

  it('say by name what a planted mistake lost, in the stretch where it was made', () => {
    const planted = PLANTED.find(({ name }) => name === 'the powder is dumped')!;
    const back = lookedBack(finished('first-rods', spoiltCrew(planted), 4), 4);
    const [first] = dearest(costsOf(back.moments, valued(back)));
    expect(first!.lost[0]).toMatchObject({ id: 'noFishEyes', reason: { key: 'reason.noFishEyes.lost' } });
    const acts = back.run.log.slice(first!.from.entries, first!.to.entries).map(([, action]) => action);
    expect(acts).toContain('addAdditive');
  });

  it('are known between known values, the dearest first; small ones are none, nor such as can still be parted', () => {
    const moments = [0, 1, 2, 3, 4].map((tick) => ({ tick, entries: tick }));
    const values = [scored(90), scored(80), scored(79.9), undefined, scored(40)];
    const costs = costsOf(moments, values);
    expect(costs.map(({ index, end, points }) => [index, end, points])).toEqual([
      [0, 1, 10],
      [1, 2, 0.1],
      [2, 4, 39.9],
    ]);
    expect(dearest(costs).map(({ index }) => index)).toEqual([0]);
  });
});

describe('the order', () => {
  const truth = [100, 100, 100, 60, 60, 60, 55, 55, 20].map(scored);

  it('values each moment once, one near the end and the beginning first, then the stretches that fell most', () => {
    const values: (Value | undefined)[] = truth.map((value, i) => (i === 8 ? value : undefined));
    const order: number[] = [];
    for (let next = nextIndex({ values, taken: new Set() }); next !== null;) {
      order.push(next);
      values[next] = truth[next];
      next = nextIndex({ values, taken: new Set() });
    }
    expect(order.toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(order.slice(0, 2)).toEqual([7, 0]);
    // Both falls, at 2 to 3 and 7 to 8, are known before what is level is parted.
    expect(order.slice(-3).toSorted()).toEqual([4, 5, 6]);
  });

  it('parts no stretch that is short and level, and is complete then', () => {
    // Sixty stretches, one drop between 31 and 32: what lies level is parted into eights only.
    const fell = Array.from({ length: 61 }, (_, i) => scored(i < 32 ? 90 : 50));
    const values: (Value | undefined)[] = fell.map((value, i) => (i === 60 ? value : undefined));
    let valued = 0;
    for (let next = nextIndex({ values, taken: new Set() }); next !== null; valued++) {
      expect(complete(values)).toBe(false);
      values[next] = fell[next];
      next = nextIndex({ values, taken: new Set() });
    }
    expect(complete(values)).toBe(true);
    expect(valued).toBeLessThan(20);
    const costs = costsOf(
      fell.map((_, i) => ({ tick: i, entries: i })),
      values,
    );
    expect(dearest(costs).map(({ index, end, points }) => [index, end, points])).toEqual([[31, 32, 40]]);
    expect(costs.every(({ index, end }) => end - index <= 60 / 8)).toBe(true);
    expect(costs.reduce((sum, { points }) => sum + points, 0)).toBe(40);
  });

  it('hands the same moment to nobody twice, and none when all are taken that have to be known', () => {
    for (const last of [8, 60]) {
      const values = Array.from({ length: last + 1 }, (_, i) => (i === last ? scored(20) : undefined));
      const taken = new Set<number>();
      for (let next = nextIndex({ values, taken }); next !== null; next = nextIndex({ values, taken })) {
        expect(taken.has(next)).toBe(false);
        taken.add(next);
      }
      // As long as nobody knows whether anything fell, no stretch stays longer than an eighth of the run.
      const edges = [...taken, last].sort((a, b) => a - b);
      expect(edges[0]).toBe(0);
      for (let i = 1; i < edges.length; i++)
        expect(edges[i]! - edges[i - 1]!).toBeLessThanOrEqual(Math.max(1, last / 8));
    }
  });

  it('is settled once no stretch that is still to be parted fell by more', () => {
    const values = truth.map((value, i) => ([0, 2, 3, 7, 8].includes(i) ? value : undefined));
    expect(settled(values, 35)).toBe(true);
    expect(settled(values, 4)).toBe(false);
  });
});
