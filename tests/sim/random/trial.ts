// One random run with all that is asked of it: sound at every look, the same on replay, the same from a snapshot on the way.
import { hashRun, replayRun, restoreRun, snapshotOf, type MachineValue, type Snapshot } from '../../../sim';
import { playOn, playRandom } from './crew';
import { randomJob } from './jobs';
import { unsound } from './sound';
import { countEvents, countModes, createTally, noteModes, type Tally } from './tally';

export interface Trial {
  readonly tally: Tally;
  /** The first thing that went wrong, in words, or null. */
  readonly fault: string | null;
}

/** Seconds between two looks at the whole state. */
const LOOK_EVERY_s = 50;
/** How far the bottom may come up in a second, m: none. Only pulling and fill may raise the bit, and neither fills the hole drilled. */
const RISES_m = 1e-9;

export interface TrialOptions {
  readonly ticks: number;
  readonly replay: boolean;
  readonly restore: boolean;
}

/** Random run number n. */
export function trial(n: number, { ticks, replay, restore }: TrialOptions): Trial {
  const scenario = randomJob(n);
  const tally = createTally();
  const modes = new Set<string>();
  const snapshotTick = 1 + ((n * 7919) % ticks);
  let snapshot: { text: string; entries: number } | null = null;
  let fault: string | null = null;
  let machine: MachineValue | null = null;
  const { opening } = scenario;
  let holeNumber = 1;
  let depth_m = opening.starter_m;
  const { run, tried, taken } = playRandom(scenario, `random ${n}`, ticks, (now) => {
    const { state } = now;
    if (state.machine !== machine) noteModes(modes, now);
    machine = state.machine;
    if (state.holeNumber !== holeNumber) tally.drilled_m += depth_m - opening.starter_m;
    else if (state.hole.depth_m < depth_m - RISES_m) fault ??= `tick ${state.tick}: the hole has become less deep`;
    holeNumber = state.holeNumber;
    depth_m = state.hole.depth_m;
    if (restore && state.tick === snapshotTick)
      snapshot = { text: JSON.stringify(snapshotOf(now)), entries: now.log.length };
    if (state.tick % LOOK_EVERY_s !== 0 || fault !== null) return;
    const found = unsound(now);
    if (found) fault = `tick ${state.tick}: ${found}`;
  });
  const hash = hashRun(run);
  if (replay && hashRun(replayRun(scenario, run.log, run.state.tick)) !== hash) fault ??= 'a replay differs';
  if (snapshot !== null) {
    const { text, entries } = snapshot as { text: string; entries: number };
    const later = restoreRun(scenario, JSON.parse(text) as Snapshot);
    playOn(later, run.log.slice(entries), run.state.tick);
    if (hashRun(later) !== hash) fault ??= `a snapshot of tick ${snapshotTick} leads elsewhere`;
  }
  tally.tried = tried;
  tally.taken = taken;
  tally.ticks = run.state.tick;
  tally.drilled_m += depth_m - opening.starter_m;
  countEvents(tally, run);
  countModes(tally, modes);
  return { tally, fault };
}
