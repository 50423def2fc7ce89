// Handing out the work of looking back: each piece once, the dear ones early, other grounds last; a hand that falls out loses nothing.
import { describe, expect, it } from 'vitest';
import { GROUNDS, lessonById, momentsOf, startRun, type Mark, type Value } from '../../../lessons';
import { act, lengthOf, snapshotOf, step } from '../../../sim';
import { handCount, type Hand, type HandTalk, type MakeHand } from '../../../src/hindsight/hands';
import { LookBack, type Kept, type Progress } from '../../../src/hindsight/lookBack';
import type { Order, Report } from '../../../src/hindsight/orders';

const lesson = lessonById('first-rods')!;

/** A run of half an hour in which little happens. */
const run = startRun(lesson, 1);
act(run, 'topUp', { fluid_L: 10 });
for (let i = 0; i < 1800; i++) step(run);
act(run, 'abandon', {});
for (let i = 0; i < 60; i++) step(run);
const moments = momentsOf(run);

/** Worth less and less, with one great drop after the moment of index 2. */
const worth = (index: number): Value => ({
  score: index <= 2 ? 90 - index : 40 - index,
  short: [],
  well: null,
  ticks: 9,
});
const markAt = (index: number): Mark => ({
  ...moments[index]!,
  record: lengthOf(run.record),
  snapshot: snapshotOf(run),
});

function reportsOf(order: Order): Report[] {
  if (order.kind === 'marks') return order.missing.map(({ index }) => ({ kind: 'mark', index, mark: markAt(index) }));
  if (order.kind === 'value') return [{ kind: 'value', index: order.index, value: worth(order.index) }];
  return [{ kind: 'elsewhere', index: order.index, n: order.n, points: order.n < 6 ? 50 : null }];
}

interface Desk {
  readonly orders: Order[];
  readonly make: MakeHand;
  /** Works off what waits, oldest first, until nothing does. */
  run(): void;
  stopped: number;
  failing: boolean;
}

function desk(): Desk {
  const waiting: { order: Order; talk: HandTalk }[] = [];
  const made: Desk = {
    orders: [],
    stopped: 0,
    failing: false,
    make: (_past, talk): Hand => ({
      give(order) {
        made.orders.push(order);
        waiting.push({ order, talk });
      },
      stop: () => void made.stopped++,
    }),
    run() {
      for (let next = waiting.shift(); next; next = waiting.shift()) {
        if (made.failing && next.order.kind === 'value') {
          made.failing = false;
          next.talk.failed();
          continue;
        }
        for (const report of reportsOf(next.order)) next.talk.report(report);
        next.talk.report(null);
      }
    },
  };
  return made;
}

function lookedBack(
  work: Desk,
  hands = 2,
  kept: Kept | null = null,
  scored = true,
  taken: readonly Mark[] = [],
): { back: LookBack; last: () => Progress } {
  let last: Progress | null = null;
  const onchange = (progress: Progress): void => void (last = progress);
  const back = new LookBack({ run, lesson, scored, kept, hash: 'h', taken, makeHand: work.make, hands, onchange });
  back.start();
  work.run();
  return { back, last: () => last! };
}

const valuedIn = (orders: readonly Order[]): number[] =>
  orders.flatMap((order) => (order.kind === 'value' ? [order.index] : []));

describe('looking back', () => {
  it('lays the marks, values each moment once, finds the great drop, then tries other grounds for it', () => {
    const work = desk();
    const { last } = lookedBack(work);
    expect(moments.length).toBeGreaterThan(5);
    expect(work.orders[0]!.kind).toBe('marks');
    const valued = valuedIn(work.orders);
    expect(valued.toSorted((a, b) => a - b)).toEqual([...moments.keys()].slice(0, -1));
    const { dearest, known, done, luck, settled } = last();
    expect([known, done, settled]).toEqual([moments.length, true, true]);
    expect(dearest[0]).toMatchObject({ index: 2, points: 51 });
    expect(luck[2]).toEqual(Array.from({ length: 6 }, () => 50));
    const first = work.orders.findIndex(({ kind }) => kind === 'elsewhere');
    expect(work.orders.slice(first).every(({ kind }) => kind === 'elsewhere')).toBe(true);
    expect(work.orders.length - first).toBe(dearest.length * GROUNDS);
  });

  it('does nothing anew that was kept, but lays the marks', () => {
    const { back } = lookedBack(desk());
    const again = desk();
    const { last } = lookedBack(again, 2, structuredClone(back.kept()));
    expect(again.orders.map(({ kind }) => kind)).toEqual(['marks']);
    expect(last().done).toBe(true);
    expect(last().luck[2]).toHaveLength(6);
  });

  it('lays no mark that was taken on the way, and others from the nearest before them', () => {
    const taken = [0, 1, 2, 4].map(markAt);
    const work = desk();
    const { last } = lookedBack(work, 2, null, true, taken);
    const laid = work.orders.filter((order) => order.kind === 'marks');
    expect(laid).toHaveLength(1);
    expect(laid[0]!.missing.map(({ index }) => index)).toEqual([...moments.keys()].filter((i) => i === 3 || i > 4));
    expect(laid[0]!.known).toEqual([taken[2], taken[3]]);
    expect(last().marks.map((mark) => mark!.tick)).toEqual(moments.map(({ tick }) => tick));
    expect(last().done).toBe(true);
    const all = desk();
    lookedBack(all, 1, null, false, [...moments.keys()].map(markAt));
    expect(all.orders).toEqual([]);
  });

  it('values a moment near the end, then the first, before it lays a missing mark', () => {
    const work = desk();
    lookedBack(work, 2, null, true, [...moments.keys()].slice(0, -1).map(markAt));
    const [late, first] = valuedIn(work.orders);
    expect([late! > moments.length / 2, first]).toEqual([true, 0]);
    expect(work.orders.slice(0, 2).map(({ kind }) => kind)).toEqual(['value', 'marks']);
  });

  it('gives what a lost hand was at to another', () => {
    const work = desk();
    work.failing = true;
    const { last } = lookedBack(work);
    expect(work.stopped).toBe(1);
    expect(last().done).toBe(true);
  });

  it('of a practice lays the marks and nothing else', () => {
    const work = desk();
    const { last } = lookedBack(work, 1, null, false);
    expect(work.orders.map(({ kind }) => kind)).toEqual(['marks']);
    expect(last().marks).toHaveLength(moments.length);
    expect(last().costs).toEqual([]);
  });

  it('can be stopped: every hand is, and what comes late is not heard', () => {
    const work = desk();
    let heard = 0;
    const back = new LookBack({
      run,
      lesson,
      scored: true,
      kept: null,
      hash: 'h',
      taken: [],
      makeHand: work.make,
      hands: 2,
      onchange: () => void heard++,
    });
    back.start();
    back.stop();
    const before = heard;
    work.run();
    expect([work.stopped, heard]).toEqual([2, before]);
  });
});

it('leaves the page a processor where there are more than two', () => {
  expect([1, 2, 3, 4, 5, 16].map(handCount)).toEqual([1, 2, 2, 3, 4, 4]);
});
