// The fluid on whole runs: what each additive does in the pit and the hole, and what the weight of the returns costs.
import { describe, expect, it } from 'vitest';
import { createRun, sensesOf, type Kit, type Run, type Scenario } from '../../sim';
import { CHLORINE, SOAKED } from '../../sim/fluid/substances';
import {
  clearHole,
  does,
  drillRod,
  drillTo,
  nextRod,
  oneSoil,
  rigScenario,
  steps,
  until,
  type RigOptions,
} from '../rig';

function stocked(options: RigOptions = {}): Scenario {
  const plain = rigScenario(options);
  return { ...plain, opening: { ...plain.opening, bentonite_kg: 300, clay_kg: 300, chlorine_kg: 10 } };
}
function put(run: Run, additive: string, mass_kg: number): void {
  for (let left = mass_kg; left > 0; left -= 25) {
    does(run, 'addAdditive', { additive, mass_g: Math.min(25, left) * 1000, manner: 'sprinkled' });
    until(run, ({ state }) => state.tasks.length === 0);
  }
}
function stir(run: Run, time_s: number): void {
  does(run, 'stir', { time_s });
  until(run, ({ state }) => state.tasks.length === 0);
}
function funnel_s(run: Run): number {
  does(run, 'funnelTest');
  until(run, ({ state }) => state.tasks.length === 0);
  return sensesOf(run).funnel!.seconds_s;
}
const pit_m3 = (run: Run): number => run.state.pit.settling.water_m3 + run.state.pit.suction.water_m3;

describe('the funnel', () => {
  it('reads 26 s for water, and a crew checks it so (common practice, no source)', () => {
    const run = createRun(stocked());
    expect(Math.abs(funnel_s(run) - 26)).toBeLessThanOrEqual(1);
  });

  it('reads 33 to 37 s for polymer and for bentonite at their working doses', () => {
    for (const [additive, dose_gL] of [
      ['polymer', 1.3],
      ['bentonite', 50],
    ] as const) {
      const run = createRun(stocked());
      put(run, additive, dose_gL * pit_m3(run));
      stir(run, 600);
      until(run, ({ state }) => state.machine.fluid === 'ready', 5 * 3600);
      expect(funnel_s(run)).toBeGreaterThanOrEqual(33);
      expect(funnel_s(run)).toBeLessThanOrEqual(37);
    }
  });
});

describe('bentonite', () => {
  it('mixed hours before is much thicker than after half an hour (common practice, no source)', () => {
    const run = createRun(stocked());
    put(run, 'bentonite', 60 * pit_m3(run));
    stir(run, 300);
    const early_s = funnel_s(run);
    steps(run, 4 * 3600);
    expect(funnel_s(run)).toBeGreaterThan(early_s + 3);
  });
});

describe('clay of the site', () => {
  it('thickens less than bentonite of the same weight, and weighs as much', () => {
    const read = (additive: string): { s: number; kgm3: number } => {
      const run = createRun(stocked());
      put(run, additive, 50);
      stir(run, 600);
      steps(run, 3 * 3600);
      stir(run, 120);
      const s = funnel_s(run);
      return { s, kgm3: run.work.chamberReading.density_kgm3 };
    };
    const clay = read('nativeClay');
    const bentonite = read('bentonite');
    expect(bentonite.s).toBeGreaterThan(clay.s + 3);
    expect(Math.abs(bentonite.kgm3 - clay.kgm3)).toBeLessThan(15);
  });

  it('cut by the bit makes a mud of its own: thicker and heavier rod by rod (common practice, no source)', () => {
    const run = createRun(stocked({ layers: oneSoil('softClay') }));
    const seen = [0, 1, 2].map(() => {
      drillRod(run, 1);
      const { K_Pasn, density_kgm3 } = run.work.hole;
      nextRod(run);
      return { K_Pasn, density_kgm3 };
    });
    expect(seen[1].K_Pasn).toBeGreaterThan(seen[0].K_Pasn);
    expect(seen[2].K_Pasn).toBeGreaterThan(seen[1].K_Pasn);
    expect(seen[2].density_kgm3).toBeGreaterThan(seen[0].density_kgm3);
    expect(run.state.machine.fluid).toBe('water');
  });
});

