// What the window at the hole and the steering window tell each other, as plain data. Whatever else arrives is no part of the talk.
import { SIM_VERSION, type FaultName, type MendWord, type Senses } from '$sim';
import type { Speed } from '../../app/ticker';
import type { CutawayView } from '../../cutaway/shown';
import type { Reading } from '../../senses/readings';
import type { KeyedMessage } from '../../words';

export const TALK_FORMAT = 'hand-jetting-steering';
/** Windows of two versions of the app do not understand each other's views: they are opened from the same page, so this is one that was changed meanwhile. */
export const TALK_VERSION = `1/${SIM_VERSION}`;

/** Which picture the steering window shows: the true one, or the learner's. */
export type Look = 'true' | 'learner';

/** Orders of the steering window. */
export type Order =
  /** Sent again and again: I am here, tell me how things stand. */
  | { readonly kind: 'hello'; readonly look: Look }
  | { readonly kind: 'fault'; readonly fault: FaultName }
  | { readonly kind: 'mend'; readonly what: MendWord }
  | { readonly kind: 'freeze'; readonly on: boolean }
  | { readonly kind: 'pace'; readonly speed: Speed }
  | { readonly kind: 'wall'; readonly on: boolean }
  | { readonly kind: 'reveal'; readonly on: boolean }
  | { readonly kind: 'gone' };

/** One line of what was done and what happened, newest first. */
export interface LogLine {
  readonly time_s: number;
  readonly words: KeyedMessage;
  /** Who sat at it, where several take turns. */
  readonly who: string | null;
  /** hidden: no crew can notice it. */
  readonly sort: 'act' | 'refused' | 'event' | 'hidden';
}

/** What may be ordered, and why not where it may not. */
export interface Choice<Name extends string> {
  readonly name: Name;
  readonly whyNot: KeyedMessage | null;
}

/** How things stand at the hole. */
export interface Standing {
  readonly kind: 'standing';
  readonly title: string;
  readonly who: string;
  readonly ground: number;
  readonly time_s: number;
  readonly speed: Speed;
  readonly waiting: boolean;
  readonly finished: boolean;
  readonly frozen: boolean;
  readonly wall: boolean;
  readonly revealed: boolean;
  /** The page at the hole is covered or laid aside: its clock stands. */
  readonly hidden: boolean;
  readonly picture: CutawayView;
  /** The truth in figures. */
  readonly facts: readonly KeyedMessage[];
  readonly senses: Senses;
  readonly shown: readonly Reading['id'][];
  readonly lines: readonly LogLine[];
  readonly faults: readonly Choice<FaultName>[];
  readonly mends: readonly Choice<MendWord>[];
}

/** What the window at the hole tells. */
export type Telling =
  | Standing
  /** No run stands at the hole any more; the page is still there. */
  | { readonly kind: 'away' }
  | { readonly kind: 'gone' };

interface Letter<Content> {
  readonly format: typeof TALK_FORMAT;
  readonly version: typeof TALK_VERSION;
  readonly content: Content;
}

export const letterOf = <Content extends Order | Telling>(content: Content): Letter<Content> => ({
  format: TALK_FORMAT,
  version: TALK_VERSION,
  content,
});

type Fields = Record<string, unknown>;

const isRecord = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function contentOf(data: unknown): Fields | null {
  if (!isRecord(data) || data['format'] !== TALK_FORMAT || data['version'] !== TALK_VERSION) return null;
  return isRecord(data['content']) ? data['content'] : null;
}

const isOnOff = ({ on }: Fields): boolean => typeof on === 'boolean';

/** Each order with what it must bring along. The run itself checks the names of faults and mends. */
const ORDERS: Readonly<Record<Order['kind'], (fields: Fields) => boolean>> = {
  hello: ({ look }) => look === 'true' || look === 'learner',
  fault: ({ fault }) => typeof fault === 'string',
  mend: ({ what }) => typeof what === 'string',
  freeze: isOnOff,
  pace: ({ speed }) => [0, 1, 5, 20, 60].includes(speed as number),
  wall: isOnOff,
  reveal: isOnOff,
  gone: () => true,
};

const LISTS = ['facts', 'shown', 'lines', 'faults', 'mends'] as const;

const TELLINGS: Readonly<Record<Telling['kind'], (fields: Fields) => boolean>> = {
  standing: (fields) =>
    typeof fields['time_s'] === 'number' &&
    isRecord(fields['picture']) &&
    isRecord(fields['senses']) &&
    LISTS.every((name) => Array.isArray(fields[name])),
  away: () => true,
  gone: () => true,
};

function read<Content extends { readonly kind: string }>(
  kinds: Readonly<Record<Content['kind'], (fields: Fields) => boolean>>,
  data: unknown,
): Content | null {
  const fields = contentOf(data);
  const kind = fields?.['kind'];
  if (!fields || typeof kind !== 'string' || !Object.hasOwn(kinds, kind)) return null;
  return kinds[kind as Content['kind']](fields) ? (fields as unknown as Content) : null;
}

/** The order in what has come, or null. */
export const readOrder = (data: unknown): Order | null => read<Order>(ORDERS, data);

/** The telling in what has come, or null. */
export const readTelling = (data: unknown): Telling | null => read<Telling>(TELLINGS, data);
