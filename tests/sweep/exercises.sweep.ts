// The examiner of exercises at full counts: the lessons as they are, the exercises that are turned away, a class of forty on equally hard grounds, and
// thousands of exercises by chance.
import fc from 'fast-check';
import {
  atOnce,
  LESSON_ORDER,
  lessonOfExercise,
  linting,
  newExercise,
  variantSeed,
  type LessonId,
  type LintReport,
} from '$lessons';
import { measuring } from '../../lessons/exercises/pool';
import { anyExercise } from '../lessons/exercises/anyExercise';
import { exerciseIn, namesIn } from '../lessons/exercises/files';
import { opensAndPlays } from '../lessons/exercises/opens';
import type { Claim, Sweep } from './sweep';

const GROUNDS = 6;
const LEARNERS = 40;
const NOISES = 5;
const MOST_SPREAD_points = 5;
/** Exercises by chance: examined for so many steps, or to the end. */
const BY_CHANCE = { few: { exercises: 1000, steps: 20 }, whole: { exercises: 40, steps: Infinity } } as const;
const PER_TASK = 10;
type Depth = keyof typeof BY_CHANCE;

type Task =
  | { readonly what: 'lesson'; readonly lesson: LessonId }
  | { readonly what: 'file'; readonly path: string }
  | { readonly what: 'learner'; readonly pool: string; readonly number: number }
  | { readonly what: 'chance'; readonly depth: Depth; readonly first: number };

interface Result {
  readonly fit?: boolean;
  readonly said?: readonly string[];
  readonly seed?: number;
  readonly mean_points?: number | null;
  readonly opened?: number;
  readonly begins?: number;
  readonly fits?: number;
  readonly thrown?: readonly string[];
}

const notGood = ({ findings }: LintReport): string[] =>
  findings.filter(({ level }) => level !== 'good').map(({ level, key, field }) => `${level} ${key} ${field ?? ''}`);

function byChance(depth: Depth, first: number): Result {
  const { steps } = BY_CHANCE[depth];
  const exercises = fc.sample(anyExercise(), { numRuns: PER_TASK, seed: first + (depth === 'few' ? 1 : 1_000_001) });
  const thrown: string[] = [];
  let begins = 0;
  let fits = 0;
  exercises.forEach((exercise, i) => {
    try {
      const done = opensAndPlays(exercise, first + i, steps);
      if (done.begins) begins++;
      if (done.fit) fits++;
    } catch (problem) {
      thrown.push(
        `${exercise.lesson} (${first} + ${i}): ${problem instanceof Error ? problem.message : String(problem)}`,
      );
    }
  });
  return { opened: exercises.length, begins, fits, thrown };
}

const sweep: Sweep<Task, Result> = {
  title: `the lessons on ${GROUNDS} grounds each as exercises, those that are turned away, a class of ${LEARNERS}, ${BY_CHANCE.few.exercises + BY_CHANCE.whole.exercises} exercises by chance`,

  tasks: () => [
    ...LESSON_ORDER.map((lesson): Task => ({ what: 'lesson', lesson })),
    ...(['unsolvable', 'trivial'] as const).flatMap((folder) =>
      namesIn(folder).map((name): Task => ({ what: 'file', path: `${folder}/${name}` })),
    ),
    ...namesIn('pools').flatMap((pool) =>
      Array.from({ length: LEARNERS }, (_, i): Task => ({ what: 'learner', pool, number: i + 1 })),
    ),
    ...(Object.keys(BY_CHANCE) as Depth[]).flatMap((depth) =>
      Array.from({ length: BY_CHANCE[depth].exercises / PER_TASK }, (_, i): Task => ({
        what: 'chance',
        depth,
        first: i * PER_TASK,
      })),
    ),
  ],

  run(task) {
    if (task.what === 'chance') return byChance(task.depth, task.first);
    if (task.what === 'learner') {
      const exercise = exerciseIn(`pools/${task.pool}`);
      const seed = variantSeed(exercise, 'B7', { number: task.number }, 1);
      const measured = atOnce(measuring(lessonOfExercise(exercise), seed, NOISES));
      return { seed, mean_points: measured && measured.mean_points };
    }
    const report =
      task.what === 'file'
        ? atOnce(linting(exerciseIn(task.path)))
        : atOnce(linting(newExercise(task.lesson, 'exercise-sweep', 'As it is'), { grounds: GROUNDS }));
    return { fit: report.fit, said: notGood(report) };
  },

  judge(done): Claim[] {
    const of = (what: Task['what']) => done.filter(({ task }) => task.what === what);
    const lessons = of('lesson');
    const fit = lessons.filter(({ result }) => result.fit);
    const files = of('file');
    const rejected = files.filter(({ result }) => !result.fit);
    return [
      {
        text: `${fit.length} of ${lessons.length} lessons can be given out as they are (wanted: all)`,
        holds: fit.length === lessons.length,
      },
      {
        text: `${rejected.length} of ${files.length} exercises that cannot be done or are too easy are turned away (wanted: all)`,
        holds: rejected.length === files.length,
      },
      ...namesIn('pools').map((pool) => classOf(pool, of('learner'))),
      ...(Object.keys(BY_CHANCE) as Depth[]).map((depth) => chance(depth, of('chance'))),
    ];
  },

  notes: (done) =>
    done.flatMap(({ task, result }) => {
      if (task.what === 'file') return [`${task.path}: ${result.said!.join(', ')}`];
      return task.what === 'lesson' && result.said!.length > 0 ? [`${task.lesson}: ${result.said!.join(', ')}`] : [];
    }),
};
export default sweep;

type Done = readonly { readonly task: Task; readonly result: Result }[];

function classOf(pool: string, done: Done): Claim {
  const own = done.filter(({ task }) => task.what === 'learner' && task.pool === pool);
  const means = own.map(({ result }) => result.mean_points ?? -Infinity);
  const spread = Math.max(...means) - Math.min(...means);
  const grounds = new Set(own.map(({ result }) => result.seed)).size;
  return {
    text: `the pool of ${pool} gives ${LEARNERS} learners ${grounds} grounds, ${spread.toFixed(1)} points apart (wanted: one each, at most ${MOST_SPREAD_points})`,
    holds: grounds === LEARNERS && spread <= MOST_SPREAD_points,
  };
}

function chance(depth: Depth, done: Done): Claim {
  const own = done.filter(({ task }) => task.what === 'chance' && task.depth === depth).map(({ result }) => result);
  const sum = (of: 'opened' | 'begins' | 'fits'): number => own.reduce((all, result) => all + (result[of] ?? 0), 0);
  const thrown = own.flatMap((result) => result.thrown ?? []);
  const examined =
    depth === 'few'
      ? `${BY_CHANCE.few.steps} steps of the examination`
      : `the whole examination (${sum('fits')} are fit)`;
  return {
    text:
      `${sum('opened') - thrown.length} of ${sum('opened')} exercises by chance open, stand ${examined} and five minutes of play (wanted: all); ` +
      `in ${sum('begins')} the learner comes to play${thrown.length > 0 ? `; ${thrown.join('; ')}` : ''}`,
    holds: thrown.length === 0,
  };
}
