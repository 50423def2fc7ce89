// An exercise opens, is examined, and is played for five minutes: what must hold of each, whatever stands in it.
import { ledgerOf, sensesOf, step } from '$sim';
import {
  checkExercise,
  checkLesson,
  createCrew,
  crewActs,
  grade,
  jobFor,
  lessonOfExercise,
  linting,
  openStart,
  readExercise,
  writeExercise,
  type Exercise,
  type LintReport,
} from '$lessons';

const FIVE_MINUTES_s = 300;
/** The crew before is let play for so many job seconds at a time. */
const PART_s = 3600;
/** Of water, grains and polymer no more than this share may be lost. */
const MOST_LOST = 1e-6;

/** Examines it until it is done, or for so many steps. */
export function examined(exercise: Exercise, most_steps: number): LintReport | null {
  const task = linting(exercise, { grounds: 1 });
  let share_frac = 0;
  for (let n = 0; n < most_steps; n++) {
    const { done, value } = task.next();
    if (done) return value;
    if (!(value.share_frac >= share_frac - 1e-9 && value.share_frac <= 1)) throw new Error('The share done goes back.');
    ({ share_frac } = value);
  }
  return null;
}

/** Plays five minutes by chance on one ground; false where the crew before does not get there. */
function played(exercise: Exercise, seed: number): boolean {
  const lesson = lessonOfExercise(exercise);
  const start = openStart(lesson, seed);
  try {
    while (!start.advance(PART_s));
  } catch (problem) {
    if (lesson.prologue && problem instanceof RangeError) return false;
    throw problem;
  }
  const { run } = start;
  const crew = createCrew('random', jobFor(run, lesson));
  const end = run.state.tick + FIVE_MINUTES_s;
  while (run.state.tick < end) {
    crewActs(run, crew);
    step(run);
  }
  const { score, items } = grade(run, lesson);
  if (!(score >= 0 && score <= 100)) throw new Error(`${score} points`);
  const odd = items.find(({ points, max }) => !(points >= 0 && points <= max + 1e-9));
  if (odd) throw new Error(`${odd.points} of ${odd.max} points for ${odd.id}`);
  const { water, solids, polymer } = ledgerOf(run);
  const lost = Math.max(...[water, solids, polymer].map((share) => Math.abs(share)));
  if (!(lost <= MOST_LOST)) throw new Error(`${lost} of something is lost`);
  if (!Number.isFinite(sensesOf(run).stem.bottom_m)) throw new Error('A hole without a depth');
  return true;
}

/** Throws where anything of it does not hold. `most_steps`: of the examination. */
export function opensAndPlays(
  exercise: Exercise,
  seed: number,
  most_steps: number,
): { begins: boolean; fit: boolean | null } {
  const checked = checkExercise(exercise);
  if (!checked.ok) throw new Error(JSON.stringify(checked.problems));
  const { exercise: _own, ...made } = lessonOfExercise(checked.exercise);
  const lesson = checkLesson(made);
  if (!lesson.ok) throw new Error(JSON.stringify(lesson.problems));
  const read = readExercise(writeExercise(exercise));
  if (!read.ok && read.problem !== 'problem.exercise.tooLarge') throw new Error(JSON.stringify(read));
  const report = examined(checked.exercise, most_steps);
  return { begins: played(checked.exercise, seed), fit: report?.fit ?? null };
}
