// The practice open-hole: crews drill whole holes, end by an act whatever the ground and the stocks, and the run file makes each again.

import { expect, test } from 'vitest';
import { act, createRun, sensesOf, step, type Opening } from '$sim';
import {
  askedOf,
  checkLesson,
  createCrew,
  isScored,
  jobOf,
  LESSONS,
  lessonById,
  lessonOf,
  outcomeOf,
  playCrew,
  playOn,
  practiceFor,
  PRACTICES,
  PracticeSchema,
  readRunFile,
  replayFile,
  runFileOf,
  scenarioOf,
  USUAL_ASKED,
  type Lesson,
  type RunFile,
  WORKING_CREWS,
} from '$lessons';
import { safeParse } from 'valibot';
import { drilled, holes } from './openHole';

const short = practiceFor('open-hole', { depth_m: 6, setting: 'coastal' })!;

test('24 whole holes of 10 to 15 m: all end by an act, nothing is lost, run file and snapshot make them again', () => {
  const results = holes(24).map((hole) => ({ ...hole, ...drilled(hole) }));
  for (const { crew, asked, seed, byAct, lost, reproduced, restored } of results) {
    const found = { crew, asked, seed, byAct, kept: lost <= 1e-9, reproduced, restored };
    expect(found).toEqual({ crew, asked, seed, byAct: true, kept: true, reproduced: true, restored: true });
  }
  const deep = results.filter(({ outcome }) => outcome === 'outcome.depthReached');
  for (const { depth_m, asked } of deep) expect(depth_m).toBeGreaterThanOrEqual(asked.depth_m);
  // Sand and silt let every crew through; gravel and rock stop some holes.
  for (const crew of ['green', 'steady', 'careful'])
    expect(deep.filter((hole) => hole.crew === crew).length).toBeGreaterThan(0);
}, 360000);

test('practices stand in a list of their own, fit their form, have no score, and are found by their id', () => {
  expect(PRACTICES.map(({ id }) => id)).toEqual(['open-hole']);
  for (const practice of PRACTICES) {
    expect(safeParse(PracticeSchema, practice).success).toBe(true);
    expect(checkLesson(practice).ok).toBe(false);
    expect([isScored(practice), LESSONS.includes(practice)]).toEqual([false, false]);
    expect(lessonById(practice.id)).toBe(practice);
    expect(askedOf(practice)).toEqual(USUAL_ASKED);
  }
  for (const lesson of LESSONS) expect([isScored(lesson), askedOf(lesson)]).toEqual([true, null]);
  expect(practiceFor('toString', USUAL_ASKED)).toBeNull();
});

test.each([3, 10, 20, 40])('%d m: grid, rods and stocks are made for the depth', (depth_m) => {
  const { kit, opening, end, ground } = practiceFor('open-hole', { depth_m, setting: 'delta' })!;
  expect(depth_m / kit.dz_m!).toBeGreaterThanOrEqual(41);
  expect(kit.dz_m).toBeLessThanOrEqual(0.25);
  expect(opening.rodsInAll * 1.5).toBeGreaterThan(depth_m);
  expect(opening.maxDepth_m).toBeGreaterThan(depth_m);
  expect(opening.petrol_L).toBeGreaterThan((1.2 * end.cap_s) / 3600);
  expect(end).toMatchObject({ depth_m, cap_s: 14 * 3600 });
  expect(ground).toEqual({ by: 'setting', setting: 'delta' });
});

/** The practice with other stocks or another ground. */
const changed = (opening: Partial<Opening>, ground: Lesson['ground'] = short.ground): Lesson => ({
  ...short,
  ground,
  opening: { ...short.opening, ...opening },
});
const only = (kind: 'cobbles' | 'stiffClay'): Lesson['ground'] => ({
  by: 'recipe',
  recipes: [
    {
      layers: [
        { kind: 'fineSand', thickness_m: [2, 2] },
        { kind, thickness_m: [20, 20] },
      ],
      waterTable_m: [1, 1],
    },
  ],
});

test.each([
  ['no petrol', changed({ petrol_L: 0 }), 'outcome.stoppedShort'],
  ['petrol for ten minutes', changed({ petrol_L: 0.2 }), 'outcome.stoppedShort'],
  ['a pit a quarter full and no water', changed({ pit_L: 250, water_L: 0 }), 'outcome.givenUp'],
  ['two rods', changed({ rodsInAll: 2 }), 'outcome.stoppedShort'],
  ['cobbles', changed({}, only('cobbles')), 'outcome.givenUp'],
  ['no powder', changed({ powder_kg: 0 }), 'outcome.depthReached'],
  ['stiff clay', changed({}, only('stiffClay')), 'outcome.depthReached'],
])('%s: every crew ends by an act, in its time', (_name, practice, outcome) => {
  for (const crew of WORKING_CREWS) {
    const run = playOn(createRun(scenarioOf(practice, 2)), practice, createCrew(crew, jobOf(practice)));
    expect([crew, outcomeOf(run, practice).key]).toEqual([crew, outcome]);
  }
});

