// Keeps one run on the device: its run file, its line in the list, and its frozen state to go on from.
// Saves never overlap: while one is being written the next waits, and of several that wait only the newest is written.
import { grade, isOver, isScored, runFileOf, shownIn, type Lesson, type RunFile, type Sitting } from '$lessons';
import { snapshotOf, type Run } from '$sim';
import type { TurnsKept } from '../classroom/live/seats';
import type { Kept } from '../hindsight/lookBack';
import { t } from '../words';
import { device } from './device.svelte';
import { notePending } from './pending';
import type { FinishedRun } from './progress';
import type { Branch, RunState, SavedRun } from './records';
import { titleWords } from './title';

export type Answers = NonNullable<RunFile['answers']>;

/** Who has not done anything for so long was away, ms. */
const ABSENT_ms = 120_000;
/** A run file takes no longer name. */
const LONGEST_NAME = 80;

interface About {
  readonly id: string;
  readonly who: string;
  readonly lesson: Lesson;
  readonly started_ms: number;
  readonly answers: Answers | null;
  /** What looking back on it has found so far. */
  readonly hindsight?: Kept | null;
  /** For which class, and the how manieth time; null where it is nobody's but the learner's. */
  readonly sitting?: Sitting | null;
  /** The run that this one branches from, and where. */
  readonly branch?: Branch | null;
  /** The learner had stood on this ground before the run began: practice, without a place in the standing. */
  readonly knownGround: boolean;
  readonly turns?: TurnsKept | null;
  readonly frozen?: boolean;
}

export class Keeper {
  readonly id: string;
  /** Who takes turns at the screen; null: one learner plays alone. */
  turns: TurnsKept | null;
  /** An instructor has stopped the clock. */
  frozen: boolean;
  readonly #about: About;
  #answers: Answers | null;
  #hindsight: Kept | null;
  #waiting: { saved: SavedRun; state: RunState; finished: FinishedRun | null } | null = null;
  #writing: Promise<void> | null = null;
  #stopped = false;
  #kept_ms = Date.now();
  #spent_ms: number;
  #over = false;

  constructor(about: About) {
    this.id = about.id;
    this.#about = about;
    this.turns = about.turns ?? null;
    this.frozen = about.frozen ?? false;
    this.#answers = about.answers;
    this.#hindsight = about.hindsight ?? null;
    this.#spent_ms = (about.sitting?.spent_s ?? 0) * 1000;
  }

  get who(): string {
    return this.#about.who;
  }

  get started_ms(): number {
    return this.#about.started_ms;
  }

  get knownGround(): boolean {
    return this.#about.knownGround;
  }

  get answers(): Answers | null {
    return this.#answers;
  }

  get hindsight(): Kept | null {
    return this.#hindsight;
  }

  get sitting(): Sitting | null {
    const { sitting = null } = this.#about;
    return sitting && { ...sitting, spent_s: Math.round(this.#spent_ms / 1000) };
  }

  get branch(): Branch | null {
    return this.#about.branch ?? null;
  }

  lookedBack(kept: Kept, run: Run): void {
    this.#hindsight = kept;
    this.keep(run);
  }

  answer(answers: Answers, run: Run): void {
    this.#answers = answers;
    this.keep(run);
  }

  /** The run as the text of a run file, as it stands now. */
  file(run: Run): string {
    return `${JSON.stringify(this.#file(run))}\n`;
  }

  keep(run: Run): void {
    if (this.#stopped) return;
    this.#countTime(run);
    const finished = this.#finished(run);
    const saved = this.#line(run, finished);
    this.#waiting = { saved, state: this.#state(run), finished };
    // Noted now, for the write may have to wait for the one before it, and the page may close meanwhile.
    notePending('runs', saved.id, saved);
    this.#writing ??= this.#write();
  }

  /** Time at the screen: what lies between two savings, but for long absences; none once the run is over. */
  #countTime(run: Run): void {
    const now_ms = Date.now();
    const gap_ms = now_ms - this.#kept_ms;
    this.#kept_ms = now_ms;
    if (this.#over) return;
    if (gap_ms > 0 && gap_ms < ABSENT_ms) this.#spent_ms += gap_ms;
    this.#over = isOver(run, this.#about.lesson);
  }

  /** Resolves when everything handed over so far is written. */
  async kept(): Promise<void> {
    await this.#writing;
  }

  stop(): void {
    this.#stopped = true;
    this.#waiting = null;
  }

  async #write(): Promise<void> {
    while (this.#waiting) {
      const { saved, state, finished } = this.#waiting;
      this.#waiting = null;
      const before = device.runs.find((one) => one.id === this.id);
      // A practice has no score, and so no place in a standing; neither has a run on known ground, as a branch is.
      if (finished !== null && !this.knownGround && !before?.finished) device.stand(saved.who, finished);
      await device.putRun(saved);
      if (!this.#stopped) await device.storage.put('states', state);
    }
    this.#writing = null;
  }

  #file(run: Run): RunFile {
    return runFileOf(run, this.#about.lesson, {
      who: this.who,
      name: this.#name(),
      answers: this.#answers ?? undefined,
      sitting: this.sitting,
    });
  }

  #name(): string {
    const known = device.runs.find((one) => one.id === this.id);
    const { lesson, started_ms, branch } = this.#about;
    if (known) return known.name;
    return branch
      ? t('runs.branchName', { name: branch.name, at_s: branch.at_s }).slice(0, LONGEST_NAME)
      : t('runs.defaultName', { lesson: titleWords(lesson), started_ms });
  }

  /** What a finished run comes to; null while it goes on, and for a practice, which is not judged. */
  #finished(run: Run): FinishedRun | null {
    const { lesson } = this.#about;
    if (!isScored(lesson) || !isOver(run, lesson)) return null;
    const { score, passed, items } = grade(run, lesson);
    return {
      lesson: lesson.id,
      score,
      passed: passed && !this.knownGround,
      shown: shownIn(items),
      finished_ms: Date.now(),
    };
  }

  #line(run: Run, finished: FinishedRun | null): SavedRun {
    const { lesson, started_ms } = this.#about;
    return {
      id: this.id,
      who: this.who,
      lesson: lesson.id,
      ...(lesson.exercise ? { title: lesson.exercise.title } : {}),
      name: this.#name(),
      started_ms,
      saved_ms: Date.now(),
      depth_m: run.state.hole.depth_m,
      time_s: run.state.tick,
      score: finished?.score ?? null,
      passed: finished?.passed ?? false,
      ...(this.knownGround ? { knownGround: true } : {}),
      finished: isOver(run, lesson),
      ...(this.sitting ? { sitting: this.sitting } : {}),
      asked: this.#answers !== null,
      ...(this.branch ? { branch: this.branch } : {}),
      ...(this.turns ? { turns: this.turns } : {}),
      ...(this.frozen ? { frozen: true } : {}),
      file: this.file(run),
    };
  }

  #state(run: Run): RunState {
    return {
      id: this.id,
      ticks: run.state.tick,
      snapshot: snapshotOf(run),
      record: structuredClone(run.record),
      hindsight: this.#hindsight,
    };
  }
}
