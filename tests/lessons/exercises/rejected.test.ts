// Exercises that cannot be done, each for a reason of its own, and such as are too easy: the examiner turns them away and says why.
import { describe, expect, test } from 'vitest';
import { atOnce, linting, type Finding, type LintReport } from '$lessons';
import { exerciseIn, namesIn } from './files';

/** What is wrong: key and field of each sentence that names the reason. */
type Reasons = readonly (readonly [Finding['key'], string])[];

const UNSOLVABLE: Readonly<Record<string, Reasons>> = {
  'no-water': [['lint.way.noPrime', 'stocks.pit_L']],
  'rock-above-goal': [['lint.way.hard', 'ground.layers.3']],
  'no-time': [['lint.way.time', 'cap_s']],
  'no-sand': [
    ['lint.way.noSand', 'ground'],
    ['lint.well.poor', 'ground'],
  ],
  'sand-below-rods': [
    ['lint.way.rods', 'depth_m'],
    ['lint.well.poor', 'ground'],
  ],
  'no-powder': [
    ['lint.way.water', 'stocks.water_L'],
    ['lint.way.powder', 'stocks.powder_kg'],
  ],
  'too-dear': [
    ['lint.careful.points', 'pass_points'],
    ['lint.item.loses', 'weights.withinBudget'],
  ],
  'crew-before-stops': [['lint.before.never', 'ground']],
};

const TRIVIAL: Readonly<Record<string, readonly Finding['key'][]>> = {
  'depth-alone': ['lint.green.passes'],
  'few-points': ['lint.green.passes'],
  'ended-at-once': ['lint.green.passes', 'lint.hasty.passes'],
};

/** Said of each exercise that is unsolvable. */
const ALWAYS: readonly string[] = ['lint.careful.fails', 'lint.end.missing'];

const examine = (path: string): LintReport => atOnce(linting(exerciseIn(path), { grounds: 1 }));
const wrong = ({ findings }: LintReport): Finding[] => findings.filter(({ level }) => level === 'wrong');

test('every file has its reason here', () => {
  expect(namesIn('unsolvable').sort()).toEqual(Object.keys(UNSOLVABLE).sort());
  expect(namesIn('trivial').sort()).toEqual(Object.keys(TRIVIAL).sort());
});

describe('cannot be done', () => {
  test.each(Object.entries(UNSOLVABLE))('%s', { timeout: 120_000 }, (name, reasons) => {
    const report = examine(`unsolvable/${name}`);
    expect(report.fit).toBe(false);
    const said = wrong(report).filter(({ key }) => !ALWAYS.includes(key));
    expect(said.map(({ key, field }) => [key, field])).toEqual(reasons);
  });
});

describe('is too easy', () => {
  test.each(Object.entries(TRIVIAL))('%s', { timeout: 120_000 }, (name, keys) => {
    const report = examine(`trivial/${name}`);
    expect(report.fit).toBe(false);
    expect(wrong(report).map(({ key }) => key)).toEqual(keys);
    expect(report.findings).toContainEqual(expect.objectContaining({ level: 'good', key: 'lint.careful.passes' }));
  });
});
