// Ground that drinks, on whole runs. Trade rules are common practice, no source, unless one is named.
import { describe, expect, it } from 'vitest';
import { createRun, DEFAULT_KIT, step, type Run } from '../../sim';
import { does, oneSoil, rigScenario, steps, until, type RigOptions } from '../rig';

/** A pit so large that a lesson in loss does not end with an empty one. */
const WIDE = { area_m2: 10 * DEFAULT_KIT.settling.area_m2, depth_m: DEFAULT_KIT.settling.depth_m };

function begun(options: RigOptions, dose_gL: number): Run {
  const scenario = rigScenario({ rods: 4, ...options, kit: { settling: WIDE, suction: WIDE }, powder_kg: 50 });
  const run = createRun({ ...scenario, opening: { ...scenario.opening, pit_L: 9000 } });
  for (let left_g = dose_gL * 9000; left_g > 0; left_g -= 4000) {
    does(run, 'addAdditive', { additive: 'polymer', mass_g: Math.min(4000, left_g), manner: 'sprinkled' });
    steps(run, 400);
  }
  if (dose_gL > 0) steps(run, 1500);
  does(run, 'setThrottle', { throttle_frac: 1 });
  does(run, 'setTurning', { on: true });
  does(run, 'setFeed', { feed_frac: 0.6 });
  return run;
}

/** Mean of what leaves into the ground over so many seconds, L/min. */
function loss_Lmin(run: Run, seconds: number): number {
  const before_m3 = run.state.wall.lost_m3;
  steps(run, seconds);
  return ((run.state.wall.lost_m3 - before_m3) * 6e4) / seconds;
}

/** Takes everything out of the water and off the wall: the same hole in clean water. */
function inCleanWater({ state }: Run): void {
  const { hole, fill, pit, boundary } = state;
  for (const store of [hole, fill, pit.settling, pit.suction]) store.dissolved_kg.fill(0);
  boundary.polymerStart_kg = boundary.polymerOut_kg - boundary.polymerIn_kg;
  hole.wall.cake_m.fill(0);
  hole.wall.cakeResistance_s.fill(0);
  hole.wall.lost_m2.fill(0);
  hole.wall.conductance_ms.fill(0);
}

/** 4.4 m of coarse sand, table at 1 m, drilled with polymer at the working dose and run clean: at least 3 m are open under a metre of head. */
function coarseHole(): Run {
  const run = begun({ layers: oneSoil('coarseSand'), waterTable_m: 1 }, 1.3);
  until(run, ({ state }) => state.hole.depth_m > 4.4, 7200);
  does(run, 'setFeed', { feed_frac: 0 });
  steps(run, 240);
  return run;
}

describe('clean coarse sand under a metre of head', () => {
  it('takes all the returns of clean water, and the level goes down', () => {
    const run = coarseHole();
    inCleanWater(run);
    steps(run, 60);
    expect(run.state.machine.returns).toBe('none');
    expect(run.record.events.some(({ name }) => name === 'returnsLost')).toBe(true);
    expect(run.state.signs.level_m).toBeGreaterThan(0.1);
    expect(loss_Lmin(run, 60)).toBeGreaterThan(100);
  });

  it('drinks a fifth or less of that once soaked polymer has run five minutes at the same level', () => {
    const water = coarseHole();
    inCleanWater(water);
    step(water);
    // In the first seconds the hole is still full: what the bare wall takes at this level, whatever the pump can bring.
    const bare_Lmin = loss_Lmin(water, 1);
    const polymer = coarseHole();
    const { wall } = polymer.state.hole;
    wall.cake_m.fill(0);
    wall.cakeResistance_s.fill(0);
    wall.lost_m2.fill(0);
    wall.conductance_ms.fill(0);
    steps(polymer, 240);
    expect(polymer.state.signs.level_m).toBeLessThan(0.1);
    expect(loss_Lmin(polymer, 60)).toBeLessThan(bare_Lmin / 5);
  });

  it('shows in the pit first: the stick falls while the returns still count as full', () => {
    const layers = [
      { kind: 'firmClay' as const, thickness_m: [2, 2] as [number, number] },
      { kind: 'coarseSand' as const, thickness_m: [40, 40] as [number, number] },
    ];
    const scenario = rigScenario({ layers, waterTable_m: 6, rods: 3 });
    const run = createRun(scenario);
    does(run, 'setThrottle', { throttle_frac: 1 });
    does(run, 'setTurning', { on: true });
    does(run, 'setFeed', { feed_frac: 0.6 });
    until(run, ({ state }) => state.hole.depth_m > 1.95, 20000);
    // What the stick in the suction chamber would show.
    const stick_m = ({ state }: Run): number => state.pit.suction.water_m3 / state.pit.suction.area_m2;
    const before_m = stick_m(run);
    const events = run.record.events.length;
    until(run, () => stick_m(run) < before_m - 0.02, 3600);
    expect(run.state.machine.returns).toBe('full');
    const told = run.record.events.slice(events).map(({ name }) => name);
    for (const name of ['returnsLost', 'pitLow', 'buried', 'tight', 'sloughing']) expect(told).not.toContain(name);
  });
});

describe('clean water put in without powder', () => {
  it('costs the wall its membrane', () => {
    const cake_mm = (run: Run): number => run.state.hole.wall.cake_m.reduce((sum, x) => sum + x, 0) * 1000;
    const run = coarseHole();
    const before_mm = cake_mm(run);
    steps(run, 600);
    const kept_mm = cake_mm(run);
    expect(kept_mm).toBeGreaterThan(0.9 * before_mm);
    // The pit emptied and filled with water from the drum: the polymer in the hole is soon pumped out.
    for (const chamber of [run.state.pit.settling, run.state.pit.suction]) {
      run.state.boundary.polymerOut_kg += chamber.dissolved_kg[0]! + chamber.dissolved_kg[1]!;
      chamber.dissolved_kg.fill(0);
    }
    steps(run, 600);
    expect(cake_mm(run)).toBeLessThan(0.8 * kept_mm);
  });
});
