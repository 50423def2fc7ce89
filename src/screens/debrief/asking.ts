// The questions of a lesson as things to tap. The answers to tap are the messages named after the question: question.1, question.2, ...
import { hasMessage } from '../../words';

export interface Question {
  readonly key: string;
  readonly options: readonly string[];
}

const MOST_OPTIONS = 8;

export function questionOf(key: string): Question {
  const options: string[] = [];
  for (let n = 1; n <= MOST_OPTIONS && hasMessage(`${key}.${n}`); n++) options.push(`${key}.${n}`);
  return { key, options };
}

/** The questions that have answers to tap and none chosen yet. */
export function stillOpen(questions: readonly Question[], chosen: Readonly<Record<string, readonly string[]>>): number {
  return questions.filter((one) => one.options.length > 0 && (chosen[one.key] ?? []).length === 0).length;
}
