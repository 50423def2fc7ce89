// Turns at one screen in a run that is being played: who sits where, whether it is time to change, and the change itself.
import { seatsOf, type Seats } from '$lessons';
import { SEAT_WORDS } from '$sim';
import { announcer } from '../../app/announcer.svelte';
import { current } from '../../app/current.svelte';
import type { Session } from '../../app/session.svelte';
import { whoWords } from '../../app/who';
import { t } from '../../words';
import {
  isTimeToAsk,
  lastChange_s,
  nextSeats,
  peopleOf,
  restingOf,
  type AskAt,
  type Seated,
  type TurnsKept,
} from './seats';

/** In the run just begun everybody takes a seat; with fewer than two people nothing is done. */
export function beginTurns(seated: readonly Seated[], askAt: AskAt): void {
  const { session, keeper } = current;
  const people = peopleOf(seated);
  if (!session || !keeper || people.length < 2) return;
  keeper.turns = { people, askAt };
  for (const { who, seat } of seated) if (seat) session.act('takeSeat', { seat, who });
  session.keep();
}

export class Turns {
  readonly people: readonly string[];
  readonly #session: Session;
  readonly #askAt: AskAt;
  /** A change was declined then, job seconds. */
  #declined_s = $state(0);

  constructor(session: Session, { people, askAt }: TurnsKept) {
    this.#session = session;
    this.people = people;
    this.#askAt = askAt;
  }

  get seats(): Seats {
    void this.#session.frame;
    return seatsOf(this.#session.run.log);
  }

  get resting(): string[] {
    return restingOf(this.seats, this.people);
  }

  /** It is a good moment to change seats. */
  get asks(): boolean {
    void this.#session.frame;
    const { run, finished, driver } = this.#session;
    if (finished || driver) return false;
    const since_s = Math.max(lastChange_s(run.log), this.#declined_s);
    return isTimeToAsk(this.#askAt, since_s, run.state.tick, run.record.events);
  }

  /** Everybody moves on by one. The clock stands meanwhile: the phone goes from hand to hand. */
  handOver(): void {
    const session = this.#session;
    if (session.finished || session.driver || session.frozen) return;
    session.speed = 0;
    const next = nextSeats(this.seats, this.people);
    for (const seat of SEAT_WORDS) session.act('takeSeat', { seat, who: next[seat] });
    announcer.say(
      t('live.turns.now', {
        driller: whoWords(next.driller),
        pumpHand: whoWords(next.pumpHand),
        logger: whoWords(next.logger),
      }),
    );
  }

  notNow(): void {
    this.#declined_s = this.#session.run.state.tick;
  }
}
