// Marks taken while a run is played, at the places where it may be parted later: what is looked back on need not be replayed first.

import type { Run } from '$sim';
import { markOf, type Mark } from './marks';
import { BURST_s, WAITED_s, type Moment } from './moments';

/** So many are kept, 10 to 25 kB each; of more every second one goes. */
const MOST = 256;

export class MarkBook {
  readonly #marks: Mark[] = [];
  #acted_tick = -Infinity;

  /** In the order of the run. */
  get marks(): readonly Mark[] {
    return this.#marks;
  }

  /** Call before each act that is tried. */
  beforeAct(run: Run): void {
    if (run.state.tick - this.#acted_tick > BURST_s) this.take(run);
  }

  /** Call after each act that was carried out. tick: when it was begun. */
  acted(tick: number): void {
    this.#acted_tick = tick;
  }

  /** Call after each second. */
  passed(run: Run): void {
    if (run.state.tick % WAITED_s === 0) this.take(run);
  }

  take(run: Run): void {
    const last = this.#marks.at(-1);
    if (last?.tick === run.state.tick && last.entries === run.log.length) return;
    this.#marks.push(markOf(run));
    if (this.#marks.length <= MOST) return;
    const kept = this.#marks.filter((_, index) => index % 2 === 0);
    this.#marks.splice(0, this.#marks.length, ...kept);
  }

  /** The run went back to a moment: what came after is no longer so. */
  backTo({ tick, entries }: Moment): void {
    const kept = this.#marks.filter((mark) => mark.tick <= tick && mark.entries <= entries);
    this.#marks.splice(0, this.#marks.length, ...kept);
    this.#acted_tick = -Infinity;
  }
}
