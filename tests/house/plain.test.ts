// Plain language, over every string of every message file: short sentences, short words, one idea in a sentence.
// The limits are our own; research on readers with little schooling asks for the like (from memory, never printed as proof).
import { expect, test } from 'vitest';
import { lessonWords } from '$lessons';
import { laterMessages } from '../../src/words/later';
import { messages } from '../../src/words/messages';

/** Words in a sentence. The design asks for 12 where possible; sums and lists need a few more. */
const LONGEST_SENTENCE = 20;
/** Mean of all sentences. */
const MEAN_SENTENCE = 9;
/** Letters in a word. */
const LONGEST_WORD = 13;

/** Longer words that the trade, the law or the screen has no shorter one for. */
const KNOWN_LONG = new Set(['centralisers', 'disinfected', 'supervised']);

/** Words for which there is a plainer one. */
const FORBIDDEN: Readonly<Record<string, string>> = {
  additionally: 'also',
  adjacent: 'beside',
  approximately: 'about',
  assist: 'help',
  attempt: 'try',
  commence: 'begin',
  component: 'part',
  consequently: 'so',
  demonstrate: 'show',
  determine: 'find',
  endeavour: 'try',
  ensure: 'make sure',
  equipment: 'kit',
  facilitate: 'help',
  frequently: 'often',
  functionality: 'what it does',
  furthermore: 'also',
  implement: 'do',
  indicate: 'show',
  initial: 'first',
  initiate: 'begin',
  insufficient: 'too little',
  locate: 'find',
  modify: 'change',
  moreover: 'also',
  numerous: 'many',
  obtain: 'get',
  optimal: 'best',
  parameter: 'figure',
  perform: 'do',
  prior: 'before',
  procedure: 'way',
  purchase: 'buy',
  regarding: 'about',
  require: 'need',
  requires: 'needs',
  subsequent: 'next',
  sufficient: 'enough',
  terminate: 'end',
  utilise: 'use',
  utilize: 'use',
};

/** The command line speaks to maintainers. */
const READ = Object.entries({ ...Object.fromEntries(messages), ...laterMessages, ...lessonWords }).filter(
  ([key]) => !key.startsWith('cli.') && !key.endsWith('.as'),
);
const TEXTS = READ.flatMap(([key, message]) =>
  (typeof message === 'string' ? [message] : Object.values(message as Record<string, string>)).map(
    (text) => [key, text] as const,
  ),
);
const sentencesOf = (text: string): string[] => text.split(/(?<=[.?!:…])\s+/);
const wordsOf = (text: string): string[] =>
  text
    .replace(/\{\w+(:\w+)?\}/g, '1')
    .split(/[\s\u00a0/·]+/)
    .filter((word) => /[\p{L}\d]/u.test(word));

test('there are strings to look at, from the first screen, the later ones and the lessons', () => {
  const keys = READ.map(([key]) => key);
  for (const key of ['start.title', 'work.prime', 'firstRods.card.start', 'term.casing.is'])
    expect(keys).toContain(key);
});

test('no sentence is long, and most are short', () => {
  const counts = TEXTS.flatMap(([key, text]) => sentencesOf(text).map((one) => [key, wordsOf(one).length] as const));
  expect(counts.filter(([, words]) => words > LONGEST_SENTENCE)).toEqual([]);
  const said = counts.filter(([, words]) => words > 2);
  expect(said.reduce((sum, [, words]) => sum + words, 0) / said.length).toBeLessThanOrEqual(MEAN_SENTENCE);
});

test('no two ideas are joined by a semicolon', () => {
  expect(TEXTS.filter(([, text]) => text.includes(';')).map(([key]) => key)).toEqual([]);
});

test('no word is long, nor one for which there is a plainer one', () => {
  const bad = TEXTS.flatMap(([key, text]) =>
    wordsOf(text).flatMap((word) => {
      const plain = word.toLowerCase().replace(/[^\p{L}-]/gu, '');
      const parts = plain.split('-');
      if (Object.hasOwn(FORBIDDEN, plain)) return [[key, plain, FORBIDDEN[plain]!]];
      const long = parts.some((part) => part.length > LONGEST_WORD && !KNOWN_LONG.has(part));
      return long ? [[key, plain, 'a shorter word']] : [];
    }),
  );
  expect(bad).toEqual([]);
});
