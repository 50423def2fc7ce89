// The green crew: all the weight on, no powder, flow off as soon as the rod is down, labels off the rod marks, cautions unread. What a beginner does.

import type { Senses } from '$sim';
import { does, goalOf_m, THREE_RODS, type Crew, type Deed, type Job } from './crew';
import { endHere, outOfPetrol } from './ending';
import { busyWith, createPatience, mayTry, noticeRefusal, remember, type Patience } from './patience';
import { createProgress, hopeless, keepProgress, type Progress } from './progress';
import { createSite, duskNear, siteDeed, type Site } from './site';
import { createWellMemory, type WellMemory } from './wellMemory';
import { pastDrilling, wellDeed } from './wellWork';

export interface GreenMemory {
  /** The job: depth to reach, m, and length of the day, s. */
  goal_m: number;
  day_s: number;
  patience: Patience;
  progress: Progress;
  site: Site;
  /** The flow is off for a rod change or for the end. */
  stopping: boolean;
  stuck_s: number;
  gulping_s: number;
  /** How long something has been broken, s. */
  broken_s: number;
  sampled: number;
  /** The well to be made; null where the job is a hole. */
  well: WellMemory | null;
}

const MARGIN_m = 0.02;
const ROD_END_m = 0.05;
/** Patience with a stem that will not move, s; and how long before the day is over the crew goes home, or leaves all behind, s. */
const STUCK_GIVE_UP_s = 1200;
const HOME_BEFORE_s = 1200;
const LEAVE_BEFORE_s = 600;
/** So long a dead engine is pulled at, and so long fluid sprays, s, before anybody mends. */
const PULLS_s = 60;
const SPRAYS_s = 240;
/** So long must the pump gulp, s, before somebody looks at the strainer. */
const GULPING_s = 90;

export function createGreen(job: Job = THREE_RODS): Crew & { readonly memory: GreenMemory } {
  const memory: GreenMemory = {
    // A beginner with a well to make drills on while there are rods.
    goal_m: job.well ? 999 : goalOf_m(job, MARGIN_m),
    day_s: job.time_s,
    patience: createPatience(),
    progress: createProgress(),
    site: createSite(),
    stopping: false,
    stuck_s: 0,
    gulping_s: 0,
    broken_s: 0,
    sampled: 0,
    well: job.well ? createWellMemory('green', job.well) : null,
  };
  return { name: 'green', memory, decide: (senses) => remember(memory.patience, senses, decide(memory, senses)) };
}

function decide(memory: GreenMemory, senses: Senses): Deed | null {
  if (senses.ended) return null;
  noticeRefusal(memory.patience, senses);
  const { stem, pump } = senses;
  if (memory.well !== null && pastDrilling(senses)) return wellDeed(memory.well, memory.patience, senses);
  const stuck = stem.pull === 'stuck';
  memory.stuck_s = stuck ? memory.stuck_s + 1 : 0;
  keepProgress(memory.progress, senses);
  if (memory.stuck_s > STUCK_GIVE_UP_s || senses.time_s > memory.day_s - LEAVE_BEFORE_s) return does('abandon');
  if (hopeless(memory.progress, senses)) return does('abandon');
  const site = siteDeed(memory.site, memory.patience, memory.progress, senses);
  if (site !== undefined) return site;
  if (senses.time_s > memory.day_s - HOME_BEFORE_s || duskNear(senses)) return endHere(memory.patience, senses);
  const supply = outOfPetrol(memory.patience, senses) ?? pit(memory, senses);
  if (supply !== undefined) return supply;
  const mended = mend(memory, senses);
  if (mended !== undefined) return mended;
  if (!pump.primed) return prime(memory, senses);
  if (stuck) return pullHard(memory, senses);
  if (memory.stopping) return changeRod(memory, senses);
  if (pump.throttle_frac < 1)
    return mayTry(memory.patience, senses, 'setThrottle') ? does('setThrottle', { throttle_frac: 1 }) : null;
  return drill(memory, senses);
}

/** A dead engine is pulled at for a while, a torn hose runs on for minutes; only then somebody mends. Rain is let be. */
function mend(memory: GreenMemory, senses: Senses): Deed | null | undefined {
  const { pump, stem, hands } = senses;
  const torn = pump.hose !== 'whole';
  memory.broken_s = pump.dead || torn ? memory.broken_s + 1 : 0;
  if (memory.broken_s <= (pump.dead ? PULLS_s : SPRAYS_s)) return undefined;
  if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (busyWith(senses, 'mend')) return null;
  if (hands.free < 1 || !mayTry(memory.patience, senses, 'mend')) return null;
  return does('mend', { what: pump.dead ? 'engine' : 'hose' });
}

function prime(memory: GreenMemory, senses: Senses): Deed | null {
  if (busyWith(senses, 'prime') || busyWith(senses, 'addRod')) return null;
  if (senses.pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  return mayTry(memory.patience, senses, 'prime') ? does('prime') : null;
}

function drill(memory: GreenMemory, senses: Senses): Deed | null {
  const { stem } = senses;
  if (stem.left_m <= ROD_END_m || stem.bottom_m >= memory.goal_m) {
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
  if (stem.bottom_m >= memory.goal_m) return endHere(memory.patience, senses);
  if (stem.left_m > 0.6) {
    memory.stopping = false;
    return null;
  }
  if (stem.rodsLeft === 0) return endHere(memory.patience, senses);
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

/** The pit is looked at only when it is nearly empty or runs over with sand, the strainer when the pump has gulped for long; then with the pump running. */
function pit(memory: GreenMemory, senses: Senses): Deed | undefined {
  const { patience } = memory;
  memory.gulping_s = senses.pump.sound === 'gulping' ? memory.gulping_s + 1 : 0;
  if (senses.hands.free < 1) return undefined;
  if (senses.pit.look === 'empty' && senses.stock.water_L >= 100 && mayTry(patience, senses, 'addWater')) {
    if (!busyWith(senses, 'addWater')) return does('addWater', { water_L: 100 });
  }
  if (senses.pit.heap === 'brimming' && mayTry(patience, senses, 'digOutPit')) {
    if (!busyWith(senses, 'digOutPit')) return does('digOutPit', { chamber: 'settling', spoil_L: 60 });
  }
  if (memory.gulping_s > GULPING_s && mayTry(patience, senses, 'clearStrainer') && !busyWith(senses, 'clearStrainer')) {
    memory.gulping_s = 0;
    return does('clearStrainer');
  }
  return undefined;
}
