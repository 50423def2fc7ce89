// The looking back on the run of the open debrief, as the screens see it.
import { hashRun } from '$sim';
import { isScored } from '$lessons';
import type { Keeper } from '../app/keeper';
import type { Session } from '../app/session.svelte';
import { handCount, slicedHand, workerHand } from './hands';
import { LookBack, type Progress } from './lookBack';

export type { Progress } from './lookBack';

class Hindsight {
  progress: Progress | null = $state.raw(null);
  stopped = $state(false);
  #lookBack: LookBack | null = null;
  #session: Session | null = null;

  /** Begins, or goes on with what was kept. Asked again for the same run it does nothing. */
  async open(session: Session, keeper: Keeper): Promise<void> {
    if (this.#session === session && !this.stopped) return;
    this.close();
    this.#session = session;
    this.stopped = false;
    const makeHand = await workerHand().catch(() => slicedHand);
    if (this.#session !== session) return;
    const { run, lesson } = session;
    const hash = hashRun(run);
    const workers = makeHand !== slicedHand && typeof Worker !== 'undefined';
    let saved = 0;
    const lookBack = new LookBack({
      run,
      lesson,
      hash,
      taken: session.marks.marks,
      scored: isScored(lesson),
      kept: keeper.hindsight?.hash === hash ? keeper.hindsight : null,
      makeHand: workers ? makeHand : slicedHand,
      hands: workers ? handCount(navigator.hardwareConcurrency) : 1,
      onchange: (progress) => {
        this.progress = progress;
        // Kept when all is known, and once more with the other grounds.
        const worth = progress.done ? 2 : progress.all ? 1 : 0;
        if (worth > saved) keeper.lookedBack(lookBack.kept(), run);
        saved = Math.max(saved, worth);
      },
    });
    this.#lookBack = lookBack;
    this.#keep = () => keeper.lookedBack(lookBack.kept(), run);
    lookBack.start();
  }

  /** Stops the work; what is known stays, and is kept with the run. */
  stop(): void {
    if (!this.#lookBack || this.stopped) return;
    this.#lookBack.stop();
    if (this.progress && !this.progress.done) this.#keep();
    this.stopped = true;
  }

  /** Stops and forgets: another run is looked back on. */
  close(): void {
    this.stop();
    this.#lookBack = null;
    this.#session = null;
    this.progress = null;
  }

  #keep: () => void = () => undefined;
}

export const hindsight = new Hindsight();
