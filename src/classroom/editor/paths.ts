// An exercise read and changed by the path of a field, as in ground.layers.2.thickness_m: the same paths by which checkExercise names what is wrong.
import type { Exercise } from '$lessons';

type Node = Readonly<Record<string, unknown>> | readonly unknown[];

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** What stands at a path; undefined where nothing does. */
export function valueAt(exercise: Exercise, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((at, step) => (isNode(at) ? (at as Record<string, unknown>)[step] : undefined), exercise);
}

function changed(node: unknown, steps: readonly string[], value: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (Array.isArray(node)) {
    const copy: unknown[] = [...node];
    copy[Number(step)] = changed(copy[Number(step)], rest, value);
    return copy;
  }
  const { [step]: inside, ...others } = (isNode(node) ? node : {}) as Record<string, unknown>;
  const next = changed(inside, rest, value);
  if (next === undefined) return others;
  // A field that is there stays in its place.
  return inside === undefined ? { ...others, [step]: next } : { ...(node as object), [step]: next };
}

/** The exercise with another value at a path; undefined takes a field away that may be left out. */
export const withAt = (exercise: Exercise, path: string, value: unknown): Exercise =>
  changed(exercise, path.split('.'), value) as Exercise;
