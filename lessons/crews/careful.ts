// The careful crew: reads the cautions, mixes in time, watches returns and torque, clears before each stop, allows for the climb. The standard for scores.

import type { Senses } from '$sim';
import { HAZARD_IDS } from '../hazards';
import { CARES, type CareName } from './careStyle';
import { feed, watchBit } from './carefulFeed';
import { mendingDeed } from './mending';
import { createCarefulMemory, type CarefulMemory } from './carefulMemory';
import { carefulFluid, powder, soaking } from './carefulFluid';
import { clear, flushedLong, stopped } from './carefulStop';
import { fightLoss, giveUp, leaveHole, low, pourWater, topUp, watchWater } from './carefulWater';
import { climb_s, keepTrail, trailAt_m } from './climb';
import { earFeed } from './earFeed';
import { loopDeed } from './carefulLoop';
import { does, goalOf_m, THREE_RODS, type Crew, type Deed, type Job } from './crew';
import { outOfPetrol } from './ending';
import { groundNameOf, nameOf, unnamedSample } from './naming';
import { busyWith, mayTry, noticeRefusal, remember } from './patience';
import { hopeless, keepProgress } from './progress';
import { duskNear, siteDeed } from './site';
import { troubleDeed } from './trouble';
import { deepEnough, pastDrilling, spotDeed, wellDeed } from './wellWork';

/** Drilled deeper than asked, m. */
const MARGIN_m = 0.04;
/** A rod is down when no more than this is left, m. */
const ROD_END_m = 0.04;
/** Where a screen is to be set, a sample once the bit has cut for so much longer than the climb, s. */
const SAMPLE_AFTER_s = 15;
/** A dragging stem is drawn up so far, m, and not again within, s. */
const REAM_m = 0.5;
const REAM_AGAIN_s = 90;
/** The rate at which the bit sinks is a mean over so long, s. */
export const RATE_OVER_s = 30;
/** And so far when the pump has lost its water, m. */
const DRAWN_m = 0.3;
/** Home before dark: so long before the day is over the job is ended where it stands; and when even that does not come about, it is given up, s. */
const HOME_BEFORE_s = 800;
const GIVE_UP_BEFORE_s = 300;

export const createCareful = (job: Job = THREE_RODS): Crew & { readonly memory: CarefulMemory } =>
  crewOfCare('careful', job);

/** A crew that drills with care, in one of the two ways. */
export function crewOfCare(care: CareName, job: Job): Crew & { readonly memory: CarefulMemory } {
  const memory = createCarefulMemory(care, goalOf_m(job, MARGIN_m), job.time_s, job.pit_L, job.well);
  memory.log = job.log === true;
  return { name: care, memory, decide: (senses) => remember(memory.patience, senses, decide(memory, senses)) };
}

const jobDone = (memory: CarefulMemory, senses: Senses): boolean =>
  senses.stem.bottom_m >= memory.goal_m ||
  senses.time_s > memory.day_s - HOME_BEFORE_s ||
  duskNear(senses) ||
  (memory.well !== null && deepEnough(memory.well, senses));

