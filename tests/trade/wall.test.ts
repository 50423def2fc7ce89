// A wall that stands or falls, on whole runs. Trade rules are common practice, no source, unless one is named.
import { describe, expect, it } from 'vitest';
import { createRun, WALL_CAUSES, type Run } from '../../sim';
import { does, drilledIn, oneSoil, rigScenario, steps, until } from '../rig';

const taken_L = (run: Run): number => run.state.wall.taken_m3.reduce((sum, x) => sum + x, 0) * 1000;
const takenBy_L = (run: Run, cause: (typeof WALL_CAUSES)[number]): number =>
  run.state.wall.taken_m3[WALL_CAUSES.indexOf(cause)]! * 1000;
const widest_mm = (run: Run): number => Math.max(...run.state.hole.radius_m) * 2000;

/** Everything out of the water and off the wall: the same hole in clean water. */
function inCleanWater({ state }: Run): void {
  const { hole, boundary } = state;
  boundary.polymerOut_kg += hole.dissolved_kg.reduce((sum, x) => sum + x, 0);
  hole.dissolved_kg.fill(0);
  hole.wall.cake_m.fill(0);
  hole.wall.cakeResistance_s.fill(0);
  hole.wall.conductance_ms.fill(0);
}

describe('fine sand with its water table 2 m down', () => {
  it('stands half an hour in soaked polymer when it is kept topped up', () => {
    const run = drilledIn('fineSand', 2, 1100);
    const flowing_L = taken_L(run);
    does(run, 'setThrottle', { throttle_frac: 0 });
    for (let quarter = 0; quarter < 120; quarter++) {
      if (run.state.signs.level_m > 0.03 && run.state.tasks.length === 0) does(run, 'topUp', { fluid_L: 5 });
      steps(run, 15);
    }
    expect(taken_L(run) - flowing_L).toBeLessThan(2);
    expect(widest_mm(run)).toBeLessThan(130);
    expect(run.state.hole.depth_m).toBeGreaterThan(4.4);
  });

  it('caves within minutes in still clean water let down to the table', () => {
    const run = drilledIn('fineSand', 2, 1100);
    inCleanWater(run);
    does(run, 'setThrottle', { throttle_frac: 0 });
    steps(run, 240);
    expect(run.state.signs.level_m).toBeGreaterThan(1.8);
    expect(taken_L(run)).toBeGreaterThan(10);
    expect(run.record.events.some(({ name }) => name === 'sloughing')).toBe(true);
  });
});

describe('a stem that is pulled', () => {
  const pulled = (speed_ms: number): { run: Run; swab_Pa: number } => {
    const run = drilledIn('fineSand', 0.2, 0);
    does(run, 'setThrottle', { throttle_frac: 0 });
    steps(run, 3);
    does(run, 'lift', { distance_m: 2, speed_ms });
    let swab_Pa = 0;
    for (let s = 0; s < Math.ceil(2 / speed_ms); s++) {
      steps(run, 1);
      swab_Pa = Math.max(swab_Pa, -Math.min(...run.work.loss.surge_Pa));
    }
    return { run, swab_Pa };
  };

  it('takes more pressure off the wall the faster it goes', () => {
    const slow_Pa = pulled(0.15).swab_Pa;
    const quick_Pa = pulled(0.3).swab_Pa;
    expect(slow_Pa).toBeGreaterThan(10);
    expect(quick_Pa).toBeGreaterThan(2 * slow_Pa);
  });

  it('brings a bare wall in with the level some .2 m above the table, and more than twice as much at .3 as at .1 m/s', () => {
    const { run } = pulled(0.3);
    expect(takenBy_L(run, 'swab')).toBeGreaterThan(0.03);
    expect(takenBy_L(run, 'swab')).toBeGreaterThan(2 * takenBy_L(pulled(0.1).run, 'swab'));
    expect(run.record.events.some(({ data }) => data.cause === 'swab')).toBe(true);
  });

  it('of 20 m drops the level by .8 to 2.3 m when nobody tops up: the steel and what stood in its bore', () => {
    const run = createRun(rigScenario({ layers: oneSoil('stiffClay'), waterTable_m: 1, rods: 14, starter_m: 20 }));
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 240);
    does(run, 'setThrottle', { throttle_frac: 0 });
    steps(run, 5);
    for (let rod = 0; rod < 13; rod++) {
      does(run, 'removeRod', { speed_ms: 0.12 });
      steps(run, 110);
    }
    expect(run.state.stem.rods).toBe(1);
    expect(run.state.signs.level_m).toBeGreaterThan(0.8);
    expect(run.state.signs.level_m).toBeLessThan(2.3);
  });
});

