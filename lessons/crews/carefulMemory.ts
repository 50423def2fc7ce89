// What a crew that drills with care remembers: plain data, filled as the job goes on.

import { CARES, type CareName } from './careStyle';
import { createPatience, type Patience } from './patience';
import { createWater, type Water } from './carefulWater';
import { createTrail, type Trail } from './climb';
import { createProgress, type Progress } from './progress';
import { createSite, type Site } from './site';
import { createMending, type Mending } from './mending';
import { createTrouble, type Trouble } from './trouble';
import { createWellMemory, type WellMemory } from './wellMemory';
import type { WellJob } from './wellJob';

/** The usual pit when it is full, L. */
const USUAL_PIT_L = 940;

export interface CarefulMemory {
  readonly care: CareName;
  /** The job: depth to reach, m, and length of the day, s. */
  goal_m: number;
  day_s: number;
  patience: Patience;
  trail: Trail;
  site: Site;
  trouble: Trouble;
  mending: Mending;
  progress: Progress;
  cautionsRead: number;
  water: Water;
  /** What the pit holds, L. */
  pit_L: number;
  /** Powder and bentonite put in so far, g; job second from which the first of it counts as soaked, or -1. */
  powderIn_g: number;
  bentoniteIn_g: number;
  soaked_s: number;
  /** Rod for which the fluid was last felt, and seconds that stones were heard on this rod. */
  feltRod: number;
  stones_s: number;
  /** Powder has soaked: the fluid is to be felt. */
  toFeel: boolean;
  /** Rod for which a sample was last caught, and where the bit was then, m. */
  sampledRod: number;
  sampled_m: number;
  /** Seconds on end that weight has been on the bit; the feed is off for a sample. */
  fed_s: number;
  sampling: boolean;
  /** Job second at which the feed was last taken off to clear, or -1. */
  clearing_s: number;
  /** Seconds in a row that the returns looked clean. */
  clean_s: number;
  /** The bit was lifted for this stop. */
  lifted: boolean;
  /** The stem was drawn up because the pump had lost its water. */
  drawn: boolean;
  /** Job second at which a dragging stem was last drawn up turning, or -1. */
  reamed_s: number;
  /** The hole is clear: the flow may stop. */
  stopping: boolean;
  feed_frac: number;
  /** How fast the bit sinks when it is fed, m/s. */
  sinking_ms: number;
  /** The most weight in sticky ground: less than what once packed the bit. */
  stickyMost_frac: number;
  /** The bit was last felt in sticky ground. */
  sticky: boolean;
  lastFeed_s: number;
  /** The job wants a log of the layers; how many of them are written. */
  log: boolean;
  booked: number;
  /** The well to be made; null where the job is a hole. */
  well: WellMemory | null;
}

export function createCarefulMemory(
  care: CareName,
  goal_m: number,
  day_s: number,
  pit_L = USUAL_PIT_L,
  well?: WellJob,
): CarefulMemory {
  return {
    care,
    goal_m,
    day_s,
    patience: createPatience(),
    trail: createTrail(),
    site: createSite(),
    trouble: createTrouble(),
    mending: createMending(),
    progress: createProgress(),
    cautionsRead: 0,
    water: createWater(CARES[care].start_gL),
    pit_L,
    powderIn_g: 0,
    bentoniteIn_g: 0,
    soaked_s: -1,
    feltRod: 1,
    toFeel: false,
    stones_s: 0,
    sampledRod: 0,
    sampled_m: 0,
    fed_s: 0,
    sampling: false,
    clearing_s: -1,
    clean_s: 0,
    lifted: false,
    drawn: false,
    reamed_s: -1,
    stopping: false,
    feed_frac: 0.3,
    sinking_ms: 0,
    stickyMost_frac: 1,
    sticky: false,
    lastFeed_s: 0,
    log: false,
    booked: 0,
    well: well ? createWellMemory(care, well) : null,
  };
}
