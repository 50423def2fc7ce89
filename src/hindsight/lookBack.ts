// Looking back on a run: hands out the work, puts the results together as they come, in the order that finds the dear stretches first.
import {
  complete,
  costsOf,
  dearest,
  GROUNDS,
  lastBefore,
  momentsOf,
  nextIndex,
  settled,
  valueOf,
  type Cost,
  type Lesson,
  type Luck,
  type Mark,
  type Moment,
  type Past,
  type Value,
} from '$lessons';
import type { Run } from '$sim';
import { slicedHand, type Hand, type MakeHand } from './hands';
import type { Order, Report } from './orders';

/** What is kept with the run, so that it need not be worked out again. */
export interface Kept {
  /** Hash of the run that it is of. */
  readonly hash: string;
  readonly moments: readonly Moment[];
  readonly values: readonly (Value | undefined)[];
  /** By index of the stretch and number of the ground; null where none could be had. */
  readonly luck: Readonly<Record<number, readonly (number | null | undefined)[]>>;
}

export interface Progress {
  readonly moments: readonly Moment[];
  readonly marks: readonly (Mark | undefined)[];
  readonly values: readonly (Value | undefined)[];
  readonly costs: readonly Cost[];
  readonly dearest: readonly Cost[];
  /** How many of the moments are valued. */
  readonly known: number;
  /** Every stretch is parted as far as it says anything. */
  readonly all: boolean;
  /** No stretch still to be parted can be dearer than the three. */
  readonly settled: boolean;
  /** Costs on other grounds, by index of the stretch. */
  readonly luck: Readonly<Record<number, Luck>>;
  /** Nothing is left to do. */
  readonly done: boolean;
}

export interface LookBackOptions {
  readonly run: Run;
  readonly lesson: Lesson;
  /** Whether there are points to look back on; else only the marks are laid. */
  readonly scored: boolean;
  readonly kept: Kept | null;
  readonly hash: string;
  /** Marks that were taken while the run was played, in its order. */
  readonly taken: readonly Mark[];
  readonly makeHand: MakeHand;
  readonly hands: number;
  onchange(progress: Progress): void;
}

export class LookBack {
  readonly past: Past;
  readonly #options: LookBackOptions;
  readonly #moments: readonly Moment[];
  readonly #marks: (Mark | undefined)[] = [];
  readonly #values: (Value | undefined)[];
  readonly #luck: Record<number, (number | null | undefined)[]> = {};
  readonly #taken = new Set<number>();
  readonly #asked = new Set<string>();
  /** Each hand with what it is at. */
  readonly #hands = new Map<Hand, Order | null>();
  /** Indices of the moments that have no mark yet; nobody lays them yet. */
  #unlaid: number[];
  #stopped = false;

