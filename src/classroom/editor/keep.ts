// How an exercise that is being changed is kept: what is sound at once, what is not as a draft beside it; and when its edition grows.
import { checkExercise, exerciseHash, type Exercise, type LintReport } from '$lessons';
import type { KeptExercise } from '../../app/records';

/** What a run or its points hang on; words, the edition and who gets which ground aside. */
export const taskOf = (exercise: Exercise): string => exerciseHash({ ...exercise, edition: 1 });

const poolOf = ({ pool }: Exercise): string => JSON.stringify(pool ?? null);

/** Whether whoever plays the one does and earns the same, on the same ground, as whoever plays the other. */
const sameTask = (one: Exercise, other: Exercise): boolean =>
  taskOf(one) === taskOf(other) && poolOf(one) === poolOf(other);

/** What crews found, to be kept: with what it was they played. */
export const checkedOf = (report: LintReport, played: Exercise): NonNullable<KeptExercise['checked']> => ({
  task: taskOf(played),
  pool: poolOf(played),
  report,
});

/** What crews found, where it still holds: of grounds that were found or dropped since they say nothing any more. Null where the task is another one. */
export function reportFor(exercise: Exercise, checked: KeptExercise['checked']): LintReport | null {
  if (!checked || checked.task !== taskOf(exercise)) return null;
  if (checked.pool === poolOf(exercise)) return checked.report;
  const findings = checked.report.findings.filter(({ field }) => !field?.startsWith('pool'));
  return { ...checked.report, findings, fit: findings.every(({ level }) => level !== 'wrong') };
}

/**
 * The rule of editions, without a button: an edition that was given out never changes but in its words. The first change after that makes the
 * next edition, and the one given out is kept, so that its results can still be judged; whoever takes the change back has the old edition again.
 */
function withEdition(before: KeptExercise, edited: Exercise): Pick<KeptExercise, 'exercise' | 'earlier'> {
  const { exercise, given = 0, earlier = [] } = before;
  const last = earlier.at(-1);
  if (exercise.edition <= given) {
    if (sameTask(exercise, edited)) return { exercise: { ...edited, edition: exercise.edition }, earlier };
    return { exercise: { ...edited, edition: exercise.edition + 1 }, earlier: [...earlier, exercise] };
  }
  if (last && sameTask(last, edited))
    return { exercise: { ...edited, edition: last.edition }, earlier: earlier.slice(0, -1) };
  return { exercise: { ...edited, edition: exercise.edition }, earlier };
}

/** The record with the exercise as it has been changed. */
export function keptWith(before: KeptExercise, edited: Exercise, saved_ms: number): KeptExercise {
  const { draft: _draft, earlier: _earlier, ...rest } = before;
  if (!checkExercise(edited).ok) return { ...before, draft: edited, saved_ms };
  const { exercise, earlier = [] } = withEdition(before, edited);
  return { ...rest, exercise, saved_ms, ...(earlier.length > 0 ? { earlier } : {}) };
}

/** What no crew's work and no point hangs on: it can be changed without making the grounds that were found untrue. */
const HARMLESS = [
  'title',
  'briefing',
  'edition',
  'sim',
  'view',
  'gauges',
  'hints',
  'coached',
  'live',
  'pass_points',
  'pool',
] as const;

const workOf = (exercise: Exercise): string => {
  const work: Partial<Record<keyof Exercise, unknown>> = { ...exercise };
  for (const name of HARMLESS) delete work[name];
  return JSON.stringify(work, Object.keys(flat(work)).sort());
};

/** All names in it, at any depth, so that their order does not count. */
function flat(value: unknown, names: Record<string, true> = {}): Record<string, true> {
  if (typeof value !== 'object' || value === null) return names;
  for (const [name, inside] of Object.entries(value)) {
    names[name] = true;
    flat(inside, names);
  }
  return names;
}

/** Whether crews would find the same in both. */
export const sameWork = (one: Exercise, other: Exercise): boolean => workOf(one) === workOf(other);

/** Grounds are equally hard for one task only: with another they are dropped, and found anew when they are wanted. */
export function withTruePool(before: Exercise, edited: Exercise): Exercise {
  if (!edited.pool || before.pool !== edited.pool || sameWork(before, edited)) return edited;
  const { pool: _pool, ...rest } = edited;
  return rest;
}
