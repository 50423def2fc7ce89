// Hands are kept from one reading to the next where they say the same; what is pressed is always the hand as it is read last.
import { describe, expect, it } from 'vitest';
import type { ButtonHand, HandSet, StepperHand } from '../../../src/hands/hand';
import { KeptHands } from '../../../src/screens/work/kept';

const button = (id: string, n: number, press = (): void => undefined): ButtonHand => ({
  form: 'button',
  id,
  drawing: 'turn',
  label: 'work.turn',
  detail: { key: 'work.addRod.now', data: { n } },
  whyNot: null,
  press,
});

const stepper = (level_frac: number, press: () => void): StepperHand => ({
  form: 'stepper',
  id: 'feed',
  drawing: 'feed',
  label: 'work.feed',
  detail: { key: 'work.feed.short', data: { share: level_frac } },
  level_frac,
  marks: 10,
  less: { whyNot: null, press: () => undefined },
  more: { whyNot: null, press },
});

const stem = (...hands: HandSet['hands'][number][]): HandSet => ({ group: 'stem', hands });

describe('the hands that are kept', () => {
  it('are the very same sets where nothing has changed', () => {
    const kept = new KeptHands();
    const first = kept.keep([stem(button('turn', 1), button('addRod', 2))]);
    expect(kept.keep([stem(button('turn', 1), button('addRod', 2))])).toBe(first);
  });

  it('are made anew, each for itself, where something has', () => {
    const kept = new KeptHands();
    const [before] = kept.keep([
      stem(
        button('turn', 1),
        button('addRod', 2),
        stepper(0.1, () => undefined),
      ),
    ]);
    const [after] = kept.keep([
      stem(
        button('turn', 1),
        button('addRod', 3),
        stepper(0.2, () => undefined),
      ),
    ]);
    expect(after!.hands[0]).toBe(before!.hands[0]);
    expect(after!.hands[1]).not.toBe(before!.hands[1]);
    expect(after!.hands[1]!.detail.data).toEqual({ n: 3 });
    expect(after!.hands[2]).toMatchObject({ level_frac: 0.2 });
  });

  it('see a hand that comes, goes or stands in another group', () => {
    const kept = new KeptHands();
    const first = kept.keep([stem(button('turn', 1))]);
    const more = kept.keep([stem(button('turn', 1), button('addRod', 2))]);
    expect(more).not.toBe(first);
    expect(more[0]!.hands.map(({ id }) => id)).toEqual(['turn', 'addRod']);
    const moved = kept.keep([{ group: 'pump', hands: [button('turn', 1), button('addRod', 2)] }]);
    expect(moved[0]!.group).toBe('pump');
    expect(kept.keep([stem(button('turn', 1))])[0]!.hands).toHaveLength(1);
  });

  it('do what the hand as it was read last does', () => {
    const pressed: string[] = [];
    const kept = new KeptHands();
    const read = (says: string): readonly HandSet[] =>
      kept.keep([
        stem(
          button('turn', 1, () => pressed.push(`turn ${says}`)),
          stepper(0.1, () => pressed.push(`more ${says}`)),
          {
            form: 'amounts',
            id: 'lift',
            drawing: 'lift',
            label: 'work.lift',
            detail: { key: 'work.stem.bit', data: { bit_m: 1 } },
            amounts: [
              { whyNot: null, press: () => undefined },
              {
                whyNot: null,
                press: () => pressed.push(`lift ${says}`),
                hold: {
                  id: 'lift',
                  hand: 'lift',
                  label: 'work.lift',
                  action: 'lift',
                  pace: 'task',
                  step: () => ({ says }),
                },
              },
            ],
          },
        ),
      ]);
    const sets = read('first');
    expect(read('second')).toBe(sets);
    for (const hand of sets[0]!.hands)
      if (hand.form === 'button') hand.press();
      else if (hand.form === 'stepper') hand.more.press();
      else {
        hand.amounts[1]!.press();
        expect(hand.amounts[1]!.hold!.step()).toEqual({ says: 'second' });
      }
    expect(pressed).toEqual(['turn second', 'more second', 'lift second']);
  });
});
