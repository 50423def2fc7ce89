// The words of the trade: each has a meaning in plain sentences, forms and a drawing in its field; a text keeps all its letters.
import { expect, test } from 'vitest';
import { lessonWords } from '$lessons';
import { piecesOf } from '../../../src/glossary/find';
import { TERM_NAMES, TERMS } from '../../../src/glossary/terms';
import { hasMessage, say } from '../../../src/words';

test.each(TERM_NAMES)('%s is said in one or two short sentences', (name) => {
  for (const key of [`term.${name}`, `term.${name}.is`, `term.${name}.as`]) expect(hasMessage(key)).toBe(true);
  const sentences = say(`term.${name}.is`).split(/(?<=[.!?])\s+/);
  expect(sentences.length).toBeLessThanOrEqual(2);
  for (const sentence of sentences) expect(sentence.split(/\s+/).length).toBeLessThanOrEqual(14);
});

test.each(TERM_NAMES)('the drawing of %s begins every stroke inside its field', (name) => {
  for (const path of [TERMS[name].base, TERMS[name].shows]) {
    const starts = [...path.matchAll(/M(-?[\d.]+) (-?[\d.]+)/g)];
    expect(starts.length).toBeGreaterThan(0);
    for (const [, x, y] of starts) {
      expect(Number(x)).toBeGreaterThanOrEqual(0);
      expect(Number(x)).toBeLessThanOrEqual(72);
      expect(Number(y)).toBeGreaterThanOrEqual(0);
      expect(Number(y)).toBeLessThanOrEqual(54);
    }
  }
});

test('no form means two things', () => {
  const forms = TERM_NAMES.flatMap((name) => say(`term.${name}.as`).toLowerCase().split('|'));
  expect(forms.length).toBe(new Set(forms).size);
});

test('a word is dotted once, the longer form before the shorter, whole words only', () => {
  const found = (text: string) => piecesOf(text).flatMap(({ text: words, term }) => (term ? [[words, term]] : []));
  expect(found('Prime the pump. The Mud pit feeds the pit.')).toEqual([
    ['Prime', 'prime'],
    ['Mud pit', 'pit'],
  ]);
  expect(found('The water table fell below the screen.')).toEqual([
    ['water table', 'table'],
    ['screen', 'screen'],
  ]);
  expect(found('A sandy, primer-like sealant.')).toEqual([]);
});

test('whatever is dotted, the sentence stays as it is', () => {
  for (const text of Object.values(lessonWords))
    expect(
      piecesOf(text)
        .map((piece) => piece.text)
        .join(''),
    ).toBe(text);
});
