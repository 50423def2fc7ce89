// The pictures that a screen draws change nothing: slow or fast, even or uneven, or none at all while the tab is hidden, the run comes out the same to the last bit.
import { afterEach, expect, it, vi } from 'vitest';
import { hashRun } from '../../../sim';
import { createCrew, jobFor, lessonById, playCrew, startRun } from '../../../lessons';
import { Session } from '../../../src/app/session.svelte';

const lesson = lessonById('first-rods')!;
const SEED = 7;
const wanted = hashRun(playCrew(lesson, 'careful', SEED));

afterEach(() => vi.unstubAllGlobals());

/** A careful crew at the hole, at sixty times true speed; pictures come when show() is called. */
function atWork() {
  const run = startRun(lesson, SEED);
  let next: ((now_ms: number) => void) | null = null;
  let now_ms = 0;
  const session = new Session({
    lesson,
    run,
    frames: { request: (call) => ((next = call), 1), cancel: () => (next = null) },
    now_ms: () => now_ms,
  });
  session.drive(createCrew('careful', jobFor(run, lesson)));
  session.speed = 60;
  const show = (passed_ms: number): void => {
    now_ms += passed_ms;
    const call = next;
    next = null;
    call?.(now_ms);
  };
  return { session, show };
}

/** So many pictures bring any drill to its end. */
const MOST_PICTURES = 50_000;

it.each([
  ['10 Hz', () => 100],
  ['30 Hz', () => 1000 / 30],
  ['144 Hz', () => 1000 / 144],
  ['uneven', (n: number) => 5 + ((n * 37) % 180)],
])('at %s the same run, to the last bit', (_, every_ms) => {
  const { session, show } = atWork();
  for (let n = 0; !session.finished && n < MOST_PICTURES; n++) show(every_ms(n));
  expect(session.finished).toBe(true);
  expect(hashRun(session.run)).toBe(wanted);
});

it('a hidden tab stands still; seen again it goes on to the same run', () => {
  const page = Object.assign(new EventTarget(), { hidden: false });
  vi.stubGlobal('document', page);
  const { session, show } = atWork();
  for (let n = 0; n < 200; n++) show(50);
  const before = session.run.state.tick;
  expect(before).toBeGreaterThan(100);
  page.hidden = true;
  page.dispatchEvent(new Event('visibilitychange'));
  for (let n = 0; n < 200; n++) show(50);
  expect(session.speed).toBe(0);
  expect(session.run.state.tick).toBe(before);
  expect(session.senses.time_s).toBe(before);
  page.hidden = false;
  page.dispatchEvent(new Event('visibilitychange'));
  session.speed = 60;
  for (let n = 0; !session.finished && n < MOST_PICTURES; n++) show(50);
  expect(hashRun(session.run)).toBe(wanted);
});
