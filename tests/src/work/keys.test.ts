// The keys of the work screen: each key means one thing, and each is known to the help.
import { describe, expect, it } from 'vitest';
import { bindingFor, KEYS } from '../../../src/app/keys';
import { keyOf, WELL_KEYS, WORK_KEYS } from '../../../src/screens/work/keys';
import { addMessages, hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

addMessages(laterMessages);

const pressed = (key: string, held = {}): Parameters<typeof bindingFor>[1] => ({
  key,
  ctrlKey: false,
  altKey: false,
  metaKey: false,
  ...held,
});

describe('the keys of the work screen', () => {
  it('has no key with two meanings, also with those of everywhere', () => {
    for (const place of ['work', 'well'] as const) {
      const keys = KEYS.filter((one) => one.place === place || one.place === 'everywhere').flatMap((one) => [
        ...one.keys,
      ]);
      expect(new Set(keys).size, place).toBe(keys.length);
    }
  });

  it('lists every key with words for the help', () => {
    for (const binding of [...WORK_KEYS, ...WELL_KEYS]) {
      expect(KEYS.some((one) => one.id === binding.id)).toBe(true);
      expect(hasMessage(binding.does), binding.does).toBe(true);
    }
  });

  it('leaves keys held with Ctrl, Alt or Meta to the browser', () => {
    expect(bindingFor('work', pressed('t'))?.id).toBe('turn');
    expect(bindingFor('work', pressed('T'))?.id).toBe('turn');
    expect(bindingFor('work', pressed('t', { ctrlKey: true }))).toBeNull();
    expect(bindingFor('work', pressed('t', { metaKey: true }))).toBeNull();
  });

  it('gives the letters of stem and pump to the well once the rods are out, and keeps the rest', () => {
    expect(bindingFor('work', pressed('r'))?.id).toBe('removeRod');
    expect(bindingFor('well', pressed('r'))?.id).toBe('runCasing');
    expect(bindingFor('well', pressed('p'))?.id).toBe('pause');
    expect(bindingFor('well', pressed('='))?.id).toBe('planWell');
  });

  it('tells the key of a shortcut for those who hear the screen', () => {
    expect(keyOf('turn')).toBe('t');
    expect(keyOf(undefined)).toBeUndefined();
  });
});
