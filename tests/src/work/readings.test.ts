// What the senses say: the words change where a crew would change its word, and every word exists.
import { describe, expect, it } from 'vitest';
import { createRun, sensesOf, step, type Senses } from '$sim';
import { LESSONS, scenarioOf } from '$lessons';
import {
  grainsSeen,
  gritWord,
  murkWord,
  readingsOf,
  SENSE_IDS,
  shareWord,
  type Reading,
} from '../../../src/senses/readings';
import { addMessages, hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

addMessages(laterMessages);

function freshSenses(): Senses {
  const run = createRun(scenarioOf(LESSONS[0]!, 1));
  step(run);
  return sensesOf(run);
}

const readingOf = (senses: Senses, id: string): Reading => readingsOf(senses).find((one) => one.id === id)!;

function expectWords(reading: Reading): void {
  for (const said of [reading.word, reading.detail, reading.sentence]) {
    expect(hasMessage(said.key), said.key).toBe(true);
    for (const value of Object.values(said.data ?? {}))
      if (typeof value === 'string') expect(hasMessage(value), value).toBe(true);
  }
}

describe('words of the returns', () => {
  it('goes from none to full with the share that comes back', () => {
    const words = [0, 0.05, 0.1, 0.5, 0.7, 0.95, 1].map(shareWord);
    expect(words).toEqual(['none', 'none', 'little', 'half', 'most', 'full', 'full']);
  });

  it('tells sand apart from silt and clay', () => {
    expect([0, 0.1, 0.3, 0.9].map(gritWord)).toEqual(['clean', 'trace', 'sandy', 'thick']);
    expect([0, 0.2, 0.9].map(murkWord)).toEqual(['clear', 'cloudy', 'muddy']);
    const base = freshSenses();
    const returns = { ...base.returns, running: true, share_frac: 1, cloudiness_frac: 0, murk_frac: 0.8 };
    const reading = readingOf({ ...base, returns }, 'returns');
    expect(reading.word.key).toBe('work.returns.clean');
    expect(reading.detail.key).toBe('work.returns.detail.muddy');
  });

  it('says first that fluid goes missing, and has words for each share', () => {
    const base = freshSenses();
    for (const [share_frac, word] of [
      [1, 'work.returns.clean'],
      [0.7, 'work.returns.clean'],
      [0.5, 'work.share.half'],
      [0.1, 'work.share.little'],
    ] as const)
      for (const murk_frac of [0, 0.2, 0.9]) {
        const returns = { ...base.returns, running: true, share_frac, cloudiness_frac: 0, murk_frac };
        const reading = readingOf({ ...base, returns }, 'returns');
        expect(reading.word.key).toBe(word);
        expectWords(reading);
      }
  });

  it('lists only the grains that are seen', () => {
    const base = freshSenses();
    const grains = [
      { classIndex: 2, amount: 'none' },
      { classIndex: 4, amount: 'some' },
    ] as const;
    expect(grainsSeen({ ...base, returns: { ...base.returns, grains } })).toEqual([
      { size: 'coarseSand', amount: 'some' },
    ]);
  });
});

describe('the six senses', () => {
  it('each has words at the start of a lesson', () => {
    const readings = readingsOf(freshSenses());
    expect(readings.map((one) => one.id)).toEqual([...SENSE_IDS]);
    readings.forEach(expectWords);
  });

  it('has words for every sound, pull, torque, look and feel', () => {
    const base = freshSenses();
    const { stem, pump, pit } = base;
    const stick = { level_m: 0.12, time_s: 1 };
    for (const sound of ['still', 'quiet', 'hiss', 'grind', 'knock', 'sticky'] as const)
      readingsOf({ ...base, stem: { ...stem, sound } }).forEach(expectWords);
    for (const torque of ['free', 'light', 'firm', 'heavy', 'stalled'] as const)
      for (const pull of ['normal', 'dragging', 'heavy', 'stuck'] as const)
        readingsOf({ ...base, stem: { ...stem, torque, pull, sinking_mmin: 0.1 } }).forEach(expectWords);
    for (const sound of ['off', 'steady', 'labouring', 'racing', 'gulping'] as const)
      readingsOf({ ...base, pump: { ...pump, sound, throttle_frac: 0.5 } }).forEach(expectWords);
    for (const hose of ['torn', 'sprays'] as const)
      readingsOf({ ...base, pump: { ...pump, hose } }).forEach(expectWords);
    readingsOf({ ...base, pump: { ...pump, dead: true } }).forEach(expectWords);
    readingsOf({ ...base, feel: { word: 'slick', salty: true, time_s: 0 } }).forEach(expectWords);
    for (const look of ['full', 'down', 'low', 'empty'] as const)
      for (const heap of ['bare', 'some', 'high', 'brimming'] as const)
        readingsOf({ ...base, stick, pit: { ...pit, look, heap } }).forEach(expectWords);
    for (const word of ['watery', 'slightlySlick', 'slick', 'stringy', 'creamy'] as const)
      readingsOf({ ...base, feel: { word, salty: false, time_s: 0 }, funnel: { seconds_s: 40, time_s: 0 } }).forEach(
        expectWords,
      );
  });

  it('alarms at what nobody on site would overlook, and only then', () => {
    const base = freshSenses();
    expect(readingsOf(base).some((one) => one.alarming)).toBe(false);
    expect(readingOf({ ...base, stem: { ...base.stem, pull: 'stuck' } }, 'rope').alarming).toBe(true);
    expect(readingOf({ ...base, pump: { ...base.pump, sound: 'gulping' } }, 'pump').alarming).toBe(true);
  });

  it('says the worse of pull and torque first', () => {
    const base = freshSenses();
    const dragging = { ...base, stem: { ...base.stem, pull: 'dragging', torque: 'light' } } as const;
    expect(readingOf(dragging, 'rope').word.key).toBe('work.pull.dragging');
    const free = { ...base, stem: { ...base.stem, pull: 'normal', torque: 'heavy' } } as const;
    expect(readingOf(free, 'rope').word.key).toBe('work.torque.heavy');
  });

  it('say when the drive gets hot, and put that first once it is about to trip', () => {
    const senses = freshSenses();
    const at = (drive: Senses['stem']['drive']): Reading =>
      readingOf({ ...senses, stem: { ...senses.stem, sound: 'hiss', drive } }, 'sound');
    expect(at('cool').word.key).toBe('work.sound.hiss');
    expect(at('warm').word.key).toBe('work.sound.hiss');
    expect(at('warm').detail.key).toBe('work.drive.warm');
    for (const drive of ['hot', 'tripped'] as const) {
      const { word, detail, more, alarming } = at(drive);
      for (const key of [word.key, detail.key, more!.key]) expect(hasMessage(key), key).toBe(true);
      expect(alarming).toBe(drive === 'tripped');
    }
  });
});
