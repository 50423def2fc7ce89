// The green crew: all the weight on, no powder, flow off as soon as the rod is down, labels off the rod marks, cautions unread. What a beginner does.

import type { Senses } from '$sim';
import { does, type Crew, type Deed } from './crew';
import { busyWith, createPatience, mayTry, noticeRefusal, remember, type Patience } from './patience';

export interface GreenMemory {
  patience: Patience;
  /** The flow is off for a rod change or for the end. */
  stopping: boolean;
  stuck_s: number;
  sampled: number;
}

const GOAL_m = 4.42;
const ROD_END_m = 0.05;
/** Patience with a stem that will not move, s; and the hour at which the crew goes home, s. */
const STUCK_GIVE_UP_s = 1200;
const HOME_s = 9600;

export function createGreen(): Crew & { readonly memory: GreenMemory } {
  const memory: GreenMemory = { patience: createPatience(), stopping: false, stuck_s: 0, sampled: 0 };
  return { name: 'green', memory, decide: (senses) => remember(memory.patience, senses, decide(memory, senses)) };
}

function decide(memory: GreenMemory, senses: Senses): Deed | null {
  if (senses.ended) return null;
  noticeRefusal(memory.patience, senses);
  const { stem, pump } = senses;
  const stuck = stem.pull === 'stuck';
  memory.stuck_s = stuck ? memory.stuck_s + 1 : 0;
  if (memory.stuck_s > STUCK_GIVE_UP_s || senses.time_s > HOME_s + 600) return does('abandon');
  if (senses.time_s > HOME_s) return finish(memory, senses);
  if (!pump.primed) return prime(memory, senses);
  if (stuck) return pullHard(memory, senses);
  if (memory.stopping) return changeRod(memory, senses);
  if (pump.throttle_frac < 1)
    return mayTry(memory.patience, senses, 'setThrottle') ? does('setThrottle', { throttle_frac: 1 }) : null;
  return drill(memory, senses);
}

function prime(memory: GreenMemory, senses: Senses): Deed | null {
  if (busyWith(senses, 'prime') || busyWith(senses, 'addRod')) return null;
  if (senses.pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  return mayTry(memory.patience, senses, 'prime') ? does('prime') : null;
}

function drill(memory: GreenMemory, senses: Senses): Deed | null {
  const { stem } = senses;
  if (stem.left_m <= ROD_END_m || stem.bottom_m >= GOAL_m) {
    memory.stopping = true;
    return stem.feed_frac > 0 ? does('setFeed', { feed_frac: 0 }) : null;
  }
  if (busyWith(senses, 'catchSample')) return null;
  // Every other rod the tray is forgotten; the label is what the rod marks say at that moment.
  if (stem.rods % 2 === 0 && memory.sampled < stem.rods && stem.left_m < 0.4 && senses.returns.running) {
    if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
    memory.sampled = stem.rods;
    return does('catchSample', { label_m: Math.round(stem.bit_m * 10) / 10 });
  }
  if (!stem.turning) return mayTry(memory.patience, senses, 'setTurning') ? does('setTurning', { on: true }) : null;
  if (stem.torque === 'stalled') {
    if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
    return stem.bit_m > 0.4 && mayTry(memory.patience, senses, 'lift') && !busyWith(senses, 'lift')
      ? does('lift', { distance_m: 0.15, speed_ms: 0.3 })
      : null;
  }
  if (busyWith(senses, 'lift')) return null;
  return stem.feed_frac < 1 && mayTry(memory.patience, senses, 'setFeed') ? does('setFeed', { feed_frac: 1 }) : null;
}

/** Grabs the rod while things still run, if nobody stops the crew; then flow off, turning off, rod on. */
function changeRod(memory: GreenMemory, senses: Senses): Deed | null {
  const { stem, pump, hands } = senses;
  if (busyWith(senses, 'addRod')) return null;
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  if (stem.bottom_m >= GOAL_m) return finish(memory, senses);
  if (stem.left_m > 0.6) {
    memory.stopping = false;
    return null;
  }
  if (stem.turning) {
    // Hands go to the rod before the trigger is let go.
    if (memory.patience.refusals < 1 && hands.free >= 1) return does('addRod');
    return does('setTurning', { on: false });
  }
  return hands.free >= 2 && mayTry(memory.patience, senses, 'addRod') ? does('addRod') : null;
}

function pullHard(memory: GreenMemory, senses: Senses): Deed | null {
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (senses.stem.turning) return does('setTurning', { on: false });
  if (senses.pump.throttle_frac < 1 && mayTry(memory.patience, senses, 'setThrottle'))
    return does('setThrottle', { throttle_frac: 1 });
  if (busyWith(senses, 'workStem')) return null;
  return senses.hands.free >= 2 && mayTry(memory.patience, senses, 'workStem')
    ? does('workStem', { time_s: 60 })
    : null;
}

function finish(memory: GreenMemory, senses: Senses): Deed | null {
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (senses.stem.turning) return does('setTurning', { on: false });
  if (senses.pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  return mayTry(memory.patience, senses, 'stopDrilling') ? does('stopDrilling') : null;
}
