// What is passed on of an event: words for what a crew notices, nothing of what it cannot.
import { beforeAll, describe, expect, it } from 'vitest';
import { ACTION_NAMES, HIDDEN_EVENTS, type EventName } from '../../../sim';
import { lessonById, playCrew } from '../../../lessons';
import { DANGERS, feltMessage } from '../../../src/app/felt';
import { addMessages, hasMessage } from '../../../src/words';
import { events } from '../../../src/words/en/events';
import { laterMessages } from '../../../src/words/later';

beforeAll(() => addMessages(laterMessages));

describe('what the crew notices', () => {
  it('says nothing of hidden events, and of refusals only once, elsewhere', () => {
    for (const name of [...HIDDEN_EVENTS, 'refused' as EventName])
      expect(feltMessage({ tick: 1, name, data: { kind: 'coarseSand' } })).toBeNull();
  });

  it('passes on no figure that only the record knows', () => {
    const { record } = playCrew(lessonById('first-rods')!, 'careful', 7);
    const messages = record.events.map(feltMessage).filter((message) => message !== null);
    expect(messages.length).toBeGreaterThan(5);
    for (const { data } of messages)
      expect(Object.keys(data).every((key) => ['n', 'sample', 'label_m'].includes(key))).toBe(true);
  });

  it('has a sentence for every danger', () => {
    for (const name of DANGERS) expect(hasMessage(`event.${name}`), name).toBe(true);
  });

  it('has no sentence for something that cannot happen', () => {
    const acts = Object.keys(events)
      .filter((key) => key.startsWith('event.taskDone.'))
      .map((key) => key.slice(15));
    expect(acts.filter((act) => !(ACTION_NAMES as readonly string[]).includes(act))).toEqual([]);
  });
});
