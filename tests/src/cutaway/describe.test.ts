// What a listener is told: every thing has words, and the words say what the thing is doing.
import { describe as group, expect, it } from 'vitest';
import { KIND_WORDS, SOIL_KINDS } from '$sim';
import { describe, describeAll, THINGS } from '../../../src/cutaway/describe';
import { cutawayView } from '../../../src/cutaway/view';
import { addMessages, hasMessage, say } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { fixtureView } from '../../browser/cutaway/fixture';
import { crewRun } from './crewRun';

addMessages(laterMessages);

group('what is told of the drawing', () => {
  it('has words for every thing at every moment of a run, with every slot filled', () => {
    const seen = new Set<string>();
    for (const tick of [1, 200, 700, 1100, 1500, 2000, 9999]) {
      const run = crewRun(tick);
      for (const level of ['open', 'hole', 'blind'] as const) {
        const view = cutawayView(run, level);
        const told = [...describeAll(view), ...THINGS.map((thing) => describe(view, thing))];
        for (const one of told) {
          if (!one) continue;
          expect(hasMessage(one.key), one.key).toBe(true);
          expect(say(one.key, one.data)).not.toMatch(/[{}]|cutaway\./);
          seen.add(one.key);
        }
      }
    }
    expect(seen.size).toBeGreaterThan(30);
  });

  it('has a word for every kind of ground of the model and of the learner', () => {
    for (const kind of [...SOIL_KINDS, ...KIND_WORDS]) expect(hasMessage(`cutaway.kind.${kind}`), kind).toBe(true);
  });

  it('says nothing of the hole inside in a blind lesson, and nothing of layers while the ground is closed', () => {
    const blind = describeAll(fixtureView({ level: 'blind', bed_m: 0.4 })).map((one) => one.key);
    expect(blind.filter((key) => /fluid|bed|air|layer/i.test(key))).toEqual([]);
    const hole = describeAll(fixtureView({ level: 'hole', bed_m: 0.4 })).map((one) => one.key);
    expect(hole).toContain('cutaway.tell.bed');
    expect(hole).not.toContain('cutaway.tell.layer');
    expect(describeAll(fixtureView({ level: 'open' })).filter((one) => one.key === 'cutaway.tell.layer')).toHaveLength(
      6,
    );
  });

  it('follows what is going on', () => {
    const key = (view: ReturnType<typeof fixtureView>, thing: (typeof THINGS)[number]): string | undefined =>
      describe(view, thing)?.key;
    const drilling = fixtureView();
    expect(key(drilling, 'bit')).toBe('cutaway.tell.bitCutting');
    expect(key(drilling, 'fluid')).toBe('cutaway.tell.fluidRising');
    expect(key(drilling, 'channel')).toBe('cutaway.tell.channelFull');
    const stopped = fixtureView({ flowing: false, bed_m: 0.9, levelDown_m: 1 });
    expect(key(stopped, 'bit')).toBe('cutaway.tell.bitBuried');
    expect(key(stopped, 'fluid')).toBe('cutaway.tell.fluidStill');
    expect(key(stopped, 'channel')).toBe('cutaway.tell.channelDry');
    expect(key(stopped, 'air')).toBe('cutaway.tell.air');
    expect(say('cutaway.tell.stemHanging', { n: 1 })).toBe('Stem: 1 rod, standing still.');
    expect(say('cutaway.tell.stemHanging', { n: 3 })).toBe('Stem: 3 rods, standing still.');
  });
});
