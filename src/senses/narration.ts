// The signs told as they change, for the text log and for those who listen: what a crew would say aloud, not each small change.
import type { Lesson } from '$lessons';
import type { Senses } from '$sim';
import type { KeyedMessage } from '../words';
import { gritWord, murkWord, readingsOf, shareWord, type SenseId } from './readings';

/** A sign is told once it has stood so long, and no line sooner than so long after the last, job seconds. ASSUMED: nobody speaks faster. */
const STOOD_s = 10;
const APART_s = 20;
/** The same sign is told again no sooner than this, s: returns go back and forth between two words. */
const AGAIN_s = 60;
/** How the stem goes is told anew after so long though nothing has changed, s. */
const REMIND_s = 600;
/** Sinking below each of these is one pace, m/min: still, slow, steady; above the last it is fast. ASSUMED rules of thumb. */
const PACES_mmin = [0.01, 0.08, 0.4];

/** What a lesson lets the learner notice. */
type Given = Lesson['senses'][number];

interface Sign {
  readonly id: SenseId;
  readonly needs: Given;
  /** What is told alike reads alike here; null: there is nothing to tell. */
  readonly band: (senses: Senses) => string | null;
}

const SIGNS: readonly Sign[] = [
  {
    id: 'rope',
    needs: 'stem',
    band: ({ stem }) =>
      stem.turning && stem.feed_frac > 0
        ? `${PACES_mmin.filter((pace_mmin) => stem.sinking_mmin >= pace_mmin).length} ${stem.torque} ${stem.pull}`
        : null,
  },
  {
    id: 'returns',
    needs: 'returns',
    band: ({ returns }) =>
      returns.running
        ? `${gritWord(returns.cloudiness_frac)} ${murkWord(returns.murk_frac)} ${shareWord(returns.share_frac)}`
        : null,
  },
  { id: 'pit', needs: 'pit', band: ({ pit }) => `${pit.look} ${pit.heap}` },
];

/** Listens to the senses that a lesson gives, and says now and then what has changed. */
export class Narrator {
  readonly #signs: readonly Sign[];
  /** Band last told and when; band that stands now and since when, job seconds. */
  readonly #told = new Map<SenseId, { band: string; at_s: number }>();
  readonly #stands = new Map<SenseId, { band: string | null; since_s: number }>();
  #spoke_s = -Infinity;

  constructor(given: readonly Given[]) {
    this.#signs = SIGNS.filter(({ needs }) => given.includes(needs));
  }

  /** The sentence to tell now, or null. quiet: nothing is to be told at this moment. */
  hear(senses: Senses, quiet = false): KeyedMessage | null {
    const { time_s } = senses;
    for (const { id, band } of this.#signs) {
      const now = band(senses);
      if (now !== this.#stands.get(id)?.band) this.#stands.set(id, { band: now, since_s: time_s });
    }
    if (quiet || time_s - this.#spoke_s < APART_s) return null;
    for (const { id } of this.#signs) {
      const { band, since_s } = this.#stands.get(id)!;
      const told = this.#told.get(id);
      if (band === null || time_s - since_s < STOOD_s) continue;
      const wait_s = band !== told?.band ? AGAIN_s : id === 'rope' ? REMIND_s : Infinity;
      if (told && time_s - told.at_s < wait_s) continue;
      this.#told.set(id, { band, at_s: time_s });
      this.#spoke_s = time_s;
      return readingsOf(senses).find((reading) => reading.id === id)!.sentence;
    }
    return null;
  }

  /** The clock was set back: all is new. */
  forget(): void {
    this.#told.clear();
    this.#stands.clear();
    this.#spoke_s = -Infinity;
  }
}
