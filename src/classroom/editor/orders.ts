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

/** Steps are told some ten times a second: more nobody reads. */
const TELL_ms = 100;

/** Works an order off: steps, null where one is not worth telling, and last what came of it. Never throws. */
export function* carryOut(order: Order): Generator<Told | null, void> {
  try {
    const { exercise } = order;
    if (order.kind === 'lint') {
      const report = yield* stepwise(linting(exercise));
      yield { kind: 'report', report };
    } else {
      const { wanted, from_seed } = order;
      const pool = yield* stepwise(calibratingPool(exercise, { wanted, from_seed }));
      yield { kind: 'pool', pool };
    }
  } catch {
    yield { kind: 'broken' };
  }
}

function* stepwise<Result>(task: Generator<LintStep, Result>): Generator<Told | null, Result> {
  let told_ms = -Infinity;
  for (;;) {
    const { done, value } = task.next();
    if (done) return value as Result;
    const now_ms = performance.now();
    if (now_ms - told_ms < TELL_ms) yield null;
    else {
      told_ms = now_ms;
      yield { kind: 'step', step: value as LintStep };
    }
  }
}
