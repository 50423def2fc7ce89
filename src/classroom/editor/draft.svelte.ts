// The exercise being changed: every change is kept on the device at once, and the last ones can be taken back.
import { SIM_VERSION } from '$sim';
import type { Exercise, LintReport } from '$lessons';
import { device } from '../../app/device.svelte';
import type { KeptExercise } from '../../app/records';
import { checkedOf, keptWith, reportFor, withTruePool } from './keep';
import { partOf, type PartId } from './parts';
import { withAt } from './paths';
import { mendsOf, type Mend } from './problems';

/** Changes are written when nothing has changed for so long, ms: a drag makes many in a second. */
const WAIT_ms = 250;
/** Letters typed one after the other into one field are one change, ms. */
const TOGETHER_ms = 1500;
const MOST_STEPS = 100;

interface Step {
  readonly exercise: Exercise;
  /** The field that was changed next, and when. */
  readonly field: string;
  readonly at_ms: number;
}

export class Draft {
  exercise: Exercise = $state.raw() as Exercise;
  readonly mends: readonly Mend[] = $derived(mendsOf(this.exercise));
  /** The last that was sound: what a preview can be drawn of. */
  sound: Exercise = $state.raw() as Exercise;
  /** As the device has it: with its edition. */
  kept: KeptExercise = $state.raw() as KeptExercise;
  /** A change has just made the grounds for the class untrue, and they were dropped. */
  poolDropped = $state(false);
  /** The field that somebody wants to be taken to, as a path: lists open what it lies in. */
  wanted: string | null = $state(null);
  #steps: readonly Step[] = $state.raw([]);
  #timer: ReturnType<typeof setTimeout> | undefined;
  #waiting = false;

  constructor(kept: KeptExercise) {
    this.kept = kept;
    this.exercise = kept.draft ?? kept.exercise;
    this.sound = kept.exercise;
  }

  /** The part of the last change, or null where none can be taken back. */
  get last(): PartId | null {
    const step = this.#steps.at(-1);
    return step ? partOf(step.field) : null;
  }

  /** Changes the exercise. `field`: where, as a path. */
  change(edit: (exercise: Exercise) => Exercise, field: string): void {
    const before = this.exercise;
    const edited = edit(before);
    if (edited === before) return;
    const after = withTruePool(before, { ...edited, sim: SIM_VERSION });
    this.poolDropped = before.pool !== undefined && after.pool === undefined && field !== 'pool';
    const last = this.#steps.at(-1);
    const now_ms = performance.now();
    const goesOn = last?.field === field && now_ms - last.at_ms < TOGETHER_ms;
    this.#steps = goesOn
      ? [...this.#steps.slice(0, -1), { ...last, at_ms: now_ms }]
      : [...this.#steps, { exercise: before, field, at_ms: now_ms }].slice(-MOST_STEPS);
    this.#put(after);
  }

  /** Sets the value at a path; undefined takes a field away that may be left out. */
  set(path: string, value: unknown): void {
    this.change((exercise) => withAt(exercise, path, value), path);
  }

  undo(): void {
    const step = this.#steps.at(-1);
    if (!step) return;
    this.#steps = this.#steps.slice(0, -1);
    this.poolDropped = false;
    this.#put(step.exercise);
  }

  /** Writes what waits to be written. */
  flush(): void {
    clearTimeout(this.#timer);
    if (!this.#waiting) return;
    this.#waiting = false;
    // What others have noted meanwhile, as that it was given out, stays.
    const before = device.exercises.find(({ id }) => id === this.kept.id);
    if (!before) return;
    this.kept = keptWith(before, this.exercise, Date.now());
    void device.putExercise(this.kept);
  }

  /** Notes what crews found who played an exercise: this one, as it was then. */
  note(report: LintReport, played: Exercise): void {
    this.flush();
    this.kept = { ...this.kept, checked: checkedOf(report, played) };
    void device.putExercise(this.kept);
  }

  /** What crews found, where the exercise is still what they played. */
  get report(): LintReport | null {
    return this.mends.length === 0 ? reportFor(this.exercise, this.kept.checked) : null;
  }

  /** Nothing more is written: the exercise is removed. */
  drop(): void {
    clearTimeout(this.#timer);
    this.#waiting = false;
  }

  #put(exercise: Exercise): void {
    this.exercise = exercise;
    if (this.mends.length === 0) this.sound = exercise;
    this.#waiting = true;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.flush(), WAIT_ms);
  }
}
