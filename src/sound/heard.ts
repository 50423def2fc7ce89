// When a run can be heard at all: while its time passes.
import type { Session } from '../app/session.svelte';

type Going = Pick<Session, 'speed' | 'finished' | 'driver'> & { readonly senses: Pick<Session['senses'], 'waiting'> };

/** While the clock stands nothing sounds; a wait runs by itself, but not while a crew plays. */
export function isHeard({ speed, finished, driver, senses }: Going): boolean {
  if (finished) return false;
  return speed !== 0 || (senses.waiting !== null && driver === null);
}