  constructor(options: LookBackOptions) {
    const { run, lesson, kept, scored } = options;
    this.#options = options;
    this.past = { lesson, scenario: run.scenario, log: [...run.log], record: run.record };
    this.#moments = kept?.moments ?? momentsOf(run);
    for (const [index, { tick, entries }] of this.#moments.entries())
      this.#marks[index] = options.taken.find((mark) => mark.tick === tick && mark.entries === entries);
    this.#unlaid = [...this.#moments.keys()].filter((index) => !this.#marks[index]);
    this.#values = kept ? [...kept.values] : this.#moments.map(() => undefined);
    for (const [index, points] of Object.entries(kept?.luck ?? {})) this.#luck[Number(index)] = [...points];
    if (scored) this.#values[this.#moments.length - 1] ??= valueOf(run, lesson);
  }

  start(): void {
    for (let n = 0; n < this.#options.hands; n++) this.#addHand(this.#options.makeHand);
    this.#handOut();
    this.#tell();
  }

  stop(): void {
    this.#stopped = true;
    for (const hand of this.#hands.keys()) hand.stop();
  }

  kept(): Kept {
    return { hash: this.#options.hash, moments: this.#moments, values: [...this.#values], luck: { ...this.#luck } };
  }

  #addHand(make: MakeHand): void {
    const hand: Hand = make(this.past, {
      report: (report) => this.#hear(hand, report),
      failed: () => this.#lose(hand),
    });
    this.#hands.set(hand, null);
  }

  /** A hand that falls out leaves its order to the others; the last is replaced by the page itself. */
  #lose(hand: Hand): void {
    if (this.#stopped || !this.#hands.has(hand)) return;
    const order = this.#hands.get(hand);
    hand.stop();
    this.#hands.delete(hand);
    if (order?.kind === 'marks')
      this.#unlaid = order.missing.map(({ index }) => index).filter((index) => !this.#marks[index]);
    if (order?.kind === 'value') this.#taken.delete(order.index);
    if (order?.kind === 'elsewhere') this.#asked.delete(`${order.index} ${order.n}`);
    if (this.#hands.size === 0) this.#addHand(slicedHand);
    this.#handOut();
  }

  #hear(hand: Hand, report: Report | null): void {
    if (this.#stopped) return;
    if (report === null) this.#hands.set(hand, null);
    else if (report.kind === 'mark') this.#marks[report.index] = report.mark;
    else if (report.kind === 'value') this.#values[report.index] = report.value;
    else this.#luckOf(report.index)[report.n] = report.points;
    this.#handOut();
    if (report !== null) this.#tell();
  }

  #handOut(): void {
    for (const [hand, busy] of this.#hands) {
      const order = busy ? null : this.#nextOrder();
      if (!order) continue;
      this.#hands.set(hand, order);
      hand.give(order);
    }
  }

  #nextOrder(): Order | null {
    // A first moment can be valued before the marks that are missing are laid.
    const first = this.#options.scored && this.#taken.size === 0 ? this.#nextValue() : null;
    if (first) return first;
    if (this.#unlaid.length > 0) return this.#nextMarks();
    return this.#options.scored ? (this.#nextValue() ?? this.#nextElsewhere()) : null;
  }

  #nextMarks(): Order {
    const missing = this.#unlaid.map((index) => ({ index, moment: this.#moments[index]! }));
    this.#unlaid = [];
    const known = missing.map(({ moment }) => lastBefore(this.#options.taken, moment));
    return { kind: 'marks', missing, known: [...new Set(known)].filter((mark) => mark !== undefined) };
  }

  #nextValue(): Order | null {
    // What has no mark yet comes later; until then it counts as taken.
    const taken = new Set(this.#taken);
    for (;;) {
      const index = nextIndex({ values: this.#values, taken });
      if (index === null) return null;
      const mark = this.#marks[index];
      taken.add(index);
      if (!mark) continue;
      this.#taken.add(index);
      return { kind: 'value', index, mark };
    }
  }

  #nextElsewhere(): Order | null {
    if (!complete(this.#values)) return null;
    for (const { index, to } of dearest(this.#costs())) {
      const from = this.#marks[index];
      for (let n = 0; from && n < GROUNDS; n++) {
        const key = `${index} ${n}`;
        if (this.#asked.has(key) || this.#luckOf(index)[n] !== undefined) continue;
        this.#asked.add(key);
        return { kind: 'elsewhere', index, n, from, to };
      }
    }
    return null;
  }

  #luckOf(index: number): (number | null | undefined)[] {
    return (this.#luck[index] ??= Array.from({ length: GROUNDS }, () => undefined));
  }

  #costs(): Cost[] {
    return costsOf(this.#moments, this.#values);
  }

  #tell(): void {
    const costs = this.#costs();
    const first = dearest(costs);
    const known = this.#values.filter((value) => value !== undefined).length;
    const all = complete(this.#values);
    const luck = Object.fromEntries(
      Object.entries(this.#luck).map(([index, points]) => [index, points.filter((one) => typeof one === 'number')]),
    );
    this.#options.onchange({
      moments: this.#moments,
      marks: [...this.#marks],
      values: [...this.#values],
      costs,
      dearest: first,
      known,
      all,
      settled: all || (first.length === 3 && settled(this.#values, first.at(-1)!.points)),
      luck,
      done: all && first.every(({ index }) => !this.#luckOf(index).includes(undefined)),
    });
  }
}
