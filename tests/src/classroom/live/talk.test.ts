// The talk between the window at the hole and the steering window: what counts as part of it, and what comes of each order.
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { createRun, hashRun, replayRun } from '../../../../sim';
import { lessonById, lessonOfExercise, newExercise, scenarioOf, type Lesson } from '../../../../lessons';
import type { Keeper } from '../../../../src/app/keeper';
import { Session } from '../../../../src/app/session.svelte';
import { Steered } from '../../../../src/classroom/live/steered.svelte';
import { Steering } from '../../../../src/classroom/live/steering.svelte';
import { letterOf, readOrder, readTelling, TALK_FORMAT, TALK_VERSION } from '../../../../src/classroom/live/talk';
import { addMessages } from '../../../../src/words';
import { classMessages } from '../../../../src/words/classroom';
import { laterMessages } from '../../../../src/words/later';
import { FakeWindow, twoWindows } from './windows';

const plain = lessonById('first-rods')!;
const exercise = { ...newExercise('first-rods', 'exercise-abc123', 'Rods'), live: true };
const liveLesson = lessonOfExercise(exercise);

beforeAll(() => {
  addMessages(laterMessages);
  addMessages(classMessages);
});
beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function open(lesson: Lesson = liveLesson, practice = false, origin?: string) {
  const { hole, child } = twoWindows(origin);
  const frames = { request: () => 1, cancel: () => undefined };
  const session = new Session({ lesson, run: createRun(scenarioOf(lesson, 7, practice)), frames, now_ms: () => 0 });
  const keeper = { who: 'T-07', frozen: false } as Keeper;
  const steered = new Steered(session, keeper, hole);
  steered.open();
  const steering = new Steering(child, hole);
  return { hole, child, session, keeper, steered, steering };
}

describe('what is part of the talk', () => {
  it('reads back every order, and nothing that lacks what it must bring along', () => {
    expect(readOrder(structuredClone(letterOf({ kind: 'freeze', on: true })))).toEqual({ kind: 'freeze', on: true });
    const letter = (content: unknown): unknown => ({ format: TALK_FORMAT, version: TALK_VERSION, content });
    const wrong = [
      { kind: 'freeze' },
      { kind: 'freeze', on: 'yes' },
      { kind: 'fault', fault: 3 },
      { kind: 'pace', speed: 7 },
      { kind: 'hello', look: 'all' },
      { kind: 'toString' },
      { kind: 'standing' },
      {},
      null,
      [],
      'freeze',
    ];
    for (const content of wrong) expect(readOrder(letter(content)), JSON.stringify(content)).toBeNull();
  });

  it('reads nothing of another format or version, or of no form at all', () => {
    const content = { kind: 'gone' };
    expect(readTelling({ format: TALK_FORMAT, version: TALK_VERSION, content })).toEqual(content);
    expect(readTelling({ format: 'other', version: TALK_VERSION, content })).toBeNull();
    expect(readTelling({ format: TALK_FORMAT, version: '0', content })).toBeNull();
    for (const data of [null, undefined, 7, 'gone', [], content]) expect(readTelling(data)).toBeNull();
  });

  it('listens to no window but the one it opened, or was opened by', () => {
    const { hole, child, session, steering } = open();
    const stranger = new FakeWindow();
    hole.from(stranger);
    hole.postMessage(letterOf({ kind: 'freeze', on: true }), '*');
    expect(session.frozen).toBe(false);
    child.from(stranger);
    child.postMessage(letterOf({ kind: 'away' }), '*');
    expect(steering.hole).toBe('there');
  });

  it('sends only to a page of its own origin; from disk, where there is none, to whoever is in that window', () => {
    expect(new Set(open().child.sentTo)).toEqual(new Set(['http://127.0.0.1:8080']));
    expect(new Set(open(liveLesson, false, 'file').child.sentTo)).toEqual(new Set(['*']));
  });
});

describe('what the steering window is told', () => {
  it('tells the truth, what the learner can tell, and what can be done, as plain data', () => {
    const { steering } = open();
    const standing = steering.standing!;
    expect(standing).toMatchObject({ title: 'Rods', who: 'T-07', ground: 7, frozen: false, finished: false });
    expect(standing.picture.level).toBe('debrief');
    expect(standing.picture.layers!.length).toBeGreaterThan(1);
    expect(standing.facts[0]).toEqual({ key: 'live.fact.whole' });
    expect(standing.faults.find(({ name }) => name === 'pumpStops')!.whyNot).toEqual({ key: 'refusal.pumpNotRunning' });
    expect(standing.faults.find(({ name }) => name === 'rainFills')!.whyNot).toBeNull();
  });

  it('shows the learner’s picture where that is asked for', () => {
    const { steering } = open();
    steering.show('learner');
    expect(steering.standing!.picture.level).toBe(plain.view);
    expect(steering.standing!.picture.layers).toBeNull();
  });

  it('tells of changes, but not more often than a picture is worth', () => {
    const { child, steered, session, steering } = open();
    const before = child.sentTo.length;
    vi.advanceTimersByTime(1000);
    const hellos = child.sentTo.length - before;
    session.act('note', { text: 'one' });
    for (let i = 0; i < 50; i++) steered.changed();
    vi.advanceTimersByTime(450);
    expect(child.sentTo.length - before - hellos).toBeLessThanOrEqual(2);
    expect(steering.standing!.lines[0]!.words).toEqual({ key: 'live.did', data: { did: 'did.note' } });
  });
});

