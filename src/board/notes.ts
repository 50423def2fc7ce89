// What is said of a plan: problems at their field, remarks with where they come from.
import type { PlanNote, PlanProblem } from '$sim';
import { say, t, type SlotData } from '../words';

const figures = ({ have = 0, limit, want }: { have?: number; limit?: number; want?: number }): SlotData => {
  const other = limit ?? want ?? 0;
  // Some are metres told in millimetres, or metres a second told in millimetres a second.
  return { have, limit: other, have_k: have * 1000, limit_k: other * 1000 };
};

/** A remark in words, with its source. */
export function noteWords(note: PlanNote): string {
  return t('board.note', {
    note: say(`board.note.${note.note}`, figures(note)),
    source: `board.source.${note.source}`,
  });
}

/** Why a plan cannot be, in words. */
export function problemWords(problem: PlanProblem): string {
  const special = `board.problem.${problem.problem}.${problem.field}`;
  const key = SPECIAL.has(special) ? special : `board.problem.${problem.problem}`;
  // A hole is told no deeper than it is.
  const limit =
    problem.problem === 'belowHole' && problem.limit !== undefined
      ? Math.floor(problem.limit * 100 + 1e-6) / 100
      : problem.limit;
  return say(key, figures({ ...problem, limit }));
}

/** Problems that need other words at one field. */
const SPECIAL: ReadonlySet<string> = new Set(['board.problem.belowHole.sump_m']);
