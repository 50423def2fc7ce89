// A rig for the well: a hole that is drilled and run clean, a plan that fits it, a driver down to the set casing.
import { clearHole, does, drillRod, nextRod, rigScenario, steps, until, type RigOptions } from './rig';
import { act, CASINGS, createRun, type Run, type Scenario, type WellPlan } from '../sim';

/** Powder for a working fluid in the rig's pit, g. */
const DOSE_g = 1200;

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

/** Three metres of firm clay, sand below: what most wells of the plain are made in. */
const CLAY_OVER_SAND: RigOptions['layers'] = [
  { kind: 'firmClay', thickness_m: [3, 3] },
  { kind: 'mediumSand', thickness_m: [40, 40] },
];

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

/** Drilled with soaked polymer, run clean, the well planned, drilling stopped. The stem hangs a little above the bottom. */
export function drilledOut(depth_m: number, change: Partial<WellPlan> = {}, options: RigOptions = {}): Run {
  const run = createRun(wellScenario({ layers: CLAY_OVER_SAND, waterTable_m: 2, powder_kg: 40, ...options }));
  does(run, 'addAdditive', { additive: 'polymer', mass_g: DOSE_g, manner: 'sprinkled' });
  steps(run, 1200);
  for (;;) {
    drillRod(run, 0.5);
    const done = run.state.hole.depth_m >= depth_m - 0.01;
    clearHole(run, 60);
    if (!done) does(run, 'addAdditive', { additive: 'polymer', mass_g: DOSE_g / 8, manner: 'sprinkled' });
    idle(run);
    tendPit(run);
    if (done) break;
    nextRod(run);
  }
  does(run, 'planWell', { ...plainPlan(run.state.hole.depth_m, change) });
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

/** For so long, if asked, one man keeps the hole full from the pit. */
function wait(run: Run, time_s: number, topUp: boolean): void {
  for (let s = 0; s < time_s; s++) {
    if (topUp && !run.state.tasks.some(({ action }) => action === 'topUp')) act(run, 'topUp', { fluid_L: 20 });
    steps(run, 1);
  }
}

/** Joins all pieces and lets the last joint set, while the other man keeps the hole full, if asked. */
export function joinAll(run: Run, topUp = true): void {
  while (act(run, 'joinCasing', {}).kind === 'done') wait(run, 302, topUp);
  wait(run, CASINGS[run.state.completion.plan!.casing].jointSets_s, topUp);
  idle(run);
}
