// One of two runs that lie side by side.
import type { Played } from '../../classroom/live/beside/playedAgain';

export interface Side {
  readonly name: string;
  /** null: a crew that nobody led. */
  readonly who: string | null;
  readonly finished: boolean;
  readonly played: Played;
}
