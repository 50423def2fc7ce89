// Marks taken while a run is played, at the places where it may be parted later: what is looked back on need not be replayed first.

import type { Run } from '$sim';
import { markOf, type Mark } from './marks';
import { BURST_s, WAITED_s, type Moment } from './moments';

/** So many are kept, 10 to 25 kB each. Of more every second one of waiting goes, and of acts where those are most of them. */
const MOST = 256;

interface Kept {
  readonly mark: Mark;
  /** Taken because time had passed, not before an act. */
  readonly waited: boolean;
}

export class MarkBook {
  #kept: Kept[] = [];
  #acted_tick = -Infinity;

  /** In the order of the run. */
  get marks(): readonly Mark[] {
    return this.#kept.map(({ mark }) => mark);
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
    if (run.state.tick % WAITED_s === 0) this.take(run, true);
  }

  /** Takes a mark of the run as it stands, if there is none yet. */
  take(run: Run, waited = false): void {
    const last = this.#kept.at(-1)?.mark;
    if (last?.tick === run.state.tick && last.entries === run.log.length) return;
    if (this.#kept.length === MOST) this.#thin();
    this.#kept.push({ mark: markOf(run), waited });
  }

  #thin(): void {
    const onlyWaiting = this.#kept.filter(({ waited }) => waited).length > MOST / 4;
    let seen = 0;
    this.#kept = this.#kept.filter(({ waited }) => (onlyWaiting && !waited) || seen++ % 2 === 0);
  }

  /** The run went back to a moment: what came after is no longer so. */
  backTo({ tick, entries }: Moment): void {
    this.#kept = this.#kept.filter(({ mark }) => mark.tick <= tick && mark.entries <= entries);
    this.#acted_tick = -Infinity;
  }
}
