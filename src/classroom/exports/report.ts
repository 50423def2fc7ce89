// A class as the exports write it: one line for each result, with what playing it again has shown.
import type { CategoryId, ItemId } from '$lessons';

export type VerdictWord = 'reproduced' | 'notReproduced' | 'otherVersion';

interface Points<Id> {
  readonly id: Id;
  readonly points: number;
  readonly max: number;
}

export interface ResultLine {
  /** T-07, or a picture's name, as the result says; a result from elsewhere may say any short text. */
  readonly who: string;
  /** Both null where it was not played for a class. */
  readonly classCode: string | null;
  readonly attempt: number | null;
  /** Going back was allowed. */
  readonly practice: boolean;
  /** The latest attempt of its learner, once: the one that counts. */
  readonly counts: boolean;
  /** The same result came before. */
  readonly repeats: boolean;
  /** The same run came before, under another sign or attempt. */
  readonly sameRun: boolean;
  readonly verdict: VerdictWord;
  /** Why it was not reproduced, as a sentence; '' where it was. */
  readonly why: string;
  /** Number of the ground, and whether it is the one given to this learner; null where nobody can tell. */
  readonly ground: number;
  readonly ownGround: boolean | null;
  /** Of the run played again; all null where it was not reproduced. */
  readonly finished: boolean | null;
  readonly score: number | null;
  readonly passed: boolean | null;
  /** Key of how it ended, as in outcome.reached. */
  readonly outcome: string | null;
  readonly categories: readonly Points<CategoryId>[];
  readonly items: readonly Points<ItemId>[];
  /** Seconds on the job, and at the screen as the learner's device said. */
  readonly job_s: number | null;
  readonly spent_s: number | null;
  /** When it was taken in here, ms since 1970, and the file it came in. */
  readonly taken_ms: number;
  readonly from: string;
}

export interface ClassReport {
  readonly exercise: {
    readonly id: string;
    readonly edition: number;
    /** Fingerprint of what is played. */
    readonly hash: string;
    readonly title: string;
    readonly lesson: string;
    readonly pass_points: number;
    /** What is judged, in the order of the rubric, with the points of each. */
    readonly judged: readonly { readonly id: ItemId; readonly category: CategoryId; readonly max: number }[];
  };
  /** Version of the physics that played the results again. */
  readonly sim: string;
  readonly results: readonly ResultLine[];
}
