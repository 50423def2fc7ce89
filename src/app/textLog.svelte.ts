// The text log of an open run: what the crew notices, and what the signs say when it has changed. Screens list it, the live region reads it aloud.
import type { Lesson } from '$lessons';
import type { ActionName, RunEvent, Senses } from '$sim';
import { Narrator } from '../senses/narration';
import { feltMessage, isDanger, type FeltMessage } from './felt';

/** Messages kept; older ones are in the run's own record. */
const KEPT = 200;
/** While the clock runs signs are told no sooner than so long after the last: a voice needs its time. */
const TELL_EVERY_ms = 4000;

export class TextLog {
  messages: readonly FeltMessage[] = $state.raw([]);
  readonly #narrator: Narrator;
  /** Events of the run that are told already. */
  heard: number;
  #count = 0;
  #toldAt_ms = -Infinity;

  /** given: the senses that the lesson lets the learner have. heard: events of the run before it was taken up. */
  constructor(given: Lesson['senses'], heard: number) {
    this.#narrator = new Narrator(given);
    this.heard = heard;
  }

  say(message: Omit<FeltMessage, 'number'>): void {
    const numbered = { ...message, number: ++this.#count };
    this.messages = [...this.messages.slice(1 - KEPT), numbered];
  }

  /** Tells what has happened since it was last called, but not that a held act has done one more of its small steps. True if there is danger in it. */
  hear(events: readonly RunEvent[], held: ActionName | null): boolean {
    let danger = false;
    for (; this.heard < events.length; this.heard++) {
      const event = events[this.heard]!;
      const message = feltMessage(event);
      if (message && message.key !== `event.taskDone.${held}`) this.say(message);
      if (isDanger(event.name)) danger = true;
    }
    return danger;
  }

  /** What the signs say, when it is another thing than they said before. */
  tellSigns(senses: Senses, running: boolean, now_ms: number): void {
    const told = this.#narrator.hear(senses, running && now_ms - this.#toldAt_ms < TELL_EVERY_ms);
    if (!told) return;
    this.#toldAt_ms = now_ms;
    this.say({ time_s: senses.time_s, key: told.key, data: told.data ?? {}, urgent: false });
  }

  /** The clock was set back: what came later has not happened. heard: events of the run up to then. */
  backTo(time_s: number, heard: number): void {
    this.heard = heard;
    this.messages = this.messages.filter((message) => message.time_s <= time_s);
    this.#narrator.forget();
  }
}
