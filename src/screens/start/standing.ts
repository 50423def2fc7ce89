// Where a learner stands, and which lesson comes next.
import type { Lesson } from '../../app/catalogue';
import type { Learner, Standing } from '../../app/records';

export function standingOf(learner: Learner | null, lessonId: string): Standing | null {
  return learner?.best[lessonId] ?? null;
}

/** The first lesson not passed yet; when all are, the last again. */
export function nextLesson(
  lessons: readonly Lesson[],
  learner: Learner | null,
): { readonly lesson: Lesson; readonly allPassed: boolean } {
  const open = lessons.find((lesson) => !standingOf(learner, lesson.id)?.passed);
  return { lesson: open ?? lessons[lessons.length - 1]!, allPassed: open === undefined };
}
