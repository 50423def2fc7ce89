// The questions before an act: whatever can be set, the run understands.
import { describe, expect, it } from 'vitest';
import { malformedIn } from '$sim';
import { amountsAsked, firstValues, payloadOf, stepped, type Ask, type Values } from '../../../src/hands/ask';
import { ASKS } from '../../../src/hands/asks';
import { nextShare } from '../../../src/hands/stepper';
import { addMessages, hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

addMessages(laterMessages);

const asks = Object.entries(ASKS) as [string, Ask][];
const labels = (asked: readonly { label: string }[] | undefined): string[] => (asked ?? []).map(({ label }) => label);

/** Every way to choose in a question. */
function choicesOf(ask: Ask): Values[] {
  return (ask.choices ?? []).reduce<Values[]>(
    (ways, choice) => ways.flatMap((way) => choice.options.map(({ value }) => ({ ...way, [choice.field]: value }))),
    [firstValues(ask)],
  );
}

describe('the questions before an act', () => {
  it('make well-formed payloads from every choice, chip and limit', () => {
    for (const [id, ask] of asks) {
      expect(malformedIn(ask.action, payloadOf(ask, firstValues(ask))), id).toBeNull();
      for (const values of choicesOf(ask))
        for (const asked of amountsAsked(ask, values))
          for (const amount of [asked.start, asked.min, asked.max, ...asked.chips])
            expect(
              malformedIn(ask.action, payloadOf(ask, { ...values, [asked.field]: amount })),
              `${id} ${JSON.stringify(values)} ${asked.field} ${amount}`,
            ).toBeNull();
    }
  });

  it('ask for each amount at most once, whatever is chosen', () => {
    for (const [id, ask] of asks)
      for (const values of choicesOf(ask)) {
        const fields = amountsAsked(ask, values).map((asked) => asked.field);
        expect([id, new Set(fields).size]).toEqual([id, fields.length]);
      }
  });

  it('have words for all they say', () => {
    for (const [id, ask] of asks) {
      const keys = [ask.heading, ask.say, ask.confirm, ...labels(ask.amounts), ...labels(ask.choices)];
      for (const key of keys) if (key) expect(hasMessage(key), `${id}: ${key}`).toBe(true);
      for (const choice of ask.choices ?? [])
        for (const { label, say } of choice.options)
          for (const key of [label, say]) if (key) expect(hasMessage(key), key).toBe(true);
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
