// What the examiner says of faults, ends, senses, budgets, versions and pools.
import { describe, expect, test } from 'vitest';
import { SIM_VERSION } from '$sim';
import {
  atOnce,
  format,
  linting,
  newExercise,
  type Exercise,
  type Finding,
  type LessonFault,
  type LintReport,
} from '$lessons';

const examine = (lesson: Exercise['lesson'], change: Partial<Exercise>, grounds = 1): LintReport =>
  atOnce(linting({ ...newExercise(lesson, 'exercise-lint', 'A test'), ...change }, { grounds }));

/** Level and key of each sentence about a field. */
const about = ({ findings }: LintReport, field: string): string[] =>
  findings.filter((one) => one.field === field).map(({ level, key }) => `${level} ${key}`);

const at = (depth_m: number) => ({ from: { depth_m }, to: { depth_m } });
const when = (time_s: number) => ({ from: { time_s }, to: { time_s } });
const salt = (depth_m: number): LessonFault => ({
  id: 'saltyLayer',
  ...at(depth_m),
  thickness_m: [2, 2],
  salt_gL: [20, 20],
});

describe('faults', () => {
  const said = (lesson: Exercise['lesson'], faults: LessonFault[], change: Partial<Exercise> = {}): string[][] => {
    const report = examine(lesson, { ...change, faults });
    return faults.map((_, i) => about(report, `faults.${i}`));
  };

  test('of every sort are noticed within a minute of being met, or by who tries the fluid', () => {
    const faults: LessonFault[] = [
      { id: 'pumpStops', ...at(1.2) },
      { id: 'hoseBursts', ...at(1.8) },
      { id: 'rainFills', ...at(2.2) },
      { id: 'helperAway', ...at(2.7), time_s: [300, 300] },
      { id: 'lostTool', ...at(3.3) },
      { id: 'weakPowder', ...when(0), share_frac: [0.3, 0.3] },
      salt(2),
    ];
    const shows = ['good lint.fault.shows'];
    expect(said('first-rods', faults)).toEqual([...Array(6).fill(shows), ['good lint.fault.tried']]);
  });

  test('that are cobbles stop the hole: noticed, and wrong where the hole is to go deeper', () => {
    const report = examine('first-rods', { faults: [{ id: 'cobbles', ...at(3), thickness_m: [0.2, 0.2] }] });
    expect(about(report, 'faults.0')).toEqual(['wrong lint.way.cobbles', 'good lint.fault.shows']);
  });

  test('that never come, or find no place, are a warning', () => {
    const faults: LessonFault[] = [
      { id: 'pumpStops', ...at(9) },
      { id: 'rainFills', ...when(100_000) },
      salt(5.5),
      { id: 'cobbles', ...at(59), thickness_m: [1, 1] },
    ];
    const never = ['warning lint.fault.never'];
    expect(said('first-rods', faults)).toEqual([never, never, never, ['warning lint.fault.noRoom']]);
  });

  test('that come on some grounds only are a warning', () => {
    // By the seed before or after the end of the hole.
    const faults: LessonFault[] = [{ id: 'pumpStops', from: { depth_m: 3 }, to: { depth_m: 7 } }];
    expect(about(examine('first-rods', { faults }, 4), 'faults.0')).toEqual([
      'warning lint.fault.some',
      'good lint.fault.shows',
    ]);
  });

  test('that nobody can notice are wrong', () => {
    // More rain while it rains, and powder that goes weak when none is mixed any more.
    const rain = { id: 'rainFills', rain_mmh: [60, 60], time_s: [1200, 1200] } as const;
    const faults = [
      { ...rain, ...when(900), time_s: [1200, 1200] },
      { ...rain, ...when(1000), time_s: [600, 600] },
      { id: 'weakPowder', ...at(4.3) },
    ] as LessonFault[];
    expect(said('first-rods', faults)).toEqual([
      ['good lint.fault.shows'],
      ['wrong lint.fault.silent'],
      ['wrong lint.fault.silent'],
    ]);
  });

  test('whose senses are off are a warning', () => {
    const faults: LessonFault[] = [{ id: 'weakPowder', ...when(0), share_frac: [0.3, 0.3] }];
    expect(said('slick-fluid', faults)).toEqual([['good lint.fault.shows']]);
    const senses: Exercise['senses'] = ['returns', 'tray', 'stem', 'pump', 'pit', 'clock'];
    expect(said('slick-fluid', faults, { senses, gauges: [] })).toEqual([['warning lint.fault.hidden']]);
  });

  test('that come before the learner does are a warning that says when the learner comes', () => {
    const faults: LessonFault[] = [
      { id: 'hoseBursts', ...at(2) },
      { id: 'hoseBursts', ...at(6) },
    ];
    const report = examine('deep-enough', { faults });
    expect(about(report, 'faults.0')).toEqual(['warning lint.fault.before']);
    expect(about(report, 'faults.1')).toEqual(['good lint.fault.shows']);
    const [before] = report.findings.filter(({ key }) => key === 'lint.fault.before');
    expect(before!.data.begin_min).toBeGreaterThan(60);
    expect(format(before!.key, before!.data)).toContain('the hose bursts');
  });

  test('that come when all is over are a warning', () => {
    const after = { event: 'drillingStopped', delay_s: 60 } as const;
    expect(said('blind-well', [{ id: 'lostTool', from: after, to: after }])).toEqual([['warning lint.fault.unmet']]);
  });
});

