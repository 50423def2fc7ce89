// The careful crew: reads the cautions, mixes in time, watches returns and torque, clears before each stop, allows for the climb. The standard for scores.

import type { Senses } from '$sim';
import { HAZARD_IDS } from '../hazards';
import { does, type Crew, type Deed } from './crew';
import { climb_s, createTrail, keepTrail, trailAt_m, type Trail } from './climb';
import { nameOf, unnamedSample } from './naming';
import { busyWith, createPatience, mayTry, noticeRefusal, remember, type Patience } from './patience';
import { troubleDeed, type Trouble } from './trouble';

export interface CarefulMemory {
  patience: Patience;
  trail: Trail;
  trouble: Trouble;
  cautionsRead: number;
  powderIn_g: number;
  powderIn_s: number;
  /** Rod for which a sample was last caught. */
  sampledRod: number;
  /** Job second at which the feed was last taken off to clear, or -1. */
  clearing_s: number;
  /** Seconds in a row that the returns looked clean. */
  clean_s: number;
  /** The bit was lifted for this stop. */
  lifted: boolean;
  /** The hole is clear: the flow may stop. */
  stopping: boolean;
  feed_frac: number;
  lastFeed_s: number;
  startDepth_m: number;
}

/** The job: three rods of 1.5 m, drilled to within a hand's breadth. */
const GOAL_m = 4.44;
/** A rod is down when no more than this is left, m. */
const ROD_END_m = 0.04;
/** The sample is taken when this much of the rod is still to go, m. */
const SAMPLE_LEFT_m = 0.5;
const DOSE_g = 700;
const PORTION_g = 350;
const LIFT_m = 0.25;
/**
 * Returns are clean below this cloudiness, kept for so long, s. Slick fluid brings some fine sand back round for ever:
 * then up to the second figure will do, as long as hardly a grain of medium sand or coarser comes.
 */
const CLEAN_frac = 0.06;
const CLEAN_SLICK_frac = 0.25;
const MEDIUM_SAND_CLASS = 3;
const CLEAN_FOR_s = 15;
/** No clearing lasts longer than this, s. */
const CLEAR_CAP_s = 420;
const FEED_MOST_frac = 1;
const FEED_LEAST_frac = 0.1;
/** Home before dark: from then on the job is ended where it stands, s. */
const HOME_s = 10000;

export function createCareful(): Crew & { readonly memory: CarefulMemory } {
  const memory: CarefulMemory = {
    patience: createPatience(),
    trail: createTrail(),
    trouble: { since_s: -1, lifts: 0 },
    cautionsRead: 0,
    powderIn_g: 0,
    powderIn_s: -1,
    sampledRod: 0,
    clearing_s: -1,
    clean_s: 0,
    lifted: false,
    stopping: false,
    feed_frac: 0.3,
    lastFeed_s: 0,
    startDepth_m: 0,
  };
  return { name: 'careful', memory, decide: (senses) => remember(memory.patience, senses, decide(memory, senses)) };
}

function decide(memory: CarefulMemory, senses: Senses): Deed | null {
  if (senses.ended) return null;
  noticeRefusal(memory.patience, senses);
  keepTrail(memory.trail, senses);
  if (memory.cautionsRead < HAZARD_IDS.length)
    return does('readCaution', { caution: HAZARD_IDS[memory.cautionsRead++]! });
  const unnamed = unnamedSample(senses);
  if (unnamed !== null) return does('nameSample', { sample: unnamed.sample, main: nameOf(unnamed) });
  const trouble = troubleDeed(memory.trouble, memory.patience, senses);
  if (trouble !== undefined) return trouble;
  return (
    supplies(memory, senses) ??
    flow(memory, senses) ??
    (memory.stopping ? stopped(memory, senses) : drill(memory, senses))
  );
}

/** Powder early, water when the pit is down. */
function supplies(memory: CarefulMemory, senses: Senses): Deed | null {
  const { patience } = memory;
  if (senses.hands.free < 1) return null;
  if (
    memory.powderIn_g < DOSE_g &&
    senses.stock.powder_kg * 1000 >= PORTION_g &&
    !busyWith(senses, 'addAdditive') &&
    mayTry(patience, senses, 'addAdditive')
  ) {
    memory.powderIn_g += PORTION_g;
    memory.powderIn_s = senses.time_s;
    return does('addAdditive', { additive: 'polymer', mass_g: PORTION_g, manner: 'sprinkled' });
  }
  const low = senses.pit.look === 'low' || senses.pit.look === 'empty';
  if (low && senses.stock.water_L >= 60 && !busyWith(senses, 'addWater') && mayTry(patience, senses, 'addWater')) {
    return does('addWater', { water_L: 60 });
  }
  return null;
}

