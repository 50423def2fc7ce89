// A hand held down: it goes on at the pace of its task and no faster, stops when it is let go, and nothing keeps it secretly.
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { createRun, replayRun, hashRun } from '$sim';
import { scenarioOf } from '$lessons';
import type { ButtonHand } from '../../../src/hands/hand';
import { HOLD_ms, STEADY_ms } from '../../../src/hands/hold.svelte';
import { addMessages } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { acts, atTheHole, lesson } from './atTheHole';

beforeAll(() => addMessages(laterMessages));
beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('a lift that is held', () => {
  it('comes up by its own length, again and again: each is over in the second after it has moved', () => {
    const short = atTheHole();
    short.hold.begin(short.amounts('lift')[0]!.hold!, false);
    short.seconds(8);
    expect(acts(short.session, 'lift')).toBe(4);
    expect(short.session.run.state.stem.bit_m).toBeCloseTo(2 - 4 * 0.1, 9);
    const long = atTheHole();
    long.hold.begin(long.amounts('lift')[1]!.hold!, false);
    long.seconds(8);
    expect(acts(long.session, 'lift')).toBe(2);
    expect(long.session.run.state.stem.bit_m).toBeCloseTo(2 - 2 * 0.3, 9);
    expect(long.session.run.record.events.filter(({ name }) => name === 'refused')).toEqual([]);
  });

  it('stops with the step in which it is let go', () => {
    const { hold, amounts, seconds, session } = atTheHole();
    hold.begin(amounts('lift')[0]!.hold!, false);
    seconds(3);
    hold.letGo();
    const at_m = session.run.state.stem.bit_m;
    seconds(5);
    expect(session.run.state.stem.bit_m).toBe(at_m);
  });

  it('does one step and no more while the clock stands', () => {
    const { hold, amounts, session } = atTheHole();
    hold.begin(amounts('lift')[0]!.hold!, false);
    vi.advanceTimersByTime(20 * HOLD_ms);
    expect(acts(session, 'lift')).toBe(1);
    expect(hold.held).not.toBeNull();
  });

  it('lets go at the top, says why at the hand, and leaves no refusal in the run', () => {
    const { hold, desk, amounts, seconds, session } = atTheHole();
    hold.begin(amounts('lift')[0]!.hold!, true);
    seconds(90);
    expect(hold.held).toBeNull();
    expect(desk.refused).toEqual({ id: 'lift', why: { key: 'refusal.atTop' } });
    expect(session.run.record.events.filter(({ name }) => name === 'refused')).toEqual([]);
  });

  it('is written when it is let go, not at each of its steps', () => {
    const { hold, amounts, seconds, saves } = atTheHole();
    const before = saves();
    hold.begin(amounts('lift')[0]!.hold!, false);
    seconds(6);
    expect(saves()).toBe(before);
    hold.letGo();
    expect(saves()).toBe(before + 1);
  });

  it('is in the log like every other act: a replay ends in the same state', () => {
    const { hold, amounts, seconds, session } = atTheHole();
    const fresh = createRun(scenarioOf(lesson, 7));
    session.run = fresh;
    hold.begin(amounts('lower')[0]!.hold!, false);
    seconds(2);
    hold.letGo();
    seconds(2);
    const again = replayRun(fresh.scenario, fresh.log, fresh.state.tick);
    expect(hashRun(again)).toBe(hashRun(fresh));
  });
});

describe('working the stem while it is held', () => {
  it('goes on ten seconds at a time, and tells of it once', () => {
    const { hold, stem, seconds, session } = atTheHole();
    hold.begin(stem<ButtonHand>('workStem').hold!, false);
    seconds(25);
    expect(acts(session, 'workStem')).toBe(3);
    hold.letGo();
    seconds(10);
    expect(acts(session, 'workStem')).toBe(3);
    expect(session.messages.filter(({ key }) => key === 'event.taskDone.workStem')).toHaveLength(1);
  });
});

describe('a throttle that is held', () => {
  it('opens step by step, clock or no clock, and lets go when it is open', () => {
    const { hold, throttle, session } = atTheHole();
    hold.begin(throttle().more.hold!, false);
    expect(session.senses.pump.throttle_frac).toBe(0.25);
    vi.advanceTimersByTime(2 * STEADY_ms);
    expect(session.senses.pump.throttle_frac).toBe(0.75);
    vi.advanceTimersByTime(5 * STEADY_ms);
    expect(session.senses.pump.throttle_frac).toBe(1);
    expect(hold.held).toBeNull();
    expect(acts(session, 'setThrottle')).toBe(4);
  });

  it('stays where it was when it is let go', () => {
    const { hold, throttle, session } = atTheHole();
    hold.begin(throttle().more.hold!, false);
    vi.advanceTimersByTime(STEADY_ms);
    hold.letGo();
    vi.advanceTimersByTime(10 * STEADY_ms);
    expect(session.senses.pump.throttle_frac).toBe(0.5);
  });
});

describe('what lets go', () => {
  const begun = () => {
    const it = atTheHole();
    it.hold.begin(it.amounts('lift')[0]!.hold!, true);
    expect(it.hold.held).not.toBeNull();
    return it;
  };

  it('a second press, of any of the presses of its hand', () => {
    const { hold, amounts } = begun();
    expect(hold.took(amounts('lift')[1]!.hold!)).toBe(true);
    expect(hold.held).toBeNull();
  });

  it('another hand that is held', () => {
    const { hold, throttle } = begun();
    hold.begin(throttle().more.hold!, false);
    expect(hold.held?.id).toBe('throttleMore');
  });

  it('a question laid over the hands, and a wait', () => {
    const asked = begun();
    asked.desk.open('stir');
    expect(asked.hold.held).toBeNull();
    const waits = begun();
    waits.desk.act('clock', 'waitFor', { time_s: 60 });
    expect(waits.hold.held).toBeNull();
  });

  it('the finger, but not what a lock holds', () => {
    const { hold, amounts } = begun();
    hold.slip();
    expect(hold.held).not.toBeNull();
    hold.letGo();
    hold.begin(amounts('lift')[0]!.hold!, false);
    hold.slip();
    expect(hold.held).toBeNull();
  });
});

describe('the lock', () => {
  it('waits for the next press of its hand, and holds that one', () => {
    const { hold, amounts, throttle } = atTheHole();
    hold.lock('lift', 'work.lift');
    expect(hold.armed).toBe('lift');
    expect(hold.took(throttle().more.hold!), 'another hand').toBe(false);
    expect(hold.took(amounts('lift')[0]!.hold!)).toBe(true);
    expect([hold.held?.hand, hold.locked, hold.armed]).toEqual(['lift', true, null]);
  });

  it('closes on what is held already, opens again, and lets go', () => {
    const { hold, amounts } = atTheHole();
    hold.begin(amounts('lift')[0]!.hold!, false);
    hold.lock('lift', 'work.lift');
    expect(hold.locked).toBe(true);
    hold.lock('lift', 'work.lift');
    expect(hold.held).toBeNull();
  });

  it('opens when it is pressed again, or all is let go, before anything was held', () => {
    const { hold } = atTheHole();
    hold.lock('lift', 'work.lift');
    hold.lock('lift', 'work.lift');
    expect(hold.armed).toBeNull();
    hold.lock('lift', 'work.lift');
    hold.letGo();
    expect(hold.armed).toBeNull();
  });
});
