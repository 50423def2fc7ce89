// Additives on a run: taken from their stocks, put where they belong, counted, waited for, spoilt.
import { describe, expect, it } from 'vitest';
import { act, costOf, createRun, ledgerOf, sensesOf, type Run, type Scenario } from '../../../sim';
import { BENTONITE, CHLORINE, SOAKED, SWELLING } from '../../../sim/fluid/substances';
import { BENTONITE as MUD } from '../../../sim/materials/bentonite';
import { does, rigScenario, steps, until } from '../../rig';

function stocked(): Scenario {
  const plain = rigScenario();
  return { ...plain, opening: { ...plain.opening, bentonite_kg: 100, clay_kg: 200, chlorine_kg: 5 } };
}
const add = (run: Run, additive: string, mass_kg: number, manner = 'sprinkled'): void => {
  does(run, 'addAdditive', { additive, mass_g: mass_kg * 1000, manner });
  until(run, ({ state }) => state.tasks.length === 0);
};
const told = (run: Run, name: string): number => run.record.events.filter((e) => e.name === name).length;
const closes = (run: Run): void => {
  const { water, solids, polymer, additives } = ledgerOf(run);
  expect(Math.max(water, solids, polymer, additives)).toBeLessThanOrEqual(1e-9);
};

describe('stocks', () => {
  it('are empty where the opening says nothing, and each refusal has its own reason', () => {
    const run = createRun(rigScenario());
    for (const [additive, reason] of [
      ['bentonite', 'noBentonite'],
      ['nativeClay', 'noClay'],
      ['chlorine', 'noChlorine'],
    ])
      expect(act(run, 'addAdditive', { additive, mass_g: 100, manner: 'dumped' })).toEqual({ kind: 'refused', reason });
    expect(act(run, 'addAdditive', { additive: 'polymer', mass_g: 25000, manner: 'dumped' })).toEqual({
      kind: 'refused',
      reason: 'noPowder',
    });
    expect(act(run, 'addAdditive', { additive: 'cement', mass_g: 100, manner: 'dumped' }).kind).toBe('malformed');
  });

  it('fall by what is put in, and the bill grows by its price', () => {
    const run = createRun(stocked());
    const before = costOf(run);
    add(run, 'bentonite', 25);
    add(run, 'chlorine', 1);
    add(run, 'nativeClay', 10);
    const { bentonite_kg, clay_kg, chlorine_kg } = sensesOf(run).stock;
    expect([bentonite_kg, clay_kg, chlorine_kg].map((kg) => Math.round(kg * 1e6) / 1e6)).toEqual([75, 190, 4]);
    const hours = (run.state.tick / 3600) * run.scenario.kit.crew * 3;
    expect(costOf(run) - before - hours).toBeCloseTo(25 * 0.6 + 4, 6);
    closes(run);
  });

  it('clay finds no room in a pit that is full', () => {
    const scenario = stocked();
    const run = createRun({ ...scenario, opening: { ...scenario.opening, pit_L: 5000 } });
    const result = act(run, 'addAdditive', { additive: 'nativeClay', mass_g: 25000, manner: 'dumped' });
    expect(result).toEqual({ kind: 'refused', reason: 'pitFull' });
  });
});

describe('bentonite', () => {
  it('swells for hours: soaking, then ready and told once', () => {
    const run = createRun(stocked());
    does(run, 'stir', { time_s: 600 });
    add(run, 'bentonite', 25);
    add(run, 'bentonite', 20);
    expect(run.state.machine.fluid).toBe('soaking');
    const { dissolved_kg } = run.state.pit.suction;
    expect(dissolved_kg[BENTONITE]).toBeLessThan(dissolved_kg[SWELLING]);
    until(run, ({ state }) => state.machine.fluid !== 'soaking', 4 * 3600);
    expect(run.state.machine.fluid).toBe('ready');
    expect(told(run, 'soaked')).toBe(1);
    does(run, 'feelFluid');
    until(run, ({ state }) => state.tasks.length === 0);
    expect(sensesOf(run).feel!.word).toBe('creamy');
    closes(run);
  });

  it('dumped, half of it lies in lumps on the floor, and stirring works it loose as clay', () => {
    const run = createRun(stocked());
    add(run, 'bentonite', 20, 'dumped');
    // A little of it runs over the notch with the water that the lumps displace.
    const { settling, suction } = run.state.pit;
    const loose_kg = [settling, suction].reduce(
      (sum, c) => sum + c.dissolved_kg[SWELLING] + c.dissolved_kg[BENTONITE],
      0,
    );
    expect(loose_kg).toBeCloseTo(10, 9);
    const floor_m3 = suction.deposit_m3[1];
    expect(floor_m3 * MUD.grain_kgm3).toBeCloseTo(10, 3);
    does(run, 'stir', { time_s: 120 });
    until(run, ({ state }) => state.tasks.length === 0);
    expect(suction.deposit_m3[1]).toBeLessThan(0.5 * floor_m3);
    closes(run);
  });

  it('does not rot and is no prey to chlorine', () => {
    const run = createRun(stocked());
    add(run, 'bentonite', 25);
    add(run, 'chlorine', 2);
    steps(run, 3600);
    const { dissolved_kg } = run.state.pit.suction;
    expect(dissolved_kg[BENTONITE] + dissolved_kg[SWELLING]).toBeCloseTo(25, 9);
  });
});

