// The table of contents as the start page needs it: ids, titles and what is learnt. The lessons themselves come later.
import { contentsWords, LESSON_ORDER, nextLesson, type LessonId, type NextLesson } from '$lessons';
import { addMessages, say } from '../words';
import { passedBy } from './progress';
import type { Learner } from './records';

addMessages(contentsWords);

export { CONTENTS, LEARNT_frac, LESSON_ORDER, PRACTICE_IDS, type LessonId, type NextLesson } from '$lessons';

const part = (id: string): string => id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

export const titleOf = (lesson: string): string => say(`${part(lesson)}.title`);
export const learntIn = (lesson: LessonId): string => say(`${part(lesson)}.learnt`);
export const isLesson = (id: string): id is LessonId => (LESSON_ORDER as readonly string[]).includes(id);

/** What this learner is to do next; for nobody, the first lesson. */
export function nextFor(learner: Learner | null): NextLesson {
  return nextLesson(learner?.shown ?? {}, passedBy(learner));
}
