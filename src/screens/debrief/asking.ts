// The questions of a lesson's debrief: which still want an answer, and the answers as the run file keeps them.
import type { Lesson } from '../../app/catalogue';
import type { Answers } from '../../app/keeper';

export type Question = Lesson['questions'][number];

/** What was tapped and what was written, by the question's key. */
export interface View {
  readonly tapped: Record<string, string[]>;
  readonly own: Record<string, string>;
}

const LONGEST = 2000;

/** The view as it was kept, or an empty one. */
export function viewFrom(questions: readonly Question[], answers: Answers | null): View {
  const view: View = { tapped: {}, own: {} };
  for (const { ask } of questions) {
    const tapped = answers?.[ask];
    const own = answers?.[ownKey(ask)];
    view.tapped[ask] = Array.isArray(tapped) ? [...tapped] : [];
    view.own[ask] = typeof own === 'string' ? own : '';
  }
  return view;
}

/** Questions without an answer, tapped or written, in their order. */
export function stillOpen(questions: readonly Question[], view: View): Question[] {
  return questions.filter(({ ask }) => view.tapped[ask]!.length === 0 && view.own[ask]!.trim() === '');
}

export function answersOf(questions: readonly Question[], view: View): Answers {
  const answers: Answers = {};
  for (const { ask } of questions) {
    answers[ask] = [...view.tapped[ask]!];
    const own = view.own[ask]!.trim();
    if (own !== '') answers[ownKey(ask)] = own.slice(0, LONGEST);
  }
  return answers;
}

function ownKey(ask: string): string {
  return `${ask}.own`;
}
