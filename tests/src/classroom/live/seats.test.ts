// Turns at one screen: who begins where, who comes next, and when a change is asked for.
import { describe, expect, it } from 'vitest';
import { createRun, type RunEvent } from '../../../../sim';
import { lessonById, scenarioOf, seatsOf, sharesOf } from '../../../../lessons';
import { Session } from '../../../../src/app/session.svelte';
import { current } from '../../../../src/app/current.svelte';
import type { Keeper } from '../../../../src/app/keeper';
import { firstSeats, isTimeToAsk, nextSeats, peopleOf, restingOf } from '../../../../src/classroom/live/seats';
import { beginTurns, Turns } from '../../../../src/classroom/live/turns.svelte';

const lesson = lessonById('first-rods')!;
const seatsNow = (seated: ReturnType<typeof firstSeats>) =>
  Object.fromEntries(seated.filter(({ seat }) => seat).map(({ who, seat }) => [seat, who]));

describe('seats', () => {
  it('gives two people three seats, and a fourth one a rest', () => {
    expect(firstSeats(['a'])).toEqual([]);
    expect(seatsNow(firstSeats(['a', 'b']))).toEqual({ driller: 'a', pumpHand: 'b', logger: 'b' });
    expect(firstSeats(['a', 'b', 'c', 'd']).at(-1)).toEqual({ who: 'd', seat: null });
    expect(peopleOf(firstSeats(['a', 'b', 'c', 'd']))).toEqual(['a', 'b', 'c', 'd']);
  });

  it.each([2, 3, 4])('brings each of %i people into each seat, and back to where they began', (count) => {
    const people = ['a', 'b', 'c', 'd'].slice(0, count);
    const first = seatsNow(firstSeats(people));
    let seats = first;
    const drilled = new Set<string>();
    for (let change = 0; change < count; change++) {
      drilled.add(seats['driller']!);
      expect(restingOf(seats, people)).toHaveLength(Math.max(0, count - 3));
      seats = nextSeats(seats, people);
    }
    expect([...drilled].sort()).toEqual(people);
    expect(seats).toEqual(first);
  });

  it('asks after a stage of the work, after so long, or never', () => {
    const events: RunEvent[] = [
      { tick: 100, name: 'rodAdded', data: {} },
      { tick: 130, name: 'flowStarted', data: {} },
    ];
    expect(isTimeToAsk('stage', 0, 140, events)).toBe(true);
    expect(isTimeToAsk('stage', 100, 140, events)).toBe(false);
    expect(isTimeToAsk(600, 0, 599, events)).toBe(false);
    expect(isTimeToAsk(600, 0, 600, events)).toBe(true);
    expect(isTimeToAsk(null, 0, 100000, events)).toBe(false);
  });
});

describe('turns in a run', () => {
  function begun(people: readonly string[]) {
    const session = new Session({
      lesson,
      run: createRun(scenarioOf(lesson, 7)),
      frames: { request: () => 1, cancel: () => undefined },
    });
    const keeper = { turns: null } as unknown as Keeper;
    current.session = session;
    current.keeper = keeper;
    beginTurns(firstSeats(people), 'stage');
    return { session, keeper };
  }

  it('begins with everybody in the log and the turns kept; with one player it does nothing', () => {
    const { session, keeper } = begun(['T-01', 'fish', 'T-03']);
    expect(seatsOf(session.run.log)).toEqual({ driller: 'T-01', pumpHand: 'fish', logger: 'T-03' });
    expect(keeper.turns).toEqual({ people: ['T-01', 'fish', 'T-03'], askAt: 'stage' });
    const alone = begun(['T-01']);
    expect(alone.session.run.log).toEqual([]);
    expect(alone.keeper.turns).toBeNull();
  });

  it('hands over with the clock stopped, asks once, and takes no for an answer until the next stage', () => {
    const { session, keeper } = begun(['T-01', 'fish']);
    const turns = new Turns(session, keeper.turns!);
    session.speed = 5;
    for (let second = 0; second < 3; second++) session.stepOnce();
    session.run.record.events.push({ tick: 2, name: 'rodAdded', data: {} });
    expect(turns.asks).toBe(true);
    turns.notNow();
    expect(turns.asks).toBe(false);
    session.stepOnce();
    session.run.record.events.push({ tick: 4, name: 'rodAdded', data: {} });
    expect(turns.asks).toBe(true);
    turns.handOver();
    expect(session.speed).toBe(0);
    expect(turns.seats).toEqual({ driller: 'fish', pumpHand: 'T-01', logger: 'T-01' });
    expect(turns.asks).toBe(false);
    expect(sharesOf(session.run).map(({ who }) => who)).toEqual(['T-01', 'fish']);
  });

  it('does nothing while the clock is stopped by an instructor', () => {
    const { session, keeper } = begun(['T-01', 'fish']);
    session.freeze(true);
    const entries = session.run.log.length;
    new Turns(session, keeper.turns!).handOver();
    expect(session.run.log).toHaveLength(entries);
  });
});
