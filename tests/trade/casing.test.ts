// From the last rod to the casing in the hole, on whole runs. Trade rules are common practice, no source, unless one is named.
import { describe, expect, it } from 'vitest';
import { act, ledgerOf, sensesOf, type Payload, type Run, type WellPlan } from '../../sim';
import { does, steps } from '../rig';
import { drilledOut, idle, joinAll, plainPlan, pulledOut } from '../wellRig';
import { expectBalanced, told } from './site';

const casing = (run: Run) => run.state.completion.casing;
const refused = (run: Run, name: Parameters<typeof act>[1], payload: Payload = {}) => act(run, name, payload);

/** Joined beforehand, pulled out, kept full all the while: the casing can go in at once. */
function readyToRun(change: Partial<WellPlan> = {}): Run {
  const run = drilledOut(9, change);
  joinAll(run);
  return pulledOut(run);
}

function runIn(run: Run, fill = true): Run {
  does(run, 'runCasing', { fill, speed_ms: 0.1 });
  idle(run);
  return run;
}

describe('pulling out', () => {
  it('takes a minute a rod and the pull, and lays all rods aside', () => {
    const run = drilledOut(9);
    does(run, 'pullOut', { speed_ms: 0.15, topUp: true });
    const { tick } = run.state;
    idle(run);
    // Six rods; 8.9 m at .15 m/s.
    expect(run.state.tick - tick).toBeGreaterThan(6 * 60 + 8.9 / 0.15 - 2);
    expect(run.state.tick - tick).toBeLessThan(6 * 60 + 8.9 / 0.15 + 10);
    expect(run.state.stem.rods).toBe(0);
    expect(told(run, 'stemPulled')).toBe(1);
    expect(refused(run, 'setTurning', { on: true })).toEqual({ kind: 'refused', reason: 'noStem' });
    expectBalanced(run);
  });

  it('lets the level down by what the steel took up, unless the second man pours', () => {
    const level_m = (topUp: boolean) => {
      const run = drilledOut(9);
      does(run, 'pullOut', { speed_ms: 0.15, topUp });
      idle(run);
      expectBalanced(run);
      return run.state.signs.level_m;
    };
    expect(level_m(true)).toBeLessThan(0.1);
    expect(level_m(false)).toBeGreaterThan(0.6);
  });

  it('waits until drilling is stopped and the stem hangs free', () => {
    const run = drilledOut(9);
    does(run, 'setTurning', { on: true });
    expect(refused(run, 'pullOut', { speed_ms: 0.15, topUp: true })).toEqual({ kind: 'refused', reason: 'turningOn' });
  });

  it('a stem laid aside can be put together again to clean the hole out', () => {
    const run = pulledOut(drilledOut(9));
    does(run, 'addRod');
    idle(run);
    does(run, 'lower', { distance_m: 1, speed_ms: 0.1 });
    steps(run, 12);
    expect(run.state.stem.bit_m).toBeCloseTo(1, 6);
  });
});

describe('an hour after the last rod', () => {
  const afterAnHour = (topUp: boolean): Run => {
    const run = pulledOut(drilledOut(9), topUp);
    joinAll(run, topUp);
    for (let s = 0; run.state.tick % 3600 !== 0 && s < 3600; s++) {
      if (topUp && run.state.tasks.length === 0) act(run, 'topUp', { fluid_L: 10 });
      steps(run, 1);
    }
    idle(run);
    return runIn(run);
  };

  it('a hole in sand that was not topped up hangs the casing', () => {
    const run = afterAnHour(false);
    expect(casing(run).look).toBe('hung');
    expect(told(run, 'casingHung')).toBe(1);
    expect(sensesOf(run).well!.casing.look).toBe('hung');
    expect(casing(run).shoe_m).toBeLessThan(8);
    expectBalanced(run);
  });

  it('one that was kept full lets it in', () => {
    const run = afterAnHour(true);
    expect(casing(run).look).toBe('landed');
    expect(casing(run).shoe_m).toBeCloseTo(8.8, 6);
    expectBalanced(run);
  });
});