describe('what comes of an order', () => {
  it('a fault strikes in the run and stands in its log, so that a replay has it too', () => {
    const { session, steering } = open();
    steering.order({ kind: 'fault', fault: 'rainFills' });
    expect(session.run.log.at(-1)).toEqual([0, 'fault', { fault: 'rainFills' }]);
    expect(session.run.state.faults.rain_mmh).toBeGreaterThan(0);
    expect(steering.standing!.facts[0]!.key).toBe('live.fact.rain');
    const again = replayRun(session.run.scenario, session.run.log, 0);
    expect(hashRun(again)).toBe(hashRun(session.run));
  });

  it('what cannot happen is not tried: no refusal stands against the learner', () => {
    const { session, steering } = open();
    const entries = session.run.log.length;
    steering.order({ kind: 'fault', fault: 'pumpStops' });
    steering.order({ kind: 'mend', what: 'engine' });
    steering.order({ kind: 'fault', fault: 'nonsense' as 'pumpStops' });
    expect(session.run.log).toHaveLength(entries);
    expect(session.run.record.events).toEqual([]);
  });

  it('freezing stops clock and hands, is kept with the run, and ends on order', () => {
    const { session, keeper, steering } = open();
    session.speed = 20;
    steering.order({ kind: 'freeze', on: true });
    expect([session.frozen, session.speed, keeper.frozen, steering.standing!.frozen]).toEqual([true, 0, true, true]);
    expect(session.act('prime').kind).toBe('refused');
    steering.order({ kind: 'fault', fault: 'helperAway' });
    expect(session.run.state.faults.helperBack_tick).toBeGreaterThan(0);
    steering.order({ kind: 'freeze', on: false });
    expect([session.frozen, session.speed, keeper.frozen]).toEqual([false, 20, false]);
  });

  it('a run that was frozen when its page was left is frozen when it is taken up again', () => {
    const { hole, session } = open();
    const again = new Session({
      lesson: liveLesson,
      run: session.run,
      frames: { request: () => 1, cancel: () => undefined },
    });
    new Steered(again, { who: 'T-07', frozen: true } as Keeper, hole);
    expect(again.frozen).toBe(true);
  });

  it('the ground is shown and covered again; that it was shown stands in the log once and is no pass', () => {
    const { session, steering } = open();
    for (const on of [true, false, true]) steering.order({ kind: 'reveal', on });
    expect(session.view).toBe('debrief');
    steering.order({ kind: 'reveal', on: false });
    expect(session.view).toBe(plain.view);
    const shown = session.run.state.hints.filter(({ hint }) => hint === 'ground');
    expect(shown).toEqual([{ hint: 'ground', level: 3, tick: 0 }]);
  });

  it('the view for the wall and the pace follow', () => {
    const { session, steered, steering } = open();
    steering.order({ kind: 'wall', on: true });
    steering.order({ kind: 'pace', speed: 5 });
    expect([steered.wall, session.speed]).toEqual([true, 5]);
    expect(steering.standing).toMatchObject({ wall: true, speed: 5 });
  });

  it('stands in the log from the opening on: lightly in an exercise made for it, as shown in a run that is judged', () => {
    expect(open().session.run.state.hints).toEqual([{ hint: 'steering', level: 1, tick: 0 }]);
    expect(open(plain, true).session.run.state.hints).toEqual([{ hint: 'steering', level: 3, tick: 0 }]);
  });

  it('nothing is steered in a run that is neither live nor practice, or that is over', () => {
    const { session, steered, steering } = open(lessonOfExercise({ ...exercise, live: false }), false);
    expect(steered.may).toBe(false);
    steering.order({ kind: 'freeze', on: true });
    steering.order({ kind: 'reveal', on: true });
    expect([session.frozen, session.view]).toEqual([false, plain.view]);
    const over = open();
    over.session.act('abandon');
    over.steering.order({ kind: 'fault', fault: 'rainFills' });
    expect(over.session.run.state.faults.rain_mmh).toBe(0);
    expect(over.steered.may).toBe(false);
  });
});

describe('when a window goes', () => {
  it('the other one is told', () => {
    const one = open();
    one.child.leave(true);
    expect(one.steered.window).toBe('gone');
    const other = open();
    other.hole.leave(true);
    expect(other.steering.hole).toBe('gone');
    const left = open();
    left.steered.dispose();
    expect(left.steering.hole).toBe('away');
  });

  it('a window that goes without a word is missed', () => {
    const { child, steered } = open();
    child.closed = true;
    vi.advanceTimersByTime(2000);
    expect(steered.window).toBe('gone');
    const silent = open();
    silent.steered.dispose();
    silent.steering.hole = 'there';
    vi.advanceTimersByTime(9000);
    expect(silent.steering.hole).toBe('gone');
  });

  it('a page at the hole that is loaded anew finds the steering window again by itself', () => {
    const { hole, child, session, steered, steering } = open();
    hole.leave(false);
    steered.dispose();
    expect(steering.hole).not.toBe('there');
    const again = new Steered(session, null, hole);
    expect(again.window).toBe('none');
    vi.advanceTimersByTime(2000);
    expect(again.window).toBe('open');
    expect(steering.hole).toBe('there');
    steering.order({ kind: 'freeze', on: true });
    expect(session.frozen).toBe(true);
    child.leave(true);
    again.goOnAlone();
    expect(session.frozen).toBe(false);
  });

  it('says where the browser will not open one', () => {
    const { hole, steered } = open();
    hole.opens = null;
    steered.open();
    expect(steered.blocked).toBe(true);
  });
});
