// Can the exercise be done? The careful crew is the standard: it passes, by points and by what is essential, or it is said what kept it from that.

import type { GradedItem } from '../../grade';
import type { ItemId } from '../../rubric/ids';
import type { Exercise } from '../exerciseSchema';
import { oneDecimal, type Finding, type Level } from './finding';
import { hindrancesOf } from './hindrance';
import type { Way } from './way';

/** So many items of those that cost points are told. */
const MOST_ITEMS = 3;

const wordOf = ({ id }: GradedItem) => `item.${id}` as const;

/** A well that earns less than half of this item gives too little water, or salty water: whatever the points, nobody would take it for one. */
const YIELD: ItemId = 'yieldAtDry';
const poorYield = ({ grade }: Way): GradedItem | undefined =>
  grade.items.find(({ id, points, max }) => id === YIELD && points * 2 < max);

const isSolved = (way: Way): boolean => way.grade.passed && !poorYield(way);

/** What a run that came to a good end lacks. */
function shortOf(way: Way, level: Level): Finding[] {
  const { grade, begun } = way;
  const { pass_points } = begun.lesson;
  const failed = grade.items.filter((item) => item.failed);
  const found: Finding[] = failed.map((item) => ({
    level,
    key: 'lint.item.essential',
    data: { item: wordOf(item) },
    because: item.reason,
    field: `weights.${item.id}`,
  }));
  const poor = poorYield(way);
  if (poor) found.push({ level, key: 'lint.well.poor', data: {}, because: poor.reason, field: 'ground' });
  if (grade.score >= pass_points) return found;
  found.push({ level, key: 'lint.careful.points', data: { points: grade.score, pass_points }, field: 'pass_points' });
  const lost = grade.items.filter((item) => item.points < item.max && !item.failed);
  lost.sort((a, b) => b.max - b.points - (a.max - a.points));
  for (const item of lost.slice(0, MOST_ITEMS))
    found.push({
      level,
      key: 'lint.item.loses',
      data: { item: wordOf(item), lost: oneDecimal(item.max - item.points), max: oneDecimal(item.max) },
      because: item.reason,
      field: `weights.${item.id}`,
    });
  return found;
}

const DONE: readonly string[] = ['outcome.reached', 'outcome.drilled', 'outcome.handedOver'];
const isDone = ({ grade }: Way): boolean => DONE.includes(grade.outcome.key);

/** One ground's story: what stood in the way, and where it came to a good end all the same, what it lacks. */
const storyOf = (way: Way, exercise: Exercise, level: Level): Finding[] => [
  ...hindrancesOf(way, exercise).map((one): Finding => ({ level, ...one })),
  ...(isDone(way) ? shortOf(way, level) : []),
];

/** The same sentence about the same place is told once. */
function once(findings: readonly Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings.filter(({ key, field, data }) => {
    const name = `${key} ${field} ${data.item ?? ''}`;
    return !seen.has(name) && seen.add(name);
  });
}

/**
 * Of a pool every ground must be one on which careful passes, for each was chosen; of other grounds at least half, for the seed is anybody's, and
 * a warning where it is not all.
 */
function levelOf(exercise: Exercise, passed: number, n: number): Level {
  if (passed === n) return 'good';
  return passed === 0 || exercise.pool || passed * 2 < n ? 'wrong' : 'warning';
}

/** `ways`: of the careful crew, one for each ground that could be begun. */
export function solvable(ways: readonly Way[], exercise: Exercise): Finding[] {
  const n = ways.length;
  if (n === 0) return [];
  const passed = ways.filter(isSolved).length;
  const level = levelOf(exercise, passed, n);
  const points = ways.map(({ grade }) => grade.score);
  if (level === 'good')
    return [{ level, key: 'lint.careful.passes', data: { n, least: Math.min(...points), most: Math.max(...points) } }];
  const head: Finding =
    passed === 0
      ? { level, key: 'lint.careful.fails', data: { n } }
      : exercise.pool
        ? { level, key: 'lint.careful.some.pool', data: { failed: n - passed }, field: 'pool.seeds' }
        : { level, key: 'lint.careful.some', data: { passed, n } };
  const failing = ways.filter((way) => !isSolved(way));
  return [head, ...once(failing.flatMap((way) => storyOf(way, exercise, level)))];
}
