// A rig for the well: a hole that is drilled and run clean, a plan that fits it, a driver down to the set casing.
import { does, rigScenario, steps, until, type RigOptions } from './rig';
import { openLedger } from '../sim/run/ledger';
import {
  act,
  CASINGS,
  createRun,
  DEFAULT_KIT,
  restoreRun,
  snapshotOf,
  SOAKED,
  type Snapshot,
  WELL_PUMP_NAMES,
  type Run,
  type Scenario,
  type WellPlan,
} from '../sim';

/** Soaked powder in the fluid, g/L: a working fluid. */
const DOSE_gL = 1.3;

/** All there is to choose from. */
export const FULL_KIT: NonNullable<Scenario['well']> = {
  casings: ['pvc50', 'pvc63', 'pvc63thin', 'pvc110'],
  cloths: ['fine', 'medium', 'coarse'],
  packs: ['pack04', 'pack07', 'pack1', 'pack2', 'pack4'],
  seals: ['bentoniteGranules', 'bentonitePellets', 'cement', 'clay', 'cuttings'],
  lifts: WELL_PUMP_NAMES,
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

/**
 * A hole as if just drilled with soaked polymer: full, the pit full, the stem hanging over the bottom, the well planned, drilling stopped.
 * With a plan of null there is none.
 */
export function drilledOut(depth_m: number, change: Partial<WellPlan> | null = {}, options: RigOptions = {}): Run {
  const scenario = wellScenario({
    layers: CLAY_OVER_SAND,
    waterTable_m: 2,
    starter_m: depth_m,
    rods: Math.ceil(depth_m / DEFAULT_KIT.rodLength_m),
    ...options,
  });
  const run = createRun(scenario);
  const { hole, stem, pit } = run.state;
  stem.bit_m = depth_m - 0.1;
  hole.water_m3 = hole.shortfall_m3 - (Math.PI / 4) * DEFAULT_KIT.rodOutside_m * DEFAULT_KIT.rodOutside_m * stem.bit_m;
  hole.shortfall_m3 = 0;
  for (let i = 0; i < hole.used; i++)
    hole.dissolved_kg[SOAKED * hole.cells + i] = (DOSE_gL * hole.water_m3) / hole.used;
  for (const chamber of [pit.settling, pit.suction]) chamber.dissolved_kg[SOAKED] = DOSE_gL * chamber.water_m3;
  openLedger(run.state);
  does(run, 'stopDrilling');
  if (change) does(run, 'planWell', { ...plainPlan(depth_m, change) });
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

/** While the other man is busy, and for so long after, one keeps the hole full. */
export function keptFull(run: Run, time_s = 0): void {
  for (let s = 0; s < 20_000 && run.state.tasks.some(({ action }) => action !== 'topUp'); s++) wait(run, 1, true);
  wait(run, time_s, true);
  idle(run);
}

/** Joins all pieces and lets the last joint set, while the other man keeps the hole full, if asked. */
export function joinAll(run: Run, topUp = true): void {
  while (act(run, 'joinCasing', {}).kind === 'done') wait(run, 302, topUp);
  wait(run, CASINGS[run.state.completion.plan!.casing].jointSets_s, topUp);
  idle(run);
}

const frozen = new Map<string, { scenario: Scenario; snapshot: Snapshot }>();

/** A casing landed in 9 m of hole that was kept full; each plan is played once and brought back for every further test. */
export function landed(change: Partial<WellPlan> = {}, options: RigOptions = {}): Run {
  const name = JSON.stringify([change, options]);
  if (!frozen.has(name)) {
    const run = drilledOut(9, change, options);
    joinAll(run);
    pulledOut(run);
    does(run, 'runCasing', { fill: true, speed_ms: 0.1 });
    idle(run);
    if (run.state.completion.casing.look !== 'landed') throw new Error('The casing has not landed.');
    frozen.set(name, { scenario: run.scenario, snapshot: snapshotOf(run) });
  }
  const { scenario, snapshot } = frozen.get(name)!;
  return restoreRun(scenario, snapshot);
}