/** Pump primed and running, unless the flow is to stand. */
function flow(memory: CarefulMemory, senses: Senses): Deed | null {
  if (memory.stopping || busyWith(senses, 'addRod') || busyWith(senses, 'prime')) return null;
  if (!senses.pump.primed) {
    if (senses.pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
    return senses.hands.free >= 1 && mayTry(memory.patience, senses, 'prime') ? does('prime') : null;
  }
  if (senses.pump.throttle_frac < 1 && mayTry(memory.patience, senses, 'setThrottle'))
    return does('setThrottle', { throttle_frac: 1 });
  return null;
}

function drill(memory: CarefulMemory, senses: Senses): Deed | null {
  const { patience } = memory;
  const { stem, returns } = senses;
  if (!returns.running || busyWith(senses, 'addRod')) return null;
  if (memory.clearing_s >= 0) return clear(memory, senses);
  const done = stem.bottom_m >= GOAL_m || senses.time_s > HOME_s;
  if (done || stem.left_m <= ROD_END_m) {
    memory.clearing_s = senses.time_s;
    memory.clean_s = 0;
    memory.lifted = false;
    return stem.feed_frac > 0 ? does('setFeed', { feed_frac: 0 }) : null;
  }
  if (!stem.turning)
    return senses.hands.free >= 1 && mayTry(patience, senses, 'setTurning') ? does('setTurning', { on: true }) : null;
  if (memory.sampledRod < stem.rods && stem.left_m <= SAMPLE_LEFT_m) return sample(memory, senses);
  if (busyWith(senses, 'catchSample')) return null;
  return feed(memory, senses);
}

/** Takes the feed off, so that a hand is free, and labels the sample with the depth at which the grains now at the mouth left the bit. */
function sample(memory: CarefulMemory, senses: Senses): Deed | null {
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (senses.hands.free < 1 || !mayTry(memory.patience, senses, 'catchSample')) return null;
  memory.sampledRod = senses.stem.rods;
  const label_m = trailAt_m(memory.trail, senses.time_s - climb_s(senses));
  return does('catchSample', { label_m: Math.round(label_m * 20) / 20 });
}

/** Feeds by what comes back and how the handle feels: less when it is thick or heavy, a little more when it runs easily. */
function feed(memory: CarefulMemory, senses: Senses): Deed | null {
  const { stem, returns } = senses;
  const heavy = stem.torque === 'heavy' || stem.torque === 'stalled' || stem.pull !== 'normal';
  const thick = returns.cloudiness_frac > 0.85 || returns.murk_frac > 0.95;
  const since_s = senses.time_s - memory.lastFeed_s;
  let wanted_frac = memory.feed_frac;
  if (heavy) wanted_frac = memory.feed_frac * 0.5;
  else if (thick && since_s >= 10) wanted_frac = memory.feed_frac * 0.8;
  else if (since_s >= 20 && stem.sinking_mmin < 0.6) wanted_frac = memory.feed_frac + 0.05;
  wanted_frac = Math.min(FEED_MOST_frac, Math.max(FEED_LEAST_frac, wanted_frac));
  const change = Math.abs(wanted_frac - stem.feed_frac) > 0.01;
  if (!change || (stem.feed_frac === 0 && senses.hands.free < 1) || !mayTry(memory.patience, senses, 'setFeed'))
    return null;
  memory.feed_frac = wanted_frac;
  memory.lastFeed_s = senses.time_s;
  return does('setFeed', { feed_frac: Math.round(wanted_frac * 100) / 100 });
}

function looksClean(returns: Senses['returns']): boolean {
  if (returns.cloudiness_frac < CLEAN_frac) return true;
  const coarse = returns.grains.some(
    ({ classIndex, amount }) => classIndex >= MEDIUM_SAND_CLASS && (amount === 'some' || amount === 'many'),
  );
  return !coarse && returns.cloudiness_frac < CLEAN_SLICK_frac;
}

/** Feed off, bit lifted a little, flow kept until the returns have run clean for a while. Meanwhile the pit is dug out. */
function clear(memory: CarefulMemory, senses: Senses): Deed | null {
  const { stem, returns } = senses;
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (!memory.lifted) {
    if (senses.hands.free < 1 || !mayTry(memory.patience, senses, 'lift')) return null;
    memory.lifted = true;
    return does('lift', { distance_m: LIFT_m, speed_ms: 0.05 });
  }
  const heaped = senses.pit.heap === 'high' || senses.pit.heap === 'brimming';
  if (
    heaped &&
    senses.hands.free >= 1 &&
    !busyWith(senses, 'digOutPit') &&
    mayTry(memory.patience, senses, 'digOutPit')
  ) {
    return does('digOutPit', { chamber: 'settling', spoil_L: 20 });
  }
  memory.clean_s = looksClean(returns) ? memory.clean_s + 1 : 0;
  const waited_s = senses.time_s - memory.clearing_s;
  const clean = memory.clean_s >= CLEAN_FOR_s && waited_s >= climb_s(senses) + CLEAN_FOR_s;
  if ((clean || waited_s > CLEAR_CAP_s) && senses.hands.tasks.length === 0) {
    memory.stopping = true;
    return stem.turning ? does('setTurning', { on: false }) : null;
  }
  return null;
}

/** Turning off, flow off; then another rod, or the end of the job. */
function stopped(memory: CarefulMemory, senses: Senses): Deed | null {
  const { stem, pump } = senses;
  const { patience } = memory;
  if (busyWith(senses, 'addRod')) return null;
  if (stem.turning) return does('setTurning', { on: false });
  if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  const done = stem.bottom_m >= GOAL_m || senses.time_s > HOME_s || stem.rodsLeft === 0;
  if (done) return mayTry(patience, senses, 'stopDrilling') ? does('stopDrilling') : null;
  if (stem.left_m > 0.6) {
    memory.stopping = false;
    memory.clearing_s = -1;
    return null;
  }
  if (senses.returns.running || senses.hands.free < 2 || !mayTry(patience, senses, 'addRod')) return null;
  return does('addRod');
}
