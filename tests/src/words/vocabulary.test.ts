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
  type Senses,
} from '$sim';
import { feltMessage } from '../../../src/app/felt';
import { hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { addMessages } from '../../../src/words/messages';

addMessages(laterMessages);

/** Acts that are done at once: no crew is seen busy with them. */
const AT_ONCE: readonly ActionName[] = [
  'chooseSite',
  'setThrottle',
  'setTurning',
  'setFeed',
  'nameSample',
  'note',
  'logLayer',
  'waitFor',
  'stopDrilling',
  'fault',
  'planWell',
  'record',
  'handOver',
  'relieveCrew',
  'leaveToCrew',
  'readCaution',
  'useHint',
  'goBack',
  'takeSeat',
];

/** Every value of every sense, as the compiler knows them: a new one is missed here first. */
const SAID = {
  returns: { brown: 1, grey: 1, yellow: 1, red: 1, black: 1, pale: 1 } satisfies Record<Senses['returns']['colour'], 1>,
  fluid: { watery: 1, slightlySlick: 1, slick: 1, stringy: 1, creamy: 1 } satisfies Record<
    NonNullable<Senses['feel']>['word'],
    1
  >,
  sound: { still: 1, quiet: 1, hiss: 1, grind: 1, knock: 1, sticky: 1 } satisfies Record<Senses['stem']['sound'], 1>,
  torque: { free: 1, light: 1, firm: 1, heavy: 1, stalled: 1 } satisfies Record<Senses['stem']['torque'], 1>,
  pull: { normal: 1, dragging: 1, heavy: 1, stuck: 1 } satisfies Record<Senses['stem']['pull'], 1>,
  drive: { cool: 1, warm: 1, hot: 1, tripped: 1 } satisfies Record<Senses['stem']['drive'], 1>,
  pump: { off: 1, steady: 1, labouring: 1, racing: 1, gulping: 1 } satisfies Record<Senses['pump']['sound'], 1>,
  pit: { full: 1, down: 1, low: 1, empty: 1 } satisfies Record<Senses['pit']['look'], 1>,
  heap: { bare: 1, some: 1, high: 1, brimming: 1 } satisfies Record<Senses['pit']['heap'], 1>,
  mouth: { brim: 1, down: 1, gone: 1 } satisfies Record<Senses['mouth']['look'], 1>,
};

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

  it('has words for every act that was done, for looking back', () => {
    expect(withoutWords(ACTION_NAMES.map((name) => `did.${name}`))).toEqual([]);
  });

  it('has words for every wait', () => {
    const waits = ['time', ...WAIT_WORDS];
    expect(withoutWords(waits.map((until) => `work.wait.until.${until}`))).toEqual([]);
    expect(withoutWords(WAIT_WORDS.map((until) => `work.wait.${until}`))).toEqual([]);
  });

  it('has words for everything that a crew can see, hear and feel', () => {
    const { returns, fluid, sound, torque, pull, drive, pump, pit, heap, mouth } = SAID;
    const keys = [
      ...Object.keys(returns).map((colour) => `work.colour.${colour}`),
      ...Object.keys(fluid).map((word) => `work.feel.${word}`),
      ...Object.keys(sound).flatMap((word) => [`work.sound.${word}`, `work.sound.sentence.${word}`]),
      ...Object.keys(torque).map((word) => `work.torque.${word}`),
      ...Object.keys(pull).map((word) => `work.pull.${word}`),
      ...Object.keys(drive).flatMap((word) =>
        word === 'cool' ? [] : [`work.drive.${word}`, `work.drive.sentence.${word}`],
      ),
      ...Object.keys(pump).flatMap((word) => [`work.pump.${word}`, `work.pump.sentence.${word}`]),
      ...Object.keys(pit).map((word) => `work.pit.${word}`),
      ...Object.keys(heap).flatMap((word) => [`work.heap.${word}`, `work.pit.heap.${word}`, `work.digOut.${word}`]),
      ...Object.keys(mouth).flatMap((word) => [
        `work.mouth.${word}`,
        `work.mouth.sentence.${word}`,
        `work.topUp.${word}`,
      ]),
    ];
    expect(withoutWords(keys)).toEqual([]);
  });
});
