// The steady crew: competent, by plain rules of thumb. Middle feed, plenty of powder at the start and soaked, a fixed time of flow before each stop, labels off the rod marks. It reads no card.

import type { Senses } from '$sim';
import { does, goalOf_m, THREE_RODS, type Crew, type Deed, type Job } from './crew';
import { outOfPetrol } from './ending';
import { groundNameOf, nameOf, unnamedSample } from './naming';
import { busyWith, createPatience, mayTry, noticeRefusal, remember, type Patience } from './patience';
import { createMending, mendingDeed, type Mending } from './mending';
import { createProgress, hopeless, keepProgress, type Progress } from './progress';
import { createSite, duskNear, siteDeed, type Site } from './site';
import { steadyStop } from './steadyStop';
import { createTrouble, troubleDeed, type Trouble } from './trouble';
import { createWellMemory, type WellMemory } from './wellMemory';
import { deepEnough, pastDrilling, spotDeed, wellDeed } from './wellWork';

export interface SteadyMemory {
  /** The job: depth to reach, m, and length of the day, s. */
  goal_m: number;
  day_s: number;
  patience: Patience;
  progress: Progress;
  trouble: Trouble;
  mending: Mending;
  site: Site;
  /** The dose for the pit, g; and whether it is in. */
  dose_g: number;
  powderIn: boolean;
  /** Water added since the last powder, L. */
  poured_L: number;
  /** Job second from which the powder counts as soaked. */
  soaked_s: number;
  /** Rod for which a sample was last caught. */
  sampledRod: number;
  /** Job second at which the feed was taken off for a stop, or -1. */
  stop_s: number;
  /** The flow has run its minutes: it may stop. */
  stopping: boolean;
  /** The job wants a log of the layers; how many of them are written. */
  log: boolean;
  booked: number;
  /** The well to be made; null where the job is a hole. */
  well: WellMemory | null;
}

/** Drilled deeper than asked, m; a rod is down when no more than this is left, m; the sample is taken so far above that, m. */
const MARGIN_m = 0.03;
const ROD_END_m = 0.05;
const SAMPLE_LEFT_m = 0.5;
/** The middle of the rope. */
const FEED_frac = 0.5;
/** Rather more than less for the usual pit of so many litres, g, and how long it soaks before the bit goes down, s. Common practice, no source. */
const DOSE_g = 1700;
const USUAL_PIT_L = 940;
const SOAK_s = 1800;
/** After so much water, L, a handful of powder, g; rather less than it wants. A bucket, L. */
const HANDFUL_EVERY_L = 150;
const HANDFUL_g = 150;
const BUCKET_L = 10;
/** So long before the day is over the job is ended where it stands, or given up, s. */
const HOME_BEFORE_s = 900;
const GIVE_UP_BEFORE_s = 400;

export function createSteady(job: Job = THREE_RODS): Crew & { readonly memory: SteadyMemory } {
  const memory: SteadyMemory = {
    goal_m: goalOf_m(job, MARGIN_m),
    day_s: job.time_s,
    patience: createPatience(),
    progress: createProgress(),
    trouble: createTrouble(),
    mending: createMending(),
    site: createSite(),
    dose_g: Math.round((DOSE_g * (job.pit_L ?? USUAL_PIT_L)) / USUAL_PIT_L),
    powderIn: false,
    poured_L: 0,
    soaked_s: 0,
    sampledRod: 0,
    stop_s: -1,
    stopping: false,
    log: job.log === true,
    booked: 0,
    well: job.well ? createWellMemory('steady', job.well) : null,
  };
  return { name: 'steady', memory, decide: (senses) => remember(memory.patience, senses, decide(memory, senses)) };
}

