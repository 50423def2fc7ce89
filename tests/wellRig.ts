// A rig for the well: a hole that is drilled and run clean, a plan that fits it, a driver down to the set casing.
import { clearHole, does, drillRod, nextRod, oneSoil, rigScenario, steps, until, type RigOptions } from './rig';
import { act, CASINGS, createRun, type Run, type Scenario, type WellPlan } from '../sim';

/** All there is to choose from. */
export const FULL_KIT: NonNullable<Scenario['well']> = {
  casings: ['pvc50', 'pvc63', 'pvc63thin', 'pvc110'],
  cloths: ['fine', 'medium', 'coarse'],
  packs: ['pack04', 'pack07', 'pack1', 'pack2', 'pack4'],
  seals: ['bentoniteGranules', 'bentonitePellets', 'cement', 'clay', 'cuttings'],
  lifts: ['rope', 'direct', 'deepwell', 'suction'] as never,
  bits_mm: [100, 125, 150],
  pumps: [],
  people: 100,
};

export const wellScenario = (options: RigOptions = {}): Scenario => ({ ...rigScenario(options), well: FULL_KIT });

/** Screen in the lower part of a hole of depth_m. */
export function plainPlan(depth_m: number, change: Partial<WellPlan> = {}): WellPlan {
  return {
    casing: 'pvc63',
    screenFrom_m: depth_m - 3.5,
    screenTo_m: depth_m - 0.5,
    sump_m: 0.3,
    slotWidth_mm: 0.8,
    slotRows: 3,
    slotArc_mm: 40,
    slotSpacing_mm: 10,
    cloth: 'none',
    cap: true,
    centralisers: 4,
    pack: 'pack1',
    packTop_m: depth_m - 4.5,
    seal: 'bentoniteGranules',
    sealFrom_m: 1,
    sealTo_m: 4,
    stickUp_m: 0.5,
    ...change,
  };
}

/** Waits until nobody is busy. */
export const idle = (run: Run, most = 100_000): void => until(run, ({ state }) => state.tasks.length === 0, most);

/** With the flow on, digs the sand out of the pit and fills it up again, as far as may be. */
function tendPit(run: Run): void {
  for (const chamber of ['settling', 'suction']) {
    if (act(run, 'digOutPit', { chamber, spoil_L: 40 }).kind === 'done') idle(run);
  }
  const { settling, suction } = run.state.pit;
  const missing_L = Math.floor(1000 * (0.85 - settling.water_m3 - suction.water_m3));
  if (missing_L >= 5 && act(run, 'addWater', { water_L: Math.min(missing_L, 500) }).kind === 'done') idle(run);
}

/** Drilled in ground of one kind with soaked polymer, run clean, drilling stopped; the stem hangs a little above the bottom. */
export function drilledOut(depth_m: number, options: RigOptions = {}, dose_g = 1200): Run {
  const run = createRun(wellScenario({ layers: oneSoil('mediumSand'), waterTable_m: 2, powder_kg: 40, ...options }));
  if (dose_g > 0) does(run, 'addAdditive', { additive: 'polymer', mass_g: dose_g, manner: 'sprinkled' });
  steps(run, 1200);
  for (;;) {
    drillRod(run, 0.5);
    const done = run.state.hole.depth_m >= depth_m - 0.01;
    clearHole(run, done ? 240 : 60);
    if (!done && dose_g > 0) does(run, 'addAdditive', { additive: 'polymer', mass_g: dose_g / 8, manner: 'sprinkled' });
    idle(run);
    if (done) break;
    tendPit(run);
    nextRod(run);
  }
  does(run, 'setTurning', { on: false });
  does(run, 'setThrottle', { throttle_frac: 0 });
  steps(run, 2);
  does(run, 'stopDrilling');
  return run;
}

export function pulledOut(run: Run, topUp = true): Run {
  does(run, 'pullOut', { speed_ms: 0.15, topUp });
  idle(run);
  return run;
}

/** Joins all pieces and lets the last joint set. */
export function joinAll(run: Run): void {
  while (act(run, 'joinCasing', {}).kind === 'done') idle(run);
  steps(run, CASINGS[run.state.completion.plan!.casing].jointSets_s);
}
