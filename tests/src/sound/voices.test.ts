// What is heard: each sound follows its sense, is said by that sense's card too, and is silent where the lesson hides the sense.
import { describe, expect, it } from 'vitest';
import { createRun, sensesOf, step, type Senses } from '$sim';
import { LESSONS, scenarioOf } from '$lessons';
import { isHeard } from '../../../src/sound/heard';
import { PEAK, TOGETHER_frac } from '../../../src/sound/player';
import { CARRIED_BY, voicesOf, type Voice, type VoiceName } from '../../../src/sound/voices';
import { readingsOf, SENSE_IDS } from '../../../src/senses/readings';

const still: Senses = (() => {
  const run = createRun(scenarioOf(LESSONS[0]!, 1));
  step(run);
  return sensesOf(run);
})();

type Pump = Partial<Senses['pump']>;
type Stem = Partial<Senses['stem']>;
const withPump = (pump: Pump): Senses => ({ ...still, pump: { ...still.pump, primed: true, ...pump } });
const withStem = (stem: Stem): Senses => ({ ...still, stem: { ...still.stem, turning: true, ...stem } });
const withReturns = (share_frac: number, murk_frac = 0): Senses => ({
  ...still,
  returns: { ...still.returns, running: true, share_frac, murk_frac },
});
const heard = (senses: Senses, name: VoiceName): Voice | undefined =>
  voicesOf(senses, SENSE_IDS).find((voice) => voice.name === name);

/** Moments in which each voice sounds. */
const MOMENTS: Readonly<Record<VoiceName, readonly Senses[]>> = {
  engine: (['steady', 'labouring', 'racing', 'gulping'] as const).map((sound) => withPump({ sound, throttle_frac: 1 })),
  air: (['racing', 'gulping'] as const).map((sound) => withPump({ sound, throttle_frac: 0.5 })),
  spray: [withPump({ sound: 'steady', throttle_frac: 1, hose: 'sprays' })],
  bit: (['quiet', 'hiss', 'grind', 'knock', 'sticky'] as const).map((sound) => withStem({ sound })),
  drive: (['firm', 'heavy', 'stalled'] as const).map((torque) => withStem({ torque })),
  water: [withReturns(1), withReturns(0.5), withReturns(0.2)],
};

