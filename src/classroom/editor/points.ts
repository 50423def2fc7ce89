// The points of an exercise by category: their sums, and ways to bring them to a hundred in whole points.
import { baseOf, CATEGORY_IDS, CATEGORY_OF, type CategoryId, type Exercise, type ItemId } from '$lessons';

type Weights = Exercise['weights'];

export interface PointsItem {
  readonly item: ItemId;
  readonly weight: number;
  /** What the lesson gives for it; 0: it does not judge that. */
  readonly usual: number;
  readonly essential: boolean;
  readonly inMeasureOf: ItemId | null;
}
export interface PointsCategory {
  readonly id: CategoryId;
  readonly sum: number;
  readonly items: readonly PointsItem[];
}

export const ALL = 100;

/** A weight that is no number counts as none. */
const weightOf = (weights: Weights, item: ItemId): number => {
  const weight = weights[item] ?? 0;
  return Number.isFinite(weight) ? weight : 0;
};
const rounded = (value: number): number => Math.round(value * 100) / 100;

/** What can be judged in this exercise: the lesson's items, and the cost where there is a budget. */
function itemsOf(exercise: Exercise): Omit<PointsItem, 'weight'>[] {
  const items = baseOf(exercise).rubric.map(({ item, weight, essential = false, inMeasureOf = null }) => ({
    item,
    usual: weight,
    essential,
    inMeasureOf,
  }));
  const cost = exercise.budget_marks !== undefined && items.every(({ item }) => item !== 'withinBudget');
  return cost ? [...items, { item: 'withinBudget', usual: 0, essential: false, inMeasureOf: null }] : items;
}

export function categoriesOf(exercise: Exercise): PointsCategory[] {
  const { weights } = exercise;
  const items = itemsOf(exercise).map((one) => ({ ...one, weight: weights[one.item] ?? 0 }));
  return CATEGORY_IDS.flatMap((id) => {
    const own = items.filter(({ item }) => CATEGORY_OF[item] === id);
    const sum = own.reduce((all, { item }) => all + weightOf(weights, item), 0);
    return own.length === 0 ? [] : [{ id, sum: rounded(sum), items: own }];
  });
}

export const sumOf = ({ weights }: Exercise): number =>
  rounded((Object.keys(weights) as ItemId[]).reduce((all, item) => all + weightOf(weights, item), 0));

/** Whole points in the measure of the shares, in sum so many: what rounding leaves goes to the largest remainders. */
export function apportion(shares: readonly number[], total: number): number[] {
  const all = shares.reduce((sum, share) => sum + share, 0);
  if (all <= 0) return shares.map(() => 0);
  const exact = shares.map((share) => (share / all) * total);
  const whole = exact.map(Math.floor);
  let left = Math.round(total) - whole.reduce((sum, one) => sum + one, 0);
  const byRemainder = exact
    .map((one, i) => ({ i, part: one - whole[i]! }))
    .sort((a, b) => b.part - a.part || a.i - b.i);
  for (const { i } of byRemainder) {
    if (left <= 0) break;
    whole[i]!++;
    left--;
  }
  return whole;
}

const withWeights = (exercise: Exercise, items: readonly ItemId[], points: readonly number[]): Exercise => ({
  ...exercise,
  weights: { ...exercise.weights, ...Object.fromEntries(items.map((item, i) => [item, points[i]!])) },
});

/** What counts now; where nothing does, all that can. */
function counted(exercise: Exercise): ItemId[] {
  const all = itemsOf(exercise).map(({ item }) => item);
  const some = all.filter((item) => weightOf(exercise.weights, item) > 0);
  return some.length > 0 ? some : all;
}

/** The points that are missing are shared out evenly among what counts; too many are taken off in the same way, none below one. */
export function spreadEvenly(exercise: Exercise): Exercise {
  const items = counted(exercise);
  const points = items.map((item) => Math.round(weightOf(exercise.weights, item)));
  let left = ALL - points.reduce((sum, one) => sum + one, 0);
  for (let i = 0; left !== 0; i = (i + 1) % items.length) {
    const step = Math.sign(left);
    if (step < 0 && points[i]! <= 1 && points.some((one) => one > 1)) continue;
    points[i]! += step;
    left -= step;
  }
  return withWeights(exercise, items, points);
}

/** All points grow or shrink in the same measure until they sum to a hundred; what counts keeps at least one. */
export function spreadInProportion(exercise: Exercise): Exercise {
  const items = counted(exercise);
  const shares = items.map((item) => weightOf(exercise.weights, item));
  const points = apportion(shares.some((share) => share > 0) ? shares : shares.map(() => 1), ALL);
  for (const [i, one] of points.entries()) {
    if (one > 0) continue;
    points[points.indexOf(Math.max(...points))]! -= 1;
    points[i] = 1;
  }
  return withWeights(exercise, items, points);
}

/** A category gets so many points; its items share them as in `shares`, or evenly where they had none there. */
export function setCategory(
  exercise: Exercise,
  { items }: PointsCategory,
  total: number,
  shares: Weights = exercise.weights,
): Exercise {
  const names = items.map(({ item }) => item);
  const had = names.map((item) => weightOf(shares, item));
  const some = had.some((share) => share > 0) ? had : had.map(() => 1);
  return withWeights(exercise, names, apportion(some, Math.max(0, Math.round(total))));
}

/** The lesson's own points. */
export const usualPoints = (exercise: Exercise): Exercise => ({
  ...exercise,
  weights: Object.fromEntries(baseOf(exercise).rubric.map(({ item, weight }) => [item, weight])),
});