test('a shut strainer is cleared with the flow stopped, and the pump keeps its water', () => {
  for (const crew of ['steady', 'careful']) {
    const run = createRun(scenarioOf(short, 2));
    run.state.pit.blockage_frac = 0.8;
    playOn(run, short, createCrew(crew, jobOf(short)));
    expect([crew, run.log.some(([tick, action]) => action === 'clearStrainer' && tick < 3600)]).toEqual([crew, true]);
    expect(run.record.events.filter(({ name }) => name === 'primeLost')).toEqual([]);
    expect(outcomeOf(run, short).key).toBe('outcome.depthReached');
  }
});

test('a stuck stem is worked with the flow on until it comes free; the green crew may lose patience', () => {
  for (const crew of WORKING_CREWS) {
    const run = createRun(scenarioOf(short, 2));
    const player = createCrew(crew, jobOf(short));
    while (run.state.hole.depth_m < 3) {
      const deed = player.decide(sensesOf(run));
      if (deed !== null) act(run, deed.action, deed.payload);
      step(run);
    }
    // Coarse gravel as if a wall had fallen in, most of a metre round the bit: the stream cannot carry it off.
    run.state.hole.bed_m3[7]! += 0.0036;
    playOn(run, short, player);
    expect([crew, run.record.events.some(({ name }) => name === 'stuck')]).toEqual([crew, true]);
    expect([crew, run.log.some(([, action]) => action === 'workStem')]).toEqual([crew, true]);
    const freed = run.record.events.some(({ name }) => name === 'freed');
    if (crew !== 'green') expect([crew, freed]).toEqual([crew, true]);
    // What it was buried in lies under the bit again: the hole is given up or goes on, by an act.
    expect(['pullingOut', 'abandoned']).toContain(run.state.machine.job);
  }
});

test('the run file carries what was asked; with another depth or setting it is not the same run', () => {
  const run = playCrew(short, 'green', 3);
  const file = JSON.parse(JSON.stringify(runFileOf(run, short))) as RunFile;
  expect(file).toMatchObject({ asked: { depth_m: 6, setting: 'coastal' }, claimed: { score: null }, finished: true });
  expect(lessonOf(file)).toEqual(short);
  expect(readRunFile(JSON.stringify(file))).toMatchObject({ ok: true });
  expect(replayFile(file)).toMatchObject({ reproduced: true, hash: file.hash, score: null });
  const problemOf = (change: Partial<RunFile>) => replayFile({ ...file, ...change }).problem?.problem;
  expect(problemOf({ asked: { depth_m: 6, setting: 'delta' } })).toBe('problem.file.otherGround');
  expect(problemOf({ asked: { depth_m: 7, setting: 'coastal' } })).toBe('problem.file.otherHash');
  const fieldOf = (change: object) => readRunFile(JSON.stringify({ ...file, ...change }));
  const bad = (field: string) => ({ ok: false, problem: 'problem.file.badField', data: { field } });
  expect(fieldOf({ asked: undefined })).toEqual(bad('asked'));
  expect(fieldOf({ asked: { depth_m: 2, setting: 'coastal' } })).toEqual(bad('asked.depth_m'));
  expect(fieldOf({ asked: { depth_m: 6, setting: 'moon' } })).toEqual(bad('asked.setting'));
  expect(fieldOf({ claimed: { score: 50 } })).toEqual(bad('claimed.score'));
  expect(fieldOf({ lesson: 'first-rods' })).toEqual(bad('asked'));
  expect(fieldOf({ lesson: 'first-rods', asked: undefined })).toEqual(bad('claimed.score'));
});

test('on a bare site the crew digs and fills the pit first, night falls, and a hole given up is followed by another', () => {
  const bare = practiceFor('open-hole', { depth_m: 6, setting: 'coastal', bare: true })!;
  expect(askedOf(bare)).toEqual({ depth_m: 6, setting: 'coastal', bare: true });
  expect(safeParse(PracticeSchema, bare).success).toBe(true);
  const run = createRun(scenarioOf(bare, 3));
  const on = (ticks: number): void => {
    for (let i = 0; i < ticks; i++) step(run);
  };
  expect(act(run, 'fillPit', { water_L: 500 })).toEqual({ kind: 'refused', reason: 'noPit' });
  expect(act(run, 'setOut', { settling_m3: 0.5, suction_m3: 0.5, channel_m: 1.5 }).kind).toBe('done');
  on(4000);
  expect(act(run, 'fillPit', { water_L: 900 }).kind).toBe('done');
  on(500);
  expect(act(run, 'abandon', { move: true }).kind).toBe('done');
  on(5000);
  expect(sensesOf(run).hole).toBe(2);
  while (sensesOf(run).light_s! > 0) step(run);
  expect(act(run, 'prime', {})).toEqual({ kind: 'refused', reason: 'dark' });
  const file = JSON.parse(JSON.stringify(runFileOf(run, bare))) as RunFile;
  expect(file.asked).toEqual({ depth_m: 6, setting: 'coastal', bare: true });
  expect(readRunFile(JSON.stringify(file))).toMatchObject({ ok: true });
  expect(replayFile(file).reproduced).toBe(true);
});
