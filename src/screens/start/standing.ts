// Where a learner stands: in a lesson as a whole, and in a drill's subject over all runs.
import type { DrillId } from '$lessons';
import type { LessonId } from '../../app/contents';
import type { Learner, ShownOf, Standing } from '../../app/records';
import type { KeyedMessage } from '../../words';

export function standingOf(learner: Learner | null, lessonId: string): Standing | null {
  return learner?.best[lessonId] ?? null;
}

/** What the finished runs showed of a drill's subject; null for a whole well and where nothing was judged yet. */
export function shownOf(learner: Learner | null, lesson: LessonId): ShownOf | null {
  return learner?.shown?.[lesson as DrillId] ?? null;
}

/** The learner's standing in a lesson as short sentences. */
export function standingWords(learner: Learner | null, lesson: LessonId): KeyedMessage[] {
  const standing = standingOf(learner, lesson);
  const shown = shownOf(learner, lesson);
  const words: KeyedMessage[] = [];
  if (standing) {
    const key = standing.passed ? 'lessons.passed' : 'lessons.tried';
    words.push({ key, data: { score: standing.score, n: standing.tries } });
  }
  if (shown) words.push({ key: 'lessons.shown', data: { last: shown.last_frac, best: shown.best_frac } });
  return words.length > 0 ? words : [{ key: 'lessons.none' }];
}