/** What a crew that drills with care does next. */
function decide(memory: CarefulMemory, senses: Senses): Deed | null {
  if (senses.ended) return null;
  keepProgress(memory.progress, senses);
  if (senses.time_s > memory.day_s - GIVE_UP_BEFORE_s) return does('abandon');
  if (hopeless(memory.progress, senses)) giveUp(memory.water);
  noticeRefusal(memory.patience, senses);
  keepTrail(memory.trail, senses);
  keepRate(memory, senses);
  watchWater(memory.water, senses);
  watchBit(memory, senses);
  if (memory.cautionsRead < HAZARD_IDS.length)
    return does('readCaution', { caution: HAZARD_IDS[memory.cautionsRead++]! });
  const well = memory.well;
  if (well !== null) {
    const spot = spotDeed(well);
    if (spot !== undefined) return spot;
    if (pastDrilling(senses)) return wellDeed(well, memory.patience, senses);
  }
  const site = siteDeed(memory.site, memory.patience, memory.progress, senses);
  if (site !== undefined) {
    memory.powderIn_g = 0;
    memory.bentoniteIn_g = 0;
    return site;
  }
  const unnamed = unnamedSample(senses);
  if (unnamed !== null)
    return does('nameSample', {
      sample: unnamed.sample,
      main: memory.well || memory.log ? groundNameOf(unnamed) : nameOf(unnamed),
    });
  const petrol = outOfPetrol(memory.patience, senses);
  if (petrol !== undefined) return petrol;
  if (memory.water.givenUp) return leaveHole(memory.water, memory.patience, senses);
  // A stem that comes free hangs above the bottom: the rod is drilled down and cleared again.
  if (senses.stem.pull === 'stuck') startAgain(memory);
  const mended = mendingDeed(memory.mending, memory.patience, senses, true);
  if (mended !== undefined) {
    // What was cleared before has settled since.
    if (!memory.stopping) startAgain(memory);
    return mended ?? topUp(memory.patience, senses, CARES[memory.care].bucket_L) ?? null;
  }
  const loss = fightLoss(memory.water, memory.patience, senses);
  if (loss !== undefined) return loss;
  const trouble = troubleDeed(memory.trouble, memory.patience, senses);
  if (trouble !== undefined) return trouble;
  // A stop is kept short: nothing else is begun in it.
  if (memory.stopping) return stopped(memory, senses, jobDone(memory, senses));
  memory.fed_s = senses.stem.feed_frac > 0 ? memory.fed_s + 1 : 0;
  if (senses.pump.primed) memory.drawn = false;
  else if (senses.stem.bottom_m > REAM_m + DRAWN_m) return pumpDry(memory, senses);
  // A sample is caught at once, or its grains are gone.
  if (memory.sampling) return sample(memory, senses);
  const fluid = leaving(memory, senses) ? undefined : tendFluid(memory, senses);
  return fluid !== undefined ? fluid : (flow(memory, senses) ?? drill(memory, senses));
}

const tendFluid = (memory: CarefulMemory, senses: Senses): Deed | undefined | null =>
  carefulFluid(memory, senses) ??
  powder(memory, senses) ??
  pourWater(memory.water, memory.patience, senses) ??
  topUp(memory.patience, senses, CARES[memory.care].bucket_L);

/** Deep enough and flushed for long: a pit that is not low is left as it is. On thirsty ground it would keep the free hand for good. */
const leaving = (memory: CarefulMemory, senses: Senses): boolean =>
  memory.clearing_s >= 0 && flushedLong(memory, senses) && !low(senses) && jobDone(memory, senses);

/** How fast the bit went down while it was fed, as a slow mean, m/s. */
function keepRate(memory: CarefulMemory, { stem }: Senses): void {
  if (stem.feed_frac > 0) memory.sinking_ms += (stem.sinking_mmin / 60 - memory.sinking_ms) / RATE_OVER_s;
}

function startAgain(memory: CarefulMemory): void {
  memory.stopping = false;
  memory.clearing_s = -1;
}

/** The pump has lost its water: the stem is drawn up and stands, one primes, the other keeps the hole full. */
function pumpDry(memory: CarefulMemory, senses: Senses): Deed | null {
  const { patience } = memory;
  const { stem, pump, hands } = senses;
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  if (busyWith(senses, 'lift') || busyWith(senses, 'addRod')) return null;
  if (!memory.drawn && hands.free >= 1 && mayTry(patience, senses, 'lift')) {
    memory.drawn = true;
    return does('lift', { distance_m: DRAWN_m, speed_ms: 0.05 });
  }
  if (stem.turning) return does('setTurning', { on: false });
  const poured = low(senses) ? pourWater(memory.water, patience, senses) : undefined;
  if (poured !== undefined) return poured;
  if (!busyWith(senses, 'prime') && hands.free >= 1 && mayTry(patience, senses, 'prime')) return does('prime');
  return topUp(patience, senses, CARES[memory.care].bucket_L) ?? null;
}

