// The results of one exercise, as its board shows them: taken in, kept as they came, judged anew on this device each time the board is opened.
import {
  boardOf,
  exerciseHash,
  packResult,
  type Board,
  type Exercise,
  type Judgement,
  type Result,
  type ResultProblem,
} from '$lessons';
import { newId } from '../../app/chance';
import { device } from '../../app/device.svelte';
import { breath } from '../../app/parts';
import type { KeptResult } from '../../app/records';
import { placeOfWho } from '../sit';
import { sorted, type Found, type Sorted } from './came';
import { Judges } from './judges';
import type { Judged, Order } from './orders';

export interface Entry {
  readonly id: string;
  /** Name of the file, or ''. */
  readonly from: string;
  readonly taken_ms: number;
  readonly result: Result;
  /** The edition that it is judged by. */
  readonly exercise: Exercise;
  /** null until it is judged. */
  readonly judgement: Judgement | null;
}

export interface TakenIn {
  readonly taken: number;
  /** Here already, to the letter. */
  readonly again: number;
  readonly refused: readonly {
    readonly from: string;
    readonly problem: { readonly key: ResultProblem['problem']; readonly data: ResultProblem['data'] };
  }[];
  /** Results of which parts are still missing; those that came are kept for the next time. */
  readonly open: readonly { readonly there: number; readonly of: number }[];
}

/** The page is held up so long at a time, ms; and judgements are shown together so often, ms. */
const PART_ms = 16;
const SHOW_ms = 200;

export class ClassBoard {
  /** In the order in which they were taken in. */
  entries: readonly Entry[] = $state.raw([]);
  /** All that is kept has been read, so that a board without entries is empty. */
  isRead = $state(false);
  readonly progress = $derived({
    done: this.entries.filter(({ judgement }) => judgement !== null).length,
    all: this.entries.length,
  });
  readonly board: Board = $derived(
    boardOf(this.entries.flatMap(({ id, result, judgement }) => (judgement ? [{ id, result, judgement }] : []))),
  );
  readonly #exerciseId: string;
  readonly #judges: Judges;
  /** As they came. */
  #texts: readonly string[] = [];
  #parts: readonly string[] = [];
  #judged: Judged[] = [];
  #showing: ReturnType<typeof setTimeout> | undefined;
  #last_ms = 0;
  #closed = false;
  #opening: Promise<void> | null = null;

  constructor(exerciseId: string, judges?: (tell: (judged: Judged) => void) => Judges) {
    this.#exerciseId = exerciseId;
    const tell = (judged: Judged): void => this.#show(judged);
    this.#judges = judges ? judges(tell) : new Judges(tell);
  }

  /** Reads what is kept, and begins to judge it. Asked again it does nothing. */
  open(): Promise<void> {
    return (this.#opening ??= this.#readKept());
  }

  /** Takes results in: files' contents, letters, parts of letters, several in one text too. Never rejects. */
  async take(texts: readonly { readonly from: string; readonly text: string }[]): Promise<TakenIn> {
    await this.open();
    let [taken, again] = [0, 0];
    let open: Sorted['open'] = [];
    const refused: TakenIn['refused'][number][] = [];
    await this.#gently(texts, async ({ from, text }) => {
      const came = sorted(text, this.#parts);
      this.#parts = came.parts;
      open = came.open;
      for (const one of came.found) {
        if (!one.read.ok) refused.push({ from, problem: { key: one.read.problem, data: one.read.data } });
        else if (this.#texts.includes(one.text) || this.#isHere(one.read.result)) again++;
        else {
          await this.#keep(from, one);
          taken++;
        }
      }
    });
    return { taken, again, refused, open: open.map(({ there, of }) => ({ there: there.length, of })) };
  }

  /** Forgets all results of this exercise: first on the device, so that what is no longer shown is gone. */
  async removeAll(): Promise<void> {
    this.#judges.stop();
    const kept = (await device.storage.all('results')).filter(({ exercise }) => exercise === this.#exerciseId);
    await Promise.all(kept.map(({ id }) => device.storage.remove('results', id)));
    this.entries = [];
    this.#texts = [];
    this.#parts = [];
  }

  /** Stops judging; what is kept stays. */
  close(): void {
    this.#closed = true;
    this.#judges.stop();
    clearTimeout(this.#showing);
  }

  async #readKept(): Promise<void> {
    const kept = (await device.storage.all('results'))
      .filter(({ exercise }) => exercise === this.#exerciseId)
      .sort((a, b) => a.taken_ms - b.taken_ms);
    await this.#gently(kept, (one) => {
      const [found] = sorted(one.text, []).found;
      if (found?.read.ok) this.#enter(one, found.read.result);
      return Promise.resolve();
    });
    this.isRead = true;
  }

  /** So that the page stays alive. */
  async #gently<One>(list: readonly One[], work: (one: One) => Promise<void>): Promise<void> {
    let from_ms = performance.now();
    for (const one of list) {
      if (this.#closed) return;
      await work(one);
      if (performance.now() - from_ms < PART_ms) continue;
      await breath();
      from_ms = performance.now();
    }
  }

  async #keep(from: string, { text, read }: Found): Promise<void> {
    if (!read.ok) return;
    // Each later than the one before, so that they come back in this order.
    this.#last_ms = Math.max(Date.now(), this.#last_ms + 1);
    const kept: KeptResult = { id: newId(), exercise: this.#exerciseId, taken_ms: this.#last_ms, from, text };
    this.#enter(kept, read.result);
    await device.storage.put('results', kept);
  }

  #enter({ id, from, taken_ms, text }: KeptResult, result: Result): void {
    const exercise = this.#editionFor(result);
    if (!exercise) return;
    this.#last_ms = Math.max(this.#last_ms, taken_ms);
    this.#texts = [...this.#texts, text];
    this.entries = [...this.entries, { id, from, taken_ms, result, exercise, judgement: null }];
    const order: Order = { id, result, exercise, place: placeOfWho(result.who) };
    this.#judges.give([order]);
  }

  /** The edition that a result was played with, where it is here; else the present one. */
  #editionFor(result: Result): Exercise | null {
    const kept = device.exercises.find(({ id }) => id === this.#exerciseId);
    if (!kept) return null;
    const editions = [kept.exercise, ...(kept.earlier ?? [])];
    return editions.find((one) => exerciseHash(one) === result.exercise) ?? kept.exercise;
  }

  /** The same came before in another form: as letters, say, and as a file. */
  #isHere(result: Result): boolean {
    return this.entries.some(({ result: one }) => {
      const alike = one.hash === result.hash && one.who === result.who && one.altered === result.altered;
      return alike && packResult(one) === packResult(result);
    });
  }

  /** Judgements that come shortly after one another are shown together. */
  #show(judged: Judged): void {
    this.#judged.push(judged);
    this.#showing ??= setTimeout(() => {
      this.#showing = undefined;
      const known = Object.fromEntries(this.#judged.map(({ id, judgement }) => [id, judgement]));
      this.#judged = [];
      this.entries = this.entries.map((entry) => ({ ...entry, judgement: known[entry.id] ?? entry.judgement }));
    }, SHOW_ms);
  }
}
