// Messages: slots, plurals, durations, the pseudo-locale, and no key without words.
import { afterEach, describe, expect, it } from 'vitest';
import { lessonWords } from '../../../lessons';
import { formatDuration, say, setLanguage, t } from '../../../src/words';
import { fillSlots } from '../../../src/words/fill';
import { laterMessages } from '../../../src/words/later';
import { addMessages, messages } from '../../../src/words/messages';
import { pseudo } from '../../../src/words/pseudo';

addMessages(laterMessages);
addMessages(lessonWords);
afterEach(() => setLanguage('en'));

const lookups = { word: (key: string) => `<${key}>`, duration: (time_s: number) => `${time_s} s` };

describe('slots', () => {
  it.each([
    ['{n}', 1234.567, '1,234.57'],
    ['{n}', 'as it is', 'as it is'],
    ['{n:0}', 1.5, '2'],
    ['{n:1}', 1.25, '1.3'],
    ['{n:fixed2}', 1, '1.00'],
    ['{n:percent}', 0.256, '26%'],
    ['{n:duration}', 90, '90 s'],
    ['{n:size}', 104857600, '104.9 MB'],
    ['{n:word}', 'a.key', '<a.key>'],
  ])('%s of %s is %s', (text, n, filled) => {
    expect(fillSlots(text, { n }, lookups)).toBe(filled);
  });

  it('stay visible when nothing fills them', () => {
    expect(fillSlots('{n} of {m}', { n: 1 }, lookups)).toBe('1 of {m}');
  });
});

describe('durations', () => {
  it.each([
    [0, '0 s'],
    [45.4, '45 s'],
    [60, '1 min'],
    [125, '2 min 5 s'],
    [754, '12 min'],
    [3600, '1 h'],
    [5040, '1 h 24 min'],
    [-3, '0 s'],
  ])('%s s reads %s', (time_s, text) => {
    expect(formatDuration(time_s)).toBe(text);
  });
});

it('picks plural forms by the slot n', () => {
  expect(t('latest.count', { n: 1 })).toBe('1 run is saved on this device.');
  expect(t('latest.count', { n: 3 })).toBe('3 runs are saved on this device.');
});

it('gives a key back that has no words, and does not break', () => {
  expect(say('no.such.key')).toBe('no.such.key');
});

describe('the pseudo-locale', () => {
  it('makes every message longer, accented and bracketed, and leaves its slots alone', () => {
    setLanguage('pseudo');
    expect(t('latest.count', { n: 3 })).toMatch(/^⟦3 .*š.*⟧$/);
    expect(pseudo('Rod {n:word}')).toBe('Róòd {n:word}');
    expect(say('next.goOnText', { lesson: 'X', depth_m: 1.5, time_s: 60 })).toContain('1.5');
  });

  it('adds a fifth or more to the length of the words', () => {
    const english = [...messages.values()]
      .map((message) => (typeof message === 'string' ? message : message.other))
      .join('');
    expect(pseudo(english).length).toBeGreaterThan(1.2 * english.length);
  });
});

it('has words in every message and closes every brace', () => {
  for (const [key, message] of messages) {
    for (const text of typeof message === 'string' ? [message] : Object.values(message)) {
      expect(text.trim(), key).not.toBe('');
      expect(text.replace(/\{\w+(:\w+)?\}/g, ''), key).not.toMatch(/[{}]/);
    }
  }
});
