// Plans: impossible ones are named by field, foolish ones pass with a remark, and the figures are numbers.
import { describe, expect, it } from 'vitest';
import { checkPlan, type PlanProblemKey } from '../../../sim/completion/planCheck';
import type { WellPlan } from '../../../sim/completion/plan';
import { planFigures } from '../../../sim/completion/planFigures';
import type { NoteKey } from '../../../sim/completion/planNote';
import { planNotes } from '../../../sim/completion/planNotes';
import { stricterThan, DEPTH_RULES } from '../../../sim/completion/sealRules';
import { CLOTH_NAMES } from '../../../sim/materials/cloths';
import { PACK_NAMES } from '../../../sim/materials/packs';
import { CASING_NAMES } from '../../../sim/materials/pipes';
import { SEAL_NAMES } from '../../../sim/materials/seals';
import { createStream } from '../../../sim/numeric/stream';
import { FACTS, PLAN } from './plans';

const notesOf = (change: Partial<WellPlan>): NoteKey[] => {
  const plan = { ...PLAN, ...change };
  return planNotes(plan, planFigures(plan, FACTS), FACTS).map(({ note }) => note);
};

describe('what cannot be done', () => {
  it('has nothing against a sound plan', () => expect(checkPlan(PLAN, FACTS)).toEqual([]));

  const CASES: readonly (readonly [Partial<WellPlan>, keyof WellPlan, PlanProblemKey])[] = [
    [{ casing: 'pvc110' }, 'casing', 'widerThanHole'],
    [{ casing: 'tin' as never }, 'casing', 'unknown'],
    [{ screenTo_m: 19.5 }, 'screenTo_m', 'belowHole'],
    [{ sump_m: 2 }, 'sump_m', 'belowHole'],
    [{ screenTo_m: 13 }, 'screenTo_m', 'upsideDown'],
    [{ screenFrom_m: -1 }, 'screenFrom_m', 'negative'],
    [{ sealTo_m: NaN }, 'sealTo_m', 'notNumber'],
    [{ slotRows: 2.5 }, 'slotRows', 'notWhole'],
    [{ slotWidth_mm: 63, slotSpacing_mm: 100 }, 'slotWidth_mm', 'slotWiderThanPipe'],
    [{ slotWidth_mm: 12 }, 'slotSpacing_mm', 'slotsMeetAlong'],
    [{ slotArc_mm: 66 }, 'slotArc_mm', 'slotsMeetRound'],
    [{ centralisers: 100 }, 'centralisers', 'tooManyCentralisers'],
    [{ pack: 'pack1', packTop_m: 18.6 }, 'packTop_m', 'belowShoe'],
    [{ sealFrom_m: 4 }, 'sealTo_m', 'upsideDown'],
    [{ sealTo_m: 20 }, 'sealTo_m', 'belowHole'],
    [{ pack: 'pack1', packTop_m: 2 }, 'sealTo_m', 'sealInPack'],
  ];
  it.each(CASES)('%o is found at %s: %s', (change, field, problem) => {
    const found = checkPlan({ ...PLAN, ...change }, FACTS);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ field, problem });
  });

  it('finds centralisers that do not fit the hole', () =>
    expect(checkPlan(PLAN, { ...FACTS, bit_m: 0.072 })[0]).toMatchObject({ problem: 'noRoomForCentralisers' }));

  const FOOLISH: readonly Partial<WellPlan>[] = [
    { sealTo_m: 17 },
    { screenFrom_m: 2, screenTo_m: 8 },
    { slotRows: 0 },
    { seal: 'none' },
    { cap: false, sump_m: 0, centralisers: 0, stickUp_m: 0 },
    { seal: 'cement', pack: 'pack4', packTop_m: 3 },
  ];
  it.each(FOOLISH)('%o is foolish and allowed', (change) =>
    expect(checkPlan({ ...PLAN, ...change }, FACTS)).toEqual([]),
  );
});

