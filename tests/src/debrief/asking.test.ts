// The asking of the debrief: which questions are open, and what is kept of the answers.
import { expect, it } from 'vitest';
import { lessonById } from '../../../lessons';
import { answersOf, stillOpen, viewFrom } from '../../../src/screens/debrief/asking';

const { questions } = lessonById('first-rods')!;

it('starts with every question open', () => {
  expect(stillOpen(questions, viewFrom(questions, null))).toEqual(questions);
});

it('takes a tap or own words for an answer, but not blanks', () => {
  const view = viewFrom(questions, null);
  view.tapped[questions[0].ask].push(questions[0].answers[0]);
  view.own[questions[1].ask] = 'I measured it.';
  view.own[questions[2].ask] = '   ';
  expect(stillOpen(questions, view)).toEqual([questions[2]]);
});

it('keeps answers so that the view comes back as it was', () => {
  const view = viewFrom(questions, null);
  for (const { ask, answers } of questions) view.tapped[ask].push(answers[1]);
  view.own[questions[0].ask] = 'Clean as rain.';
  expect(viewFrom(questions, answersOf(questions, view))).toEqual(view);
});

it('takes nothing odd over from a file', () => {
  const ask = questions[0].ask;
  expect(viewFrom(questions, { [ask]: 'not a list', [`${ask}.own`]: ['a list'] })).toEqual(viewFrom(questions, null));
});
