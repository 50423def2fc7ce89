// What every crew has: it notices that an act was refused and leaves it for a while instead of asking each second.

import type { ActionName, Senses } from '$sim';
import type { Deed } from './crew';

export interface Patience {
  /** The act tried last, and when. */
  tried: ActionName | null;
  tried_s: number;
  /** Job second until which an act is left alone, by act. */
  notBefore_s: Partial<Record<ActionName, number>>;
  refusals: number;
}

/** How long a refused act is left alone, s. */
const LEAVE_s = 8;

export function createPatience(): Patience {
  return { tried: null, tried_s: -1, notBefore_s: {}, refusals: 0 };
}

/** Takes note of a refusal of the last act. True if it was refused. */
export function noticeRefusal(patience: Patience, senses: Senses): boolean {
  const refusal = senses.lastRefusal;
  if (refusal === null || patience.tried !== refusal.action || refusal.tick !== patience.tried_s) return false;
  patience.notBefore_s[refusal.action] = senses.time_s + LEAVE_s;
  patience.refusals++;
  patience.tried = null;
  return true;
}

export function mayTry(patience: Patience, senses: Senses, action: ActionName): boolean {
  return (patience.notBefore_s[action] ?? 0) <= senses.time_s;
}

export function remember(patience: Patience, senses: Senses, deed: Deed | null): Deed | null {
  if (deed !== null) {
    patience.tried = deed.action;
    patience.tried_s = senses.time_s;
  }
  return deed;
}

/** True while one of the crew is still at that act. */
export function busyWith(senses: Senses, action: ActionName): boolean {
  return senses.hands.tasks.some((task) => task.action === action);
}
