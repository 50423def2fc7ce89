// Every key of the app in one list: the help page shows it, and the handlers obey it.
import type { MessageKey } from '../words';
import { device } from './device.svelte';
import { WELL_KEYS, WORK_KEYS } from '../screens/work/keys';

export type KeyPlace = 'everywhere' | 'work' | 'well' | 'debrief';

export interface KeyBinding {
  readonly id: string;
  /** Values of KeyboardEvent.key; letters in lower case, matched without regard to case. */
  readonly keys: readonly string[];
  readonly place: KeyPlace;
  /** The message that says what the key does. */
  readonly does: MessageKey;
}

/** A screen adds its keys here, and hands their handlers to listenKeys under the same ids. */
export const KEYS = [
  { id: 'help', keys: ['?', 'F1'], place: 'everywhere', does: 'key.help' },
  ...WORK_KEYS,
  ...WELL_KEYS,
  { id: 'nextStep', keys: ['n'], place: 'debrief', does: 'key.nextStep' },
  { id: 'previousStep', keys: ['p'], place: 'debrief', does: 'key.previousStep' },
] as const satisfies readonly KeyBinding[];

export type KeyId = (typeof KEYS)[number]['id'];

/** What a pressed key means at a place, or null. Keys with Ctrl, Alt or Meta belong to the browser. */
export function bindingFor(
  place: KeyPlace,
  event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'altKey' | 'metaKey'>,
): (typeof KEYS)[number] | null {
  if (event.ctrlKey || event.altKey || event.metaKey) return null;
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  const bound = (at: KeyPlace): (typeof KEYS)[number] | undefined =>
    KEYS.find((binding) => binding.place === at && (binding.keys as readonly string[]).includes(key));
  // Once the rods are out the keys of the well stand before those of the stem and the pump; the rest mean what they meant.
  return bound(place) ?? (place === 'well' ? bound('work') : undefined) ?? null;
}

/** Whether the key is typed into something, and so is not ours. Space and Enter press a focused control. */
export function isTyping(target: EventTarget | null, key: string): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (
    target.isContentEditable ||
    target.matches('textarea, select, input:not([type=checkbox], [type=radio], [type=button])')
  )
    return true;
  if (target.matches('input')) return key.startsWith('Arrow') || key === ' ';
  if (target.matches('button, a, summary, [role=button], [role=tab]')) return key === ' ' || key === 'Enter';
  return false;
}

/** The key on the board, whatever it types at the moment. */
const nameOf = ({ code, key }: KeyboardEvent): string => code || key.toLowerCase();

/**
 * Listens to the keys of a place until the returned function is called. A handler that is missing is a key without use now.
 * A handler may return what is to be done when the key comes up again: until then its repeats are swallowed.
 */
export function listenKeys(place: KeyPlace, handlers: Partial<Record<KeyId, () => void | (() => void)>>): () => void {
  const down = new Map<string, () => void>();
  const pressed = (event: KeyboardEvent): void => {
    if (down.has(nameOf(event))) {
      event.preventDefault();
      return;
    }
    if (event.defaultPrevented || isTyping(event.target, event.key)) return;
    if (document.querySelector('dialog[open]')) return;
    if (event.key.length === 1 && device.settings.letters === 'off') return;
    const binding = bindingFor(place, event);
    const handler = binding && handlers[binding.id];
    if (!handler) return;
    event.preventDefault();
    const atUp = handler();
    if (atUp) down.set(nameOf(event), atUp);
  };
  const comesUp = (name: string): void => {
    const atUp = down.get(name);
    down.delete(name);
    atUp?.();
  };
  const released = (event: KeyboardEvent): void => comesUp(nameOf(event));
  /** A page that is left hears of no key coming up. */
  const left = (): void => [...down.keys()].forEach(comesUp);
  window.addEventListener('keydown', pressed);
  window.addEventListener('keyup', released);
  window.addEventListener('blur', left);
  return () => {
    left();
    window.removeEventListener('keydown', pressed);
    window.removeEventListener('keyup', released);
    window.removeEventListener('blur', left);
  };
}
