// Whatever a crew does: nothing negative, nothing infinite, everything balanced, and the same again on replay.
import { expect, it } from 'vitest';
import { hashRun, ledgerOf, replayRun, sensesOf, type Run } from '../../../sim';
import { rigScenario, type RigOptions } from '../../rig';
import { playRandom } from './randomLog';

const RUNS = 300;
const TICKS = 1200;

const GROUNDS: RigOptions['layers'][] = [
  [
    { kind: 'silt', thickness_m: [0.5, 1] },
    { kind: 'mediumSand', thickness_m: [40, 40] },
  ],
  [
    { kind: 'topsoil', thickness_m: [0.3, 0.6] },
    { kind: 'softClay', thickness_m: [0.5, 2] },
    { kind: 'coarseSand', thickness_m: [40, 40] },
  ],
  [
    { kind: 'fineSand', thickness_m: [0.5, 1] },
    { kind: 'fineGravel', thickness_m: [0.3, 1] },
    { kind: 'peat', thickness_m: [1, 2] },
    { kind: 'stiffClay', thickness_m: [40, 40] },
  ],
];

function expectSound({ state }: Run): void {
  const { hole, pit, fill, stem, pump, stocks } = state;
  const none = (list: Float64Array, least: number): boolean => list.every((v) => v >= least && v - v === 0);
  const stores = [hole.solids_m3, hole.moment_m4, hole.dissolved_kg, hole.bed_m3, hole.bedMoment_m4, hole.radius_m];
  const chambers = [pit.settling, pit.suction];
  for (const list of [...stores, fill.water_m3, fill.solids_m3, fill.dissolved_kg]) expect(none(list, 0)).toBe(true);
  for (const c of chambers) {
    expect(none(c.solids_m3, 0) && none(c.deposit_m3, 0) && none(c.dissolved_kg, 0)).toBe(true);
    expect(Math.min(c.water_m3, c.clumps_kg)).toBeGreaterThanOrEqual(0);
  }
  expect(Math.min(hole.water_m3, hole.shortfall_m3, fill.void_m3)).toBeGreaterThanOrEqual(0);
  expect(stem.bit_m).toBeGreaterThanOrEqual(0);
  expect(stem.bit_m).toBeLessThanOrEqual(hole.depth_m + 1e-9);
  expect(pump.flow_m3s).toBeGreaterThanOrEqual(0);
  expect(Math.min(stocks.water_L, stocks.powder_kg, stocks.petrol_L)).toBeGreaterThanOrEqual(0);
}

it(`${RUNS} random runs of ${TICKS / 60} job minutes keep every invariant`, { timeout: 300_000 }, () => {
  let tried = 0;
  let taken = 0;
  let deepest_m = 0; // drilled below the starter hole
  const told = new Set<string>();
  for (let n = 0; n < RUNS; n++) {
    const scenario = rigScenario({
      seed: n,
      layers: GROUNDS[n % GROUNDS.length],
      maxDepth_m: 12,
      rods: 1 + (n % 3),
      starter_m: (n % 2 === 0 ? 0.3 : 1.2) + 1.5 * (n % 3),
    });
    let depth_m = scenario.opening.starter_m;
    const played = playRandom(scenario, `random ${n}`, TICKS, (run) => {
      expect(run.state.hole.depth_m).toBeGreaterThanOrEqual(depth_m);
      depth_m = run.state.hole.depth_m;
      if (run.state.tick % 50 !== 0) return;
      expectSound(run);
      const { water, solids, polymer } = ledgerOf(run);
      expect(Math.max(water, solids, polymer), `run ${n}, tick ${run.state.tick}`).toBeLessThanOrEqual(1e-9);
      const senses = sensesOf(run);
      expect(senses.hands.free).toBeGreaterThanOrEqual(0);
      expect(senses.hands.free).toBeLessThanOrEqual(senses.hands.total);
    });
    tried += played.tried;
    taken += played.taken;
    deepest_m = Math.max(deepest_m, depth_m - scenario.opening.starter_m);
    for (const event of played.run.record.events) told.add(event.name);
    if (n % 10 === 0) expect(hashRun(replayRun(scenario, played.run.log, TICKS))).toBe(hashRun(played.run));
  }
  // The runs must get somewhere, or they prove nothing.
  expect(taken / tried).toBeGreaterThan(0.4);
  expect(deepest_m).toBeGreaterThan(1);
  for (const name of [
    'flowStarted',
    'flowStopped',
    'primeLost',
    'rodAdded',
    'sampleCaught',
    'buried',
    'soaked',
    'refused',
    'layerChanged',
    'clear',
  ]) {
    expect([...told]).toContain(name);
  }
});
