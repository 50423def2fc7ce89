// How an exercise stands: whether its form is whole, whether crews have tried it, whether there are grounds for the class; and so, whether it is fit to be given out.
import type { Exercise, LintReport } from '$lessons';
import type { Mend } from './problems';

export type Stand = 'good' | 'open' | 'wrong';

export interface Standing {
  /** wrong: not to be given out; open: it can be, but something was better done first. */
  readonly whole: Stand;
  readonly form: 'good' | 'wrong';
  readonly tried: Stand;
  /** So many remarks the crews had that are nothing wrong. */
  readonly remarks: number;
  readonly grounds: 'good' | 'open';
}

/** `report`: of the exercise as it is now; null where nobody tried it. */
export function standOf(exercise: Exercise, mends: readonly Mend[], report: LintReport | null): Standing {
  const form = mends.length === 0 ? 'good' : 'wrong';
  const tried = report === null ? 'open' : report.fit ? 'good' : 'wrong';
  const grounds = exercise.pool || exercise.ground.by === 'layers' ? 'good' : 'open';
  const whole =
    form === 'wrong' || tried === 'wrong' ? 'wrong' : tried === 'good' && grounds === 'good' ? 'good' : 'open';
  const remarks = report?.findings.filter(({ level }) => level === 'warning').length ?? 0;
  return { whole, form, tried, remarks, grounds };
}
