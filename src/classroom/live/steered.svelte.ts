// The end of the talk at the hole: opens the steering window, tells it how things stand, and carries out what it orders.
// Whatever it changes about the run goes through an act, and so into the log.
import { canAct, FAULT_NAMES, MEND_WORDS, type ActionName, type FaultName, type MendWord, type Payload } from '$sim';
import { isScored } from '$lessons';
import { announcer } from '../../app/announcer.svelte';
import type { Keeper } from '../../app/keeper';
import { addressOf } from '../../app/places';
import type { Session } from '../../app/session.svelte';
import { titleWords } from '../../app/title';
import { cutawayView } from '../../cutaway/view';
import { wellPhase } from '../../hands/well';
import { sensesOffered } from '../../screens/work/offer';
import { t, type KeyedMessage } from '../../words';
import { logLines } from './logLines';
import { readOrder, type Choice, type Look, type Order, type Standing, type Telling } from './talk';
import { truthOf } from './truth';
import { Wire, type Here, type Peer } from './wire';

/** How things stand is told no sooner than so long after the last time, ms; whether the window is still there is looked at as often. */
const TELL_EVERY_ms = 400;
const LOOK_EVERY_ms = 1500;
/** Room for the steering window, where the device lets it choose. */
const SIZE = 'popup,width=1100,height=760';

/** A hint of the plainest level: whoever was shown the ground has not passed. */
const SHOWN = 3;
const NOTED = 1;

/** Our window, as far as the talk needs it. */
export interface Stage extends Here {
  open(address: string, name: string, features: string): Peer | null;
}

export class Steered {
  /** none: never opened; open: it is there; gone: it was, and is not any more. */
  window: 'none' | 'open' | 'gone' = $state('none');
  /** The browser would not open it. */
  blocked = $state(false);
  /** The page shows the run in large letters and without hands. */
  wall = $state(false);
  readonly #session: Session;
  readonly #keeper: Keeper | null;
  readonly #stage: Stage;
  readonly #wire: Wire<Telling>;
  #child: Peer | null = null;
  #look: Look = 'true';
  #timer: ReturnType<typeof setTimeout> | undefined;
  #told_ms = -Infinity;
  readonly #watch: ReturnType<typeof setInterval>;

