// Door of the exercises.

export { checkExercise, type ExerciseCheck, type ExerciseProblem, type ExerciseProblemKey } from './checkExercise';
export { exerciseFragment, exerciseTooLarge, packExercise, readExercise, writeExercise } from './exerciseFile';
export type { ReadExercise } from './exerciseFile';
export { exerciseHash } from './exerciseHash';
export {
  EXERCISE_FORMAT,
  EXERCISE_FORMAT_VERSION,
  EXERCISE_LIMIT,
  ExerciseSchema,
  MOST_SEEDS,
  type Exercise,
  type ExerciseLayer,
} from './exerciseSchema';
export { baseOf, lessonOfExercise } from './lessonOfExercise';
export { linting, type Finding, type Level, type LintKey, type LintReport, type LintStep } from './lint/index';
export { newExercise } from './newExercise';
export { pack, unpack } from './packed';
export { calibratingPool, type Pool, type PoolStep, type PoolWanted } from './pool';
export { classCodeOf, variantSeed, type Place } from './variant';