describe('clay', () => {
  const inSoftClay = (): Run => {
    const run = createRun(rigScenario({ layers: oneSoil('softClay'), waterTable_m: 1, rods: 11, starter_m: 14.5 }));
    does(run, 'setThrottle', { throttle_frac: 1 });
    until(run, ({ state }) => state.machine.returns === 'full', 600);
    return run;
  };

  it('soft, squeezes in from about 5 m down in a full hole, and not above', () => {
    const run = inSoftClay();
    steps(run, 3600);
    const { wall, dz_m } = run.state.hole;
    const squeezed_mm = (depth_m: number): number => wall.squeezed_m[Math.floor(depth_m / dz_m)]! * 1000;
    const [shallow_mm, middle_mm, deep_mm] = [3, 7, 12].map(squeezed_mm);
    // A millimetre is the play of the bit's wings.
    expect(shallow_mm).toBeLessThan(1);
    expect(middle_mm).toBeGreaterThan(1);
    expect(deep_mm).toBeGreaterThan(middle_mm!);
  });

  it('soft, can still be drilled at 15 m, by a light hand quicker than by one that packs the bit', () => {
    const drilled = (feed_frac: number): Run => {
      const run = inSoftClay();
      does(run, 'setTurning', { on: true });
      does(run, 'setFeed', { feed_frac });
      steps(run, 2400);
      return run;
    };
    const light = drilled(0.25);
    expect(light.state.hole.depth_m).toBeGreaterThan(15.5);
    expect(light.record.events.some(({ name }) => name === 'stuck')).toBe(false);
    const heavy = drilled(0.5);
    expect(heavy.state.hole.depth_m - 14.5).toBeLessThan(0.5 * (light.state.hole.depth_m - 14.5));
  });
});

describe('a stream along clean sand', () => {
  /** 1.4 m of fine sand under a head of 1.2 m, from a pit that does not run dry. */
  const washed = (dose_gL: number, seconds: number): Run => {
    const chamber = { area_m2: 6, depth_m: 0.8 };
    const scenario = rigScenario({
      layers: oneSoil('fineSand'),
      waterTable_m: 1.2,
      rods: 1,
      powder_kg: 60,
      kit: { settling: chamber, suction: chamber },
    });
    const run = createRun({ ...scenario, opening: { ...scenario.opening, pit_L: 8800 } });
    for (let left_g = dose_gL * 8800; left_g > 0; left_g -= 4400) {
      does(run, 'addAdditive', { additive: 'polymer', mass_g: Math.min(4400, left_g), manner: 'sprinkled' });
      steps(run, 400);
    }
    steps(run, 1800);
    does(run, 'setThrottle', { throttle_frac: 1 });
    does(run, 'setTurning', { on: true });
    does(run, 'setFeed', { feed_frac: 0.6 });
    until(run, ({ state }) => state.hole.depth_m > 1.4, 7200);
    does(run, 'setFeed', { feed_frac: 0 });
    steps(run, seconds);
    return run;
  };

  it('of water widens it and stops by itself; of soaked polymer does not dig', () => {
    const early_mm = widest_mm(washed(0, 600));
    const late_mm = widest_mm(washed(0, 1800));
    const last_mm = widest_mm(washed(0, 3000));
    expect(early_mm).toBeGreaterThan(105);
    expect(last_mm).toBeLessThan(150);
    expect(last_mm - late_mm).toBeLessThan(0.5 * (late_mm - 100));
    const polymer = washed(1.3, 3000);
    // But for the mouth itself: no head presses a membrane onto the top quarter of a metre.
    expect(Math.max(...polymer.state.hole.radius_m.slice(1)) * 2000).toBeLessThan(103);
  });
  it('drops its coarse grains where the hole has been washed wide', () => {
    const stones_m3 = (wide: boolean): number => {
      const run = drilledIn('silt', 1, 0);
      const { hole } = run.state;
      if (wide) for (let i = 4; i < 9; i++) hole.radius_m[i] = 0.09;
      steps(run, 60);
      // A handful of coarse sand is cut into the stream at the bit.
      const at = 4 * hole.cells + hole.used - 1;
      hole.solids_m3[at]! += 2e-4;
      hole.moment_m4[at]! += 2e-4 * hole.depth_m;
      run.state.boundary.solidsIn_m3[4]! += 2e-4;
      steps(run, 240);
      let left_m3 = hole.bed_m3[4]!;
      for (let i = 0; i < hole.used; i++) left_m3 += hole.solids_m3[4 * hole.cells + i]!;
      return left_m3;
    };
    expect(stones_m3(true)).toBeGreaterThan(stones_m3(false) + 2e-5);
  });

  it('never runs clean when it is thick: the pit keeps no fine sand', () => {
    const grit = (dose_gL: number): number => washed(dose_gL, 900).state.signs.grit_frac;
    const thin = grit(0);
    expect(thin).toBeLessThan(0.0004);
    expect(grit(4)).toBeGreaterThan(2 * Math.max(thin, 0.0004));
  });
});
