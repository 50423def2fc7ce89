// The hands from one reading to the next: one that says the same is the same object, so that nothing of it is worked out anew.
import type { Hand, HandSet, Press } from '../../hands/hand';

/** All that is shown of a hand; what its presses do is left out. */
const face = (hand: Hand): string => JSON.stringify(hand);

interface Kept {
  readonly face: string;
  readonly shown: Hand;
  /** As it was read last: a press does what this one does. */
  now: Hand;
}

export class KeptHands {
  #kept = new Map<string, Kept>();
  #sets: readonly HandSet[] = [];

  /** The same sets with the hands kept that have not changed; where nothing has, the very sets of the last time. */
  keep(sets: readonly HandSet[]): readonly HandSet[] {
    const before = this.#kept;
    this.#kept = new Map();
    const next = sets.map(({ group, hands }) => ({
      group,
      hands: hands.map((hand) => this.#take(`${group} ${hand.id}`, hand, before)),
    }));
    if (!sameSets(this.#sets, next)) this.#sets = next;
    return this.#sets;
  }

  #take(place: string, hand: Hand, before: ReadonlyMap<string, Kept>): Hand {
    const was = before.get(place);
    const now = face(hand);
    const kept = was?.face === now ? was : keptOf(hand, now);
    kept.now = hand;
    this.#kept.set(place, kept);
    return kept.shown;
  }
}

function keptOf(hand: Hand, shownFace: string): Kept {
  const kept: Kept = { face: shownFace, now: hand, shown: through(hand, () => kept.now) };
  return kept;
}

/** The hand as it is shown, with presses and holds that go to the hand as it is read last. */
function through(hand: Hand, now: () => Hand): Hand {
  const follow = <P extends Press>(press: P, nth: number): P => ({
    ...press,
    press: () => pressesOf(now())[nth]?.press(),
    ...(press.hold && { hold: { ...press.hold, step: () => pressesOf(now())[nth]?.hold?.step() ?? null } }),
  });
  if (hand.form === 'button') return follow(hand, 0);
  if (hand.form === 'stepper') return { ...hand, less: follow(hand.less, 0), more: follow(hand.more, 1) };
  return { ...hand, amounts: hand.amounts.map(follow) };
}

function pressesOf(hand: Hand): readonly Press[] {
  if (hand.form === 'button') return [hand];
  return hand.form === 'stepper' ? [hand.less, hand.more] : hand.amounts;
}

function sameSets(a: readonly HandSet[], b: readonly HandSet[]): boolean {
  return (
    a.length === b.length &&
    a.every(({ group, hands }, i) => {
      const other = b[i]!;
      return (
        group === other.group &&
        hands.length === other.hands.length &&
        hands.every((hand, j) => hand === other.hands[j])
      );
    })
  );
}
