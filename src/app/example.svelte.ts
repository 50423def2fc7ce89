// A worked example in the session that is open: a careful crew plays, says why, and may leave the last part to the learner.
import type { ActResult, Senses } from '$sim';
import { openExample, type Deed, type PartShown, type WordKey } from '$lessons';
import type { Session } from './session.svelte';

/** Being shown counts as the plainest hint: such a run is no pass. */
const AS_HINT = { hint: 'example', level: 3 } as const;

export class Worked {
  /** The sentence of the last deed that had one; null before the first. */
  why: WordKey | null = $state.raw(null);
  /** What was shown is over: the learner's turn. */
  yourTurn = $state(false);
  readonly #session: Session;

  constructor(session: Session, shown: PartShown) {
    this.#session = session;
    session.act('useHint', AS_HINT);
    const example = openExample(session.run, session.lesson, shown);
    session.drive(example.crew, (deed, result, senses) => this.#hear(deed, result, senses, example));
  }

  #hear(deed: Deed, result: ActResult, senses: Senses, example: ReturnType<typeof openExample>): void {
    if (example.over()) {
      this.yourTurn = true;
      this.takeOver();
      return;
    }
    const told = result.kind === 'done' ? example.tell(deed, senses) : null;
    if (!told) return;
    this.why = told.why;
    if (told.first) this.#session.speed = 0;
  }

  /** The hands go back to the learner, with the clock stopped. */
  takeOver(): void {
    this.#session.drive(null);
    this.#session.speed = 0;
  }
}
