// Who did what where several people take turns at one screen: the log says who sits where from when on, every act belongs to a seat.

import {
  ACTION_SPECS,
  SEAT_WORDS,
  type ActionGroup,
  type ActionName,
  type LogEntry,
  type Run,
  type SeatWord,
} from '$sim';
import { acceptedEntries } from './hindsight/moments';

/** The seat that works at a place. Casing, pack and seal are the driller's: they come after the stem. */
const SEAT_AT: Readonly<Record<ActionGroup, SeatWord>> = {
  stem: 'driller',
  well: 'driller',
  pump: 'pumpHand',
  pit: 'pumpHand',
  fluid: 'pumpHand',
  tray: 'logger',
  book: 'logger',
};

/** What is written or drawn on paper, whatever it is about. */
const ON_PAPER: readonly ActionName[] = ['chooseSite', 'planWell', 'record'];

/** What is no work of a seat: waiting, reading, asking for help, what others bring about. */
const NOBODYS: readonly ActionName[] = [
  'waitFor',
  'readCaution',
  'useHint',
  'goBack',
  'relieveCrew',
  'leaveToCrew',
  'fault',
  'takeSeat',
];

/** The seat whose work an act is; null where it is nobody's. */
export function seatOf(action: ActionName): SeatWord | null {
  if (NOBODYS.includes(action)) return null;
  return ON_PAPER.includes(action) ? 'logger' : SEAT_AT[ACTION_SPECS[action].group];
}

export type Seats = Readonly<Partial<Record<SeatWord, string>>>;

/** Who sits where at the end of a log; a seat that nobody took is left out. */
export function seatsOf(log: readonly LogEntry[]): Seats {
  const seats: Partial<Record<SeatWord, string>> = {};
  for (const [, action, payload] of log)
    if (action === 'takeSeat') seats[payload.seat as SeatWord] = payload.who as string;
  return seats;
}

/** What one person did: acts carried out and job seconds spent, in each seat. */
export interface Share {
  readonly who: string;
  readonly acts: Readonly<Record<SeatWord, number>>;
  readonly time_s: Readonly<Record<SeatWord, number>>;
}

const none = (): Record<SeatWord, number> => ({ driller: 0, pumpHand: 0, logger: 0 });

/** The people of a run in the order in which they first took a seat; empty where nobody did. */
export function sharesOf({ log, record, state }: Pick<Run, 'log' | 'record' | 'state'>): Share[] {
  const people = new Map<string, { acts: Record<SeatWord, number>; time_s: Record<SeatWord, number> }>();
  const sits: Partial<Record<SeatWord, { who: string; since_s: number }>> = {};
  const leaves = (seat: SeatWord, tick: number): void => {
    const one = sits[seat];
    if (one) people.get(one.who)!.time_s[seat] += tick - one.since_s;
  };
  for (const index of acceptedEntries(log, record.events)) {
    const [tick, action, payload] = log[index]!;
    if (action === 'takeSeat') {
      const seat = payload.seat as SeatWord;
      const who = payload.who as string;
      leaves(seat, tick);
      if (!people.has(who)) people.set(who, { acts: none(), time_s: none() });
      sits[seat] = { who, since_s: tick };
      continue;
    }
    const seat = seatOf(action);
    const one = seat && sits[seat];
    if (one) people.get(one.who)!.acts[seat] += 1;
  }
  for (const seat of SEAT_WORDS) leaves(seat, state.tick);
  return [...people].map(([who, { acts, time_s }]) => ({ who, acts, time_s }));
}
