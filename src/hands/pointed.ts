// Which hand the coach's card speaks of: most hands are called like their act.
import type { ActionName } from '$sim';
import type { HandGroup, HandSet } from './hand';

const HAND_OF: Partial<Record<ActionName, string>> = {
  setTurning: 'turn',
  setFeed: 'feed',
  setThrottle: 'throttle',
  addAdditive: 'addPowder',
};

export const handOf = (action: ActionName): string => HAND_OF[action] ?? action;

/** The group that holds a hand of that id; null where this job has no such hand. */
export function groupOf(sets: readonly HandSet[], hand: string): HandGroup | null {
  return sets.find((set) => set.hands.some(({ id }) => id === hand))?.group ?? null;
}