describe('chlorine', () => {
  /** Polymer of a soaked pit, as a share, and chlorine, kg, left after three hours. */
  const left = (clay_kg: number, powder_kg: number): { polymer_frac: number; chlorine_kg: number } => {
    const run = createRun(stocked());
    put(run, 'polymer', 1.1);
    if (clay_kg > 0) put(run, 'nativeClay', clay_kg);
    stir(run, 600);
    until(run, ({ state }) => state.machine.fluid === 'ready', 3600);
    const { settling, suction } = run.state.pit;
    const before_kg = settling.dissolved_kg[SOAKED] + suction.dissolved_kg[SOAKED];
    put(run, 'chlorine', powder_kg);
    stir(run, 300);
    steps(run, 3 * 3600);
    const after_kg = settling.dissolved_kg[SOAKED] + suction.dissolved_kg[SOAKED];
    const chlorine_kg = settling.dissolved_kg[CHLORINE] + suction.dissolved_kg[CHLORINE];
    return { polymer_frac: after_kg / before_kg, chlorine_kg };
  };

  it('breaks the polymer the faster the more there is', () => {
    const [none, some, much] = [0.01, 0.15, 0.6].map((kg) => left(0, kg).polymer_frac);
    expect(none).toBeGreaterThan(0.8);
    expect(some).toBeLessThan(none);
    expect(much).toBeLessThan(0.15);
  });

  it('is used up by dirt: clean first, then dose (common practice, no source)', () => {
    const clean = left(0, 0.15);
    const dirty = left(50, 0.15);
    expect(dirty.chlorine_kg).toBeLessThan(0.8 * clean.chlorine_kg);
    expect(dirty.polymer_frac).toBeGreaterThan(clean.polymer_frac);
  });
});

describe('warmth', () => {
  const minutesToSoak = (temperature_C: number): number => {
    const kit: Partial<Kit> = { temperature_C };
    const run = createRun(stocked({ kit }));
    put(run, 'polymer', 0.6);
    const from = run.state.tick;
    until(run, ({ state }) => state.machine.fluid === 'ready', 2 * 3600);
    return (run.state.tick - from) / 60;
  };

  it('cold water doubles the time that powder soaks, warm water shortens it', () => {
    const usual = minutesToSoak(25);
    expect(minutesToSoak(10) / usual).toBeGreaterThan(1.7);
    expect(minutesToSoak(10) / usual).toBeLessThan(2.3);
    expect(minutesToSoak(35)).toBeLessThan(usual);
  });

  it('polymer rots twice as fast ten degrees warmer', () => {
    const rotted_kg = (temperature_C: number): number => {
      const run = createRun(stocked({ kit: { temperature_C } }));
      run.state.pit.suction.dissolved_kg[SOAKED] = 1;
      steps(run, 3600);
      return run.state.boundary.polymerRotted_kg;
    };
    expect(rotted_kg(35) / rotted_kg(25)).toBeCloseTo(2, 1);
  });
});

describe('the weight of the returns', () => {
  it('is head to be pumped: about 1.65 m for each 10 % of grains over each 10 m, and the flow falls by it', () => {
    // Silt drinks little: the hole stays full. Its grains go round, so that the stem carries some of them too.
    const run = createRun(stocked({ layers: oneSoil('silt') }));
    drillTo(run, 9, 1);
    const read = () => ({
      ...run.work.flowResult,
      heavier_kgm3: run.work.hole.density_kgm3 - run.work.stemReading.density_kgm3,
    });
    steps(run, 1);
    const loaded = read();
    clearHole(run, 240);
    const clear = read();
    const heavier_kgm3 = loaded.heavier_kgm3 - clear.heavier_kgm3;
    expect(heavier_kgm3).toBeGreaterThan(2);
    const lifted_Pa = loaded.static_Pa - clear.static_Pa;
    expect(Math.abs(lifted_Pa / (heavier_kgm3 * 9.81 * run.state.stem.bit_m) - 1)).toBeLessThan(0.1);
    expect(clear.flow_m3s).toBeGreaterThan(loaded.flow_m3s);
  });
});
