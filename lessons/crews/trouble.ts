// What a competent crew does when something has gone wrong: a stuck or stalled stem, a packed bit, a shut strainer. Shared by the crews that know better.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { busyWith, mayTry, type Patience } from './patience';

export interface Trouble {
  /** Job second at which the stem was last lifted off a stall, or -1. */
  since_s: number;
  lifts: number;
  /** Job second at which the bit was felt to be packed with clay, or -1, and whether it was lifted since. */
  balled_s: number;
  balledLift: boolean;
  /** The strainer is to be cleared; job second at which it last was, or -1. */
  strainerDue: boolean;
  strainer_s: number;
}

/** A packed bit hangs off the bottom in the stream no longer than this, s. */
const UNBALL_CAP_s = 240;
/** A strainer cleared so lately is not what ails the pump, s: then sand is dug from under it. */
const CLEARED_LATELY_s = 300;

export function createTrouble(): Trouble {
  return { since_s: -1, lifts: 0, balled_s: -1, balledLift: false, strainerDue: false, strainer_s: -1 };
}

/** The act against the trouble, null to wait for one under way, undefined when there is none. */
export function troubleDeed(trouble: Trouble, patience: Patience, senses: Senses): Deed | null | undefined {
  const { stem, pump } = senses;
  // The strainer is in somebody's hands: nothing that could start the flow.
  if (busyWith(senses, 'clearStrainer')) return null;
  if (stem.pull === 'stuck') return workFree(patience, senses);
  if (trouble.strainerDue || pump.sound === 'gulping' || pump.sound === 'labouring') {
    const deed = strainer(trouble, patience, senses);
    if (deed !== undefined) return deed;
  }
  if (stem.torque === 'stalled') {
    if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
    if (busyWith(senses, 'lift') || senses.hands.free < 1) return null;
    if (stem.bit_m > 0.5 && mayTry(patience, senses, 'lift')) {
      trouble.lifts++;
      trouble.since_s = senses.time_s;
      patience.notBefore_s.lift = senses.time_s + 12;
      return does('lift', { distance_m: 0.2, speed_ms: 0.05 });
    }
    return null;
  }
  return unball(trouble, patience, senses);
}

/** A stuck stem is worked with the flow on and nothing turning. */
function workFree(patience: Patience, senses: Senses): Deed | null {
  const { stem, pump } = senses;
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (stem.turning) return does('setTurning', { on: false });
  if (busyWith(senses, 'workStem') || busyWith(senses, 'addRod') || busyWith(senses, 'prime')) return null;
  if (!pump.primed) {
    if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
    return senses.hands.free >= 1 && mayTry(patience, senses, 'prime') ? does('prime') : null;
  }
  if (pump.throttle_frac === 0)
    return mayTry(patience, senses, 'setThrottle') ? does('setThrottle', { throttle_frac: 1 }) : null;
  return senses.hands.free >= 2 && mayTry(patience, senses, 'workStem') ? does('workStem', { time_s: 60 }) : null;
}

/** A packed bit is lifted into the stream until it is clean again. */
function unball(trouble: Trouble, patience: Patience, senses: Senses): Deed | null | undefined {
  if (senses.felt.includes('balled')) {
    trouble.balled_s = senses.time_s;
    trouble.balledLift = false;
  }
  if (trouble.balled_s < 0) return undefined;
  if (senses.felt.includes('unballed') || senses.time_s - trouble.balled_s > UNBALL_CAP_s || !senses.pump.primed) {
    trouble.balled_s = -1;
    return undefined;
  }
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (trouble.balledLift) return null;
  if (senses.hands.free < 1 || !mayTry(patience, senses, 'lift')) return null;
  trouble.balledLift = true;
  return does('lift', { distance_m: 0.3, speed_ms: 0.05 });
}

/** The strainer is cleared with the flow stopped, so that no air gets in. When that did not help for long, sand is dug from round it. */
function strainer(trouble: Trouble, patience: Patience, senses: Senses): Deed | null | undefined {
  if (busyWith(senses, 'digOutPit')) return null;
  const lately =
    !trouble.strainerDue && trouble.strainer_s >= 0 && senses.time_s - trouble.strainer_s < CLEARED_LATELY_s;
  if (lately) {
    if (senses.hands.free < 1 || !mayTry(patience, senses, 'digOutPit')) return undefined;
    patience.notBefore_s.digOutPit = senses.time_s + CLEARED_LATELY_s;
    return does('digOutPit', { chamber: 'suction', spoil_L: 20 });
  }
  trouble.strainerDue = true;
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (senses.pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  if (senses.hands.free < 1 || !mayTry(patience, senses, 'clearStrainer')) return null;
  trouble.strainerDue = false;
  trouble.strainer_s = senses.time_s;
  return does('clearStrainer');
}
