// The log of a run: what was asked for, and when. With scenario and seed it is the whole run.

import type { Payload } from './check';
import type { ActionName } from './names';

export type LogEntry = readonly [tick: number, action: ActionName, payload: Payload];
