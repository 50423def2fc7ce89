// The plan on the board: what it starts from, how it is moved, and words for all that can be said of it.
import { describe, expect, it } from 'vitest';
import { planBoard, type NoteKey, type PlanProblemKey, type WellPlan } from '$sim';
import { lessonById, scenarioOf } from '$lessons';
import { createRun } from '$sim';
import { beyondLimits, firstPlan, limitsOf, stepped, typed } from '../../../src/board/draft';
import { gripAt, gripsOf, movedTo } from '../../../src/board/grips';
import { noteWords, problemWords } from '../../../src/board/notes';
import { boardScale, depthAt, yAt } from '../../../src/board/scale';
import { loggedAtScreen } from '../../../src/board/sums';
import { hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { addMessages } from '../../../src/words/messages';

addMessages(laterMessages);

const lesson = lessonById('open-well')!;
const kit = lesson.well!;
const plan = (change: Partial<WellPlan> = {}): WellPlan => ({ ...firstPlan(kit, 12.34), ...change });

describe('the first plan', () => {
  it('is a bare pipe that can be made, with nothing chosen for the learner', () => {
    const run = createRun(scenarioOf(lesson, 3));
    run.state.hole.depth_m = 12.34;
    const { problems, figures, notes } = planBoard(run, plan());
    expect(problems).toEqual([]);
    expect(figures?.screen.openArea_m2).toBe(0);
    expect(notes.map(({ note }) => note)).toEqual(expect.arrayContaining(['noSlots', 'sealNone', 'noCap']));
    expect(beyondLimits(plan())).toBeNull();
  });

  it('ends at the bottom of the hole, even of the shallowest', () => {
    expect(plan().screenTo_m).toBe(12.3);
    expect(firstPlan(kit, 0.3)).toMatchObject({ screenFrom_m: 0, screenTo_m: 0.3 });
  });
});

describe('a field', () => {
  it('steps within the limits of the act, without crumbs of decimals', () => {
    expect(stepped('screenFrom_m', 0.1, 0.2)).toBe(0.3);
    expect(stepped('screenFrom_m', 0, -0.1)).toBe(0);
    expect(stepped('slotRows', 12, 1)).toBe(12);
    expect(stepped('sump_m', Number.NaN, 0.1)).toBe(0.1);
  });

  it.each([
    ['7,5', 7.5],
    [' 12 ', 12],
    ['', Number.NaN],
    ['deep', Number.NaN],
  ])('reads "%s" as %d', (text, value) => expect(typed(text)).toBe(value));

  it('says its limits where the act would not take it', () => {
    const { min, max } = limitsOf('slotSpacing_mm');
    expect(beyondLimits(plan({ slotSpacing_mm: 1 }))).toEqual({ field: 'slotSpacing_mm', min, max });
  });
});

describe('the grips', () => {
  it('are those of the screen, and of pack and seal where there are any', () => {
    expect(gripsOf(plan())).toEqual(['screenFrom_m', 'screenTo_m']);
    expect(gripsOf(plan({ pack: 'pack1', seal: 'clay' }))).toHaveLength(5);
  });

  it('are found near an end, else in the stretch, and of two in one place the one held before', () => {
    const packed = plan({ pack: 'pack1', seal: 'clay', sealFrom_m: 0, sealTo_m: 5, packTop_m: 5, screenFrom_m: 8 });
    expect(gripAt(packed, 8.1, 0.4, null)).toBe('screenFrom_m');
    expect(gripAt(packed, 10, 0.4, null)).toBe('screen');
    expect(gripAt(packed, 2, 0.4, null)).toBe('seal');
    expect(gripAt(packed, 5, 0.4, 'packTop_m')).toBe('packTop_m');
    expect(gripAt(packed, 5, 0.4, 'sealTo_m')).toBe('sealTo_m');
    expect(gripAt(packed, 6.5, 0.4, null)).toBeNull();
    expect(gripAt(plan({ screenFrom_m: 4.9, screenTo_m: 5 }), 4.8, 0.4, 'screenTo_m')).toBe('screenFrom_m');
  });

  it('go to a tenth of a metre and stay in the hole; a whole screen keeps its length', () => {
    expect(movedTo(plan(), 'screenTo_m', 11.04, 12.34).screenTo_m).toBe(11);
    expect(movedTo(plan(), 'screenTo_m', 20, 12.34).screenTo_m).toBe(12.3);
    const moved = movedTo(plan({ screenFrom_m: 8, screenTo_m: 11 }), 'screen', 4, 12.34);
    expect([moved.screenFrom_m, moved.screenTo_m]).toEqual([2.5, 5.5]);
    const low = movedTo(plan({ screenFrom_m: 8, screenTo_m: 11 }), 'screen', 30, 12.34);
    expect(low.screenTo_m).toBeLessThanOrEqual(12.34);
  });
});

it('shares the screen out over the own log, and tells what nobody logged', () => {
  const log = [
    { from_m: 0, to_m: 9, kind: 'clay' as const },
    { from_m: 9, to_m: 10, kind: 'coarseSand' as const },
  ];
  expect(loggedAtScreen(plan({ screenFrom_m: 8.5, screenTo_m: 12 }), log)).toEqual([
    { kind: 'clay', length_m: 0.5 },
    { kind: 'coarseSand', length_m: 1 },
    { kind: 'notLogged', length_m: 2 },
  ]);
});

it('draws depths there and back again, whatever the room', () => {
  for (const [width_px, height_px] of [
    [110, 380],
    [560, 620],
    [1200, 300],
  ]) {
    const scale = boardScale(width_px!, height_px!, 14, 15, 0.9, 0.1);
    expect(depthAt(scale, yAt(scale, 7.3))).toBeCloseTo(7.3, 9);
    expect(yAt(scale, 15)).toBeLessThan(height_px!);
    expect(scale.well_x + scale.halfHole_px).toBeLessThan(width_px!);
    expect(scale.well_x - scale.halfHole_px).toBeGreaterThan(scale.log_x + scale.log_px);
  }
});

describe('words', () => {
  const NOTES = {
    noSlots: 1,
    entranceFast: 1,
    entranceFastForSand: 1,
    sectionThin: 1,
    workingBreaks: 1,
    collapseNear: 1,
    cementCrushes: 1,
    fillFirst: 1,
    gapBelow50: 1,
    piecesJam: 1,
    packGrainsJam: 1,
    sandNeverStops: 1,
    slotTooFine: 1,
    clothTooOpen: 1,
    clothStandard: 1,
    clothClogs: 1,
    packTooCoarse: 1,
    packTight: 1,
    packRunsOut: 1,
    packLow: 1,
    sealNone: 1,
    sealShallow: 1,
    sealAcrossScreen: 1,
    cementOnPack: 1,
    sealThinOnPack: 1,
    codeDeeper: 1,
    codeWider: 1,
    screenAboveLevel: 1,
    screenNearLevel: 1,
    centralisersFew: 1,
    sumpShort: 1,
    noCap: 1,
    stickUpLow: 1,
    groundNotLogged: 1,
  } satisfies Record<NoteKey, 1>;
  const PROBLEMS = {
    unknown: 1,
    notNumber: 1,
    negative: 1,
    notWhole: 1,
    upsideDown: 1,
    belowHole: 1,
    belowShoe: 1,
    widerThanHole: 1,
    slotWiderThanPipe: 1,
    slotsMeetRound: 1,
    slotsMeetAlong: 1,
    noRoomForCentralisers: 1,
    tooManyCentralisers: 1,
    sealInPack: 1,
  } satisfies Record<PlanProblemKey, 1>;

  it('are there for every remark and every problem', () => {
    expect(Object.keys(NOTES).filter((note) => !hasMessage(`board.note.${note}`))).toEqual([]);
    expect(Object.keys(PROBLEMS).filter((problem) => !hasMessage(`board.problem.${problem}`))).toEqual([]);
  });

  it('fill every slot of every remark and problem', () => {
    for (const note of Object.keys(NOTES) as NoteKey[])
      expect(noteWords({ note, field: 'casing', source: 'practice', have: 1, want: 2 })).not.toMatch(/[{}]/);
    for (const problem of Object.keys(PROBLEMS) as PlanProblemKey[])
      expect(problemWords({ field: 'sump_m', problem, have: 1, limit: 2 })).not.toMatch(/[{}]/);
  });

  it('tell the end of the hole no deeper than it is', () => {
    expect(problemWords({ field: 'screenTo_m', problem: 'belowHole', have: 9, limit: 5.998 })).toContain('5.99 m');
  });

  it('name whatever any kit can offer', () => {
    for (const casing of ['pvc50', 'pvc63', 'pvc63thin', 'pvc110'])
      expect(hasMessage(`board.casing.${casing}`)).toBe(true);
    for (const cloth of ['fine', 'medium', 'coarse']) expect(hasMessage(`board.cloth.${cloth}`)).toBe(true);
  });
});
