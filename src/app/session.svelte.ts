// One run being played: the clock, the acts, what the crew notices. Screens read it; only act() and the clock change the run.
// Who notices what is decided by the run: this file asks it and passes it on.
import {
  act,
  replayRun,
  sensesOf,
  step,
  type ActionName,
  type ActResult,
  type Payload,
  type Run,
  type Senses,
} from '$sim';
import { entriesBefore, isOver, MarkBook, restCrew, type Crew, type Deed, type Lesson } from '$lessons';
import type { FeltMessage } from './felt';
import { ENGINE_BUDGET_ms, screenFrames, type Frames } from './frames';
import { lookEvery_ms } from './lookEvery';
import { TextLog } from './textLog.svelte';
import { createTicker, type Speed } from './ticker';

/** Hears of a deed of the crew that plays, what came of it, and what could be sensed in the moment before. */
export type OnDeed = (deed: Deed, result: ActResult, senses: Senses) => void;

export interface SessionOptions {
  lesson: Lesson;
  run: Run;
  /** Called after every accepted act and whenever the run should be kept. */
  save?: (run: Run) => void;
  /** Pictures to tick by; a test passes its own. */
  frames?: Frames;
  now_ms?: () => number;
}

export class Session {
  readonly lesson: Lesson;
  /** The run itself, changed in place. Read `frame` too, to hear of changes. */
  run: Run;
  senses: Senses = $state.raw()!;
  /** Grows when the senses are read anew. */
  frame = $state(0);
  /** Grows with every second that is played while the clock runs: what draws the run itself follows it too. */
  played = $state(0);
  lastResult: ActResult | null = $state.raw(null);
  readonly #log: TextLog;
  finished = $state(false);
  /** True after the clock fell back to real time by itself, until a speed is chosen. */
  slowed = $state(false);
  /** The crew that plays at present, or null: then whoever sits at the screen does. */
  driver: Crew | null = $state.raw(null);
  /** While a crew plays: as fast as the engine can, whatever the pace; a pause stops it all the same. */
  hurried = $state(false);
  #speed: Speed = $state(0);
  /** How much the drawing shows: what the lesson lets a learner see, until an instructor opens the ground. */
  view: Lesson['view'] | 'debrief' = $state('blind');
  #frozen = $state(false);
  /** The pace to go on at when an instructor lets the clock go again. */
  #paceBefore: Speed = 0;
  /** The lasting act that is held down: its small steps are not told and not written one by one. */
  held: ActionName | null = null;
  /** The run as it stood on the way, for the looking back. What a crew does is not marked. */
  readonly marks = new MarkBook();
  /** Called before each second that the clock brings, where something is held down. */
  onSecond: (() => void) | null = null;