describe('the sounds of the work', () => {
  it('are none while nothing runs', () => {
    expect(voicesOf(still, SENSE_IDS)).toEqual([]);
  });

  it('are heard in their moments, within what a loudspeaker and an ear can do', () => {
    for (const [name, moments] of Object.entries(MOMENTS))
      for (const senses of moments) {
        const voice = heard(senses, name as VoiceName)!;
        expect(voice, name).toBeDefined();
        expect(voice.level_frac).toBeGreaterThan(0);
        expect(voice.level_frac).toBeLessThanOrEqual(1);
        expect(voice.rough_frac).toBeGreaterThanOrEqual(0);
        expect(voice.rough_frac).toBeLessThanOrEqual(1);
        expect(voice.pitch_Hz).toBeGreaterThan(20);
        expect(voice.pitch_Hz).toBeLessThan(8000);
      }
  });

  it('are not cut off when all sound at their loudest, and are still heard one by one', () => {
    const loudest = Object.entries(MOMENTS).map(([name, moments]) =>
      Math.max(
        ...moments.map((senses) => {
          const { level_frac, source } = heard(senses, name as VoiceName)!;
          return level_frac * PEAK[source];
        }),
      ),
    );
    expect(loudest.reduce((sum, level) => sum + level) * TOGETHER_frac).toBeLessThanOrEqual(1);
    expect(Math.min(...loudest) * TOGETHER_frac).toBeGreaterThan(0.1);
  });

  it('are each said by a sense card as well: its words differ from those of a still site, and from moment to moment', () => {
    for (const [name, moments] of Object.entries(MOMENTS)) {
      const said = [still, ...moments].map((senses) => {
        const card = readingsOf(senses).find(({ id }) => id === CARRIED_BY[name as VoiceName])!;
        return JSON.stringify([card.word, card.detail, card.sentence]);
      });
      expect(new Set(said).size, name).toBe(said.length);
    }
  });

  it('are silent where the lesson does not show the sense that carries them', () => {
    for (const [name, moments] of Object.entries(MOMENTS)) {
      const others = SENSE_IDS.filter((id) => id !== CARRIED_BY[name as VoiceName]);
      for (const senses of moments) expect(voicesOf(senses, others).map((voice) => voice.name)).not.toContain(name);
    }
  });

  it('rise with the throttle, race without a load and labour under one', () => {
    const pitch = (pump: Pump): number => heard(withPump(pump), 'engine')!.pitch_Hz;
    expect(pitch({ sound: 'steady', throttle_frac: 1 })).toBeGreaterThan(
      pitch({ sound: 'steady', throttle_frac: 0.25 }),
    );
    expect(pitch({ sound: 'racing', throttle_frac: 1 })).toBeGreaterThan(pitch({ sound: 'steady', throttle_frac: 1 }));
    expect(pitch({ sound: 'labouring', throttle_frac: 1 })).toBeLessThan(pitch({ sound: 'steady', throttle_frac: 1 }));
    const rough = (sound: 'steady' | 'labouring'): number =>
      heard(withPump({ sound, throttle_frac: 1 }), 'engine')!.rough_frac;
    expect(rough('labouring')).toBeGreaterThan(rough('steady'));
  });

  it('tell sand from clay: sand high, stones in single knocks, clay low and slow', () => {
    const bit = (sound: Senses['stem']['sound']): Voice => heard(withStem({ sound }), 'bit')!;
    expect(bit('hiss').pitch_Hz).toBeGreaterThan(bit('grind').pitch_Hz);
    expect(bit('grind').pitch_Hz).toBeGreaterThan(bit('sticky').pitch_Hz);
    expect(bit('knock')).toMatchObject({ rough_frac: 1, struck: true });
    expect(bit('hiss').struck).toBe(false);
    for (const loud of ['hiss', 'grind', 'knock'] as const)
      for (const low of ['sticky', 'quiet'] as const)
        expect(bit(loud).level_frac).toBeGreaterThan(2 * bit(low).level_frac);
    expect(bit('sticky').beat_Hz).toBeLessThan(bit('hiss').beat_Hz);
    expect(heard(withStem({ sound: 'still' }), 'bit')).toBeUndefined();
  });

  it('fall quiet with the returns, and sound dull when these are thick', () => {
    expect(heard(withReturns(0.5), 'water')!.level_frac).toBeLessThan(heard(withReturns(1), 'water')!.level_frac);
    expect(heard(withReturns(1, 1), 'water')!.pitch_Hz).toBeLessThan(heard(withReturns(1, 0), 'water')!.pitch_Hz);
    expect(heard(withReturns(0), 'water')).toBeUndefined();
  });

  it('let a dead engine sink to nothing, slowly and low', () => {
    const running = heard(withPump({ sound: 'steady', throttle_frac: 1 }), 'engine')!;
    const dead = heard(withPump({ sound: 'off', dead: true, throttle_frac: 0 }), 'engine')!;
    expect(dead.level_frac).toBe(0);
    expect(dead.pitch_Hz).toBeLessThan(running.pitch_Hz / 2);
    expect(dead.glide_s).toBeGreaterThan(running.glide_s * 5);
  });
});

describe('whether a run is heard', () => {
  const senses = { waiting: null };
  const going = { speed: 1, finished: false, driver: null, senses } as const;
  const waiting = { waiting: { until: 'time', left_s: 60 } };

  it('is not while the clock stands, nor after the end', () => {
    expect(isHeard(going)).toBe(true);
    expect(isHeard({ ...going, speed: 0 })).toBe(false);
    expect(isHeard({ ...going, finished: true })).toBe(false);
  });

  it('is during a wait, which runs by itself, but not while a crew stands', () => {
    expect(isHeard({ ...going, speed: 0, senses: waiting })).toBe(true);
    const crew = { decide: () => null, why: null } as unknown as NonNullable<Parameters<typeof isHeard>[0]['driver']>;
    expect(isHeard({ ...going, speed: 0, senses: waiting, driver: crew })).toBe(false);
  });
});
