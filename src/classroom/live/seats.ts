// Turns at one screen: who begins where, who comes next, when it is time to ask for a change. Plain rules, no screen.
import { SEAT_WORDS, type EventName, type LogEntry, type RunEvent, type SeatWord } from '$sim';
import type { Seats } from '$lessons';

/** Most people at one screen. */
export const MOST_PEOPLE = 4;

/** Somebody in a seat, or without one while there are more people than seats. */
export interface Seated {
  readonly who: string;
  readonly seat: SeatWord | null;
}

/** When a change is asked for: after each rod and stage of the work, after so many job seconds, or never. */
export type AskAt = 'stage' | number | null;

/** What is kept with a run that several play. */
export interface TurnsKept {
  /** In the order in which they follow each other in a seat. */
  readonly people: readonly string[];
  readonly askAt: AskAt;
}

/** Where everybody begins: the first drills, the second is pump hand, the third logs, the fourth rests. Of two the second does both. */
export function firstSeats(people: readonly string[]): Seated[] {
  if (people.length < 2) return [];
  const seated: Seated[] = SEAT_WORDS.map((seat, i) => ({ who: people[Math.min(i, people.length - 1)]!, seat }));
  return [...seated, ...people.slice(SEAT_WORDS.length).map((who) => ({ who, seat: null }))];
}

/** People in the order in which they are first named. */
export const peopleOf = (seated: readonly Seated[]): string[] => [...new Set(seated.map(({ who }) => who))];

/** After a change each seat goes to whoever comes next in the order of the people. */
export function nextSeats(seats: Seats, people: readonly string[]): Record<SeatWord, string> {
  const after = (who: string | undefined): string => people[(people.indexOf(who ?? '') + 1) % people.length]!;
  return {
    driller: after(seats.driller),
    pumpHand: after(seats.pumpHand),
    logger: after(seats.logger),
  };
}

/** Those who have no seat now. */
export const restingOf = (seats: Seats, people: readonly string[]): string[] =>
  people.filter((who) => !Object.values(seats).includes(who));

/** What ends a stage of the work: hands are free and the hole can wait. */
export const STAGES: readonly EventName[] = [
  'rodAdded',
  'newHole',
  'morning',
  'drillingStopped',
  'stemPulled',
  'casingLanded',
  'packPoured',
  'sealPlaced',
  'sealSet',
  'wellClear',
  'testDone',
  'disinfected',
];

/** When somebody last took a seat, job seconds; 0: nobody did. */
export const lastChange_s = (log: readonly LogEntry[]): number =>
  log.findLast(([, action]) => action === 'takeSeat')?.[0] ?? 0;

/** Whether it is time to ask. `since_s`: when seats were last changed, or a change was last declined. */
export function isTimeToAsk(askAt: AskAt, since_s: number, now_s: number, events: readonly RunEvent[]): boolean {
  if (askAt === null) return false;
  if (askAt !== 'stage') return now_s - since_s >= askAt;
  // The newest come last: nothing before the last change is looked through.
  for (let i = events.length - 1; i >= 0 && events[i]!.tick > since_s; i--)
    if (STAGES.includes(events[i]!.name)) return true;
  return false;
}