describe('running the casing', () => {
  it('needs the rods out, a plan and something joined', () => {
    const run = drilledOut(9, null);
    expect(refused(run, 'joinCasing')).toEqual({ kind: 'refused', reason: 'notPlanned' });
    does(run, 'planWell', { ...plainPlan(9) });
    expect(refused(run, 'runCasing', { fill: true, speed_ms: 0.1 })).toEqual({ kind: 'refused', reason: 'stemInHole' });
    pulledOut(run);
    expect(refused(run, 'runCasing', { fill: true, speed_ms: 0.1 })).toEqual({
      kind: 'refused',
      reason: 'nothingJoined',
    });
    expect(refused(run, 'workCasing', { time_s: 60 })).toEqual({ kind: 'refused', reason: 'casingNotHung' });
    expect(refused(run, 'sound')).toEqual({ kind: 'refused', reason: 'casingNotIn' });
  });

  it('goes down piece by piece, each as far as it reaches', () => {
    const run = pulledOut(drilledOut(9));
    does(run, 'joinCasing');
    idle(run);
    runIn(run);
    expect(casing(run)).toMatchObject({ look: 'free', joined: 1 });
    // Three metres less half a metre that sticks up.
    expect(casing(run).shoe_m).toBeCloseTo(2.5, 6);
    expect(refused(run, 'runCasing', { fill: true, speed_ms: 0.1 })).toEqual({ kind: 'refused', reason: 'allRun' });
    expect(refused(run, 'addRod')).toEqual({ kind: 'refused', reason: 'casingInHole' });
  });

  it('pushes the fluid up that its wall takes up, and no more when it fills', () => {
    const run = readyToRun();
    const before_m3 = run.state.hole.water_m3;
    runIn(run);
    expect(casing(run).look).toBe('landed');
    // The steel of the ring: 63 x 3 over 8.8 m are 5 L; some more has soaked away meanwhile.
    expect((before_m3 - run.state.hole.water_m3) * 1000).toBeGreaterThan(4);
    expect((before_m3 - run.state.hole.water_m3) * 1000).toBeLessThan(12);
    expectBalanced(run);
  });

  it('a plugged casing that nobody fills floats, and sinks when it is filled (Archimedes)', () => {
    // No slots: nothing gets in.
    const run = readyToRun({ slotRows: 0 });
    runIn(run, false);
    expect(casing(run).look).toBe('floating');
    expect(told(run, 'casingFloats')).toBe(1);
    // 63 x 3.0 lifts with 22.7 N a metre (P-F7, 2.32 kg); two hands hold 100 N and what sticks out helps.
    expect(casing(run).shoe_m).toBeGreaterThan(4);
    expect(casing(run).shoe_m).toBeLessThan(8);
    runIn(run, true);
    expect(casing(run).look).toBe('landed');
    expectBalanced(run);
  });

  it('a cloth that thick fluid passes slowly is as good as a plug for a while', () => {
    const depth = (cloth: WellPlan['cloth']) => {
      const run = readyToRun({ cloth, slotRows: 1, slotSpacing_mm: 40 });
      runIn(run, false);
      return casing(run).look;
    };
    expect(depth('none')).toBe('landed');
    expect(depth('fine')).toBe('floating');
  });

  it('a joint that is loaded before it has set stays weak', () => {
    const run = readyToRun();
    expect(casing(run).joint_frac).toBe(1);
    runIn(run);
    expect(casing(run).joint_frac).toBe(1);
    const hasty = pulledOut(drilledOut(9));
    for (let piece = 0; piece < 4; piece++) {
      does(hasty, 'joinCasing');
      idle(hasty);
    }
    runIn(hasty);
    expect(casing(hasty).joint_frac).toBeLessThan(0.1);
  });
});

