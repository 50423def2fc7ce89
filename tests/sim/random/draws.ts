// One act drawn by chance: any act of the list with any well-formed payload. A crew that looks draws again until its act can be done.
import {
  ACTION_NAMES,
  ACTION_SPECS,
  canAct,
  type ActionGroup,
  type ActionName,
  type FieldSpec,
  type Payload,
  type Run,
  type Stream,
} from '../../../sim';

export interface Drawn {
  readonly action: ActionName;
  readonly payload: Payload;
}

/** How often acts of a group come up: those that carry the drilling on more often, so that random runs get somewhere. */
const WEIGHT: Readonly<Record<ActionGroup, number>> = {
  stem: 5,
  pump: 4,
  fluid: 3,
  pit: 2,
  tray: 2,
  well: 0.05,
  book: 1,
};
const WEIGHTS = ACTION_NAMES.map((name) => WEIGHT[ACTION_SPECS[name].group]);
const WEIGHT_IN_ALL = WEIGHTS.reduce((sum, weight) => sum + weight, 0);

/** Share of draws that are made with open eyes, and how often such a crew thinks again. */
const LOOKING_frac = 0.75;
const SECOND_THOUGHTS = 6;

export const pick = <T>(stream: Stream, list: readonly T[]): T => list[Math.floor(stream.uniform() * list.length)];
export const between = (stream: Stream, low: number, high: number): number => low + (high - low) * stream.uniform();
export const chance = (stream: Stream, share: number): boolean => stream.uniform() < share;

function anyName(stream: Stream): ActionName {
  let left = stream.uniform() * WEIGHT_IN_ALL;
  for (let i = 0; i < WEIGHTS.length; i++) {
    left -= WEIGHTS[i];
    if (left < 0) return ACTION_NAMES[i];
  }
  return ACTION_NAMES[0];
}

function anyValue(stream: Stream, field: FieldSpec): unknown {
  switch (field.type) {
    case 'number': {
      // Most draws near the low end, where the acts of a day lie; some anywhere.
      const u = stream.uniform();
      const share = chance(stream, 0.7) ? u * u * u : u;
      const value = field.min + share * (field.max - field.min);
      return field.whole ? Math.floor(value) : value;
    }
    case 'boolean':
      return chance(stream, 0.7);
    case 'word':
      return pick(stream, field.words);
    default:
      return 'x'.repeat(Math.floor(stream.uniform() * 10));
  }
}

/** Any act at all. Its payload has every field that must be there, and now and then those that may be left out. */
export function anyAct(stream: Stream): Drawn {
  const action = anyName(stream);
  const payload: Record<string, unknown> = {};
  for (const field of ACTION_SPECS[action].fields) {
    if (field.optional && chance(stream, 0.5)) continue;
    payload[field.name] = anyValue(stream, field);
  }
  // A wait is for a time or for something.
  if (action === 'waitFor' && payload.time_s === undefined && payload.until === undefined) payload.time_s = 10;
  return { action, payload };
}

/** An act of a crew that mostly looks before it acts, and now and then does not. */
export function nextAct(run: Run, stream: Stream): Drawn {
  let drawn = anyAct(stream);
  if (!chance(stream, LOOKING_frac)) return drawn;
  for (let n = 0; n < SECOND_THOUGHTS; n++) {
    if (canAct(run, drawn.action, drawn.payload).kind === 'done') return drawn;
    drawn = anyAct(stream);
  }
  return drawn;
}
