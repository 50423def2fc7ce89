// The way from the hole to the well, walked: casing, ring, washing, test and hand-over, with all that is refused on it.
import { describe, expect, it } from 'vitest';
import { restoreRun, snapshotOf, type ActionName, type Payload, type Run } from '../../../sim';
import { oneSoil, type RigOptions } from '../../rig';
import { packedAndSealed, setWell } from '../../setWell';
import { drilledOut, FULL_KIT, plainPlan } from '../../wellRig';
import { Walk, walkOn } from './walk';

/** A hole of six metres whose wall stands and drinks nothing. */
const DEPTH_m = 6;
const CLAY: RigOptions = { layers: oneSoil('firmClay'), waterTable_m: 1 };
const plan = (change = {}): Payload => ({ ...plainPlan(DEPTH_m), sealFrom_m: 0.2, sealTo_m: 1.2, ...change });
const RUN_IN: Payload = { fill: true, speed_ms: 0.1 };
const PULL: Payload = { speed_ms: 0.15, topUp: true };
const SIZE: Payload = { settling_m3: 0.3, suction_m3: 0.3, channel_m: 1 };
const PACK: Payload = { pack: 'pack1', volume_L: 1, rate_Lmin: 2 };
const SEAL: Payload = { seal: 'bentoniteGranules', volume_L: 1, rate_Lmin: 2 };
const BAIL: Payload = { method: 'bail', time_s: 60 };
const OVER_PUMP: Payload = { method: 'overPump', time_s: 600 };
const TEST: Payload = { lift: 'suction', rate1_Lmin: 5, step_s: 60, recovery_s: 0 };
const APRON: Payload = { apron_m: 1, drain_m: 2, cap: true, lift: 'suction' };

/** The same run with a second ground to move on to. */
function withNext(run: Run): Run {
  const { ground } = run.scenario;
  return restoreRun({ ...run.scenario, grounds: [ground, ground] }, snapshotOf(run));
}

/** So much loose sand falls to the bottom of a full hole. */
function slump({ run }: Walk, fill_m: number): void {
  const { hole, boundary } = run.state;
  const sand_m3 = Math.PI * 0.05 * 0.05 * fill_m * 0.55;
  hole.bed_m3[3] += sand_m3;
  hole.water_m3 -= sand_m3;
  boundary.solidsIn_m3[3] += sand_m3;
  boundary.waterOut_m3 += sand_m3;
}

/** Rods out, all joined; with joints that have set or not. */
function joined(change: Payload, set: boolean): Walk {
  const walk = new Walk(drilledOut(DEPTH_m, null, CLAY)).do('planWell', plan(change)).do('pullOut', PULL).idle();
  for (let piece = 0; piece < 3; piece++) walk.do('joinCasing').idle();
  return set ? walk.wait({ time_s: 3600 }) : walk;
}

function theSite(): void {
  const pit = { setOut: true, pit_L: 0 };
  const walk = walkOn(pit, {}, { well: FULL_KIT }).refuses('chooseSite', { spot: 'Z' }, 'noSuchSpot');
  walk.do('chooseSite', { spot: 'A' }).refuses('setOut', { ...SIZE, bit_mm: 80 }, 'notOffered');
  walk.do('setOut', SIZE).refuses('chooseSite', { spot: 'B' }, 'siteSettled').idle();
  walkOn().refuses('planWell', plan(), 'nothingPlanned');
}

function pullingAndJoining(): void {
  const start = walkOn({}, {}, { well: FULL_KIT }).refuses('pullOut', PULL, 'stillDrilling');
  start.do('stopDrilling');
  new Walk(withNext(start.run)).do('abandon', { move: true }).idle();
  const walk = new Walk(drilledOut(DEPTH_m, null, CLAY)).refuses('joinCasing', {}, 'notPlanned');
  walk.refuses('planWell', plan({ casing: 'pvc110' }), 'planBroken').do('planWell', plan());
  walk.refuses('runCasing', RUN_IN, 'stemInHole').refuses('workCasing', { time_s: 60 }, 'casingNotHung');
  walk.refuses('sound', {}, 'casingNotIn').do('pullOut', PULL).idle().refuses('pullOut', PULL, 'noStem');
  walk.refuses('runCasing', RUN_IN, 'nothingJoined').do('joinCasing').idle().do('runCasing', RUN_IN).idle();
  walk.refuses('runCasing', RUN_IN, 'allRun').refuses('addRod', {}, 'casingInHole');
  walk.refuses('planWell', plan({ slotRows: 2 }), 'planDone');
}

