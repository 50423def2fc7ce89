// Which coaching card is on top now: the one whose cue came last. One sentence at a time.

import type { ActionName, Run } from '$sim';
import { ownEntries, ownEvents, ownTrace, startTick } from './own';
import type { Lesson } from './schema';
import type { WordKey } from './words/index';

type Card = Lesson['cards'][number];

/** Tick of the card's latest cue, or -1. */
function cuedAt(card: Card, run: Run): number {
  const { cue } = card;
  const events = ownEvents(run);
  if (cue.on === 'start') return startTick(run);
  if (cue.on === 'event') {
    for (let i = events.length - 1; i >= 0; i--) if (events[i]!.name === cue.event) return events[i]!.tick;
    return -1;
  }
  if (cue.on === 'action') {
    const log = ownEntries(run);
    for (let i = log.length - 1; i >= 0; i--) {
      const [tick, action, payload] = log[i]!;
      // Letting go of something (feed to nothing, throttle shut, turning off) is no cue for advice on how to hold it.
      if (action === cue.action && !Object.values(payload).some((value) => value === 0 || value === false)) return tick;
    }
    return -1;
  }
  const trace = ownTrace(run);
  for (let row = 0; row < trace.length; row++)
    if (trace.columns.depth_m[row]! >= cue.depth_m) return trace.columns.time_s[row]!;
  return -1;
}

export interface CoachingCard {
  readonly id: string;
  readonly text: WordKey;
  readonly tick: number;
  /** The act it speaks of, as long as that was not done since its cue. */
  readonly hand: ActionName | null;
}

/** The card to show, or null when the lesson has none. Of cards cued at the same moment the later in the lesson wins. */
export function coachingCard(lesson: Lesson, run: Run): CoachingCard | null {
  let best: Card | null = null;
  let bestTick = 0;
  for (const card of lesson.cards) {
    const tick = cuedAt(card, run);
    if (tick >= 0 && (best === null || tick >= bestTick)) [best, bestTick] = [card, tick];
  }
  return best && { id: best.id, text: best.text, tick: bestTick, hand: stillToDo(best, bestTick, run) };
}

function stillToDo({ hand }: Card, since_tick: number, run: Run): ActionName | null {
  if (hand === undefined) return null;
  const log = ownEntries(run);
  for (let i = log.length - 1; i >= 0 && log[i]![0] >= since_tick; i--) if (log[i]![1] === hand) return null;
  return hand;
}
