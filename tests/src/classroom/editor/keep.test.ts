// What is kept of an exercise being changed, when its edition grows, when its grounds and what crews found no longer hold; copies; problems in words.
import { beforeEach, describe, expect, test } from 'vitest';
import { SIM_VERSION } from '../../../../sim/index';
import type { Exercise, LintReport } from '../../../../lessons/index';
import { device } from '../../../../src/app/device.svelte';
import type { KeptExercise } from '../../../../src/app/records';
import { memoryStorage } from '../../../../src/app/storage';
import { copyOf } from '../../../../src/classroom/editor/copy';
import { Draft } from '../../../../src/classroom/editor/draft.svelte';
import { checkedOf, keptWith, reportFor, withTruePool } from '../../../../src/classroom/editor/keep';
import { mendsOf } from '../../../../src/classroom/editor/problems';
import { standOf } from '../../../../src/classroom/editor/stand';
import { withAt } from '../../../../src/classroom/editor/paths';
import { editor } from '../../../../src/words/en/editor';
import { fresh, full, wrongFields } from './made';

const keptOf = (exercise: Exercise, more: Partial<KeptExercise> = {}): KeptExercise => ({
  id: exercise.id,
  exercise,
  saved_ms: 1,
  own: true,
  classCode: 'A1',
  ...more,
});
const POOL: Exercise['pool'] = { sim: SIM_VERSION, seeds: [3, 5, 8], spread_points: 2 };

describe('what is kept', () => {
  test('is the change, where it is sound', () => {
    const kept = keptWith(keptOf(full), { ...full, title: 'Another' }, 9);
    expect(kept).toEqual({ ...keptOf({ ...full, title: 'Another' }), saved_ms: 9 });
  });

  test('else is a draft beside the last that was sound, until it is sound again', () => {
    const bad = withAt(full, 'ground.waterTable_m', Number.NaN);
    const kept = keptWith(keptOf(full), bad, 9);
    expect(kept.exercise).toBe(full);
    expect(kept.draft).toBe(bad);
    const mended = keptWith(kept, withAt(bad, 'ground.waterTable_m', 4), 10);
    expect('draft' in mended).toBe(false);
    expect(mended.exercise.ground).toMatchObject({ waterTable_m: 4 });
  });

  test('an edition that was given out changes in its words only; the next change makes a new one and keeps the old', () => {
    const given = keptOf({ ...full, edition: 2 }, { given: 2 });
    const words = keptWith(given, { ...full, title: 'Better' }, 9);
    expect([words.exercise.edition, words.earlier]).toEqual([2, undefined]);
    const pass = keptWith(words, { ...words.exercise, pass_points: 60 }, 10);
    expect([pass.exercise.edition, pass.earlier?.map((one) => one.edition), pass.given]).toEqual([3, [2], 2]);
    const more = keptWith(pass, { ...pass.exercise, pass_points: 50 }, 11);
    expect([more.exercise.edition, more.earlier?.length]).toEqual([3, 1]);
    const back = keptWith(more, { ...more.exercise, pass_points: full.pass_points }, 12);
    expect([back.exercise.edition, back.earlier]).toEqual([2, undefined]);
  });

  test('other grounds for the class make a new edition too: they decide who gets which', () => {
    const given = keptOf({ ...full, pool: POOL }, { given: 1 });
    const kept = keptWith(given, { ...full, pool: { ...POOL!, seeds: [1, 2] } }, 9);
    expect([kept.exercise.edition, kept.earlier?.length]).toEqual([2, 1]);
  });

  test('before it is given out it stays the first edition', () => {
    expect(keptWith(keptOf(full), { ...full, pass_points: 60 }, 9).exercise.edition).toBe(1);
  });
});

describe('grounds found for the class', () => {
  const found = { ...fresh(), pool: POOL };
  test.each([
    ['title', 'Other'],
    ['briefing', ['Other.']],
    ['hints', 1],
    ['coached', false],
    ['view', 'blind'],
    ['pass_points', 50],
  ])('stay when %s changes', (field, value) => {
    const edited = withAt(found, field, value);
    expect(withTruePool(found, edited).pool).toBe(POOL);
  });
  test.each([
    ['season', 'dry'],
    ['cap_s', 9000],
    ['stocks.water_L', 700],
    ['ground', { by: 'setting', setting: 'delta' }],
    ['weights.jobTime', 7],
    ['senses', ['tray']],
    ['faults', full.faults],
  ])('go when %s changes', (field, value) => {
    const edited = withAt(found, field, value);
    expect('pool' in withTruePool(found, edited)).toBe(false);
  });
});

