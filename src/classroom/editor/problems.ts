// What is wrong with an exercise, each in the part and at the field where it is mended, as a sentence that says how.
import { checkExercise, type Exercise, type ExerciseProblem } from '$lessons';
import type { KeyedMessage, MessageKey } from '../../words';
import { figureOf, limitsShown } from './figures';
import { partOf, type PartId } from './parts';
import { valueAt } from './paths';
import { ALL } from './points';

export interface Mend {
  /** As checkExercise names it. */
  readonly field: string;
  readonly part: PartId;
  readonly says: KeyedMessage;
}

const MOST_TITLE = 80;
const MOST_LINE = 300;
const MOST_LINES = 10;

const says = (key: MessageKey, data: KeyedMessage['data'] = {}): KeyedMessage => ({ key, data });

/** Where several figures belong together, or a list is too short: by the form of the path. */
const TOGETHER: readonly (readonly [RegExp, MessageKey])[] = [
  [/^ground\.layers$/, 'editor.problem.noLayer'],
  [/^site\.spots$/, 'editor.problem.noSpot'],
  [/^site\.wells\.\d+$/, 'editor.problem.dryLevel'],
  [/^faults\.\d+$/, 'editor.problem.moments'],
  [/^faults\.\d+\.(share_frac|rain_mmh|time_s|thickness_m|salt_gL)$/, 'editor.problem.range'],
];

function wordsProblem(exercise: Exercise, field: string): KeyedMessage | null {
  if (field === 'title')
    return exercise.title.trim() === ''
      ? says('editor.problem.noTitle')
      : says('editor.problem.longTitle', { most: MOST_TITLE });
  if (field === 'briefing') return says('editor.problem.manyLines', { most: MOST_LINES });
  if (field.startsWith('briefing.'))
    return says('editor.problem.longLine', { n: Number(field.split('.')[1]) + 1, most: MOST_LINE });
  return null;
}

/** The figure of a moment that is none is told of at the moment: its own field is one further in. */
function figureField(exercise: Exercise, field: string): string {
  const value = valueAt(exercise, field);
  if (!/^faults\.\d+\.(from|to)$/.test(field) || typeof value !== 'object' || value === null) return field;
  const name = Object.keys(value).find((one) => one !== 'event');
  return name ? `${field}.${name}` : field;
}

function mendOf(exercise: Exercise, { problem, field, data }: ExerciseProblem): Mend {
  const at = figureField(exercise, field);
  const found = (sentence: KeyedMessage): Mend => ({ field: at, part: partOf(at), says: sentence });
  if (problem === 'problem.exercise.sum') {
    const missing = Math.round((ALL - Number(data['sum'])) * 100) / 100;
    return found(
      missing > 0
        ? says('editor.problem.sumLow', { points: missing })
        : says('editor.problem.sumHigh', { points: -missing }),
    );
  }
  if (problem === 'problem.exercise.noItem')
    return found(says('editor.problem.noItem', { item: `item.${field.split('.')[1]}` }));
  if (problem === 'problem.exercise.crewBefore') return found(says('editor.problem.crewBefore'));
  const ofWords = wordsProblem(exercise, field);
  if (ofWords) return found(ofWords);
  if (field === 'ground.salt.from_m' && valueAt(exercise, field) === 0) return found(says('editor.problem.saltTop'));
  const together = TOGETHER.find(([form]) => form.test(field));
  if (together) return found(says(together[1]));
  if (field.startsWith('weights.')) return found(says('editor.problem.weight'));
  const limits = limitsShown(exercise, at);
  if (!limits) return found(says('editor.problem.other', { field }));
  const { unit } = figureOf(exercise, at);
  return found(says('editor.problem.number', { ...limits, unit: `editor.unit.${unit}` }));
}

/** All that is to be mended before the exercise can be given out; empty where it is sound. */
export function mendsOf(exercise: Exercise): Mend[] {
  const checked = checkExercise(exercise);
  return checked.ok ? [] : checked.problems.map((problem) => mendOf(exercise, problem));
}
