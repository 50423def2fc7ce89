// Whatever a run can say has words: every event a crew can notice, every reason for a refusal, every act that takes time.
import { describe, expect, it } from 'vitest';
import {
  ACTION_NAMES,
  ACTION_SPECS,
  EVENT_NAMES,
  HIDDEN_EVENTS,
  REFUSAL_KEYS,
  WAIT_WORDS,
  type ActionName,
} from '$sim';
import { feltMessage } from '../../../src/app/felt';
import { hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { addMessages } from '../../../src/words/messages';

addMessages(laterMessages);

/** Acts that are done at once: no crew is seen busy with them. */
const AT_ONCE: readonly ActionName[] = [
  'setThrottle',
  'setTurning',
  'setFeed',
  'nameSample',
  'note',
  'logLayer',
  'waitFor',
  'stopDrilling',
  'readCaution',
  'useHint',
  'goBack',
];

const withoutWords = (keys: readonly string[]): string[] => keys.filter((key) => !hasMessage(key));

describe('words for what a run says', () => {
  it('has a sentence for every event that a crew can notice', () => {
    const noticed = EVENT_NAMES.filter(
      (name) => !HIDDEN_EVENTS.includes(name) && name !== 'refused' && name !== 'taskDone',
    );
    expect(withoutWords(noticed.map((name) => `event.${name}`))).toEqual([]);
    for (const name of noticed) expect(feltMessage({ tick: 1, name, data: {} }), name).not.toBeNull();
  });

  it('has no sentence for an event that no crew can notice', () => {
    expect(HIDDEN_EVENTS.filter((name) => hasMessage(`event.${name}`))).toEqual([]);
  });

  it('has a sentence for every reason why an act is refused, and no sentence too many', () => {
    expect(withoutWords(REFUSAL_KEYS.map((key) => `refusal.${key}`))).toEqual([]);
    const said = Object.keys(laterMessages).filter((key) => key.startsWith('refusal.'));
    expect(said.filter((key) => !(REFUSAL_KEYS as readonly string[]).includes(key.slice(8)))).toEqual([]);
  });

  it('has words for every act that keeps a crew busy', () => {
    const lasting = ACTION_NAMES.filter((name) => !AT_ONCE.includes(name));
    expect(withoutWords(lasting.map((name) => `work.task.${name}`))).toEqual([]);
    for (const name of AT_ONCE) expect([name, ACTION_SPECS[name].time_s]).toEqual([name, 0]);
  });

  it('has words for every wait', () => {
    const waits = ['time', ...WAIT_WORDS];
    expect(withoutWords(waits.map((until) => `work.wait.until.${until}`))).toEqual([]);
    expect(withoutWords(WAIT_WORDS.map((until) => `work.wait.${until}`))).toEqual([]);
  });
});
