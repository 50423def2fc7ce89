// The least and the most of a figure of the exercise, read from the form itself, so that editor and check never differ.
import { ExerciseSchema, type Exercise } from '$lessons';
import { valueAt } from './paths';

export interface Limits {
  readonly min: number;
  readonly max: number;
  /** A whole number. */
  readonly whole: boolean;
}

/** What is read of a form: only the kinds that exercises are made of. */
interface Form {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Form>>;
  readonly item?: Form;
  readonly items?: readonly Form[];
  readonly options?: readonly Form[];
  readonly wrapped?: Form;
  readonly value?: Form;
  readonly literal?: unknown;
  readonly key?: string;
  readonly pipe?: readonly { readonly type: string; readonly requirement?: unknown }[];
}

/** Of several forms the one that a value has. */
function chosen({ options = [], key }: Form, value: unknown): Form | undefined {
  const fields = (value ?? {}) as Record<string, unknown>;
  if (key !== undefined) return options.find((one) => one.entries?.[key]?.literal === fields[key]);
  return options.find((one) => Object.keys(fields).every((name) => one.entries?.[name] !== undefined));
}

function inside(form: Form, step: string, value: unknown): Form | undefined {
  if (form.type === 'exact_optional' || form.type === 'nullable') return inside(form.wrapped!, step, value);
  if (form.type === 'variant' || form.type === 'union') {
    const one = chosen(form, value);
    return one && inside(one, step, value);
  }
  return (
    form.entries?.[step] ?? form.items?.[Number(step)] ?? form.item ?? (form.type === 'record' ? form.value : undefined)
  );
}

function formAt(exercise: Exercise, path: string): Form | undefined {
  const steps = path.split('.');
  let form: Form | undefined = ExerciseSchema as unknown as Form;
  for (const [i, step] of steps.entries())
    form = form && inside(form, step, i === 0 ? exercise : valueAt(exercise, steps.slice(0, i).join('.')));
  return form?.wrapped ?? form;
}

function limitsIn(form: Form): Limits | null {
  // None, or a number from its least on.
  if (form.type === 'union') {
    const found = form.options!.map((one) =>
      typeof one.literal === 'number' ? { min: one.literal, max: one.literal, whole: false } : limitsIn(one),
    );
    const all = found.filter((one) => one !== null);
    if (all.length === 0 || all.length < found.length) return null;
    const [min, max] = [Math.min(...all.map((one) => one.min)), Math.max(...all.map((one) => one.max))];
    return { min, max, whole: false };
  }
  if (form.type !== 'number') return null;
  const of = (type: string): number | undefined =>
    form.pipe?.find((step) => step.type === type)?.requirement as number | undefined;
  const [min, max] = [of('min_value'), of('max_value')];
  if (min === undefined || max === undefined) return null;
  return { min, max, whole: form.pipe!.some(({ type }) => type === 'integer') };
}

/** Null where the path is no number of the exercise as it stands. */
export function limitsOf(exercise: Exercise, path: string): Limits | null {
  const form = formAt(exercise, path);
  return form ? limitsIn(form) : null;
}
