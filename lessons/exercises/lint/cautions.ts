// What may be meant, but is told: a budget that is too small, grounds that are not equally hard, another version.

import { SIM_VERSION } from '$sim';
import type { Exercise } from '../exerciseSchema';
import { oneDecimal, twoDecimals, type Finding } from './finding';

/** Design: the grounds of a class lie no farther apart than this, in points. */
export const SPREAD_points = 5;

const warning = (rest: Omit<Finding, 'level'>): Finding => ({ level: 'warning', ...rest });

/** What can be told without playing. */
export function cautions({ sim, pool, budget_marks, weights }: Exercise): Finding[] {
  const found: Finding[] = [];
  if (sim !== SIM_VERSION) found.push(warning({ key: 'lint.otherVersion', data: { version: sim }, field: 'sim' }));
  if (budget_marks !== undefined && !weights.withinBudget)
    found.push(warning({ key: 'lint.budget.notJudged', data: {}, field: 'weights.withinBudget' }));
  if (!pool) return found;
  const spread_points = twoDecimals(pool.spread_points);
  if (pool.sim !== SIM_VERSION)
    found.push(warning({ key: 'lint.pool.otherVersion', data: { version: pool.sim }, field: 'pool.sim' }));
  if (pool.spread_points > SPREAD_points)
    found.push(warning({ key: 'lint.pool.wide', data: { spread_points }, field: 'pool.spread_points' }));
  return found;
}

/** What the careful crew's costs and points tell. */
export function carefulCautions(
  exercise: Exercise,
  costs_marks: readonly number[],
  points: readonly number[],
): Finding[] {
  const { budget_marks, pool, ground } = exercise;
  const found: Finding[] = [];
  const cost_marks = Math.round(Math.max(0, ...costs_marks));
  if (budget_marks !== undefined && cost_marks > budget_marks)
    found.push(
      warning({
        key: 'lint.budget.below',
        data: { cost_marks, budget_marks: twoDecimals(budget_marks) },
        field: 'budget_marks',
      }),
    );
  if (pool || ground.by === 'layers' || points.length === 0) return found;
  const spread_points = oneDecimal(Math.max(...points) - Math.min(...points));
  if (spread_points > SPREAD_points)
    found.push(warning({ key: 'lint.pool.none', data: { spread_points }, field: 'pool' }));
  return found;
}
