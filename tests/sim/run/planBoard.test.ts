// The planning board: it knows what the crew knows, changes nothing, and the act refuses what it calls impossible.
import { describe, expect, it } from 'vitest';
import { act, createRun, hashRun, planBoard, type Run, type WellPlan } from '../../../sim';
import { PLAN } from '../completion/plans';
import { does, rigScenario } from '../../rig';

/** A hole of 12 m that the crew calls 7 m of clay over fine sand; the true ground is another. */
function drilled(): Run {
  const well = {
    casings: ['pvc63', 'pvc63thin'],
    cloths: ['fine', 'medium', 'coarse'],
    packs: ['pack04', 'pack1'],
    seals: ['bentoniteGranules', 'cement'],
    lifts: ['suction', 'deepPiston'],
    bits_mm: [100],
    pumps: ['small'],
    people: 250,
  } as const;
  const run = createRun({ ...rigScenario({ rods: 8, starter_m: 12 }), well });
  does(run, 'logLayer', { from_m: 0, to_m: 7, kind: 'clay' });
  does(run, 'logLayer', { from_m: 7, to_m: 10, kind: 'fineSand' });
  does(run, 'logLayer', { from_m: 10, to_m: 12, kind: 'unknown' });
  return run;
}
const plan: WellPlan = { ...PLAN, screenFrom_m: 8, screenTo_m: 11, sump_m: 0.5, seal: 'bentoniteGranules' };

describe('the planning board', () => {
  it('reckons with the own log, not with the ground', () => {
    const { problems, figures, notes } = planBoard(drilled(), plan);
    expect(problems).toEqual([]);
    expect(figures!.screen.finest).toMatchObject({ top_m: 7, d50_mm: 0.15 });
    // Medium cloth on fine sand, as the crew calls it; on the medium sand that is there it would keep clear.
    expect(notes.find(({ note }) => note === 'clothClogs')?.field).toBe('cloth');
    expect(figures!.cost_marks).toBeGreaterThan(40);
  });

  it('says nothing of ground that the crew cannot name', () => {
    const { figures, notes } = planBoard(drilled(), { ...plan, screenFrom_m: 10, screenTo_m: 11 });
    expect(figures!.screen.finest).toBeNull();
    expect(notes.map(({ note }) => note)).toContain('groundNotLogged');
  });

  it('changes nothing', () => {
    const run = drilled();
    const before = hashRun(run);
    planBoard(run, plan);
    expect(hashRun(run)).toBe(before);
  });

  it('names by field what cannot be, and the act refuses the same', () => {
    const run = drilled();
    const long = { ...plan, screenTo_m: 14 };
    expect(planBoard(run, long)).toMatchObject({
      problems: [{ field: 'screenTo_m', problem: 'belowHole' }],
      figures: null,
    });
    expect(act(run, 'planWell', { ...long })).toMatchObject({ kind: 'refused', reason: 'planBroken' });
    expect(act(run, 'planWell', { ...plan })).toMatchObject({ kind: 'done' });
    // Foolish and allowed: the seal lies across the screen.
    expect(act(run, 'planWell', { ...plan, sealTo_m: 9 })).toMatchObject({ kind: 'done' });
  });
});
