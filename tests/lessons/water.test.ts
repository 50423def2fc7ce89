// What the crews make of ground that drinks and walls that fall: the dose, the level, short stops, lost returns, and which crew fares best.

import { beforeAll, expect, test } from 'vitest';
import { act, createRun, sensesOf, SETTINGS, step, type Run } from '$sim';
import {
  createCrew,
  jobOf,
  outcomeOf,
  playCrew,
  practiceFor,
  scenarioOf,
  type Crew,
  type Lesson,
  WORKING_CREWS,
} from '$lessons';
import { advance, countOf, layer, practiceOn } from './ownGround';

/** Fine sand all the way, the water table deep enough for the ground to drink. */
const sand = practiceOn([layer('fineSand', 40)], 15, 3);
/** Medium sand: the level sinks as soon as the flow stands. */
const thirsty = practiceOn([layer('mediumSand', 40)], 15, 3);
/** Open gravel under sand and a deep water table: no powder brings the returns back for long. */
const gravel = practiceOn([layer('siltySand', 4), layer('coarseSand', 3), layer('coarseGravel', 30)], 15, 6);

const WORKING_gL = 1.3;
const PIT_L = 940;

let drilled: Run;
beforeAll(() => {
  drilled = advance(sand, 'careful').run;
}, 120000);

test('careful keeps the dose: powder goes in with all the water that is added', () => {
  const added_L = sand.opening.water_L - drilled.state.stocks.water_L;
  const powder_g = (sand.opening.powder_kg - drilled.state.stocks.powder_kg) * 1000;
  expect(added_L).toBeGreaterThan(200);
  expect(powder_g / (PIT_L + added_L)).toBeGreaterThan(0.9 * WORKING_gL);
  expect(powder_g / (PIT_L + added_L)).toBeLessThan(1.2 * WORKING_gL);
  expect(drilled.work.hole.soaked_gL).toBeGreaterThan(0.7 * WORKING_gL);
  expect(outcomeOf(drilled, sand).key).toBe('outcome.depthReached');
});

test('careful keeps stops short: the flow stands no longer than a rod takes and a few seconds', () => {
  const stops_s = (run: Run): number[] => {
    const { events } = run.record;
    return events.flatMap((event, i) => {
      if (event.name !== 'flowStopped') return [];
      const on = events.slice(i).find(({ name }) => name === 'flowStarted');
      return on === undefined ? [] : [on.tick - event.tick];
    });
  };
  const own = stops_s(drilled);
  expect(own.length).toBeGreaterThan(8);
  expect(Math.max(...own)).toBeLessThanOrEqual(100);
});

/** Careful drills down to 5 m; then the pump loses its water, and the named crew has the hole for five minutes. */
function dryPump(crewName: string): { readonly topped: number; readonly mean_m: number } {
  const run = createRun(scenarioOf(thirsty, 1));
  const careful = createCrew('careful', jobOf(thirsty));
  const on = (crew: Crew): void => {
    const deed = crew.decide(sensesOf(run));
    if (deed !== null) act(run, deed.action, deed.payload);
    step(run);
  };
  while (run.state.hole.depth_m < 5 || run.state.pump.flow_m3s === 0) on(careful);
  run.state.machine.pump = 'starved';
  run.state.pump.primed = false;
  const before = run.log.length;
  const crew = crewName === 'careful' ? careful : createCrew(crewName, jobOf(thirsty));
  let sum_m = 0;
  for (let i = 0; i < 300; i++) {
    on(crew);
    sum_m += run.work.loss.level_m;
  }
  return { topped: run.log.slice(before).filter(([, action]) => action === 'topUp').length, mean_m: sum_m / 300 };
}

test('while the pump is without water the careful crew tops the hole up, the green one does not', () => {
  const careful = dryPump('careful');
  const green = dryPump('green');
  expect(careful.topped).toBeGreaterThan(0);
  expect(green.topped).toBe(0);
  expect(careful.mean_m).toBeLessThan(green.mean_m / 2);
}, 60000);

test('where returns are lost again and again, or the gravel refuses the bit, careful gives up in good order: powder tried, stem free, pump with its water', () => {
  const run = advance(gravel, 'careful').run;
  expect(outcomeOf(run, gravel).key).toBe('outcome.givenUp');
  expect([countOf(run, 'stuck'), countOf(run, 'primeLost')]).toEqual([0, 0]);
  expect(run.state.stem.bit_m).toBeLessThan(run.state.hole.depth_m - 0.15);
  expect(run.state.stem.turning).toBe(false);
  expect(run.state.pump.throttle_frac).toBe(0);
  const powder_g = (gravel.opening.powder_kg - run.state.stocks.powder_kg) * 1000;
  expect(powder_g).toBeGreaterThan(1.5 * PIT_L);
}, 60000);

interface Tally {
  deep: number;
  stuck: number;
  buried: number;
  primeLost: number;
  fallen_L: number;
}

function tally(crew: string, practices: readonly Lesson[]): Tally {
  const sum: Tally = { deep: 0, stuck: 0, buried: 0, primeLost: 0, fallen_L: 0 };
  for (const practice of practices) {
    const run = playCrew(practice, crew, 1);
    if (outcomeOf(run, practice).key === 'outcome.depthReached') sum.deep++;
    for (const name of ['stuck', 'buried', 'primeLost'] as const) sum[name] += countOf(run, name);
    for (const taken_m3 of run.state.wall.taken_m3) sum.fallen_L += taken_m3 * 1000;
  }
  return sum;
}

test('over the six settings careful is best and green is worst: stuck, buried, prime lost, fallen soil, depth', () => {
  const practices = SETTINGS.map((setting) => practiceFor('open-hole', { depth_m: 15, setting })!);
  const [green, steady, careful] = ['green', 'steady', 'careful'].map((crew) => tally(crew, practices)) as [
    Tally,
    Tally,
    Tally,
  ];
  const mishaps = ({ stuck, buried, primeLost }: Tally): number => stuck + buried + primeLost;
  expect([careful.stuck, careful.primeLost]).toEqual([0, 0]);
  expect(mishaps(careful)).toBeLessThan(mishaps(steady));
  expect(mishaps(steady)).toBeLessThan(mishaps(green));
  expect(careful.fallen_L).toBeLessThan(green.fallen_L / 2);
  expect(careful.deep).toBeGreaterThan(green.deep);
  expect(careful.deep).toBeGreaterThanOrEqual(steady.deep);
}, 240000);

test('on a bare site every crew digs and fills its pit, and no hole stands open overnight', () => {
  const bare = practiceFor('open-hole', { depth_m: 8, setting: 'delta', bare: true })!;
  for (const crew of WORKING_CREWS) {
    const run = playCrew(bare, crew, 2);
    const acts = run.log.map(([, action]) => action);
    expect([crew, acts.includes('setOut'), acts.includes('fillPit')]).toEqual([crew, true, true]);
    expect([crew, outcomeOf(run, bare).key, countOf(run, 'nightfall')]).toEqual([crew, 'outcome.depthReached', 0]);
  }
  // Twelve hours of stiff clay do not fit into a day: the job ends before dark.
  const clay: Lesson = { ...bare, ground: practiceOn([layer('stiffClay', 40)], 8, 2).ground };
  for (const crew of WORKING_CREWS) {
    const run = playCrew(clay, crew, 2);
    expect([crew, outcomeOf(run, clay).key, countOf(run, 'nightfall')]).toEqual([crew, 'outcome.stoppedShort', 0]);
  }
}, 120000);
