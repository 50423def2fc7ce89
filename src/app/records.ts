// What the device keeps, as plain records with an id each.
import type { Asked, DrillId, Exercise, LintReport, Sitting } from '$lessons';
import type { TurnsKept } from '../classroom/live/seats';
import type { Kept } from '../hindsight/lookBack';
import type { PictureName } from './pictures';

/** Someone who learns on this device: a picture or a number, never a name. */
export interface Learner {
  /** The picture's name, or T-07: this is also what a run file says. */
  readonly id: string;
  readonly picture: PictureName | null;
  readonly number: number | null;
  readonly made_ms: number;
  /** Best of the finished runs, by lesson; it stays when runs are deleted. */
  readonly best: Readonly<Record<string, Standing>>;
  /** What the finished runs showed of each drill's subject. Left out by learners kept before it was noted. */
  readonly shown?: Shown;
  /** Attempts begun, by exercise and class: `id/CODE`. */
  readonly begun?: Readonly<Record<string, number>>;
  /** Numbers of the grounds this learner has stood on, by lesson: a pass wants another. */
  readonly seen?: Readonly<Record<string, readonly number[]>>;
}

export type Shown = Readonly<Partial<Record<DrillId, ShownOf>>>;

/** Shares of the subject's points, 0 to 1. */
export interface ShownOf {
  readonly best_frac: number;
  readonly last_frac: number;
  readonly last_ms: number;
}

export interface Standing {
  readonly score: number;
  readonly passed: boolean;
  readonly tries: number;
}

/** A run as the list shows it, and the text of its run file. */
export interface SavedRun {
  readonly id: string;
  readonly who: string;
  readonly lesson: string;
  /** What the instructor called it; left out: the lesson's own title. */
  readonly title?: string;
  readonly name: string;
  readonly started_ms: number;
  readonly saved_ms: number;
  readonly depth_m: number;
  readonly time_s: number;
  /** null until the run is finished, and always for a practice. */
  readonly score: number | null;
  readonly passed: boolean;
  /** The learner had stood on this ground before: practice, without a place in the standing. */
  readonly knownGround?: boolean;
  readonly finished: boolean;
  /** Played for a class: a result can be given of it. */
  readonly sitting?: Sitting;
  /** The questions of the debrief are answered, so the ground may be shown. */
  readonly asked: boolean;
  /** Left out: the run began at its beginning. */
  readonly branch?: Branch;
  /** Who takes turns at the screen; left out: one learner plays alone. */
  readonly turns?: TurnsKept;
  /** An instructor has stopped its clock. */
  readonly frozen?: boolean;
  readonly file: string;
}

/** Where a run branches from another: which, as it was called then, and at which job second. */
export interface Branch {
  readonly id: string;
  readonly name: string;
  readonly at_s: number;
}

/** The frozen state beside a run, to go on without replaying it; useless once the physics has another version. */
export interface RunState {
  readonly id: string;
  readonly ticks: number;
  readonly snapshot: unknown;
  readonly record: unknown;
  /** What looking back on the run has found so far. */
  readonly hindsight?: Kept | null;
}

/** An exercise on this device: made here, or come from an instructor. */
export interface KeptExercise {
  /** That of the exercise. */
  readonly id: string;
  readonly exercise: Exercise;
  readonly saved_ms: number;
  /** Made or changed here; else it came from elsewhere, to be played. */
  readonly own: boolean;
  /** The last edition that was given out; left out: none was yet. */
  readonly given?: number;
  /** The class that is taught or sat in now; null: none is named. */
  readonly classCode: string | null;
  /** As its instructor left it while it was not sound; `exercise` is the last that was. */
  readonly draft?: Exercise;
  /** Editions that were given out before this one, so that results of them can still be judged. */
  readonly earlier?: readonly Exercise[];
  /** What crews found who played it, and what it was then: once that is changed it says nothing. */
  readonly checked?: { readonly task: string; readonly pool: string; readonly report: LintReport };
}

/** A result that an instructor took in, as it came. What is shown of it is found by playing it again. */
export interface KeptResult {
  readonly id: string;
  /** Id of the exercise that it was put to. */
  readonly exercise: string;
  readonly taken_ms: number;
  /** Name of the file, or '' where it was pasted or photographed. */
  readonly from: string;
  readonly text: string;
}

export const THEMES = ['paper', 'night', 'sun'] as const;
export const TEXT_SIZES = ['normal', 'large', 'larger', 'largest'] as const;
export const MOTIONS = ['device', 'still', 'full'] as const;
export const LETTERS = ['on', 'off'] as const;
export const HANDS = ['right', 'left'] as const;
export const SOUNDS = ['off', 'on'] as const;
export const VOLUMES = ['quiet', 'middle', 'loud'] as const;

export interface Settings {
  readonly id: 'settings';
  readonly theme: (typeof THEMES)[number];
  readonly text: (typeof TEXT_SIZES)[number];
  readonly motion: (typeof MOTIONS)[number];
  readonly hand: (typeof HANDS)[number];
  /** Whether single letters and digits work as keys; some ways of typing or speaking set them off by mistake. */
  readonly letters: (typeof LETTERS)[number];
  /** A second sign beside the sense cards. */
  readonly sound: (typeof SOUNDS)[number];
  readonly volume: (typeof VOLUMES)[number];
  /** Who is learning now, and the run being played or looked at. */
  readonly learner: string | null;
  readonly run: string | null;
  /** How many times wider than true the hole is drawn; null: as the room suggests. */
  readonly widening: number | null;
  /** What was last asked of each practice, by its id. */
  readonly orders: Readonly<Record<string, Asked>>;
}

export const FIRST_SETTINGS: Settings = {
  id: 'settings',
  theme: 'paper',
  text: 'normal',
  motion: 'device',
  hand: 'right',
  letters: 'on',
  sound: 'off',
  volume: 'middle',
  learner: null,
  run: null,
  widening: null,
  orders: {},
};