/** Pump primed and running, unless the flow is to stand. */
function flow(memory: CarefulMemory, senses: Senses): Deed | null {
  const loop = loopDeed(memory.patience, senses);
  if (loop !== undefined) return loop;
  if (busyWith(senses, 'addRod') || busyWith(senses, 'prime')) return null;
  if (!senses.pump.primed) {
    if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
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
  if (!returns.running || busyWith(senses, 'addRod') || soaking(memory, senses)) return null;
  // While returns are lost nothing is drilled.
  if (memory.water.lost_s >= 0) return null;
  if (busyWith(senses, 'lift')) return null;
  const reaming = ream(memory, senses);
  if (reaming !== undefined) return reaming;
  if (memory.clearing_s >= 0) return clear(memory, senses, jobDone(memory, senses));
  if (jobDone(memory, senses) || stem.left_m <= ROD_END_m) {
    memory.clearing_s = senses.time_s;
    memory.clean_s = 0;
    memory.lifted = false;
    return stem.feed_frac > 0 ? does('setFeed', { feed_frac: 0 }) : null;
  }
  if (!stem.turning)
    return senses.hands.free >= 1 && mayTry(patience, senses, 'setTurning') ? does('setTurning', { on: true }) : null;
  if (sampleDue(memory, senses)) return sample(memory, senses);
  if (busyWith(senses, 'catchSample')) return null;
  return CARES[memory.care].feeds === 'byEar' ? earFeed(memory, senses) : feed(memory, senses);
}

/** One sample a rod; where the screen or the log hangs on it two, and of what has come up while the bit was cutting, not of what goes round. */
function sampleDue(memory: CarefulMemory, senses: Senses): boolean {
  const { stem } = senses;
  const { sampleEvery_m, sampleLeft_m } = CARES[memory.care];
  if (memory.well === null && !memory.log) return memory.sampledRod < stem.rods && stem.left_m <= sampleLeft_m;
  const up = memory.fed_s > climb_s(senses) + SAMPLE_AFTER_s;
  return up && stem.bit_m >= memory.sampled_m + sampleEvery_m && senses.hands.tasks.length === 0;
}

/** A stem that drags is drawn up turning, with the flow on: the wings cut the wall back, the stream carries fill away. */
function ream(memory: CarefulMemory, senses: Senses): Deed | null | undefined {
  const { stem } = senses;
  if (stem.pull === 'normal' || stem.bit_m < 2 * REAM_m || !stem.turning) return undefined;
  if (memory.reamed_s >= 0 && senses.time_s - memory.reamed_s < REAM_AGAIN_s) return undefined;
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (senses.hands.free < 1 || !mayTry(memory.patience, senses, 'lift')) return undefined;
  memory.reamed_s = senses.time_s;
  return does('lift', { distance_m: REAM_m, speed_ms: 0.05 });
}

/** Takes the feed off, so that a hand is free, and labels the sample with the depth at which the grains now at the mouth left the bit. */
function sample(memory: CarefulMemory, senses: Senses): Deed | null {
  memory.sampling = memory.well !== null || memory.log;
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (senses.hands.free < 1 || !mayTry(memory.patience, senses, 'catchSample')) return null;
  memory.sampling = false;
  memory.sampledRod = senses.stem.rods;
  memory.sampled_m = senses.stem.bit_m;
  const label_m =
    CARES[memory.care].label === 'trail'
      ? trailAt_m(memory.trail, senses.time_s - climb_s(senses))
      : Math.max(0, senses.stem.bit_m - memory.sinking_ms * climb_s(senses));
  return does('catchSample', { label_m: Math.round(label_m * 20) / 20 });
}
