// The end of the talk in the steering window: asks again and again how things stand, and sends orders.
import { readTelling, type Look, type Order, type Standing } from './talk';
import { Wire, type Here, type Peer } from './wire';

/** So often it says that it is there, ms. */
const HELLO_EVERY_ms = 1500;
/** Who has not answered for so long is away, ms. A page that is covered answers once a second. */
const PATIENCE_ms = 6000;

export type HoleWindow =
  /** This window was not opened by a run. */
  | 'none'
  /** It has not answered yet. */
  | 'asked'
  | 'there'
  /** It is there, but no run stands at the hole. */
  | 'away'
  /** It is closed, or does not answer. */
  | 'gone';

export class Steering {
  hole: HoleWindow = $state('none');
  standing: Standing | null = $state.raw(null);
  look: Look = $state('true');
  readonly #opener: Peer | null;
  readonly #wire: Wire<Order>;
  readonly #timer: ReturnType<typeof setInterval>;
  #heard_ms = performance.now();

  constructor(here: Here, opener: Peer | null) {
    this.#opener = opener;
    this.#wire = new Wire<Order>({
      here,
      peer: opener,
      isPeer: (source) => source === opener,
      hear: (data) => this.#hear(data),
      goodbye: { kind: 'gone' },
    });
    if (opener) this.hole = 'asked';
    this.#hello();
    this.#timer = setInterval(() => this.#hello(), HELLO_EVERY_ms);
  }

  /** The other picture is asked for. */
  show(look: Look): void {
    this.look = look;
    this.#hello();
  }

  order(order: Exclude<Order, { kind: 'hello' | 'gone' }>): void {
    this.#wire.send(order);
  }

  dispose(): void {
    this.#wire.send({ kind: 'gone' });
    this.#wire.close();
    clearInterval(this.#timer);
  }

  #hello(): void {
    if (!this.#opener) return;
    const silent = performance.now() - this.#heard_ms > PATIENCE_ms;
    if (!this.#wire.open || (silent && this.hole !== 'away')) this.hole = 'gone';
    this.#wire.send({ kind: 'hello', look: this.look });
  }

  #hear(data: unknown): void {
    const telling = readTelling(data);
    if (!telling) return;
    this.#heard_ms = performance.now();
    if (telling.kind !== 'standing') this.hole = telling.kind;
    else {
      this.hole = 'there';
      this.standing = telling;
    }
  }
}
