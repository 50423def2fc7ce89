// The marks taken while a run is played: they are those that the looking back wants, and no more than can be kept.
import { describe, expect, it } from 'vitest';
import { lessonById, MarkBook, momentsOf, startRun } from '$lessons';
import { act, step } from '$sim';
import { bookOf, finished, lookedBack } from './runs';

describe('the book of marks', { timeout: 60_000 }, () => {
  it.each(['green', 'careful'])('of a %s run holds every moment but its end, as a replay would lay it', (crew) => {
    const run = finished('first-rods', crew, 7);
    const { marks } = bookOf(run);
    const laid = lookedBack(run, 60).marks;
    expect(laid.length).toBeGreaterThan(10);
    for (const mark of laid.slice(0, -1)) expect(marks).toContainEqual(mark);
    expect(momentsOf(run)).toHaveLength(laid.length);
  });

  it('thins itself evenly when it grows long', () => {
    const run = startRun(lessonById('first-rods')!, 1);
    const book = new MarkBook();
    for (let n = 0; n < 300; n++) {
      step(run);
      book.take(run);
    }
    expect(book.marks.length).toBeLessThanOrEqual(256);
    expect(book.marks[0]!.tick).toBe(1);
    expect(book.marks.at(-1)!.tick).toBe(300);
    const steps = book.marks.slice(1).map(({ tick }, i) => tick - book.marks[i]!.tick);
    expect(Math.max(...steps)).toBe(2);
  });

  it('lets go of marks of waiting before those at acts', () => {
    const run = startRun(lessonById('open-well')!, 1);
    const book = new MarkBook();
    const acts: number[] = [];
    for (let n = 0; n < 90_000; n++) {
      if (n % 1000 === 500) {
        acts.push(run.state.tick);
        book.beforeAct(run);
        act(run, 'note', { text: 'still waiting' });
        book.acted(run.state.tick);
      }
      step(run);
      book.passed(run);
    }
    const ticks = book.marks.map(({ tick }) => tick);
    expect(ticks.length).toBeLessThanOrEqual(256);
    expect(ticks).toEqual(expect.arrayContaining(acts));
  });

  it('joins a burst of acts, counts what was refused for none, and forgets what was gone back from', () => {
    const run = startRun(lessonById('first-rods')!, 1);
    const book = new MarkBook();
    const tries = (action: Parameters<typeof act>[1], payload = {}): void => {
      const { tick } = run.state;
      book.beforeAct(run);
      if (act(run, action, payload).kind === 'done') book.acted(tick);
    };
    tries('note', { text: 'one' });
    step(run);
    tries('note', { text: 'two' });
    expect(book.marks.map(({ entries }) => entries)).toEqual([0]);
    for (let n = 0; n < 9; n++) step(run);
    // There is no well to put a head on: refused, and the next act is a beginning all the same.
    tries('headWorks', { apron_m: 1, drain_m: 3, cap: true, lift: 'suction' });
    step(run);
    tries('note', { text: 'three' });
    expect(book.marks.map(({ tick }) => tick)).toEqual([0, 10, 11]);
    book.backTo({ tick: 10, entries: 2 });
    expect(book.marks.map(({ tick }) => tick)).toEqual([0, 10]);
  });
});
