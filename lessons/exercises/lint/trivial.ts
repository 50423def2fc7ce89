// Is the exercise too easy? Who takes no care, or ends the job at once, must not pass.

import type { Finding } from './finding';
import type { Way } from './way';

/** `greens`: the beginners' ways; `hasty`: of one who ends the job at once. */
export function trivial(greens: readonly Way[], hasty: Way | null): Finding[] {
  const n = greens.length;
  if (n === 0) return [];
  const passed = greens.filter(({ grade }) => grade.passed).length;
  const most = Math.max(...greens.map(({ grade }) => grade.score));
  const green: Finding =
    passed > 0
      ? { level: 'wrong', key: 'lint.green.passes', data: { passed, n }, field: 'pass_points' }
      : { level: 'good', key: 'lint.green.fails', data: { most } };
  if (!hasty?.grade.passed) return [green];
  const points = hasty.grade.score;
  return [green, { level: 'wrong', key: 'lint.hasty.passes', data: { points }, field: 'pass_points' }];
}
