// The words of the lessons: the type of their keys, and a sentence from a key and the data for its {slots}.

import { en } from './en';

export { en };

export type WordKey = keyof typeof en;
export type WordData = Readonly<Record<string, string | number>>;

/** A sentence still to be said: the view that shows it fills the slots, with numbers in its reader's notation. */
export interface Said {
  readonly key: WordKey;
  readonly data: WordData;
}

export function isWordKey(text: unknown): text is WordKey {
  return typeof text === 'string' && Object.hasOwn(en, text);
}

/**
 * Puts the data into the {slots} of a text; {slot:word} takes the key of another message. A slot without data stays as it is, so that a test
 * or a reader can see it.
 */
export function fillSlots(text: string, data: WordData): string {
  return text.replace(/\{(\w+)(:word)?\}/g, (slot, name: string, word?: string) => {
    if (!Object.hasOwn(data, name)) return slot;
    const value = data[name];
    return word && isWordKey(value) ? en[value] : String(value);
  });
}

export function format(key: WordKey, data: WordData = {}): string {
  return fillSlots(en[key], data);
}