function running(): void {
  // Without slots nothing gets in: it floats. Filled, it sinks on a little sand, and is worked down through it.
  const walk = joined({ slotRows: 0 }, true).refuses('joinCasing', {}, 'allJoined');
  slump(walk, 0.35);
  walk.do('runCasing', { ...RUN_IN, fill: false }).idle();
  expect(walk.run.state.completion.casing.look).toBe('floating');
  walk.do('runCasing', RUN_IN).idle().refuses('runCasing', RUN_IN, 'casingHung');
  walk.do('workCasing', { time_s: 120 }).idle();
  expect(walk.run.state.completion.casing.look).toBe('landed');
  walk.do('sound').idle().refuses('joinCasing', {}, 'casingSet');
  // Joints that are loaded before they have set, and then worked hard.
  const hasty = joined({}, false);
  slump(hasty, 0.8);
  hasty.do('runCasing', RUN_IN).idle().do('workCasing', { time_s: 300 }).idle();
  expect(hasty.run.state.completion.casing.snapped).toBe(true);
}

/** From the casing and from each mode after it to every other, on to the next ground, to the hand-over and away. */
function goingBackAndForth(): void {
  const base = withNext(setWell({ depth_m: 10 }));
  const begins: readonly (readonly [string, ActionName, Payload])[] = [
    ['packing', 'pourPack', PACK],
    ['sealing', 'placeSeal', SEAL],
    ['developing', 'develop', BAIL],
    ['testing', 'yieldTest', TEST],
  ];
  const ends: readonly (readonly [string, ActionName, Payload])[] = [
    ['handedOver', 'handOver', {}],
    ['abandoned', 'abandon', {}],
    ['siteSetup', 'abandon', { move: true }],
  ];
  const starts = [base, ...begins.map(([, act, payload]) => new Walk(restored(base)).do(act, payload).idle().run)];
  for (const start of starts)
    for (const [job, act, payload] of [...begins, ...ends]) {
      const walk = new Walk(restored(start)).do(act, payload).idle();
      expect(walk.run.state.machine.job).toBe(job);
    }
}

const restored = (run: Run): Run => restoreRun(run.scenario, snapshotOf(run));

function theRing(): void {
  const walk = new Walk(setWell({ depth_m: 10 })).do('pourPack', { pack: 'pack4', volume_L: 8, rate_Lmin: 6 }).idle();
  walk.do('placeSeal', SEAL).idle().wait({ until: 'set', cap_s: 20_000 }).do('sound').idle();
  const full = new Walk(setWell({ depth_m: 10, fill: [{ from_m: 0, to_m: 10, with: 'cuttings' }] }));
  full.refuses('pourPack', PACK, 'annulusFull');
}

function theWater(): void {
  const walk = new Walk(setWell({ depth_m: 10, fill: packedAndSealed(10), invaded_m: 0.13, dose_ratio: 1 }));
  walk
    .refuses('yieldTest', { ...TEST, lift: 'submersible' }, 'notOffered')
    .do('dipWell')
    .idle();
  walk.do('breakPolymer', { dose_mgL: 1000, contact_s: 21_600 }).idle(30_000);
  walk
    .do('develop', { method: 'surge', time_s: 7200 })
    .idle(8000)
    .do('yieldTest', { ...TEST, step_s: 600 })
    .idle();
  walk.wait({ until: 'recovered', cap_s: 86_400 }).do('disinfect', { dose_mgL: 50, contact_s: 600 }).idle();
  walk.do('headWorks', APRON).idle(20_000).refuses('headWorks', APRON, 'apronDone').do('handOver');
  const deep = new Walk(setWell({ depth_m: 12, waterTable_m: 7.5 })).refuses('yieldTest', TEST, 'tooDeepToLift');
  deep.refuses('develop', OVER_PUMP, 'tooDeepToLift');
  // Tight clay gives next to nothing: bailed empty, there is nothing left to bail.
  const dry = new Walk(setWell({ depth_m: 10, layers: oneSoil('firmClay') }));
  dry.do('yieldTest', { ...TEST, lift: 'deepPiston', rate1_Lmin: 14, step_s: 1800 }).idle();
  dry.refuses('develop', BAIL, 'wellDry');
}

export function walksOfTheWell(): void {
  describe('walks to the well', () => {
    it('the spot, the gear, the plan that nobody asked for', theSite);
    it('pulling out and joining', pullingAndJoining);
    it('running the casing: it floats, hangs, is worked down, stands or snaps', running);
    it('from casing, pack, seal, washing and test to each other and away', goingBackAndForth);
    it('the ring, bridged, sealed, full', theRing);
    it('the water, cleaned, drawn, run dry, handed over', theWater);
  });
}
