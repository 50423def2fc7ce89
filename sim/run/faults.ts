// Things go wrong: at their moment, if they can. The engine and the hose fail under load only, a tool falls into an open hole only.

import { FAULT, type FaultName } from '../materials/faults';
import { casingInHole } from './casingPlace';
import { COME, UNKNOWN, type FaultFigures, type ScheduledFault } from './faultState';
import { busyHands, handsThere } from './hands';
import type { RefusalKey } from './names';
import type { Run } from './run';
import { tell } from './tell';

/** Why it cannot happen now, or null. */
export function faultBar(run: Run, fault: FaultName): RefusalKey | null {
  const { faults, pump } = run.state;
  switch (fault) {
    case 'pumpStops':
      return pump.throttle_frac > 0 ? null : 'pumpNotRunning';
    case 'hoseBursts':
      if (faults.hoseLost_frac > 0) return 'faultThere';
      return pump.flow_m3s > 0 ? null : 'pumpNotRunning';
    case 'lostTool':
      if (faults.tool) return 'faultThere';
      return casingInHole(run.state) ? 'casingInHole' : null;
    case 'helperAway':
      return faults.helperBack_tick > 0 ? 'faultThere' : null;
    default:
      return null;
  }
}

/** Whoever goes lets go of rope and stem; what is in hand is ended first. */
function letGo(run: Run): void {
  const { stem } = run.state;
  if (busyHands(run) > handsThere(run)) stem.feed_frac = 0;
  if (busyHands(run) > handsThere(run)) stem.turning = false;
}

/** It happens, in the middle of whatever goes on. */
export function strike(run: Run, fault: FaultName, { share_frac, rain_mmh, time_s }: FaultFigures): void {
  const { faults, pump, tick, hole } = run.state;
  switch (fault) {
    case 'pumpStops':
      pump.throttle_frac = 0;
      faults.engineDead = true;
      tell(run, 'engineStopped', {});
      return;
    case 'hoseBursts':
      faults.hoseLost_frac = share_frac ?? FAULT.hose_frac;
      tell(run, 'hoseBurst', { share_frac: faults.hoseLost_frac });
      return;
    case 'rainFills':
      // The tick has still to be counted on: the rain falls from the next second.
      faults.rain_mmh = rain_mmh ?? FAULT.rain_mmh;
      faults.rainEnd_tick = tick + 1 + (time_s ?? FAULT.rain_s);
      return;
    case 'lostTool':
      faults.tool = true;
      tell(run, 'toolDropped', { depth_m: hole.depth_m });
      return;
    case 'weakPowder':
      faults.powder_frac = share_frac ?? FAULT.powder_frac;
      tell(run, 'powderWeak', { share_frac: faults.powder_frac });
      return;
    default:
      faults.helperBack_tick = tick + 1 + (time_s ?? FAULT.away_s);
      letGo(run);
      tell(run, 'helperGone', {});
  }
}

/** Is the moment of a scheduled fault here? Its tick is written down when what it waits for has happened. */
function isDue(run: Run, { at }: ScheduledFault, i: number): boolean {
  const { faults, tick, recent, hole } = run.state;
  if ('depth_m' in at) return hole.depth_m >= at.depth_m;
  if ('after' in at && faults.due[i] === UNKNOWN && recent.some(({ name }) => name === at.after))
    faults.due[i] = tick + at.delay_s;
  return faults.due[i] !== UNKNOWN && tick >= faults.due[i];
}

/** One second of what may go wrong and of what passes by itself. Costs nothing where nothing is wrong. */
export function workFaults(run: Run): void {
  const { faults, tick } = run.state;
  if (faults.left > 0) {
    run.scenario.faults!.forEach((one, i) => {
      if (faults.due[i] === COME || !isDue(run, one, i) || faultBar(run, one.fault) !== null) return;
      faults.due[i] = COME;
      faults.left -= 1;
      strike(run, one.fault, one);
    });
  }
  if (faults.rain_mmh > 0 && tick >= faults.rainEnd_tick) faults.rain_mmh = 0;
  if (faults.helperBack_tick > 0 && tick >= faults.helperBack_tick) {
    faults.helperBack_tick = 0;
    tell(run, 'helperBack', {});
  }
}
