// The questions before an act: whatever can be set, the run understands.
import { describe, expect, it } from 'vitest';
import { malformedIn } from '$sim';
import { ASKS, payloadOf, stepped, type Ask } from '../../../src/hands/asks';
import { nextShare } from '../../../src/hands/stepper';
import { addMessages, hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

addMessages(laterMessages);

const asks = Object.entries(ASKS) as [string, Ask][];

describe('the questions before an act', () => {
  it('make well-formed payloads from every choice, chip and limit', () => {
    for (const [id, ask] of asks) {
      const amounts = ask.amount ? [ask.amount.start, ask.amount.min, ask.amount.max, ...ask.amount.chips] : [0];
      const choices = ask.choice ? ask.choice.options.map((option) => option.value) : [''];
      for (const amount of amounts)
        for (const choice of choices)
          expect(malformedIn(ask.action, payloadOf(ask, amount, choice)), `${id} ${amount} ${choice}`).toBeNull();
    }
  });

  it('have words for all they say', () => {
    for (const [id, ask] of asks) {
      const keys = [ask.heading, ask.say, ask.confirm, ask.amount?.label, ask.choice?.label];
      for (const key of keys) if (key) expect(hasMessage(key), `${id}: ${key}`).toBe(true);
      for (const option of ask.choice?.options ?? []) expect(hasMessage(option.label)).toBe(true);
    }
  });

  it('never leave the limits, and do not gather the crumbs of 0.1 + 0.2', () => {
    const limits = { min: 0.05, max: 6 };
    expect(stepped(0.1 + 0.2, limits)).toBe(0.3);
    expect(stepped(-1, limits)).toBe(0.05);
    expect(stepped(7, limits)).toBe(6);
  });
});

describe('a share in steps', () => {
  it('goes up and down by a step and ends at nothing and at all', () => {
    expect(nextShare(0.3, 1, 10)).toBe(0.4);
    expect(nextShare(0.3, -1, 10)).toBe(0.2);
    expect(nextShare(0.5, 1, 4)).toBe(0.75);
    expect(nextShare(0, -1, 10)).toBeNull();
    expect(nextShare(1, 1, 4)).toBeNull();
  });

  it('goes to the nearest step from between two', () => {
    expect(nextShare(0.34, 1, 10)).toBe(0.4);
    expect(nextShare(0.34, -1, 10)).toBe(0.3);
    expect(nextShare(0.9, 1, 4)).toBe(1);
  });
});
