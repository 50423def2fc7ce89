// A malformed act is named by its field and goes no further.
import { describe, expect, it } from 'vitest';
import { ACTION_NAMES, ACTION_SPECS, malformedIn, type ActionName, type FieldSpec } from '../../../sim';

function goodValue(spec: FieldSpec): unknown {
  switch (spec.type) {
    case 'number':
      return spec.min;
    case 'boolean':
      return true;
    case 'word':
      return spec.words[0];
    default:
      return 'a';
  }
}
const goodPayload = (name: ActionName): Record<string, unknown> =>
  Object.fromEntries(ACTION_SPECS[name].fields.map((spec) => [spec.name, goodValue(spec)]));

describe('payload check', () => {
  it.each(ACTION_NAMES.map((name) => [name]))('%s takes its smallest good payload', (name) =>
    expect(malformedIn(name, goodPayload(name))).toBeNull(),
  );

  const numbers = ACTION_NAMES.flatMap((name) =>
    ACTION_SPECS[name].fields.filter((f) => f.type === 'number').map((field) => [name, field.name, field] as const),
  );
  it.each(numbers)('%s.%s has limits', (name, key, field) => {
    if (field.type !== 'number') throw new Error('not a number field');
    const good = goodPayload(name);
    expect(malformedIn(name, { ...good, [key]: field.min - 1 })).toMatchObject({ field: key, problem: 'tooSmall' });
    expect(malformedIn(name, { ...good, [key]: field.max + 1 })).toMatchObject({ field: key, problem: 'tooLarge' });
    expect(malformedIn(name, { ...good, [key]: Number.NaN })).toMatchObject({ field: key, problem: 'notNumber' });
    expect(malformedIn(name, { ...good, [key]: '3' })).toMatchObject({ field: key, problem: 'notNumber' });
    if (field.whole)
      expect(malformedIn(name, { ...good, [key]: field.min + 0.5 })).toMatchObject({ field: key, problem: 'notWhole' });
  });

  it('names what is missing, unknown or too long', () => {
    expect(malformedIn('setFeed', {})).toMatchObject({ field: 'feed_frac', problem: 'missing' });
    expect(malformedIn('setFeed', { feed_frac: 0.5, speed: 1 })).toMatchObject({
      field: 'speed',
      problem: 'unknownField',
    });
    expect(malformedIn('note', { text: 'x'.repeat(501) })).toMatchObject({ field: 'text', problem: 'tooLong' });
    expect(malformedIn('addAdditive', { additive: 'salt', mass_g: 100, manner: 'dumped' })).toMatchObject({
      field: 'additive',
      problem: 'notAllowed',
    });
    expect(malformedIn('dance', {})).toMatchObject({ field: 'action', problem: 'unknownAction' });
    expect(malformedIn('note', null)).toMatchObject({ field: 'payload', problem: 'missing' });
    expect(malformedIn('waitFor', {})).toMatchObject({ field: 'time_s', problem: 'missing' });
  });
});