describe('warnings', () => {
  const keys = (findings: readonly Finding[]): string[] =>
    findings.filter(({ level }) => level === 'warning').map(({ key }) => key);

  test('of what is judged and cannot be known', () => {
    const { findings, fit } = examine('first-rods', { senses: ['returns', 'stem', 'pump', 'pit', 'clock'] });
    const off = findings.filter(({ key }) => key === 'lint.sense.off').map(({ data }) => data.item);
    expect(off).toEqual(['item.sampleEachRod', 'item.labelsTrue', 'item.namedRight', 'item.doseFits']);
    expect(fit).toBe(true);
  });

  test('of a budget below what the careful crew spends, and of one that nobody judges', () => {
    expect(keys(examine('first-rods', { budget_marks: 10 }).findings)).toEqual([
      'lint.budget.notJudged',
      'lint.budget.below',
    ]);
    expect(keys(examine('first-rods', { budget_marks: 40 }).findings)).toEqual(['lint.budget.notJudged']);
  });

  test('of another version, of a pool of another version, of one that lies apart', () => {
    const pool = { sim: '0.0.1', seeds: [3], spread_points: 6 };
    const { findings, seeds } = examine('round-the-loop', { sim: '0.0.1', pool });
    expect(keys(findings)).toEqual(['lint.otherVersion', 'lint.pool.otherVersion', 'lint.pool.wide']);
    expect(seeds).toEqual([3]);
  });

  test('of grounds that are not equally hard, where there is no pool', () => {
    const { findings, careful_points } = examine('slick-fluid', { id: 'exercise-test' }, 4);
    expect(Math.max(...careful_points) - Math.min(...careful_points)).toBeGreaterThan(5);
    expect(keys(findings)).toEqual(['lint.pool.none']);
  });
});

describe('grounds', () => {
  const pool = { sim: SIM_VERSION, seeds: [30, 31, 32, 33, 34, 35, 36, 37], spread_points: 0 };

  test('of a pool lie apart in it', () => {
    expect(examine('round-the-loop', { pool }, 4).seeds).toEqual([30, 32, 34, 36]);
    expect(examine('round-the-loop', { pool: { ...pool, seeds: [7] } }, 4).seeds).toEqual([7]);
  });

  test('that the careful crew fails on are wrong in a pool, elsewhere a warning while they are few', () => {
    // So strict that chance decides: some grounds earn all, some do not.
    const strict = { pass_points: 100, cap_s: 10800 };
    const open = examine('full-pit', strict, 4);
    const passed = open.careful_points.filter((points) => points >= 100).length;
    expect(passed).toBeGreaterThan(0);
    expect(passed).toBeLessThan(4);
    const some = open.findings.find(({ key }) => key === 'lint.careful.some')!;
    expect([some.level, some.data]).toEqual([passed < 2 ? 'wrong' : 'warning', { passed, n: 4 }]);
    const pooled = examine('full-pit', { ...strict, pool: { ...pool, seeds: open.seeds as number[] } }, 4);
    expect(pooled.fit).toBe(false);
    expect(about(pooled, 'pool.seeds')).toEqual(['wrong lint.careful.some.pool']);
  });
});

test('a sentence of the rubric goes on from what it belongs to', () => {
  const { findings } = examine('first-rods', { bands: { jobTime: { full_s: 10, none_s: 20 } }, pass_points: 99 });
  const lost = findings.find(({ key }) => key === 'lint.item.loses')!;
  expect(format(lost.key, lost.data)).toBe('Here it loses 6 of 6 points: Time on the job.');
  expect(format(lost.because!.key, lost.because!.data)).toMatch(/^The job took \d+ minutes/);
});