describe('remarks', () => {
  const CASES: readonly (readonly [NoteKey, Partial<WellPlan>, Partial<WellPlan>])[] = [
    ['noSlots', { slotRows: 0 }, {}],
    ['entranceFast', { slotRows: 1, slotArc_mm: 10, slotSpacing_mm: 50 }, {}],
    ['sectionThin', { slotArc_mm: 45 }, { slotArc_mm: 20 }],
    ['workingBreaks', { casing: 'pvc63thin', slotArc_mm: 40 }, { slotArc_mm: 20 }],
    ['collapseNear', { casing: 'pvc63thin' }, {}],
    ['cementCrushes', { casing: 'pvc63thin', seal: 'cement', sealTo_m: 8 }, { seal: 'cement' }],
    ['fillFirst', {}, { cap: false }],
    ['packGrainsJam', { pack: 'pack4', packTop_m: 12 }, { pack: 'pack1', packTop_m: 12 }],
    ['sandNeverStops', { cloth: 'none' }, {}],
    ['slotTooFine', { cloth: 'none', slotWidth_mm: 0.2 }, { cloth: 'none' }],
    ['clothTooOpen', { screenFrom_m: 8, screenTo_m: 11 }, {}],
    ['packTooCoarse', { pack: 'pack4', packTop_m: 12 }, { pack: 'pack1', packTop_m: 12 }],
    ['packTight', { pack: 'pack04', packTop_m: 12 }, { pack: 'pack1', packTop_m: 12 }],
    ['packRunsOut', { pack: 'pack04', packTop_m: 12, cloth: 'none' }, { pack: 'pack1', packTop_m: 12 }],
    ['sealNone', { seal: 'none' }, {}],
    ['sealAcrossScreen', { sealTo_m: 15 }, {}],
    ['cementOnPack', { seal: 'cement', pack: 'pack1', packTop_m: 3 }, { seal: 'cement', pack: 'pack1', packTop_m: 5 }],
    ['piecesJam', { seal: 'bentonitePellets' }, {}],
    ['screenAboveLevel', { screenFrom_m: 5 }, {}],
    ['noCap', { cap: false }, {}],
  ];
  it.each(CASES)('%s is made where it is due, and not elsewhere', (note, due, fine) => {
    expect(notesOf(due)).toContain(note);
    expect(notesOf(fine)).not.toContain(note);
  });

  it('says that codes are stricter for a seal of 4 m', () =>
    expect(stricterThan(DEPTH_RULES, 4).map(({ id }) => id)).toEqual(['montana', 'california', 'californiaTown']));

  it('says so where nothing is logged at the screen', () => {
    const facts = { ...FACTS, beds: [] };
    const figures = planFigures(PLAN, facts);
    expect(figures.screen.finest).toBeNull();
    expect(planNotes(PLAN, figures, facts).map(({ note }) => note)).toContain('groundNotLogged');
  });
});

describe('figures', () => {
  it('gives the finest bed that the screen cuts, and not one beside it', () => {
    const { finest } = planFigures(PLAN, FACTS).screen;
    expect(finest).toMatchObject({ top_m: 12 });
    expect(planFigures({ ...PLAN, screenFrom_m: 11 }, FACTS).screen.finest).toMatchObject({ top_m: 0 });
  });

  it('reckons with the hole as it was passed through where that is known', () => {
    const wide = { dz_m: 0.25, radius_m: new Float64Array(80).fill(0.07) };
    const nominal = planFigures(PLAN, FACTS);
    const real = planFigures(PLAN, { ...FACTS, hole: wide });
    expect(real.amounts.seal_m3).toBeGreaterThan(2 * nominal.amounts.seal_m3);
    expect(real.gap_m).toBeCloseTo(0.07 - 0.0315, 12);
    expect(real.seepage_m3s).toBeGreaterThan(nominal.seepage_m3s);
  });

  it('an unsealed ring lets a thousand times more down', () => {
    const open = planFigures({ ...PLAN, seal: 'none' }, FACTS).seepage_m3s;
    expect(open / planFigures(PLAN, FACTS).seepage_m3s).toBeGreaterThan(1000);
  });

  it('every possible plan has figures that are numbers; none changes the plan', () => {
    const stream = createStream('plans');
    const between = (least: number, most: number): number => least + (most - least) * stream.uniform();
    const pick = <T>(from: readonly T[]): T => from[Math.floor(stream.uniform() * from.length)];
    let possible = 0;
    for (let i = 0; i < 1000; i++) {
      const plan: WellPlan = Object.freeze({
        casing: pick(CASING_NAMES),
        screenFrom_m: between(0, 20),
        screenTo_m: between(0, 20),
        sump_m: between(0, 1),
        slotWidth_mm: between(0.1, 3),
        slotRows: Math.floor(between(1, 5)),
        slotArc_mm: between(1, 60),
        slotSpacing_mm: between(2, 30),
        cloth: pick(['none', ...CLOTH_NAMES] as const),
        cap: stream.uniform() < 0.5,
        centralisers: Math.floor(between(0, 8)),
        pack: pick(['none', ...PACK_NAMES] as const),
        packTop_m: between(0, 15),
        seal: pick(['none', ...SEAL_NAMES] as const),
        sealFrom_m: between(0, 2),
        sealTo_m: between(0, 6),
        stickUp_m: between(0, 1),
      });
      if (checkPlan(plan, FACTS).length > 0) continue;
      possible++;
      const figures = planFigures(plan, FACTS);
      const { cement_m, cementEmpty_m, ...pipe } = figures.pipe;
      for (const group of [pipe, figures.amounts])
        for (const value of Object.values(group)) expect(value).toBeGreaterThanOrEqual(0);
      for (const value of [figures.cost_marks, figures.hands_h, figures.wait_h, figures.screen.entrance_ms])
        expect(Number.isFinite(value)).toBe(true);
      expect(cement_m).toBeGreaterThanOrEqual(cementEmpty_m);
      for (const note of planNotes(plan, figures, FACTS)) expect(Number.isNaN(note.have)).toBe(false);
    }
    expect(possible).toBeGreaterThan(100);
  });
});
