// What is on hand at the start: each thing with what the lesson has of it, and whether the lesson makes use of it.
import type { Exercise, Lesson } from '$lessons';

type StockName = keyof Exercise['stocks'];

export interface Stock {
  readonly name: StockName;
  /** What the lesson has of it, in the unit of the name. */
  usual(base: Lesson): number;
  /** Whether anything in the lesson could come of it. */
  used(base: Lesson): boolean;
}

const stock = (name: StockName, used: Stock['used'] = () => true): Stock => ({
  name,
  usual: ({ opening }) => opening[name] ?? 0,
  used,
});

export const STOCKS: readonly Stock[] = [
  stock('water_L'),
  stock('powder_kg'),
  stock('petrol_L'),
  stock('bentonite_kg'),
  stock('clay_kg'),
  stock('chlorine_kg', ({ well }) => well !== undefined),
  // What another crew has dug is its own affair, and so is a pit that the learner digs.
  stock('pit_L', ({ opening, prologue }) => !opening.setOut && !prologue),
  stock('pumpWorn_frac'),
];

/** What a whole well, or a small hole, may cost at first, marks: a little more than a careful crew spends on most of them. */
const FIRST_marks = { well: 450, hole: 30 } as const;

/** With a budget, or without: then its points are nobody's. */
export function withBudget(exercise: Exercise, on: boolean, well: boolean): Exercise {
  if (on) return { ...exercise, budget_marks: exercise.budget_marks ?? (well ? FIRST_marks.well : FIRST_marks.hole) };
  const { budget_marks: _budget, ...rest } = exercise;
  const { withinBudget: _points, ...weights } = exercise.weights;
  return { ...rest, weights };
}
