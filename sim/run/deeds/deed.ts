// What an act is made of: why it may be refused, what it does at once, each second, and when it ends.

import type { Payload } from '../check';
import type { ActionName, RefusalKey } from '../names';
import type { Run } from '../run';
import type { Task } from '../state';

export interface Deed {
  /** The reason why it cannot be done now, or null. Impossible acts are refused; foolish ones are not. */
  readonly refusal?: (run: Run, payload: Payload) => RefusalKey | null;
  /** Hands it takes, where that depends on the payload. */
  readonly hands?: (payload: Payload) => number;
  /** Job seconds, where they depend on the payload or on chance. */
  readonly time_s?: (run: Run, payload: Payload) => number;
  /** At once, when the act begins. An act that takes time gets its task, whose data it may fill. */
  readonly begin?: (run: Run, payload: Payload, task: Task | null) => void;
  /** Each second while it lasts. */
  readonly during?: (run: Run, task: Task) => void;
  /** When its time is up. */
  readonly end?: (run: Run, task: Task) => void;
}

export type Deeds = Partial<Record<ActionName, Deed>>;
