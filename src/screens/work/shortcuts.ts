// What each key of the work screen does: the clock's keys here, every hand's key by the press of that hand.
import type { Hand, HandSet, Press } from '../../hands/hand';
import { keyPress } from '../../hands/keyPress';
import type { Desk } from '../../hands/desk.svelte';
import type { Pace } from './pace.svelte';
import type { WorkKeyId } from './keys';
import type { Sight } from './sight.svelte';

function pressesOf(hand: Hand): readonly Press[] {
  if (hand.form === 'button') return [hand];
  return hand.form === 'stepper' ? [hand.less, hand.more] : hand.amounts;
}

/** The hand's press that belongs to a shortcut, or null where the lesson does not offer it. */
export function pressFor(sets: readonly HandSet[], shortcut: string): { hand: Hand; press: Press } | null {
  for (const set of sets)
    for (const hand of set.hands)
      for (const press of pressesOf(hand)) if (press.shortcut === shortcut) return { hand, press };
  return null;
}

export type KeyHandlers = Partial<Record<WorkKeyId, () => void | (() => void)>>;

/** Handlers by key id. The hands are asked for when the key is pressed, so that they are those of that moment. */
export function keyHandlers(
  ids: readonly WorkKeyId[],
  sets: () => readonly HandSet[],
  desk: Desk,
  pace: Pace,
  sight: Sight,
): KeyHandlers {
  const handlers: KeyHandlers = {
    pause: () => pace.toggle(),
    step: () => pace.step(),
    pace1: () => pace.choose(1),
    pace5: () => pace.choose(5),
    pace20: () => pace.choose(20),
    pace60: () => pace.choose(60),
    clock: () => desk.open('clock'),
    hints: () => desk.open('hints'),
    lens: () => sight.toggleLens(),
    lensWall: () => sight.toggleWall(),
    wider: () => sight.widen(1),
    narrower: () => sight.widen(-1),
    letGo: () => desk.hold.letGo(),
  };
  for (const id of ids) {
    handlers[id] ??= () => {
      const set = sets().find((one) => pressFor([one], id));
      if (!set) return undefined;
      desk.group = set.group;
      const { hand, press } = pressFor([set], id)!;
      return keyPress(press, hand.form === 'button' && hand.asks === true, desk.hold);
    };
  }
  return handlers;
}