describe('a casing that hangs', () => {
  /** Hung on so much loose sand above the planned depth. */
  const hungOn = (fill_m: number, change: Partial<WellPlan> = {}): Run => {
    const run = readyToRun(change);
    const { hole } = run.state;
    const sand_m3 = Math.PI * 0.05 * 0.05 * (fill_m + 0.2) * 0.55;
    hole.bed_m3[3] += sand_m3;
    hole.water_m3 -= sand_m3;
    run.state.boundary.solidsIn_m3[3] += sand_m3;
    run.state.boundary.waterOut_m3 += sand_m3;
    return runIn(run);
  };

  it('is worked down a centimetre a stroke through loose fill', () => {
    const run = hungOn(0.2);
    expect(casing(run).look).toBe('hung');
    const { shoe_m } = casing(run);
    does(run, 'workCasing', { time_s: 20 });
    idle(run);
    expect(casing(run).shoe_m - shoe_m).toBeGreaterThan(0.05);
    expect(casing(run).shoe_m - shoe_m).toBeLessThan(0.11);
    does(run, 'workCasing', { time_s: 60 });
    idle(run);
    expect(casing(run).look).toBe('landed');
    expect(casing(run).snapped).toBe(false);
    expectBalanced(run);
  });

  it('but not through more than .3 m', () => {
    const run = hungOn(0.6);
    does(run, 'workCasing', { time_s: 120 });
    idle(run);
    expect(casing(run).look).toBe('hung');
    expect(casing(run).worked_m).toBeCloseTo(0.3, 2);
  });

  it('three rows of long slots snap a thin pipe that is worked down hard', () => {
    const thin = hungOn(0.6, { casing: 'pvc63thin' });
    does(thin, 'workCasing', { time_s: 300 });
    idle(thin);
    expect(casing(thin).snapped).toBe(true);
    expect(told(thin, 'casingSnapped')).toBe(1);
    expect(sensesOf(thin).well!.casing.snapped).toBe(true);
    // The thick pipe with the same slots stands it, and so does the thin one worked gently.
    const thick = hungOn(0.6);
    does(thick, 'workCasing', { time_s: 300 });
    idle(thick);
    expect(casing(thick).snapped).toBe(false);
    const gentle = hungOn(0.2, { casing: 'pvc63thin' });
    for (let turn = 0; turn < 3 && casing(gentle).look === 'hung'; turn++) {
      does(gentle, 'workCasing', { time_s: 30 });
      idle(gentle);
    }
    expect(casing(gentle)).toMatchObject({ snapped: false, look: 'landed' });
  });
});

describe('the plan', () => {
  const plan = (run: Run, change: Partial<WellPlan>) => refused(run, 'planWell', { ...plainPlan(9, change) });

  it('is refused where it cannot be, and taken where it is only foolish', () => {
    const run = drilledOut(9);
    expect(plan(run, { screenTo_m: 12 })).toEqual({ kind: 'refused', reason: 'planBroken' });
    expect(plan(run, { slotWidth_mm: 9.9, slotSpacing_mm: 5 })).toEqual({ kind: 'refused', reason: 'planBroken' });
    expect(plan(run, { casing: 'pvc110' })).toEqual({ kind: 'refused', reason: 'planBroken' });
    expect(plan(run, { sump_m: -1 })).toMatchObject({ kind: 'malformed', field: 'sump_m' });
    // A seal across the screen, a screen in the clay: nobody forbids that.
    expect(plan(run, { pack: 'none', packTop_m: 9, sealFrom_m: 4, sealTo_m: 8 })).toEqual({ kind: 'done' });
    expect(plan(run, { screenFrom_m: 0.5, screenTo_m: 2.5, pack: 'none', sealTo_m: 3 })).toEqual({ kind: 'done' });
  });

  it('can change until the casing stands, but not what is joined already', () => {
    const run = drilledOut(9);
    does(run, 'joinCasing');
    idle(run);
    expect(plan(run, { casing: 'pvc50' })).toEqual({ kind: 'refused', reason: 'planDone' });
    expect(plan(run, { slotRows: 2 })).toEqual({ kind: 'refused', reason: 'planDone' });
    // Half a metre higher with the same screen.
    expect(plan(run, { screenFrom_m: 5, screenTo_m: 8 })).toEqual({ kind: 'done' });
    expect(plan(run, { seal: 'cement' })).toEqual({ kind: 'done' });
  });
});

it('casing, cloth and cap are paid as they are joined', () => {
  const run = drilledOut(9);
  while (act(run, 'joinCasing', {}).kind === 'done') idle(run);
  // Four pieces of 3 m at 2.8, three joints at .3, a cap at 1, four centralisers at .8.
  expect(run.state.stocks.wellSpent_marks).toBeCloseTo(12 * 2.8 + 3 * 0.3 + 1 + 4 * 0.8, 9);
  expect(ledgerOf(run).water).toBeLessThan(1e-9);
});