describe('clay of the site', () => {
  it('comes in as clay and silt, works at once, and thickens', () => {
    const run = createRun(stocked());
    does(run, 'addAdditive', { additive: 'nativeClay', mass_g: 25000, manner: 'sprinkled' });
    steps(run, 5);
    expect(run.state.machine.fluid).toBe('soaking');
    until(run, ({ state }) => state.tasks.length === 0);
    steps(run, 1);
    expect(told(run, 'soaked')).toBe(1);
    const { suction } = run.state.pit;
    const grains_m3 = [suction, run.state.pit.settling].reduce(
      (sum, c) => sum + c.solids_m3[0] + c.solids_m3[1] + c.deposit_m3[0] + c.deposit_m3[1],
      0,
    );
    expect(grains_m3 * 2650).toBeCloseTo(25, 6);
    expect(['ready', 'thin']).toContain(run.state.machine.fluid);
    closes(run);
  });

  it('cut by the bit alone makes no mode of the fluid', () => {
    const run = createRun(stocked());
    run.state.pit.suction.solids_m3[0] += 0.02;
    steps(run, 5);
    expect(run.state.machine.fluid).toBe('water');
  });
});

describe('chlorine', () => {
  it('turns a ready polymer to a spent one within hours', () => {
    const run = createRun(stocked());
    add(run, 'polymer', 0.6);
    until(run, ({ state }) => state.machine.fluid === 'ready', 3600);
    add(run, 'chlorine', 0.5);
    until(run, ({ state }) => state.machine.fluid === 'spent', 3 * 3600);
    const { suction } = run.state.pit;
    expect(suction.dissolved_kg[SOAKED]).toBeLessThan(0.15);
    expect(suction.dissolved_kg[CHLORINE]).toBeLessThan(0.35);
    closes(run);
  });

  it('too little of it is used up and leaves the fluid thick', () => {
    const run = createRun(stocked());
    add(run, 'polymer', 0.6);
    until(run, ({ state }) => state.machine.fluid === 'ready', 3600);
    add(run, 'chlorine', 0.01);
    steps(run, 6 * 3600);
    expect(run.state.pit.suction.dissolved_kg[SOAKED]).toBeGreaterThan(0.35);
  });
});

describe('thinning', () => {
  it('clean water makes a ready fluid thin, whatever it was made of', () => {
    for (const [additive, kg] of [
      ['polymer', 0.35],
      ['bentonite', 12],
      ['nativeClay', 25],
    ] as const) {
      const scenario = stocked();
      const run = createRun({ ...scenario, opening: { ...scenario.opening, pit_L: 250 } });
      add(run, additive, kg);
      until(run, ({ state }) => state.machine.fluid === 'ready', 4 * 3600);
      const { K_Pasn } = run.work.rheology;
      for (let i = 0; i < 3; i++) {
        does(run, 'fillPit', { water_L: 300 });
        until(run, ({ state }) => state.tasks.length === 0);
      }
      steps(run, 10);
      expect([additive, run.state.machine.fluid]).toEqual([additive, 'thin']);
      expect(run.work.rheology.K_Pasn).toBeLessThanOrEqual(K_Pasn);
    }
  });
});

describe('salt', () => {
  it('spoils bentonite and leaves polymer', () => {
    for (const [additive, kg, mode] of [
      ['bentonite', 25, 'spent'],
      ['polymer', 0.6, 'ready'],
    ] as const) {
      const run = createRun(stocked());
      add(run, additive, kg);
      until(run, ({ state }) => state.machine.fluid !== 'soaking', 4 * 3600);
      const { suction } = run.state.pit;
      suction.dissolved_kg[4] = 35 * suction.water_m3;
      steps(run, 2);
      expect([additive, run.state.machine.fluid]).toEqual([additive, mode]);
    }
  });
});
