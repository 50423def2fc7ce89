// One run from a drilled hole to the hand-over, and where its phases begin: for tests of what must hold at any moment of a well.
import { restoreRun, snapshotOf, step, type LogEntry, type Run, type Scenario, type Snapshot } from '../../../sim';
import { does } from '../../rig';
import { drilledOut, idle, joinAll, keptFull, pulledOut } from '../../wellRig';
import { playOn } from '../random/crew';

export type Phase = 'joining' | 'casing' | 'packing' | 'sealing' | 'developing' | 'testing' | 'finishing';
export const PHASES: readonly Phase[] = [
  'joining',
  'casing',
  'packing',
  'sealing',
  'developing',
  'testing',
  'finishing',
];

const DEPTH_m = 9;

/** Stem out, plan made, nothing joined. */
export const beforeCasing = (): Run => {
  const run = drilledOut(DEPTH_m, { slotWidth_mm: 0.5, sealFrom_m: 0, sealTo_m: 4 }, { seed: 3 });
  run.state.stocks.chlorine_kg = 4;
  return pulledOut(run);
};

const waited = (run: Run): void => {
  while (run.state.wait) step(run);
};

/** What is done in each phase. */
const DEEDS: Readonly<Record<Phase, (run: Run) => void>> = {
  joining: (run) => joinAll(run),
  casing(run) {
    does(run, 'runCasing', { fill: true, speed_ms: 0.1 });
    keptFull(run);
  },
  packing(run) {
    does(run, 'pourPack', { pack: 'pack1', volume_L: 22, rate_Lmin: 2 });
    keptFull(run, 120);
    does(run, 'sound');
    idle(run);
  },
  sealing(run) {
    does(run, 'placeSeal', { seal: 'bentoniteGranules', volume_L: 12, rate_Lmin: 2 });
    keptFull(run, 120);
    does(run, 'waitFor', { until: 'set', cap_s: 3600 });
    waited(run);
  },
  developing(run) {
    does(run, 'breakPolymer', { dose_mgL: 1000, contact_s: 1800 });
    idle(run);
    does(run, 'develop', { method: 'surge', time_s: 1200 });
    idle(run);
    does(run, 'develop', { method: 'bail', time_s: 300 });
    idle(run);
  },
  testing(run) {
    does(run, 'dipWell');
    idle(run);
    does(run, 'yieldTest', { lift: 'suction', rate1_Lmin: 5, step_s: 900, recovery_s: 900 });
    idle(run);
  },
  finishing(run) {
    does(run, 'headWorks', { apron_m: 1.5, drain_m: 4, cap: true, lift: 'suction' });
    idle(run);
    does(run, 'disinfect', { dose_mgL: 75, contact_s: 1200 });
    idle(run);
    does(run, 'record', { field: 'driller', text: 'crew 4' });
    does(run, 'handOver');
  },
};

export interface Stretch {
  readonly phase: Phase;
  readonly from_tick: number;
  readonly to_tick: number;
}

/** A well made from beginning to end, so that any moment of it can be gone back to. */
export interface WholeWell {
  readonly scenario: Scenario;
  /** As text: the hole before the first joint. */
  readonly start: string;
  readonly log: readonly LogEntry[];
  readonly stretches: readonly Stretch[];
  readonly run: Run;
}

export const copyOf = (run: Run): Run =>
  restoreRun(run.scenario, JSON.parse(JSON.stringify(snapshotOf(run))) as Snapshot);

export function wholeWell(): WholeWell {
  const before = beforeCasing();
  const start = JSON.stringify(snapshotOf(before));
  const run = restoreRun(before.scenario, JSON.parse(start) as Snapshot);
  const stretches = PHASES.map((phase): Stretch => {
    const from_tick = run.state.tick;
    DEEDS[phase](run);
    return { phase, from_tick, to_tick: run.state.tick };
  });
  return { scenario: run.scenario, start, log: run.log, stretches, run };
}

/** The well at each of the ticks, in rising order: what was done in a tick is done in it. */
export function wellAt({ scenario, start, log }: WholeWell, ticks: readonly number[]): Run[] {
  const run = restoreRun(scenario, JSON.parse(start) as Snapshot);
  let done = 0;
  return ticks.map((tick) => {
    const entries = log.filter(([at], n) => n >= done && at <= tick);
    done += entries.length;
    playOn(run, entries, tick);
    return copyOf(run);
  });
}
