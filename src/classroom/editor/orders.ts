// What the examiner can be asked, and what it tells on the way and at the end. Plain data: it goes to a worker and comes back.
import { calibratingPool, linting, type Exercise, type LintReport, type LintStep } from '$lessons';

export type Pool = NonNullable<Exercise['pool']>;

export type Order =
  | { readonly kind: 'lint'; readonly exercise: Exercise }
  | { readonly kind: 'pool'; readonly exercise: Exercise; readonly wanted: number; readonly from_seed: number };

export type Told =
  | { readonly kind: 'step'; readonly step: LintStep & { readonly found?: number } }
  | { readonly kind: 'report'; readonly report: LintReport }
  | { readonly kind: 'pool'; readonly pool: Pool | null }
  /** It broke off: something in the exercise was not foreseen. */
  | { readonly kind: 'broken' };

/** Works an order off. Steps come often; what comes last is no step. Never throws. */
export function* carryOut(order: Order): Generator<Told, void> {
  try {
    const { exercise } = order;
    if (order.kind === 'lint') {
      const report = yield* told(linting(exercise));
      yield { kind: 'report', report };
    } else {
      const { wanted, from_seed } = order;
      const pool = yield* told(calibratingPool(exercise, { wanted, from_seed }));
      yield { kind: 'pool', pool };
    }
  } catch {
    yield { kind: 'broken' };
  }
}

function* told<Result>(task: Generator<LintStep, Result>): Generator<Told, Result> {
  for (;;) {
    const { done, value } = task.next();
    if (done) return value as Result;
    yield { kind: 'step', step: value as LintStep };
  }
}
