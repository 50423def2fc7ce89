// The log in words for an instructor: acts with amounts and people, refusals, what happened, what nobody can notice.
import { beforeAll, describe, expect, it } from 'vitest';
import { ACTION_NAMES, ACTION_SPECS, act, createRun, HIDDEN_EVENTS, step, type Payload } from '../../../../sim';
import { actWords } from '../../../../src/classroom/live/actWords';
import { logLines } from '../../../../src/classroom/live/logLines';
import { addMessages, hasMessage, say } from '../../../../src/words';
import { classMessages } from '../../../../src/words/classroom';
import { laterMessages } from '../../../../src/words/later';
import { does, rigScenario } from '../../../rig';

beforeAll(() => {
  addMessages(laterMessages);
  addMessages(classMessages);
});

const inWords = (action: (typeof ACTION_NAMES)[number], payload: Payload): string => {
  const { key, data } = actWords(action, payload);
  return say(key, data);
};

describe('an act in words', () => {
  it('tells the amounts in the units of the hands', () => {
    expect(inWords('addAdditive', { additive: 'polymer', mass_g: 500, manner: 'dumped' })).toBe(
      'put powder in: polymer, 500 g, dumped',
    );
    expect(inWords('setThrottle', { throttle_frac: 0.5 })).toBe('set the pump: 50%');
    expect(inWords('setTurning', { on: true })).toBe('set the turning: on');
    expect(inWords('prime', {})).toBe('primed the pump');
    expect(inWords('fault', { fault: 'hoseBursts' })).toBe('something broke: The hose bursts');
  });

  it('has a word for every choice that an act can hold and a unit for every number', () => {
    for (const action of ACTION_NAMES)
      for (const field of ACTION_SPECS[action].fields) {
        if (field.type !== 'number') continue;
        const { data } = actWords(action, { [field.name]: field.min });
        const counted = ['sample', 'level', 'fromTick', 'slotRows', 'centralisers'].includes(field.name);
        expect([field.name, data?.['amounts'] === undefined], action).toEqual([field.name, counted]);
      }
  });
});

describe('lines of the log', () => {
  it('come newest first, with who sat at it, and refusals told once', () => {
    const run = createRun(rigScenario({ seed: 7 }));
    does(run, 'takeSeat', { seat: 'pumpHand', who: 'fish' });
    act(run, 'addRod', {});
    step(run);
    does(run, 'feelFluid');
    const lines = logLines(run);
    expect(lines.map(({ sort }) => sort)).toEqual(['act', 'refused', 'act']);
    expect(lines[0]).toMatchObject({ time_s: 1, who: 'fish' });
    expect(say(lines[1]!.words.key, lines[1]!.words.data)).toMatch(/^added a rod: could not\. /);
  });

  it('have words for everything that no crew can notice', () => {
    const run = createRun(rigScenario({ seed: 7 }));
    const data = { cause: 'swab', from_m: 1, to_m: 2, kind: 'silt', depth_m: 1 };
    for (const name of HIDDEN_EVENTS) run.record.events.push({ tick: 1, name, data });
    const lines = logLines(run);
    expect(lines).toHaveLength(HIDDEN_EVENTS.length);
    for (const { words, sort } of lines) {
      expect(sort).toBe('hidden');
      expect(hasMessage(words.key), words.key).toBe(true);
      expect(say(words.key, words.data)).not.toMatch(/[{}]|cutaway\.|wall\./);
    }
  });
});
