// Whether an exercise is one: its form, and what hangs together in it. Each problem names its field, as in ground.layers.2.thickness_m; nothing throws.

import * as v from 'valibot';
import type { WordData, WordKey } from '../words/index';
import { ExerciseSchema, type Exercise } from './exerciseSchema';
import { baseOf } from './lessonOfExercise';

export type ExerciseProblemKey = Extract<WordKey, `problem.exercise.${string}`>;
export interface ExerciseProblem {
  readonly ok: false;
  readonly problem: ExerciseProblemKey;
  /** `field`: where, as a path; '' where it is the whole. */
  readonly field: string;
  readonly data: WordData;
}
export type ExerciseCheck =
  | { readonly ok: true; readonly exercise: Exercise }
  | { readonly ok: false; readonly problems: readonly ExerciseProblem[] };

/** Sums of decimal points differ in their last bits. */
const CLOSE = 1e-9;

export const exerciseProblem = (problem: ExerciseProblemKey, field = '', data: WordData = {}): ExerciseProblem => ({
  ok: false,
  problem,
  field,
  data: field === '' ? data : { field, ...data },
});

/** Figures that count something: whole, and at least one, for what is judged is divided by them. */
const COUNTED: readonly string[] = ['rods', 'times', 'none', 'fields'];
const MOST_COUNTED = 1000;
const LEAST_ROD_m = 0.5;

function figureFits(name: string, value: number): boolean {
  if (COUNTED.includes(name)) return Number.isInteger(value) && value >= 1 && value <= MOST_COUNTED;
  if (name.endsWith('_frac')) return value <= 1;
  return name !== 'rod_m' || value >= LEAST_ROD_m;
}

/** Figures of an item: only those that it has in the lesson, and only such as it can be judged by. */
function wrongBands({ bands = {}, lesson }: Exercise): ExerciseProblem[] {
  const own = new Map<string, Readonly<Record<string, number>>>(
    baseOf({ lesson }).rubric.map(({ item, bands: figures }) => [item, figures]),
  );
  own.set('withinBudget', { full_marks: 0, none_marks: 0 });
  return Object.entries(bands).flatMap(([item, figures]) => {
    const names = own.get(item);
    if (!names) return [exerciseProblem('problem.exercise.noItem', `bands.${item}`)];
    return Object.entries(figures).flatMap(([name, value]) => {
      const field = `bands.${item}.${name}`;
      if (!Object.hasOwn(names, name)) return [exerciseProblem('problem.exercise.noItem', field)];
      return figureFits(name, value) ? [] : [exerciseProblem('problem.exercise.badField', field)];
    });
  });
}

/** What each field is right in itself for, but not with the others. */
function misfits(exercise: Exercise): ExerciseProblem[] {
  const base = baseOf(exercise);
  const items = new Set<string>(base.rubric.map(({ item }) => item));
  const { weights, budget_marks, depth_m, ground } = exercise;
  const found: ExerciseProblem[] = [];
  const sum = Object.values(weights).reduce((all, one) => all + (one ?? 0), 0);
  if (Math.abs(sum - 100) > CLOSE)
    found.push(exerciseProblem('problem.exercise.sum', 'weights', { sum: Math.round(sum * 100) / 100 }));
  for (const item of Object.keys(weights)) {
    const ofBudget = item === 'withinBudget' && budget_marks !== undefined;
    if (!items.has(item) && !ofBudget) found.push(exerciseProblem('problem.exercise.noItem', `weights.${item}`));
  }
  found.push(...wrongBands(exercise));
  // A crew that worked before has spent already, and has drilled as deep as the lesson says.
  if (base.prologue && budget_marks !== undefined)
    found.push(exerciseProblem('problem.exercise.crewBefore', 'budget_marks'));
  if (base.prologue && depth_m !== undefined) found.push(exerciseProblem('problem.exercise.crewBefore', 'depth_m'));
  if (ground.by === 'layers' && ground.salt && ground.salt.from_m === 0)
    found.push(exerciseProblem('problem.exercise.badField', 'ground.salt.from_m'));
  return found;
}

/** Checks plain data as an exercise. */
export function checkExercise(value: unknown): ExerciseCheck {
  const result = v.safeParse(ExerciseSchema, value);
  if (!result.success) {
    const problems = result.issues.map((issue) =>
      exerciseProblem('problem.exercise.badField', v.getDotPath(issue) || 'exercise'),
    );
    return { ok: false, problems };
  }
  const problems = misfits(result.output);
  return problems.length === 0 ? { ok: true, exercise: result.output } : { ok: false, problems };
}
