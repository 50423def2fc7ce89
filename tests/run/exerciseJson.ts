// The form of an exercise as a JSON Schema, made from the schema that the program itself checks by.
import { toJsonSchema, type ConversionConfig } from '@valibot/to-json-schema';
import { format, resolveConfig } from 'prettier';
import { EXERCISE_FORMAT_VERSION, ExerciseSchema } from '$lessons';

/** What hangs together in an exercise beyond any one field: checkExercise has these, JSON Schema has no words for them. */
const TOGETHER = [
  'the points of weights sum to 100',
  'weights and bands name only items that the lesson judges, and withinBudget where budget_marks is set',
  'bands name only figures that the item has in the lesson; rods, times, none and fields are whole and 1 to 1000, rod_m is 0.5 or more, shares (_frac) are 1 at most',
  'in a lesson where another crew works before, depth_m and budget_marks are left out',
  'ground.salt.from_m is more than 0',
  'the file has 64 kB at most',
];

/** A record whose keys are of a list, of which the translator knows nothing. */
interface OfList {
  readonly type: string;
  readonly key: { readonly type: string; readonly options: readonly string[] };
  readonly value: Parameters<typeof toJsonSchema>[0];
}

/** Ready to be written, in the house's format. Throws where the schema holds something that is neither translated nor described. */
export async function exerciseJson(path: string): Promise<string> {
  const inPlace: string[] = [];
  const told: ConversionConfig = {
    errorMode: 'throw',
    overrideSchema({ valibotSchema, jsonSchema }) {
      const { type, key, value } = valibotSchema as unknown as OfList;
      if (type !== 'record' || key.type !== 'picklist') return undefined;
      const { $schema: _own, ...values } = toJsonSchema(value, told);
      return { ...jsonSchema, type: 'object', propertyNames: { enum: [...key.options] }, additionalProperties: values };
    },
    overrideAction({ valibotAction, jsonSchema }) {
      const { type, message } = valibotAction as { readonly type: string; readonly message?: unknown };
      // JSON has no other numbers.
      if (type === 'finite') return jsonSchema;
      if (type !== 'check') return undefined;
      if (!inPlace.includes(String(message))) inPlace.push(String(message));
      const { description } = jsonSchema;
      return { ...jsonSchema, description: [description, `Also: ${String(message)}.`].filter(Boolean).join(' ') };
    },
  };
  const { $schema, ...form } = toJsonSchema(ExerciseSchema, told);
  const described = {
    $schema,
    title: 'An exercise for a class',
    description:
      `The plain form of an exercise file, version ${EXERCISE_FORMAT_VERSION}. ` +
      `What this schema cannot say is checked as well. In their places: ${inPlace.join('; ')}. Together: ${TOGETHER.join('; ')}.`,
    ...form,
  };
  return format(JSON.stringify(described), { ...(await resolveConfig(path)), filepath: path });
}