describe('what crews found', () => {
  const report: LintReport = {
    findings: [
      { level: 'good', key: 'lint.careful.passes', data: {} },
      { level: 'warning', key: 'lint.pool.none', data: {}, field: 'pool' },
    ],
    fit: true,
    seeds: [1],
    careful_points: [90],
    green_points: [30],
  };
  const checked = checkedOf(report, fresh());

  test('holds while only words change, and says nothing of another task', () => {
    expect(reportFor({ ...fresh(), title: 'Other', edition: 4 }, checked)).toBe(report);
    expect(reportFor({ ...fresh(), pass_points: 60 }, checked)).toBeNull();
    expect(reportFor(fresh(), undefined)).toBeNull();
  });

  test('says nothing of grounds that were found since', () => {
    const after = reportFor({ ...fresh(), pool: POOL }, checked)!;
    expect(after.findings.map(({ key }) => key)).toEqual(['lint.careful.passes']);
  });

  test('decides with form and grounds how the exercise stands', () => {
    expect(standOf(fresh(), [], null)).toMatchObject({ whole: 'open', tried: 'open', grounds: 'open' });
    expect(standOf(fresh(), [], report)).toMatchObject({ whole: 'open', tried: 'good', remarks: 1 });
    expect(standOf({ ...fresh(), pool: POOL }, [], report).whole).toBe('good');
    expect(standOf(full, [], report).grounds).toBe('good');
    expect(standOf(fresh(), [], { ...report, fit: false }).whole).toBe('wrong');
    const bad = withAt(fresh(), 'title', '');
    expect(standOf(bad, mendsOf(bad), report).whole).toBe('wrong');
  });
});

test('a copy is a first edition of its own, with no grounds and given to nobody', () => {
  const kept = keptOf({ ...full, edition: 4, pool: POOL }, { given: 4, earlier: [full] });
  const copy = copyOf(kept, 'exercise-copied', 'Copy', 5);
  const { pool: _pool, ...rest } = kept.exercise;
  expect(copy).toEqual({
    id: 'exercise-copied',
    exercise: { ...rest, id: 'exercise-copied', title: 'Copy', edition: 1 },
    saved_ms: 5,
    own: true,
    classCode: null,
  });
  expect(wrongFields(copy.exercise)).toEqual([]);
});

