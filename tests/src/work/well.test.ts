// The work screen on the way from the hole to the well: groups of hands by stage, senses in words, long waits in slices.
import { beforeAll, describe, expect, it } from 'vitest';
import { createRun, SEALS, sensesOf, type Run, type WellSenses } from '$sim';
import { lessonById, scenarioOf } from '$lessons';
import { Session } from '../../../src/app/session.svelte';
import { Desk } from '../../../src/hands/desk.svelte';
import { groupAt } from '../../../src/hands/well';
import { handsOffered, sensesOffered } from '../../../src/screens/work/offer';
import { wellReadingsOf, WELL_SENSE_IDS } from '../../../src/senses/wellReadings';
import { addMessages, hasMessage, say } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { packedAndSealed, setWell } from '../../setWell';

const lesson = lessonById('open-well')!;

beforeAll(() => addMessages(laterMessages));

const deskOf = (run: Run): Desk =>
  new Desk(new Session({ lesson, run, frames: { request: () => 1, cancel: () => undefined } }));
const groups = (run: Run): string[] => handsOffered(lesson, deskOf(run), false).map((set) => set.group);
const hands = (run: Run, group: string): string[] =>
  (handsOffered(lesson, deskOf(run), false).find((set) => set.group === group)?.hands ?? []).map((hand) => hand.id);

/** A run of the lesson in that state of the job. */
function lessonRun(job: 'drilling' | 'pullingOut', rods: number): Run {
  const run = createRun(scenarioOf(lesson, 7));
  run.state.machine = { ...run.state.machine, job, stem: rods === 0 ? 'out' : 'hanging' };
  run.state.stem.rods = rods;
  return run;
}

describe('the hands of a lesson with a well', () => {
  it('are those of drilling, with planning and joining, as long as it is drilled', () => {
    expect(groups(lessonRun('drilling', 3))).toEqual(['stem', 'pump', 'pit', 'fluid', 'tray', 'well', 'book']);
    expect(hands(lessonRun('drilling', 3), 'well')).toEqual(['planWell', 'joinCasing', 'stopDrilling']);
    expect(hands(lessonRun('drilling', 3), 'stem')).not.toContain('stopDrilling');
  });

  it('begin with pulling out when drilling is stopped', () => {
    const run = lessonRun('pullingOut', 3);
    expect(groups(run)[0]).toBe('well');
    expect(hands(run, 'well')[0]).toBe('pullOut');
  });

  it('follow the work once the rods are out: stem, pump and fluid step back, the pit stays while the hole is open', () => {
    expect(groups(lessonRun('pullingOut', 0))).toEqual(['well', 'annulus', 'water', 'finish', 'pit', 'book']);
    expect(groups(setWell())).toEqual(['well', 'annulus', 'water', 'finish', 'book']);
  });

  it('keep the bucket for the ring with the filling, once the pit has stepped back', () => {
    expect(hands(lessonRun('pullingOut', 0), 'annulus')).not.toContain('topUp');
    expect(hands(setWell(), 'annulus')).toContain('topUp');
  });

  it('offer to leave the rest to the crew in each group, but once where all groups are seen', () => {
    const leaving = { ...lesson, leaves: { crew: 'careful', from: 'sounded' } } as const;
    const run = lessonRun('pullingOut', 0);
    const desk = new Desk(new Session({ lesson: leaving, run, frames: { request: () => 1, cancel: () => undefined } }));
    const offered = (allSeen: boolean): string[] =>
      handsOffered(leaving, desk, allSeen)
        .filter((set) => set.hands.some((hand) => hand.id === 'leaveToCrew'))
        .map((set) => set.group);
    expect(offered(false)).toEqual(['well', 'annulus', 'water', 'finish']);
    expect(offered(true)).toEqual(['well']);
  });

  it('keep the naming of samples with the book', () => {
    expect(hands(setWell(), 'book')[0]).toBe('nameSample');
  });

  it('say a reason for everything that cannot be done yet', () => {
    for (const set of handsOffered(lesson, deskOf(lessonRun('pullingOut', 0)), false))
      for (const hand of set.hands)
        if (hand.form === 'button' && hand.whyNot) expect(hasMessage(hand.whyNot.key), hand.id).toBe(true);
    const finish = handsOffered(lesson, deskOf(lessonRun('pullingOut', 0)), false).find(
      (set) => set.group === 'finish',
    )!;
    expect(finish.hands.find((hand) => hand.id === 'disinfect')).toMatchObject({
      whyNot: { key: 'refusal.casingNotIn' },
    });
  });

  it('start a question at what was planned and offer only what there is', () => {
    const run = setWell({ plan: { pack: 'pack2', seal: 'cement' } });
    const desk = deskOf(run);
    const set = handsOffered(lesson, desk, false);
    expect(set.length).toBeGreaterThan(0);
    const plan = sensesOf(run).well!.plan!;
    expect(plan.pack).toBe('pack2');
  });
});

