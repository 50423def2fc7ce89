// No lesson goes uncalibrated; what the bounds say is what was found.
import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CREWS, LESSONS, lessonById, scenarioOf } from '$lessons';
import { claimsOf, quantile } from '../../calibrate/bounds';
import type { CrewRun } from '../../calibrate/crewRuns';
import { calibrationText } from '../../calibrate/report';

const SCORES: Readonly<Record<string, number>> = { green: 30, steady: 70, careful: 95, other: 90, random: 10 };

/** Ten seeds on which all is as it should be. */
const fair = (change: (run: CrewRun) => Partial<CrewRun> = () => ({})): CrewRun[] =>
  CREWS.flatMap((crew) =>
    Array.from({ length: 10 }, (_, i) => {
      const run: CrewRun = {
        lesson: 'first-rods',
        crew,
        seed: i + 1,
        score: SCORES[crew]!,
        passed: ['careful', 'other', 'steady'].includes(crew),
        outcome: 'outcome.reached',
        ticks: 3600,
        time_s: 1,
        acts: 100,
        refused: 10,
        lost: 0,
        yield_Lmin: 0,
        leak_d: 0,
        sand_mgL: null,
        reproduced: true,
        happened: [],
      };
      return { ...run, ...change(run) };
    }),
  );
const failing = (runs: CrewRun[]): string[] =>
  claimsOf(lessonById('first-rods')!, runs)
    .filter(({ holds }) => !holds)
    .map(({ text }) => text);

test('every lesson has its calibration among the tests', () => {
  for (const { id } of LESSONS) expect([id, existsSync(`tests/lessons/calibration/${id}.test.ts`)]).toEqual([id, true]);
});

test.each([
  [
    'careful low on two of ten',
    (r: CrewRun) => (r.crew === 'careful' && r.seed < 3 ? { score: 84 } : {}),
    'careful has',
  ],
  [
    'careful fails once',
    (r: CrewRun) => (r.crew === 'careful' && r.seed === 7 ? { passed: false } : {}),
    'careful passes',
  ],
  ['other far off', (r: CrewRun) => (r.crew === 'other' ? { score: 84 } : {}), 'other'],
  ['steady too good', (r: CrewRun) => (r.crew === 'steady' ? { score: 86 } : {}), 'steady'],
  ['green too good', (r: CrewRun) => (r.crew === 'green' ? { score: 46 } : {}), "green's"],
  ['random too good', (r: CrewRun) => (r.crew === 'random' ? { score: 31 } : {}), "random's"],
  ['green passes once', (r: CrewRun) => (r.crew === 'green' && r.seed === 1 ? { passed: true } : {}), 'neither'],
  [
    'a run without an end',
    (r: CrewRun) => (r.crew === 'green' && r.seed === 1 ? { outcome: 'outcome.timeUp' } : {}),
    '49 of 50 end',
  ],
  ['acts of chance refused', (r: CrewRun) => (r.crew === 'random' ? { refused: 51 } : {}), 'of 1000 acts'],
  ['a run that differs', (r: CrewRun) => (r.seed === 3 ? { reproduced: false } : {}), '45 of 50 are'],
  ['water lost', (r: CrewRun) => (r.seed === 3 ? { lost: 2e-9 } : {}), 'at most'],
])('%s is told, and nothing else', (_name, change, said) => {
  const found = failing(fair(change));
  expect(found).toHaveLength(1);
  expect(found[0]!.startsWith(said)).toBe(true);
});

test('all as it should be fails nothing; quartiles are those of the textbook', () => {
  expect(failing(fair())).toEqual([]);
  expect([0, 0.25, 0.5, 1].map((share) => quantile([4, 1, 3, 2, 5], share))).toEqual([1, 2, 3, 5]);
  expect(quantile([1, 2], 0.5)).toBe(1.5);
});

test('the report keeps lessons not played again and drops those that are no more', () => {
  const report = { lesson: 'b', seeds: 10, madeWith: 'model 1', runs: fair(), claims: [{ text: 'low', holds: false }] };
  const first = calibrationText('# Calibration\n\n## a\n\nold a\n\n## gone\n\nold\n', [report], ['a', 'b']);
  expect(first).toContain('## a\n\nold a\n\n## b\n');
  expect(first).not.toContain('gone');
  expect(first).toContain('- FAILS: low');
  expect(first).toMatch(/\| careful \| 95\.0 \| 95\.0 \| 95\.0 \| 95\.0 \| 95\.0 \| 10\/10 \|/);
});

test('open-well: over 200 seeds there are 4 m of medium sand and coarser below the lowest water and above 15 m, and fresh water in it', () => {
  const openWell = lessonById('open-well')!;
  for (let seed = 0; seed < 200; seed++) {
    const { ground } = scenarioOf(openWell, seed);
    const coarse = ground.layers.filter(({ kind }) => kind === 'mediumSand' || kind === 'coarseSand');
    const top_m = Math.max(ground.lowestWater_m, coarse[0]!.top_m);
    const bottom_m = Math.min(15, coarse.at(-1)!.bottom_m);
    expect([seed, bottom_m - top_m >= 4]).toEqual([seed, true]);
    const saltFrom_m = ground.salinity.find(({ salt_gL }) => salt_gL > 1)?.from_m ?? Infinity;
    expect(saltFrom_m).toBeGreaterThan(15);
    expect(ground.depth_m).toBeGreaterThan(openWell.opening.maxDepth_m);
  }
});
