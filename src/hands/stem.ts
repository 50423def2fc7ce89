// The hands on the stem: turning, feed, lifting and lowering, rods, and the end of drilling.
import type { Senses } from '$sim';
import { STEM_SPEED_ms } from './askParts';
import type { Desk } from './desk.svelte';
import type { ButtonHand, Hand, Press } from './hand';
import type { Holdable } from './hold.svelte';
import { shareStepper } from './stepper';

/** The two lengths that are one press away, m. */
const SHORT_m = 0.1;
const LONG_m = 0.3;
/** A held stem is worked for so long at a time, the shortest that the act knows, s. */
const STROKES_s = 10;

export function stemHands(desk: Desk, { stem }: Senses, withStop: boolean): Hand[] {
  const hands: Hand[] = [
    {
      form: 'button',
      id: 'turn',
      drawing: 'turn',
      label: 'work.turn',
      detail: { key: stem.turning ? 'work.turn.on' : 'work.turn.off' },
      narrow: true,
      pressed: stem.turning,
      whyNot: desk.whyNot('setTurning', { on: !stem.turning }),
      press: () => desk.act('turn', 'setTurning', { on: !stem.turning }),
      shortcut: 'turn',
    },
    {
      form: 'button',
      id: 'addRod',
      drawing: 'addRod',
      label: 'work.addRod',
      detail:
        stem.left_m > 0
          ? { key: 'work.rods.left', data: { left_m: stem.left_m } }
          : { key: 'work.addRod.now', data: { n: stem.rodsLeft } },
      whyNot: desk.whyNot('addRod'),
      press: () => desk.act('addRod', 'addRod'),
      shortcut: 'addRod',
    },
    shareStepper(desk, {
      id: 'feed',
      action: 'setFeed',
      field: 'feed_frac',
      shareNow: (senses) => senses.stem.feed_frac,
      steps: 10,
      label: 'work.feed',
      detail: { key: 'work.feed.short', data: { share: stem.feed_frac } },
      more: 'work.feed.more',
      less: 'work.feed.less',
    }),
    move(desk, 'lift', stem.bit_m),
    move(desk, 'lower', stem.bit_m),
    asking(desk, 'removeRod', desk.whyNot('removeRod', { speed_ms: STEM_SPEED_ms.steady }), {
      key: 'work.removeRod.now',
      data: { n: stem.rods },
    }),
    {
      ...asking(desk, 'workStem', desk.whyNot('workStem', { time_s: 60 }), { key: 'work.workStem.say' }),
      hold: held('workStem', () => ({ time_s: STROKES_s })),
    },
  ];
  if (withStop) hands.push(asking(desk, 'stopDrilling', desk.whyNot('stopDrilling'), { key: 'work.stopDrilling.say' }));
  return hands;
}

function held(hand: 'lift' | 'lower' | 'workStem', step: Holdable['step'], id: string = hand): Holdable {
  return { id, hand, label: `work.${hand}`, action: hand, pace: 'task', step };
}

function move(desk: Desk, way: 'lift' | 'lower', bit_m: number): Hand {
  const by = (distance_m: number, shortcut: string): Press => ({
    name: { key: `work.${way}.by`, data: { distance_m } },
    text: { key: 'work.metres', data: { distance_m } },
    whyNot: desk.whyNot(way, { distance_m, speed_ms: STEM_SPEED_ms.steady }),
    press: () => desk.act(way, way, { distance_m, speed_ms: STEM_SPEED_ms.steady }),
    shortcut,
    // Held down, it goes on by its own length: the short one stops soonest when it is let go.
    hold: held(way, () => ({ distance_m, speed_ms: STEM_SPEED_ms.steady }), shortcut),
  });
  return {
    form: 'amounts',
    id: way,
    drawing: way,
    label: `work.${way}`,
    detail: { key: 'work.stem.bit', data: { bit_m } },
    amounts: [
      by(SHORT_m, way),
      by(LONG_m, `${way}More`),
      {
        name: { key: `work.${way}.other` },
        text: { key: 'work.more' },
        whyNot: desk.whyNot(way, { distance_m: SHORT_m, speed_ms: STEM_SPEED_ms.steady }),
        press: () => desk.open(way),
      },
    ],
  };
}

function asking(
  desk: Desk,
  id: 'removeRod' | 'workStem' | 'stopDrilling',
  whyNot: ReturnType<Desk['whyNot']>,
  detail: Hand['detail'],
): ButtonHand {
  return {
    form: 'button',
    id,
    drawing: id,
    label: `work.${id}`,
    detail,
    whyNot,
    asks: true,
    press: () => desk.open(id),
    shortcut: id,
  };
}