function decide(memory: SteadyMemory, senses: Senses): Deed | null {
  if (senses.ended) return null;
  noticeRefusal(memory.patience, senses);
  keepProgress(memory.progress, senses);
  if (senses.time_s > memory.day_s - GIVE_UP_BEFORE_s) return does('abandon');
  const { well } = memory;
  if (well !== null) {
    const spot = spotDeed(well);
    if (spot !== undefined) return spot;
    if (pastDrilling(senses)) return wellDeed(well, memory.patience, senses);
  }
  if (hopeless(memory.progress, senses)) return does('abandon');
  const site = siteDeed(memory.site, memory.patience, memory.progress, senses);
  if (site !== undefined) {
    memory.powderIn = false;
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
  if (senses.stem.pull === 'stuck') {
    memory.stopping = false;
    memory.stop_s = -1;
  }
  const mended = mendingDeed(memory.mending, memory.patience, senses, false);
  if (mended !== undefined) return mended;
  const trouble = troubleDeed(memory.trouble, memory.patience, senses);
  if (trouble !== undefined) return trouble;
  const late = senses.time_s > memory.day_s - HOME_BEFORE_s || duskNear(senses);
  const done = senses.stem.bottom_m >= memory.goal_m || late || (well !== null && deepEnough(well, senses));
  return (
    supplies(memory, senses) ??
    flow(memory, senses) ??
    (memory.stop_s >= 0 ? steadyStop(memory, senses, done) : drill(memory, senses, done))
  );
}

/** The dose once, at the start, and a handful after every few buckets; water when the pit is down; a bucket into the hole when its fluid has sunk out of sight; the heap dug when it is high. */
function supplies(memory: SteadyMemory, senses: Senses): Deed | null {
  const { patience } = memory;
  const { pit, stock } = senses;
  if (senses.hands.free < 1) return null;
  if (!memory.powderIn && mayTry(patience, senses, 'addAdditive')) {
    memory.powderIn = true;
    const mass_g = Math.min(memory.dose_g, Math.floor(stock.powder_kg * 1000));
    if (mass_g >= 10) {
      memory.soaked_s = senses.time_s + SOAK_s;
      return does('addAdditive', { additive: 'polymer', mass_g, manner: 'sprinkled' });
    }
  }
  if (
    memory.poured_L >= HANDFUL_EVERY_L &&
    stock.powder_kg * 1000 >= HANDFUL_g &&
    mayTry(patience, senses, 'addAdditive')
  ) {
    memory.poured_L = 0;
    return does('addAdditive', { additive: 'polymer', mass_g: HANDFUL_g, manner: 'sprinkled' });
  }
  const low = pit.look === 'low' || pit.look === 'empty';
  if (low && stock.water_L >= 50 && !busyWith(senses, 'addWater') && mayTry(patience, senses, 'addWater')) {
    memory.poured_L += 50;
    return does('addWater', { water_L: 50 });
  }
  const sunk = senses.mouth.look === 'gone' && senses.pump.throttle_frac === 0;
  if (sunk && !low && !busyWith(senses, 'topUp') && mayTry(patience, senses, 'topUp'))
    return does('topUp', { fluid_L: BUCKET_L });
  const high = pit.heap === 'high' || pit.heap === 'brimming';
  if (high && !busyWith(senses, 'digOutPit') && mayTry(patience, senses, 'digOutPit'))
    return does('digOutPit', { chamber: 'settling', spoil_L: 30 });
  return null;
}

/** Pump primed and running, unless the flow is to stand. */
function flow(memory: SteadyMemory, senses: Senses): Deed | null {
  const { patience } = memory;
  if (memory.stopping || busyWith(senses, 'addRod') || busyWith(senses, 'prime')) return null;
  if (!senses.pump.primed) {
    if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
    if (senses.pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
    return senses.hands.free >= 1 && mayTry(patience, senses, 'prime') ? does('prime') : null;
  }
  if (senses.pump.throttle_frac < 1 && mayTry(patience, senses, 'setThrottle'))
    return does('setThrottle', { throttle_frac: 1 });
  return null;
}

function drill(memory: SteadyMemory, senses: Senses, done: boolean): Deed | null {
  const { patience } = memory;
  const { stem, hands } = senses;
  if (!senses.returns.running || senses.time_s < memory.soaked_s) return null;
  if (done || stem.left_m <= ROD_END_m) {
    memory.stop_s = senses.time_s;
    return stem.feed_frac > 0 ? does('setFeed', { feed_frac: 0 }) : null;
  }
  if (!stem.turning)
    return hands.free >= 1 && mayTry(patience, senses, 'setTurning') ? does('setTurning', { on: true }) : null;
  if (busyWith(senses, 'catchSample') || busyWith(senses, 'lift')) return null;
  if (memory.sampledRod < stem.rods && stem.left_m <= SAMPLE_LEFT_m) {
    if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
    if (hands.free < 1 || !mayTry(patience, senses, 'catchSample')) return null;
    memory.sampledRod = stem.rods;
    return does('catchSample', { label_m: Math.round(stem.bit_m * 10) / 10 });
  }
  if (stem.torque === 'heavy' && stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (stem.feed_frac > 0 || hands.free < 1 || stem.torque === 'heavy' || !mayTry(patience, senses, 'setFeed'))
    return null;
  return does('setFeed', { feed_frac: FEED_frac });
}
