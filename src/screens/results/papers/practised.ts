// What a certificate says of a learner: taken from the result that counts, as it came out when it was played again.
import type { Grade } from '$lessons';

export interface Practised {
  /** The sign in words. */
  readonly who: string;
  readonly score: number;
  readonly passed: boolean;
  readonly parts: Grade['categories'];
  readonly code: string | null;
  readonly attempt: number | null;
  readonly seed: number;
  readonly job_s: number;
  readonly spent_s: number | null;
  /** Day on which it was handed in, as people write it. */
  readonly day: string;
  readonly sim: string;
}