describe('what is to be mended', () => {
  test.each([
    ['title', ' ', 'words', 'editor.problem.noTitle'],
    ['title', 'a'.repeat(81), 'words', 'editor.problem.longTitle'],
    ['briefing', Array.from({ length: 11 }, () => 'x'), 'words', 'editor.problem.manyLines'],
    ['briefing.1', 'a'.repeat(301), 'words', 'editor.problem.longLine'],
    ['ground.layers', [], 'ground', 'editor.problem.noLayer'],
    ['ground.layers.1.thickness_m', 0, 'ground', 'editor.problem.number'],
    ['ground.salt.from_m', 0, 'ground', 'editor.problem.saltTop'],
    ['site.spots', [], 'site', 'editor.problem.noSpot'],
    ['site.wells.0.dryLevel_m', 1, 'site', 'editor.problem.dryLevel'],
    ['faults.0.to.depth_m', 1, 'faults', 'editor.problem.moments'],
    ['faults.0.from.depth_m', Number.NaN, 'faults', 'editor.problem.number'],
    ['faults.1.from.time_s', -1, 'faults', 'editor.problem.number'],
    ['faults.2.to.delay_s', Number.NaN, 'faults', 'editor.problem.number'],
    ['faults.0.share_frac', [0.7, 0.4], 'faults', 'editor.problem.range'],
    ['faults.0.share_frac.0', 3, 'faults', 'editor.problem.number'],
    ['weights.jobTime', 0, 'points', 'editor.problem.sumLow'],
    ['weights.jobTime', 9, 'points', 'editor.problem.sumHigh'],
    ['weights.depthReached', 5, 'points', 'editor.problem.noItem'],
    ['weights.jobTime', 0.5, 'points', 'editor.problem.weight'],
    ['pass_points', 0, 'points', 'editor.problem.number'],
    ['cap_s', 1, 'kit', 'editor.problem.number'],
  ] as const)('%s as %j is told in its part with what to do', (field, value, part, key) => {
    const mends = mendsOf(withAt(full, field, value));
    expect(mends.map((mend) => [mend.part, mend.says.key])).toContainEqual([part, key]);
    for (const mend of mends) expect(Object.keys(editor)).toContain(mend.says.key);
  });

  test('names the very field, so that one can be taken there', () => {
    const fieldOf = (field: string, value: unknown): string[] =>
      mendsOf(withAt(full, field, value)).map((one) => one.field);
    for (const field of [
      'ground.layers.1.thickness_m',
      'faults.0.from.depth_m',
      'faults.2.to.delay_s',
      'stocks.water_L',
    ])
      expect(fieldOf(field, Number.NaN)).toEqual([field]);
  });

  test('tells limits in the units of the field', () => {
    const [mend] = mendsOf(withAt(full, 'cap_s', 1));
    expect(mend!.says.data).toEqual({ min: 0.09, max: 96, unit: 'editor.unit.h' });
  });

  test('is nothing in a sound exercise', () => expect(mendsOf(full)).toEqual([]));
});

describe('the draft', () => {
  beforeEach(async () => {
    device.storage = memoryStorage();
    device.exercises = [];
    await device.putExercise(keptOf(full));
  });
  const onDevice = (): KeptExercise => device.exercises[0]!;

  test('keeps each change on the device and takes the last ones back, one by one', () => {
    const draft = new Draft(onDevice());
    draft.set('title', 'One');
    draft.set('pass_points', 60);
    draft.flush();
    expect(onDevice().exercise).toMatchObject({ title: 'One', pass_points: 60 });
    expect(draft.last).toBe('points');
    draft.undo();
    expect(draft.exercise).toMatchObject({ title: 'One', pass_points: full.pass_points });
    draft.undo();
    expect([draft.exercise.title, draft.last]).toEqual([full.title, null]);
    draft.flush();
    expect(onDevice().exercise).toEqual(full);
  });

  test('takes letters typed into one field back together', () => {
    const draft = new Draft(onDevice());
    for (const title of ['S', 'Sa', 'San', 'Sand']) draft.set('title', title);
    draft.undo();
    expect(draft.exercise.title).toBe(full.title);
  });

  test('keeps what is not sound too, and opens with it again', () => {
    const draft = new Draft(onDevice());
    draft.set('weights.jobTime', 50);
    draft.flush();
    expect(onDevice().exercise).toEqual(full);
    const again = new Draft(onDevice());
    expect(again.exercise.weights.jobTime).toBe(50);
    expect(again.mends).toHaveLength(1);
    expect(again.sound).toEqual(full);
  });

  test('says when a change drops the grounds, and brings them back', () => {
    const draft = new Draft(onDevice());
    draft.set('pool', POOL);
    draft.set('title', 'Words only');
    expect(draft.poolDropped).toBe(false);
    draft.set('season', 'dry');
    expect([draft.poolDropped, draft.exercise.pool]).toEqual([true, undefined]);
    draft.undo();
    expect([draft.poolDropped, draft.exercise.pool]).toEqual([false, POOL]);
  });

  test('leaves what others noted meanwhile: that it was given out', async () => {
    const draft = new Draft(onDevice());
    await device.putExercise({ ...onDevice(), given: 1 });
    draft.set('pass_points', 60);
    draft.flush();
    expect(onDevice()).toMatchObject({ given: 1, exercise: { edition: 2 }, earlier: [{ edition: 1 }] });
  });

  test('writes nothing once the exercise is removed', async () => {
    const draft = new Draft(onDevice());
    draft.set('title', 'Gone');
    draft.drop();
    await device.removeExercise(full.id);
    draft.flush();
    expect(device.exercises).toEqual([]);
  });
});
