// A session: acts, the clock, waits at engine speed, the slow-down in danger, going back, what is said and what is kept.
import { beforeAll, describe, expect, it } from 'vitest';
import { createRun, hashRun, replayRun, restoreRun, snapshotOf, type Run } from '../../../sim';
import { createCrew, jobFor, lessonById, playCrew, scenarioOf, type Lesson } from '../../../lessons';
import { Session } from '../../../src/app/session.svelte';
import { addMessages } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

const lesson = lessonById('first-rods')!;

beforeAll(() => addMessages(laterMessages));

/** Pictures and time by hand: each call of show() is one picture, so many milliseconds after the last. */
function byHand() {
  let next: ((now_ms: number) => void) | null = null;
  let now_ms = 0;
  return {
    frames: {
      request: (call: (now_ms: number) => void) => {
        next = call;
        return 1;
      },
      cancel: () => (next = null),
    },
    // Time also goes on a little whenever it is asked for, so that a slice of engine time comes to its end.
    now_ms: () => (now_ms += 0.5),
    wanted: () => next !== null,
    show(passed_ms: number) {
      now_ms += passed_ms;
      const call = next;
      next = null;
      call?.(now_ms);
    },
  };
}

function newSession(run: Run = createRun(scenarioOf(lesson, 7))) {
  const hand = byHand();
  const saves: number[] = [];
  const session = new Session({ lesson, run, save: (kept) => saves.push(kept.state.tick), ...hand });
  return { session, hand, saves };
}

describe('a session', () => {
  it('asks for no pictures while it is paused', () => {
    const { session, hand } = newSession();
    expect(session.speed).toBe(0);
    expect(hand.wanted()).toBe(false);
    session.speed = 1;
    expect(hand.wanted()).toBe(true);
    session.speed = 0;
    hand.show(100);
    expect(hand.wanted()).toBe(false);
    expect(session.run.state.tick).toBe(0);
  });

  it('runs at the chosen speed and steps by one', () => {
    const { session, hand } = newSession();
    session.speed = 20;
    hand.show(0);
    for (let picture = 0; picture < 10; picture++) hand.show(100);
    expect(session.run.state.tick).toBeGreaterThanOrEqual(19);
    expect(session.run.state.tick).toBeLessThanOrEqual(21);
    const before = session.run.state.tick;
    session.stepOnce();
    expect(session.run.state.tick).toBe(before + 1);
    expect(session.senses.time_s).toBe(before + 1);
  });

  it('keeps after every act, accepted or refused, and not after a malformed one', () => {
    const { session, saves } = newSession();
    expect(session.act('prime').kind).toBe('done');
    expect(saves.length).toBe(1);
    expect(session.act('catchSample', { label_m: 1 }).kind).toBe('refused');
    expect(saves.length).toBe(2);
    expect(session.act('setThrottle', { throttle_frac: 7 }).kind).toBe('malformed');
    expect(saves.length).toBe(2);
    expect(session.lastResult?.kind).toBe('malformed');
  });

  it('says why an act is refused, and never the ground or a figure that no crew feels', () => {
    const { session } = newSession();
    session.act('addRod');
    expect(session.messages.at(-1)?.key).toMatch(/^refusal\./);
    const played = newSession(playCrew(lesson, 'green', 7));
    expect(played.session.messages).toEqual([]);
  });

  it('keeps every 20 seconds while the clock runs', () => {
    const { session, hand, saves } = newSession();
    session.speed = 1;
    for (let picture = 0; picture < 450; picture++) hand.show(100);
    expect(saves.length).toBeGreaterThanOrEqual(2);
    expect(saves.length).toBeLessThanOrEqual(3);
  });

  it('runs a wait at engine speed even when paused, in slices, and stays paused after it', () => {
    const { session, hand } = newSession();
    session.act('waitFor', { time_s: 600 });
    let pictures = 0;
    while (hand.wanted() && pictures < 1000) {
      hand.show(16);
      pictures++;
    }
    expect(session.run.state.tick).toBe(600);
    expect(pictures).toBeGreaterThan(5);
    expect(session.speed).toBe(0);
    expect(session.senses.waiting).toBeNull();
  });

  it('falls back to real time in danger and says so at once', () => {
    const { session, hand } = newSession();
    session.act('prime');
    session.act('waitFor', { until: 'taskDone', cap_s: 600 });
    while (session.run.state.wait) hand.show(16);
    // The strainer on the floor of an empty suction chamber: the pump will lose its water.
    session.run.state.pit.suction.water_m3 = 0.002;
    session.run.state.pit.settling.water_m3 = 0.002;
    session.act('setThrottle', { throttle_frac: 1 });
    session.speed = 60;
    for (let picture = 0; picture < 100 && !session.slowed; picture++) hand.show(50);
    expect(session.slowed).toBe(true);
    expect(session.speed).toBe(1);
    expect(session.messages.some((message) => message.urgent && message.key === 'event.primeLost')).toBe(true);
    session.speed = 20;
    expect(session.slowed).toBe(false);
  });

  it('plays the same run as the log says, whatever the pictures were', () => {
    const { session, hand } = newSession();
    session.act('prime');
    session.speed = 60;
    for (let picture = 0; picture < 200; picture++) hand.show(picture % 7 === 0 ? 180 : 16);
    session.speed = 0;
    session.act('setThrottle', { throttle_frac: 1 });
    session.act('waitFor', { time_s: 60 });
    while (session.run.state.wait) hand.show(16);
    const again = replayRun(session.run.scenario, session.run.log, session.run.state.tick);
    expect(hashRun(again)).toBe(hashRun(session.run));
  });

  it('goes back to before an act, in practice, and the log says so', () => {
    const { session, hand } = newSession();
    session.act('prime');
    session.act('waitFor', { time_s: 300 });
    while (session.run.state.wait) hand.show(16);
    const tick = session.run.state.tick;
    session.act('setThrottle', { throttle_frac: 1 });
    session.act('waitFor', { time_s: 60 });
    while (session.run.state.wait) hand.show(16);
    const later = session.run.state.tick;
    expect(later).toBeGreaterThan(tick);
    const index = session.run.log.findIndex(([, action]) => action === 'setThrottle');
    expect(session.goBackTo(index).kind).toBe('done');
    expect(session.run.state.tick).toBe(tick);
    expect(session.run.state.pump.throttle_frac).toBe(0);
    expect(session.run.log.at(-1)).toEqual([tick, 'goBack', { fromTick: later }]);
    expect(session.speed).toBe(0);
  });

  it('stands still while it is frozen, in the middle of a wait too, and goes on at the pace from before', () => {
    const { session, hand } = newSession();
    session.act('waitFor', { time_s: 6000 });
    session.speed = 20;
    hand.show(0);
    hand.show(50);
    const { tick } = session.run.state;
    session.freeze(true);
    hand.show(50);
    session.speed = 60;
    session.stepOnce();
    expect(hand.wanted()).toBe(false);
    expect([session.frozen, session.speed, session.run.state.tick]).toEqual([true, 0, tick]);
    session.freeze(false);
    expect([session.frozen, session.speed]).toEqual([false, 20]);
    hand.show(0);
    hand.show(50);
    expect(session.run.state.tick).toBeGreaterThan(tick);
  });

  it('takes the hands away while it is frozen, but not the instructor’s', () => {
    const { session } = newSession();
    session.freeze(true);
    expect(session.act('prime')).toEqual({ kind: 'refused', reason: 'handsBusy' });
    expect(session.goBackTo(0).kind).toBe('refused');
    expect(session.run.log).toEqual([]);
    expect(session.instruct('fault', { fault: 'helperAway' }).kind).toBe('done');
    expect(session.run.log).toEqual([[0, 'fault', { fault: 'helperAway' }]]);
    session.freeze(false);
    expect(session.act('note', { text: 'alone' }).kind).toBe('done');
  });

  it('ends with the lesson: keeps, stops the clock, and does not start it again', () => {
    const { session, saves } = newSession();
    session.speed = 20;
    session.act('abandon');
    expect(session.finished).toBe(true);
    expect(session.speed).toBe(0);
    expect(saves.length).toBeGreaterThan(0);
    session.speed = 60;
    expect(session.speed).toBe(0);
    const { tick } = session.run.state;
    session.stepOnce();
    expect(session.run.state.tick).toBe(tick);
  });
});

