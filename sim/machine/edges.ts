// Which machine events the signals call for, given the modes of the last second. Tested first, so that the machine is called only when something changes.

import type { MachineEvent, MachineValue, StemMode } from './machine';
import type { Signals } from './signals';

/** Returns count as none below LOST_frac and as full above FULL_frac; the gap between rising and falling limits keeps them from flickering. */
export const LOST_frac = 0.1;
export const FULL_frac = 0.85;
const SLACK_frac = 0.03;

/** Soaked share of the powder from which the fluid is ready; soaked dose below which it is thin, as a share of the working dose; rotted share from which it is spent. ASSUMED: a crew feels about half a dose as thin. */
export const READY_SOAKED_frac = 0.9;
export const THIN_DOSE_ratio = 0.4;
export const SPENT_frac = 0.75;

function stemLooks(s: Signals): StemMode {
  if (s.stuck) return 'stuck';
  if (s.tight) return 'tight';
  if (s.out) return 'out';
  return s.turning ? (s.onBottom ? 'onBottom' : 'turning') : 'hanging';
}

/** A stem goes tight before it is stuck, and hangs between tight and out: what happens at once takes two seconds. */
function stemWanted(now: StemMode, s: Signals): MachineEvent | null {
  if (now === 'stuck') return s.stuck ? null : 'stemFreed';
  let wanted = stemLooks(s);
  if (wanted === 'stuck' && now !== 'tight') wanted = 'tight';
  if ((wanted === 'tight' && now === 'out') || (wanted === 'out' && now === 'tight')) wanted = 'hanging';
  if (wanted === now) return null;
  switch (wanted) {
    case 'stuck':
      return 'stemStuck';
    case 'tight':
      return 'stemTight';
    case 'onBottom':
      return 'stemOnBottom';
    case 'turning':
      return 'stemTurns';
    case 'out':
      return 'stemOut';
    default:
      return 'stemHangs';
  }
}

function pumpWanted(now: MachineValue['pump'], s: Signals): MachineEvent | null {
  switch (now) {
    case 'stopped':
      if (s.priming) return 'primeBegins';
      return s.primed && s.throttleUp ? 'pumpRuns' : null;
    case 'priming':
      return s.priming ? null : 'primeEnds';
    case 'running':
      if (!s.primed) return 'primeLost';
      if (!s.throttleUp) return 'pumpStops';
      return s.strainerShut ? 'strainerBlocked' : null;
    case 'blocked':
      if (!s.primed) return 'primeLost';
      // Cleared under a running pump it has let in air; cleared otherwise, the throttle was down.
      return s.throttleUp ? null : 'pumpStops';
    default:
      return s.priming ? 'primeBegins' : null;
  }
}

function returnsWanted(now: MachineValue['returns'], s: Signals): MachineEvent | null {
  const share = s.flowing ? s.returns_frac : 0;
  const lost = LOST_frac + (now === 'none' ? SLACK_frac : -SLACK_frac);
  const full = FULL_frac + (now === 'full' ? -SLACK_frac : SLACK_frac);
  const wanted = share < lost ? 'none' : share > full ? 'full' : 'partial';
  if (wanted === now) return null;
  // The stream swells before it is full.
  if (wanted === 'none') return 'returnsNone';
  return wanted === 'full' && now === 'partial' ? 'returnsFull' : 'returnsPartial';
}

function holeWanted(now: MachineValue['hole'], s: Signals): MachineEvent | null {
  if (s.holeClosed) return now === 'closed' ? null : 'holeCloses';
  if (s.sloughing) return now === 'sloughing' ? null : 'holeSloughs';
  return now === 'standing' ? null : 'holeStands';
}

function fluidWanted(now: MachineValue['fluid'], s: Signals): MachineEvent | null {
  if (now === 'water' || now === 'spent') return s.powder && s.soaked_frac < READY_SOAKED_frac ? 'powderIn' : null;
  if (s.soaked_frac < READY_SOAKED_frac - SLACK_frac) return now === 'soaking' ? null : 'powderIn';
  if (s.soaked_frac < READY_SOAKED_frac) return null;
  const limit = THIN_DOSE_ratio + (now === 'thin' ? SLACK_frac : -SLACK_frac);
  // Thin for want of powder, or because what was put in has rotted.
  if (s.dose_ratio < limit && s.rotted_frac > SPENT_frac) return 'fluidSpent';
  if (s.dose_ratio < limit) return now === 'thin' ? null : 'fluidThinned';
  return now === 'ready' ? null : 'powderSoaked';
}

/** Collects the events that the signals call for into out and returns their number; nothing is allocated. */
export function edgesInto(out: MachineEvent[], value: MachineValue, s: Signals): number {
  let count = 0;
  const pump = pumpWanted(value.pump, s);
  if (pump) out[count++] = pump;
  if (value.job === 'siteSetup' && s.turning) out[count++] = 'firstTurn';
  const stem = stemWanted(value.stem, s);
  if (stem) out[count++] = stem;
  const hole = holeWanted(value.hole, s);
  if (hole) out[count++] = hole;
  const returns = returnsWanted(value.returns, s);
  if (returns) out[count++] = returns;
  const fluid = fluidWanted(value.fluid, s);
  if (fluid) out[count++] = fluid;
  return count;
}
