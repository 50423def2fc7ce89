// The live region: at most one message every 3 s, danger at once, nothing stale.
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Announcer } from '../../../src/app/announcer.svelte';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

it('speaks at once, then leaves 3 s before the next', () => {
  const announcer = new Announcer();
  announcer.say('one');
  announcer.say('two');
  announcer.say('three');
  expect(announcer.text).toBe('one');
  vi.advanceTimersByTime(2900);
  expect(announcer.text).toBe('one');
  vi.advanceTimersByTime(200);
  expect(announcer.text).toBe('two three');
});

it('speaks of danger at once and drops what waited', () => {
  const announcer = new Announcer();
  announcer.say('one');
  announcer.say('two');
  announcer.say('danger', true);
  expect(announcer.text).toBe('danger');
  vi.advanceTimersByTime(10_000);
  expect(announcer.text).toBe('danger');
});

it('keeps only the newest of many', () => {
  const announcer = new Announcer();
  for (const word of ['one', 'two', 'three', 'four', 'five']) announcer.say(word);
  vi.advanceTimersByTime(3000);
  expect(announcer.text).toBe('three four five');
});

it('says the same words twice as two changes', () => {
  const announcer = new Announcer();
  announcer.say('again', true);
  const first = announcer.text;
  announcer.say('again', true);
  expect(announcer.text).not.toBe(first);
  expect(announcer.text.trim()).toBe('again');
});
