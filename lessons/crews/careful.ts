// The careful crew: reads the cautions, mixes in time, watches returns and torque, clears before each stop, allows for the climb. The standard for scores.

import type { Senses } from '$sim';
import { HAZARD_IDS } from '../hazards';
import { feed } from './carefulFeed';
import { createCarefulMemory, type CarefulMemory } from './carefulMemory';
import { carefulFluid } from './carefulFluid';
import { clear, stopped } from './carefulStop';
import { climb_s, keepTrail, trailAt_m } from './climb';
import { does, goalOf_m, THREE_RODS, type Crew, type Deed, type Job } from './crew';
import { outOfPetrol } from './ending';
import { nameOf, unnamedSample } from './naming';
import { busyWith, mayTry, noticeRefusal, remember } from './patience';
import { hopeless, keepProgress } from './progress';
import { troubleDeed } from './trouble';

/** Drilled deeper than asked, m. */
const MARGIN_m = 0.04;
/** A rod is down when no more than this is left, m. */
const ROD_END_m = 0.04;
/** The sample is taken when this much of the rod is still to go, m. */
const SAMPLE_LEFT_m = 0.5;
/** Powder comes in portions, g. */
const PORTION_g = 350;
/** Home before dark: so long before the day is over the job is ended where it stands; and when even that does not come about, it is given up, s. */
const HOME_BEFORE_s = 800;
const GIVE_UP_BEFORE_s = 300;

export function createCareful(job: Job = THREE_RODS): Crew & { readonly memory: CarefulMemory } {
  const memory = createCarefulMemory(goalOf_m(job, MARGIN_m), job.time_s);
  return { name: 'careful', memory, decide: (senses) => remember(memory.patience, senses, decide(memory, senses)) };
}

const jobDone = (memory: CarefulMemory, senses: Senses): boolean =>
  senses.stem.bottom_m >= memory.goal_m || senses.time_s > memory.day_s - HOME_BEFORE_s;

function decide(memory: CarefulMemory, senses: Senses): Deed | null {
  if (senses.ended) return null;
  keepProgress(memory.progress, senses);
  if (senses.time_s > memory.day_s - GIVE_UP_BEFORE_s || hopeless(memory.progress, senses)) return does('abandon');
  noticeRefusal(memory.patience, senses);
  keepTrail(memory.trail, senses);
  if (memory.cautionsRead < HAZARD_IDS.length)
    return does('readCaution', { caution: HAZARD_IDS[memory.cautionsRead++]! });
  const unnamed = unnamedSample(senses);
  if (unnamed !== null) return does('nameSample', { sample: unnamed.sample, main: nameOf(unnamed) });
  const petrol = outOfPetrol(memory.patience, senses);
  if (petrol !== undefined) return petrol;
  // A stem that comes free hangs above the bottom: the rod is drilled down and cleared again.
  if (senses.stem.pull === 'stuck') startAgain(memory);
  const trouble = troubleDeed(memory.trouble, memory.patience, senses);
  if (trouble !== undefined) return trouble;
  return (
    carefulFluid(memory, senses) ??
    supplies(memory, senses) ??
    flow(memory, senses) ??
    (memory.stopping ? stopped(memory, senses, jobDone(memory, senses)) : drill(memory, senses))
  );
}

function startAgain(memory: CarefulMemory): void {
  memory.stopping = false;
  memory.clearing_s = -1;
}

/** Powder early, water when the pit is down. */
function supplies(memory: CarefulMemory, senses: Senses): Deed | null {
  const { patience } = memory;
  if (senses.hands.free < 1) return null;
  if (
    memory.powderIn_g < memory.dose_g &&
    senses.stock.powder_kg * 1000 >= PORTION_g &&
    !busyWith(senses, 'addAdditive') &&
    mayTry(patience, senses, 'addAdditive')
  ) {
    memory.powderIn_g += PORTION_g;
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
  if (jobDone(memory, senses) || stem.left_m <= ROD_END_m) {
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
