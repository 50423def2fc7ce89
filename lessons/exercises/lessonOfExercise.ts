// The lesson that an exercise makes: the one it is based on, with what the instructor changed.

import { DEFAULT_KIT } from '$sim';
import { lessonById } from '../catalogue/index';
import type { LessonId } from '../contents';
import type { Lesson, LessonItem } from '../schema';
import type { Exercise } from './exerciseSchema';

const { rodLength_m } = DEFAULT_KIT;
/** The last layer laid by hand goes on to here, m: deeper than any hand-jetted hole. */
const BOTTOM_m = 60;
/** From so much over the budget on the item earns nothing. */
const OVER_ratio = 1.5;

type LaidGround = Extract<Exercise['ground'], { by: 'layers' }>;

export function baseOf({ lesson }: { readonly lesson: LessonId }): Lesson {
  return lessonById(lesson)!;
}

function laidGround({ layers, salt, seed, ...around }: LaidGround): Lesson['ground'] {
  const exact = (value: number): [number, number] => [value, value];
  const depth_m = layers.reduce((sum, layer) => sum + layer.thickness_m, 0);
  const beds = layers.map(({ kind, thickness_m }, i) => {
    const last = i === layers.length - 1;
    return { kind, thickness_m: exact(last ? Math.max(thickness_m, BOTTOM_m - depth_m + thickness_m) : thickness_m) };
  });
  return {
    by: 'recipe',
    seed,
    recipes: [
      {
        layers: beds,
        waterTable_m: exact(around.waterTable_m),
        swing_m: exact(around.swing_m),
        confinedRise_m: exact(around.confinedRise_m),
        perched_frac: around.perched ? 1 : 0,
        ...(salt
          ? {
              salt: {
                brackish_m: exact(salt.from_m),
                brackish_gL: exact(salt.salt_gL),
                salt_m: exact(0),
                salt_gL: exact(salt.salt_gL),
              },
            }
          : {}),
      },
    ],
  };
}

function groundOf({ ground }: Exercise, base: Lesson): Lesson['ground'] {
  if (ground.by === 'lesson') return base.ground;
  return ground.by === 'setting' ? ground : laidGround(ground);
}

/** How deep, in how many rods, and the room for it; a whole well keeps its rule of when it ends. */
function depthOf({ depth_m }: Exercise, base: Lesson): Pick<Lesson, 'end' | 'opening'> {
  if (depth_m === undefined) return { end: base.end, opening: base.opening };
  const rods = Math.ceil(depth_m / rodLength_m);
  const spare = base.opening.rodsInAll - base.end.rods;
  return {
    end: { ...base.end, depth_m, rods },
    opening: {
      ...base.opening,
      rodsInAll: Math.max(base.opening.rods, rods + spare),
      maxDepth_m: depth_m + base.opening.maxDepth_m - base.end.depth_m,
    },
  };
}

/** The goals that hang on how deep the hole is to go. */
function bandsAtDepth(bands: LessonItem['bands'], end: Lesson['end']): LessonItem['bands'] {
  return {
    ...bands,
    ...('goal_m' in bands ? { goal_m: end.depth_m, from_m: Math.min(bands['from_m'] ?? 0, end.depth_m / 2) } : {}),
    ...('rods' in bands ? { rods: end.rods } : {}),
  };
}

function rubricOf(exercise: Exercise, base: Lesson, end: Lesson['end']): Lesson['rubric'] {
  const { weights, bands = {}, budget_marks, depth_m } = exercise;
  const judged = base.rubric.flatMap((entry): LessonItem[] => {
    const weight = weights[entry.item] ?? 0;
    if (weight === 0) return [];
    const atDepth = depth_m === undefined ? entry.bands : bandsAtDepth(entry.bands, end);
    const { inMeasureOf, ...alone } = entry;
    const hangs = inMeasureOf !== undefined && (weights[inMeasureOf] ?? 0) > 0 ? { inMeasureOf } : {};
    return [{ ...alone, ...hangs, weight, bands: { ...atDepth, ...bands[entry.item] } }];
  });
  const weight = weights.withinBudget ?? 0;
  if (budget_marks === undefined || weight === 0) return judged;
  const full = { full_marks: budget_marks, none_marks: budget_marks * OVER_ratio };
  return [...judged, { item: 'withinBudget', weight, bands: { ...full, ...bands.withinBudget } }];
}

/** An exercise that readExercise or checkExercise took, as a lesson to be played and graded like any other. */
export function lessonOfExercise(exercise: Exercise): Lesson {
  const base = baseOf(exercise);
  const { end, opening } = depthOf(exercise, base);
  return {
    ...base,
    id: exercise.id,
    version: exercise.edition,
    ground: groundOf(exercise, base),
    ...(exercise.season ? { season: exercise.season } : {}),
    ...(exercise.site ? { site: exercise.site } : {}),
    view: exercise.view,
    senses: exercise.senses,
    gauges: exercise.gauges,
    opening: { ...opening, ...exercise.stocks },
    end: { ...end, cap_s: exercise.cap_s },
    faults: exercise.faults,
    ...(exercise.live ? { live: true } : {}),
    pass_points: exercise.pass_points,
    rubric: rubricOf(exercise, base, end),
    hints: exercise.hints === 0 ? [] : base.hints,
    ...(exercise.hints === 1 || exercise.hints === 2 ? { hintLevels: exercise.hints } : {}),
    cards: exercise.coached ? base.cards : [],
    exercise,
  };
}
