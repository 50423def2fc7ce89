// What a lesson is called: by the words of the lesson, or as the instructor called it.
import type { Lesson } from '$lessons';
import { say } from '../words';

export const titleWords = ({ title, exercise }: Pick<Lesson, 'title' | 'exercise'>): string =>
  exercise?.title ?? say(title);