  constructor(session: Session, keeper: Keeper | null, stage: Stage) {
    this.#session = session;
    this.#keeper = keeper;
    this.#stage = stage;
    this.#wire = new Wire<Telling>({
      here: stage,
      isPeer: (source) => source === this.#child || openedHere(source, stage),
      hear: (data) => this.#hear(readOrder(data)),
      goodbye: { kind: 'gone' },
    });
    this.#watch = setInterval(() => this.#lookOut(), LOOK_EVERY_ms);
    if (keeper?.frozen) session.freeze(true);
  }

  /** The run is one that an instructor may steer. */
  get may(): boolean {
    const { live, practice } = this.#session.run.scenario;
    return !this.#session.finished && (live === true || practice);
  }

  /** An exercise for that purpose, or a play without points: then steering takes nothing from it. */
  get forSteering(): boolean {
    return this.#session.run.scenario.live === true || !isScored(this.#session.lesson);
  }

  get revealed(): boolean {
    return this.#session.view === 'debrief';
  }

  /** Opens the steering window, or brings it to the front. That it was opened stands in the log, for it shows the true ground. */
  open(): void {
    const child = this.#stage.open(addressOf({ name: 'steer' }), 'steering', SIZE);
    this.blocked = child === null;
    if (!child) return;
    this.#child = child;
    this.#wire.join(child);
    this.#note('steering', this.forSteering ? NOTED : SHOWN);
  }

  /** Lets the clock go without the steering window: it is gone. */
  goOnAlone(): void {
    this.#freeze(false);
  }

  /** The run has changed: tells the steering window soon. */
  changed(): void {
    if (this.#timer !== undefined || this.window !== 'open') return;
    const wait_ms = Math.max(0, this.#told_ms + TELL_EVERY_ms - performance.now());
    this.#timer = setTimeout(() => this.#tell(), wait_ms);
  }

  /** The screen at the hole is left. */
  dispose(): void {
    this.#wire.send({ kind: 'away' });
    this.#wire.close();
    clearTimeout(this.#timer);
    clearInterval(this.#watch);
    this.#session.view = this.#session.lesson.view;
  }

  #tell(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#told_ms = performance.now();
    this.#wire.send(this.#standing());
  }

  #hear(order: Order | null): void {
    if (!order) return;
    if (order.kind === 'gone') return this.#lost();
    if (this.window !== 'open') announcer.say(t('live.opened'));
    this.window = 'open';
    this.#carryOut(order);
    this.#tell();
  }

  #carryOut(order: Exclude<Order, { kind: 'gone' }>): void {
    const session = this.#session;
    if (!this.may) return;
    switch (order.kind) {
      case 'hello':
        this.#look = order.look;
        return;
      case 'fault':
        return this.#instruct('fault', { fault: order.fault });
      case 'mend':
        return this.#instruct('mend', { what: order.what });
      case 'freeze':
        return this.#freeze(order.on);
      case 'pace':
        session.speed = order.speed;
        return;
      case 'wall':
        this.wall = order.on;
        return;
      default:
        if (order.on) this.#note('ground', SHOWN);
        session.view = order.on ? 'debrief' : session.lesson.view;
    }
  }

  /** What cannot be done is not tried: a refusal would stand against the learner. */
  #instruct(name: ActionName, payload: Payload): void {
    if (canAct(this.#session.run, name, payload).kind === 'done') this.#session.instruct(name, payload);
  }

  /** Notes once in the log that something was shown. */
  #note(hint: string, level: number): void {
    const { hints } = this.#session.run.state;
    if (!hints.some((one) => one.hint === hint)) this.#session.instruct('useHint', { hint, level });
  }

  #freeze(on: boolean): void {
    this.#session.freeze(on);
    announcer.say(t(on ? 'live.frozen' : 'live.goesOn'), true);
    if (this.#keeper) this.#keeper.frozen = this.#session.frozen;
    this.#session.keep();
  }

  #lookOut(): void {
    if (this.window === 'open' && !this.#wire.open) this.#lost();
  }

  #lost(): void {
    if (this.window === 'gone') return;
    this.window = 'gone';
    announcer.say(t('live.closed'), true);
  }

  #standing(): Standing {
    const session = this.#session;
    const { run, lesson, senses } = session;
    const whole = cutawayView(run, 'debrief');
    const whyNot = (name: ActionName, payload: Payload): KeyedMessage | null => {
      const result = canAct(run, name, payload);
      return result.kind === 'refused' ? { key: `refusal.${result.reason}` } : null;
    };
    return {
      kind: 'standing',
      title: titleWords(lesson),
      who: this.#keeper?.who ?? '',
      ground: run.scenario.seed,
      time_s: run.state.tick,
      speed: session.speed,
      waiting: run.state.wait !== null,
      finished: session.finished,
      frozen: session.frozen,
      wall: this.wall,
      revealed: this.revealed,
      hidden: typeof document !== 'undefined' && document.hidden,
      picture: this.#look === 'true' ? whole : cutawayView(run, lesson.view),
      facts: truthOf(run, whole),
      senses,
      shown: sensesOffered(lesson, wellPhase({ session })),
      lines: logLines(run),
      faults: FAULT_NAMES.map((name): Choice<FaultName> => ({ name, whyNot: whyNot('fault', { fault: name }) })),
      mends: MEND_WORDS.map((name): Choice<MendWord> => ({ name, whyNot: whyNot('mend', { what: name }) })),
    };
  }
}

/** A window that this page has opened, be it before it was loaded anew. */
function openedHere(source: Peer, stage: Stage): boolean {
  try {
    return source.opener === stage;
  } catch {
    return false;
  }
}
