// A copy of an exercise, to be changed apart from it.
import type { KeptExercise } from '../../app/records';

const MOST_TITLE = 80;

/** The same task under an id and a title of its own; nobody has been given it yet. Its own faults and grounds are drawn anew by its id, so its grounds go. */
export function copyOf({ exercise, draft }: KeptExercise, id: string, title: string, saved_ms: number): KeptExercise {
  const own = { id, edition: 1, title: title.slice(0, MOST_TITLE) };
  const { pool: _pool, ...copied } = { ...exercise, ...own };
  const { pool: _drafted, ...changed } = { ...(draft ?? exercise), ...own };
  return { id, exercise: copied, ...(draft ? { draft: changed } : {}), saved_ms, own: true, classCode: null };
}
