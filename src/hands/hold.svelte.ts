// A hand that is held down: one small step follows the other until it is let go. One at a time.
// A lasting act takes its next step in the second in which the last one is done; a setting moves on at an even pace.
import type { ActionName, Payload } from '$sim';
import { announcer } from '../app/announcer.svelte';
import type { Session } from '../app/session.svelte';
import { t, type KeyedMessage, type MessageKey } from '../words';

/** A press of this length is a hold; a shorter one is a tap. */
export const HOLD_ms = 400;
/** A held setting moves on by a step after each of these times. */
export const STEADY_ms = 350;

export interface Holdable {
  /** One for each press. */
  readonly id: string;
  /** The hand that it belongs to: its lock, and where a refusal stands. */
  readonly hand: string;
  /** What is said of it. */
  readonly label: MessageKey;
  readonly action: ActionName;
  readonly pace: 'task' | 'steady';
  /** What the next step does; null at the end of the way. */
  step(): Payload | null;
}

/** The part of the desk that a hold works through. */
interface Bench {
  readonly session: Session;
  whyNot(action: ActionName, payload: Payload): KeyedMessage | null;
  act(id: string, action: ActionName, payload: Payload): boolean;
  step(id: string, action: ActionName, payload: Payload): void;
  refuse(id: string, why: KeyedMessage): void;
}

export class Hold {
  /** What is held now, or null. */
  held: Holdable | null = $state.raw(null);
  /** It stays held without a finger. */
  locked = $state(false);
  /** The hand whose next press stays held, or null. */
  armed: string | null = $state(null);
  readonly #bench: Bench;
  #timer: ReturnType<typeof setInterval> | undefined;

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  isHeld(what: Holdable | undefined): boolean {
    return what !== undefined && this.held?.id === what.id;
  }

  /** A finger or a key goes down. What is returned ends the press, and says whether it had become a hold. */
  press(what: Holdable): () => boolean {
    let begun = false;
    const timer = setTimeout(() => {
      begun = true;
      this.begin(what, false);
    }, HOLD_ms);
    return () => {
      clearTimeout(timer);
      if (begun && this.isHeld(what)) this.slip();
      return begun;
    };
  }

  /** A press of a hand that is held already lets go; one of a hand whose lock is closed stays held. False where it is a plain press. */
  took(what: Holdable): boolean {
    if (this.held?.hand === what.hand) this.letGo();
    else if (this.armed === what.hand) this.begin(what, true);
    else return false;
    return true;
  }

  begin(what: Holdable, locked: boolean): void {
    this.letGo();
    this.armed = null;
    this.held = what;
    this.locked = locked;
    const { session } = this.#bench;
    if (what.pace === 'steady') {
      this.#timer = setInterval(() => this.#step(), STEADY_ms);
      this.#step();
    } else {
      session.held = what.action;
      session.onSecond = () => this.#second();
      this.#second();
    }
    if (this.held) announcer.say(t(locked ? 'work.hold.locked' : 'work.hold.held', { hand: what.label }));
  }

  /** The lock of a hand: closes on what is held, lets go of what it holds, or waits for the next press. */
  lock(hand: string, label: MessageKey): void {
    if (this.held?.hand !== hand) {
      this.armed = this.armed === hand ? null : hand;
      if (this.armed) announcer.say(t('work.hold.armed', { hand: label }));
    } else if (this.locked) this.letGo();
    else {
      this.locked = true;
      announcer.say(t('work.hold.locked', { hand: this.held.label }));
    }
  }

  /** The finger is gone: what no lock holds is let go. */
  slip(): void {
    if (!this.locked) this.letGo();
  }

  /** Lets go of everything, and opens the lock that waits. */
  letGo(): void {
    const { held } = this;
    this.armed = null;
    if (!held) return;
    clearInterval(this.#timer);
    this.held = null;
    this.locked = false;
    const { session } = this.#bench;
    session.held = null;
    session.onSecond = null;
    session.keep();
    announcer.say(t('work.hold.letGo', { hand: held.label }));
  }

  /** Before each second of the job: the step under way is not disturbed, be it that of the tap before. */
  #second(): void {
    const underWay = this.#bench.session.run.state.tasks.some((task) => task.action === this.held?.action);
    if (!underWay) this.#step();
  }

  #step(): void {
    const { held } = this;
    if (!held) return;
    const payload = held.step();
    const why = payload && this.#bench.whyNot(held.action, payload);
    if (payload && !why) {
      this.#bench[held.pace === 'steady' ? 'step' : 'act'](held.hand, held.action, payload);
      return;
    }
    this.letGo();
    // Said at the hand, but no mark against the run: nobody pressed in vain.
    if (why) this.#bench.refuse(held.hand, why);
  }
}