  readonly #save: (run: Run) => void;
  readonly #frames: Frames;
  readonly #now_ms: () => number;
  readonly #ticker = createTicker();
  #handle: number | null = null;
  #onDeed: OnDeed | null = null;
  /** Tick at which the driving crew last looked: it looks once a second. */
  #lookedAt = -1;
  #savedAt_ms: number;
  #lookedAt_ms = -Infinity;
  /** Seconds were played since the senses were read. */
  #behind = false;
  readonly #hidden = (): void => {
    if (document.hidden) this.pauseAndKeep();
  };

  constructor(options: SessionOptions) {
    this.lesson = options.lesson;
    this.run = options.run;
    this.view = options.lesson.view;
    this.#save = options.save ?? (() => undefined);
    this.#frames = options.frames ?? screenFrames;
    this.#now_ms = options.now_ms ?? (() => performance.now());
    this.#savedAt_ms = this.#now_ms();
    this.#log = new TextLog(options.lesson.senses, this.run.record.events.length);
    this.driver = restCrew(this.run, this.lesson);
    if (!isOver(this.run, this.lesson)) this.marks.take(this.run);
    this.#look();
    if (typeof document !== 'undefined') document.addEventListener('visibilitychange', this.#hidden);
  }

  get messages(): readonly FeltMessage[] {
    return this.#log.messages;
  }

  get speed(): Speed {
    return this.#speed;
  }

  set speed(next: Speed) {
    const ran = this.#speed !== 0;
    this.#speed = this.finished || this.#frozen ? 0 : next;
    this.slowed = false;
    this.#ticker.reset();
    if (this.#behind) this.#look();
    // A pause is where a learner closes the page: what has passed since the last save goes with it.
    if (ran && this.#speed === 0) this.keep();
    this.#wake();
  }

  /** An instructor has stopped the clock: nothing goes on, nobody but the instructor acts. */
  get frozen(): boolean {
    return this.#frozen;
  }

  /** Stops the clock and takes the hands away, or gives both back, at the pace from before. */
  freeze(on: boolean): void {
    if (on === this.#frozen || this.finished) return;
    if (on) this.#paceBefore = this.#speed;
    this.speed = 0;
    this.#frozen = on;
    if (!on) this.speed = this.#paceBefore;
  }

  /**
   * Lets a crew play on from here, at the pace of the clock: before each second that no wait fills it looks and does one act or none,
   * by the same act() as a learner. Hears of each deed, with the senses of the moment before it, and may pause the clock there. null gives the work back.
   */
  drive(crew: Crew | null, onDeed: OnDeed | null = null): void {
    this.driver = crew;
    this.#onDeed = onDeed;
    this.#lookedAt = -1;
    this.hurried = false;
    this.#ticker.reset();
    this.#wake();
  }

  /**
   * Does an act now. A refusal or a wrong payload changes nothing but lastResult and the run's own note of it.
   * While a crew plays it has the hands, and nothing is done. Who leaves the rest to a crew sees it play on.
   */
  act(name: ActionName, payload: Payload = {}): ActResult {
    if (this.driver || this.#frozen) return (this.lastResult = { kind: 'refused', reason: 'handsBusy' });
    const result = this.#act(name, payload);
    if (name === 'leaveToCrew' && result.kind === 'done') this.drive(restCrew(this.run, this.lesson));
    return result;
  }

  /** The same by an instructor, whoever has the hands. */
  instruct(name: ActionName, payload: Payload): ActResult {
    return this.#act(name, payload);
  }

  #act(name: ActionName, payload: Payload): ActResult {
    const { tick } = this.run.state;
    this.marks.beforeAct(this.run);
    const result = act(this.run, name, payload);
    this.lastResult = result;
    if (result.kind === 'done') this.marks.acted(tick);
    if (result.kind === 'refused')
      this.#log.say({ time_s: this.run.state.tick, key: `refusal.${result.reason}`, data: {}, urgent: false });
    this.#hear();
    this.#look();
    if (name === this.held ? this.#saveIsDue() : result.kind !== 'malformed') this.keep();
    this.#wake();
    return result;
  }

  /** One job second, for the step button. */
  stepOnce(): void {
    if (this.finished || this.#frozen) return;
    this.#crewActs();
    this.onSecond?.();
    this.#step();
    this.#hear();
    this.#look();
    if (this.#saveIsDue()) this.keep();
  }

  /**
   * Back to the moment before the log's entry of that index, in practice only, and not to before the learner took over.
   * The run so far is replayed up to there, and the log says that it was done.
   */
  goBackTo(logIndex: number): ActResult {
    const entry = this.run.log[logIndex];
    if (!entry || this.#frozen || !this.run.scenario.practice || logIndex < entriesBefore(this.run))
      return this.act('goBack', { fromTick: this.run.state.tick });
    const fromTick = this.run.state.tick;
    this.#speed = 0;
    this.run = replayRun(this.run.scenario, this.run.log.slice(0, logIndex), entry[0]);
    this.marks.backTo({ tick: entry[0], entries: logIndex });
    this.#log.backTo(entry[0], this.run.record.events.length);
    this.finished = false;
    this.drive(restCrew(this.run, this.lesson));
    return this.#act('goBack', { fromTick });
  }

  pauseAndKeep(): void {
    if (this.#speed === 0) this.keep();
    else this.speed = 0;
  }

  keep(): void {
    this.#savedAt_ms = this.#now_ms();
    this.#save(this.run);
  }

  dispose(): void {
    if (this.#handle !== null) this.#frames.cancel(this.#handle);
    this.#handle = null;
    if (typeof document !== 'undefined') document.removeEventListener('visibilitychange', this.#hidden);
  }

  #saveIsDue(): boolean {
    return this.#now_ms() - this.#savedAt_ms >= AUTOSAVE_ms;
  }

  #wake(): void {
    if (this.#handle !== null || this.finished || this.#frozen) return;
    // A wait runs by itself; but a crew that plays stands still when the clock does.
    if (this.#speed === 0 && (this.driver || !this.run.state.wait)) return;
    this.#handle = this.#frames.request((now_ms) => this.#picture(now_ms));
  }

  #picture(now_ms: number): void {
    this.#handle = null;
    if (this.#frozen) return;
    const waiting = this.run.state.wait !== null;
    const hurried = this.driver !== null && this.hurried;
    const { heard } = this.#log;
    const ticked = waiting || hurried ? this.#engine(hurried) : this.#ticks(this.#ticker.due(now_ms, this.#speed));
    const waited = waiting && this.run.state.wait === null;
    if (ticked > 0) {
      this.played++;
      this.#behind = true;
      const news = waited || this.#log.heard !== heard || this.#speed === 0 || isOver(this.run, this.lesson);
      if (news || this.#now_ms() - this.#lookedAt_ms >= lookEvery_ms(this.#speed)) this.#look();
    }
    if (waited || (ticked > 0 && this.#saveIsDue())) this.keep();
    this.#wake();
  }

  #ticks(due: number): number {
    for (let done = 0; done < due; done++) {
      // Paused by what heard of the deed: the second is not played.
      if (this.#crewActs() && this.#speed === 0) return done;
      this.onSecond?.();
      this.#step();
      if (this.#hear() || isOver(this.run, this.lesson)) return done + 1;
    }
    return due;
  }

  #step(): void {
    if (isOver(this.run, this.lesson)) return;
    step(this.run);
    if (!this.driver) this.marks.passed(this.run);
  }

  /** As fast as the engine can: until the run itself ends its wait, or, hurried, while a crew plays. */
  #engine(hurried: boolean): number {
    const until_ms = this.#now_ms() + ENGINE_BUDGET_ms;
    let done = 0;
    do {
      if (hurried && this.#crewActs() && this.#speed === 0) break;
      this.#step();
      done++;
      if (this.#hear() || isOver(this.run, this.lesson)) break;
    } while ((hurried || this.run.state.wait) && this.#now_ms() < until_ms);
    this.#ticker.reset();
    return done;
  }

  /** The driving crew looks and does one act or none; true if it did one. Who waits looks up again when the wait is over. */
  #crewActs(): boolean {
    const { tick, wait } = this.run.state;
    if (!this.driver || wait || this.#lookedAt === tick || isOver(this.run, this.lesson)) return false;
    this.#lookedAt = tick;
    const senses = sensesOf(this.run);
    const deed = this.driver.decide(senses);
    if (!deed) return false;
    const result = act(this.run, deed.action, deed.payload);
    this.#onDeed?.(deed, result, senses);
    this.#hear();
    if (this.#speed === 0) this.#look();
    return true;
  }

  /** Passes on what happened since the last look; true if it slowed the clock. */
  #hear(): boolean {
    const danger = this.#log.hear(this.run.record.events, this.held);
    // A crew that plays knows what to do: nobody has to hurry to the hands.
    if (danger && this.#speed > 1 && !this.driver) {
      this.#speed = 1;
      this.slowed = true;
      this.#ticker.reset();
    }
    return danger && !this.driver;
  }

  #look(): void {
    this.senses = sensesOf(this.run);
    this.frame++;
    this.#behind = false;
    this.#lookedAt_ms = this.#now_ms();
    this.#log.tellSigns(this.senses, this.#speed !== 0, this.#lookedAt_ms);
    if (!this.finished && isOver(this.run, this.lesson)) {
      this.finished = true;
      this.driver = null;
      this.#speed = 0;
      this.keep();
    }
  }
}

/** Real time between two saves while nothing is done, ms. */
const AUTOSAVE_ms = 20_000;
