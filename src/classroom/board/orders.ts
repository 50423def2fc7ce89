// What is asked of who judges results, and what is told. Plain data: it goes to a worker and comes back.
import { judging, type Exercise, type Judgement, type Place, type Result } from '$lessons';

export interface Order {
  /** Id of the entry on the board. */
  readonly id: string;
  readonly result: Result;
  /** The edition that it is judged by. */
  readonly exercise: Exercise;
  readonly place: Place | null;
}

export interface Judged {
  readonly id: string;
  readonly judgement: Judgement;
}

/** Plays a result again; tells the judgement when it is there, and null now and then. */
export function* carryOut({ id, result, exercise, place }: Order): Generator<Judged | null, void> {
  yield { id, judgement: yield* judging(result, exercise, place) };
}
