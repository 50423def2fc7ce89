// The clock's controls: pause, the paces, one second. Go takes up the pace that was last chosen.
import type { Session } from '../../app/session.svelte';
import type { Speed } from '../../app/ticker';

export const PACES = [1, 5, 20, 60] as const satisfies readonly Speed[];
export type PaceSpeed = (typeof PACES)[number];

export class Pace {
  /** The pace that runs, or that Go will take up. */
  chosen: PaceSpeed = $state(1);
  readonly #session: Session;

  constructor(session: Session) {
    this.#session = session;
  }

  toggle(): void {
    if (this.#session.speed === 0) this.#session.speed = this.chosen;
    else this.#session.speed = 0;
  }

  choose(speed: PaceSpeed): void {
    this.chosen = speed;
    this.#session.speed = speed;
  }

  step(): void {
    this.#session.speed = 0;
    this.#session.stepOnce();
  }
}