const well = (): WellSenses => sensesOf(setWell({ fill: packedAndSealed() })).well!;
const readings = (changes: Partial<WellSenses>, time_s = 7200) =>
  wellReadingsOf({ ...sensesOf(setWell()), time_s, well: { ...well(), ...changes } });

describe('the senses of a well', () => {
  it('replace those of drilling stage by stage', () => {
    expect(sensesOffered(lesson, 'drilling')).toContain('rope');
    expect(sensesOffered(lesson, 'open')).toEqual(['casing', 'returns', 'pit']);
    expect(sensesOffered(lesson, 'closed')).toEqual([...WELL_SENSE_IDS]);
  });

  it('have words for all they can say', () => {
    const { casing } = well();
    const states = [
      ...(['none', 'air', 'free', 'hung', 'floating', 'landed', 'set'] as const).map((look) => ({
        casing: { ...casing, look, snapped: look === 'hung' },
      })),
      ...(['none', 'clear', 'hazy', 'cloudy', 'muddy'] as const).flatMap((jar) =>
        (['none', 'few', 'some', 'many'] as const).map((sand) => ({ water: { jar, sand, time_s: 60 } })),
      ),
      { sounded: { top_m: 4.5, time_s: 600 } },
      { seals: [{ seal: 'cement' as const, volume_L: 12, since_s: 600, set: false }] },
      { seals: [{ seal: 'clay' as const, volume_L: 12, since_s: 600, set: true }] },
      { dip: { level_m: 3.2, time_s: 60 }, smellsOfChlorine: true },
      ...([null, 'tooDeep', 'ranDry', 'casingFolded'] as const).flatMap((refusal) =>
        [true, false].map((over) => ({
          test: {
            lift: 'suction' as const,
            rows: [{ time_s: 60, rate_Lmin: 10, level_m: 4 }],
            static_m: 3,
            lowest_m: 4,
            recovered_m: null,
            refusal,
            over,
          },
        })),
      ),
    ];
    for (const state of states as Partial<WellSenses>[])
      for (const { word, detail, sentence, more } of readings(state))
        for (const one of [word, detail, sentence, more]) {
          if (!one) continue;
          expect(hasMessage(one.key), one.key).toBe(true);
          expect(say(one.key, one.data)).not.toMatch(/[{}]|work\./);
        }
  });

  it('say how long the last seal still takes, as its kind takes', () => {
    const [seal] = readings({ seals: [{ seal: 'cement', volume_L: 12, since_s: 3600, set: false }] }).filter(
      (one) => one.id === 'seal',
    );
    expect(seal!.detail.data).toMatchObject({ left_s: SEALS.cement.ready_s - 3600 });
  });

  it('alarm where the casing hangs, floats or broke, and where a test was broken off', () => {
    const { casing } = well();
    const alarm = (changes: Partial<WellSenses>): string[] =>
      readings(changes).flatMap((one) => (one.alarming ? [one.id] : []));
    expect(alarm({})).toEqual([]);
    expect(alarm({ casing: { ...casing, look: 'hung' } })).toEqual(['casing']);
    expect(alarm({ casing: { ...casing, snapped: true } })).toEqual(['casing']);
  });

  it('lead the tabs along with the work', () => {
    const now = well();
    expect(groupAt({ ...now, casing: { ...now.casing, look: 'free' } })).toBe('well');
    expect(groupAt({ ...now, seals: [] })).toBe('annulus');
    const seals = [{ seal: 'clay' as const, volume_L: 5, since_s: 0, set: true }];
    expect(groupAt({ ...now, seals, poured: [{ fill: 'clay', volume_L: 5 }] })).toBe('water');
  });
});

describe('a wait of days', () => {
  it('runs in slices that leave the page alive, and ends at the time', () => {
    const run = setWell({ fill: packedAndSealed() });
    let now_ms = 0;
    const asked: ((now_ms: number) => void)[] = [];
    const frames = { request: (call: (now_ms: number) => void) => asked.push(call), cancel: () => undefined };
    // Each look at the watch costs a thousandth of a slice, so that a slice is so many ticks at most.
    const session = new Session({ lesson, run, frames, now_ms: () => (now_ms += 0.012) });
    const began = run.state.tick;
    expect(session.act('waitFor', { time_s: 259200 }).kind).toBe('done');
    let pictures = 0;
    while (run.state.wait && pictures < 1000) {
      asked.shift()?.(now_ms);
      pictures++;
    }
    expect(run.state.wait).toBeNull();
    expect(pictures).toBeGreaterThan(50);
    expect(run.state.tick - began).toBeGreaterThan(3600);
  });
});