describe('a crew that plays', () => {
  const leaving: Lesson = { ...lesson, leaves: { crew: 'careful', from: 'primed' } };

  it('does what it does without a screen, at any pace', () => {
    const alone = playCrew(lesson, 'careful', 7);
    const { session, hand } = newSession();
    const deeds: string[] = [];
    session.drive(createCrew('careful', jobFor(session.run, lesson)), ({ action }) => deeds.push(action));
    session.speed = 60;
    for (let i = 0; i < 40; i++) hand.show(50);
    expect(session.run.state.tick).toBeGreaterThan(60);
    session.hurried = true;
    while (!session.finished) hand.show(50);
    expect(hashRun(session.run)).toBe(hashRun(alone));
    expect(deeds.at(-1)).toBe('stopDrilling');
    expect(session.driver).toBeNull();
  });

  it('stands still while the clock is paused, and where whoever hears of a deed pauses it', () => {
    const { session, hand } = newSession();
    session.drive(createCrew('careful', jobFor(session.run, lesson)), () => (session.speed = 0));
    expect(hand.wanted()).toBe(false);
    session.speed = 20;
    hand.show(0);
    hand.show(250);
    expect(session.speed).toBe(0);
    expect(session.run.log).toHaveLength(1);
    expect(session.run.state.tick).toBe(0);
    session.stepOnce();
    expect(session.run.log).toHaveLength(1);
    expect(session.run.state.tick).toBe(1);
  });

  it('has the hands: whoever looks on does nothing', () => {
    const { session } = newSession();
    session.drive(createCrew('careful', jobFor(session.run, lesson)));
    expect(session.act('prime')).toEqual({ kind: 'refused', reason: 'handsBusy' });
    expect(session.run.log).toHaveLength(0);
    session.drive(null);
    expect(session.act('prime').kind).toBe('done');
  });

  it('is left the rest where the lesson offers it, and goes on after a run is taken up again', () => {
    const hand = byHand();
    const run = createRun(scenarioOf(leaving, 7));
    const session = new Session({ lesson: leaving, run, ...hand });
    expect(session.act('leaveToCrew').kind).toBe('refused');
    session.act('prime');
    session.speed = 60;
    while (session.run.state.leaving === undefined) hand.show(50);
    expect(session.act('leaveToCrew').kind).toBe('done');
    expect(session.driver?.name).toBe('careful');
    const taken = restoreRun(run.scenario, snapshotOf(session.run));
    expect(new Session({ lesson: leaving, run: taken, ...byHand() }).driver?.name).toBe('careful');
    session.hurried = true;
    while (!session.finished) hand.show(50);
    expect(session.run.state.machine.job).toBe('pullingOut');
  });
});
