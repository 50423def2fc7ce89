// The answer keys of a class as they are worked out, one ground after the other, while the page stays alive.
import type { Lesson } from '$lessons';
import { inParts } from '../../app/parts';
import { answering, type Answer } from './answer';
import type { KeyGround } from './grounds';

export interface AnswerKey {
  readonly who: readonly string[];
  readonly answer: Answer;
}

/** The task up to its end, or null from when nobody waits for it any more. */
function* upTo<Result>(going: () => boolean, task: Generator<unknown, Result>): Generator<null, Result | null> {
  for (;;) {
    if (!going()) return null;
    const { done, value } = task.next();
    if (done) return value as Result;
    yield null;
  }
}

export class AnswerKeys {
  keys: readonly AnswerKey[] = $state.raw([]);
  /** How many there will be. */
  all = $state(0);
  working = $state(false);
  /** Grows with each order: an older one stops. */
  #order = 0;

  async make(lesson: Lesson, grounds: readonly KeyGround[]): Promise<void> {
    const order = ++this.#order;
    const going = (): boolean => this.#order === order;
    this.keys = [];
    this.all = grounds.length;
    this.working = true;
    for (const { seed, who } of grounds) {
      const answer = await inParts(upTo(going, answering(lesson, seed)));
      if (!answer || !going()) return;
      this.keys = [...this.keys, { who, answer }];
    }
    this.working = false;
  }

  /** What is worked out stays. */
  stop(): void {
    this.#order++;
    this.working = false;
  }
}
