// The coach's card and the hand it points at: marked from its cue until that act is done.

import { expect, test } from 'vitest';
import { act, ACTION_SPECS, step } from '$sim';
import { coachingCard, lessonById, LESSONS, startRun } from '$lessons';

const lesson = lessonById('round-the-loop')!;

test('the first cards lead hand by hand to the turning bit', () => {
  const run = startRun(lesson, 7);
  const pointed = (): string | null => coachingCard(lesson, run)?.hand ?? null;
  expect(pointed()).toBe('prime');
  act(run, 'prime', {});
  expect(pointed()).toBeNull();
  for (let tick = 0; tick < 300 && !run.record.events.some(({ name }) => name === 'primed'); tick++) step(run);
  expect(pointed()).toBe('setThrottle');
  act(run, 'setThrottle', { throttle_frac: 0.5 });
  expect(pointed()).toBe('setTurning');
  act(run, 'setTurning', { on: true });
  expect(run.state.stem.turning).toBe(true);
  expect(pointed()).toBe('setStrainer');
});

test('a card points only at an act of which the lesson has the hands', () => {
  const wrong = LESSONS.flatMap(({ id, cards, hands }) =>
    cards.flatMap(({ hand }) => (hand && !(hands as string[]).includes(ACTION_SPECS[hand].group) ? [[id, hand]] : [])),
  );
  expect(wrong).toEqual([]);
});
