// How a crew brings the casing down: glue, pull, run, work what hangs.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { busyWith, mayTry, type Patience } from './patience';
import type { WellMemory } from './wellMemory';
import { STYLES } from './wellStyle';

/** An act that is refused so often is left, and the next begun. */
const TRIES = 5;
/** The casing is let down at most so often before it counts as hung. */
const RUNS = 12;
/** Goes at a stuck stem before the hole is given up. */
const WORK_STEM = 20;

/** Counts a try of an act; false when it has been tried too often. */
export function tryAgain(memory: WellMemory, step: string): boolean {
  memory.tries[step] = (memory.tries[step] ?? 0) + 1;
  return memory.tries[step]! <= TRIES;
}

/** One joint more; undefined when all are glued. */
export function joinDeed(patience: Patience, senses: Senses): Deed | null | undefined {
  const { casing } = senses.well!;
  if (casing.joined >= casing.pieces) return undefined;
  if (busyWith(senses, 'joinCasing') || senses.hands.free < 1 || !mayTry(patience, senses, 'joinCasing')) return null;
  return does('joinCasing');
}

/** A stem that the hole holds is worked with the flow on; what does not come is given up with the hole. */
function freeDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | null {
  const { pump } = senses;
  if (pump.primed && pump.throttle_frac === 0 && mayTry(patience, senses, 'setThrottle'))
    return does('setThrottle', { throttle_frac: 1 });
  if (senses.hands.free < 2 || !mayTry(patience, senses, 'workStem')) return null;
  memory.tries.workStem = (memory.tries.workStem ?? 0) + 1;
  return memory.tries.workStem > WORK_STEM ? does('abandon') : does('workStem', { time_s: 120 });
}

/** Pulling, gluing, running, working; undefined once the casing is where it will stay. */
export function casingDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | null | undefined {
  const style = STYLES[memory.style];
  const { casing } = senses.well!;
  if (casing.look === 'landed' || casing.look === 'set') return undefined;
  if (style.joinsFirst || memory.pulled) {
    const join = joinDeed(patience, senses);
    if (join !== undefined) return join;
  }
  if (!memory.pulled && senses.stem.pull === 'stuck') return freeDeed(memory, patience, senses);
  if (!memory.pulled) {
    // Rods are pulled with everything at rest.
    if (senses.pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
    if (!mayTry(patience, senses, 'pullOut')) return null;
    if (senses.stem.rods === 0 || !tryAgain(memory, 'pullOut')) memory.pulled = true;
    return does('pullOut', { ...style.pull });
  }
  if (casing.look === 'hung') {
    if (memory.works >= style.works) return undefined;
    if (!mayTry(patience, senses, 'workCasing')) return null;
    memory.works++;
    return does('workCasing', { time_s: style.work_s });
  }
  if (memory.runs >= RUNS) return undefined;
  if (!mayTry(patience, senses, 'runCasing')) return null;
  memory.runs++;
  const fill = style.run.fill || casing.look === 'floating';
  return does('runCasing', { fill, speed_ms: style.run.speed_ms });
}
