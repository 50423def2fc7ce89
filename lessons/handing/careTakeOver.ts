// What a crew that drills with care takes over: fluid, water, samples, the stop it finds itself in.

import { TRACE_STEP_s, type Run, type Senses } from '$sim';
import { HAZARD_IDS } from '../hazards';
import { ownEntries } from '../own';
import { RATE_OVER_s } from '../crews/careful';
import { mostAfter } from '../crews/carefulFeed';
import { CARES } from '../crews/careStyle';
import type { CarefulMemory } from '../crews/carefulMemory';
import { THICK_gL, thicken, watchWater, WORKING_gL } from '../crews/carefulWater';
import { keepTrail } from '../crews/climb';
import { keepProgress } from '../crews/progress';
import { standing } from './standing';
import type { Told } from './told';
import { adoptWell, layersBooked } from './wellTakeOver';
import { deepEnough } from '../crews/wellWork';

/** Water that went in so lately is still being filled up, s. */
const LATELY_s = 300;
/** A stem drawn up so far was drawn up for a reason, m. */
const REAMED_m = 0.45;

export function adoptCare(memory: CarefulMemory, run: Run, senses: Senses, told: Told): void {
  adoptFluid(memory, told);
  adoptWater(memory, run, senses, told);
  const { stem, time_s } = senses;
  const fed = told.acts('setFeed').findLast(([, , { feed_frac }]) => Number(feed_frac) > 0);
  if (fed) memory.feed_frac = Number(fed[2].feed_frac);
  memory.lastFeed_s = told.last_s('setFeed');
  if (stem.feed_frac > 0) memory.fed_s = time_s - fedSince_s(told);
  const sampled_s = told.last_s('catchSample');
  if (sampled_s >= 0) {
    memory.sampledRod = told.rodsAt(sampled_s);
    memory.sampled_m = told.bitAt_m(sampled_s);
  }
  const felt_s = told.last_s(CARES[memory.care].test);
  if (felt_s >= 0) memory.feltRod = told.rodsAt(felt_s);
  memory.toFeel = (told.lastFelt('soaked')?.tick ?? -1) > felt_s;
  const drawn = told.acts('lift').findLast(([, , { distance_m }]) => Number(distance_m) >= REAMED_m);
  if (drawn) memory.reamed_s = drawn[0];
  memory.drawn = !senses.pump.primed && stem.bottom_m - stem.bit_m > 0.2;
  memory.trouble.strainer_s = told.last_s('clearStrainer');
  const balled = told.lastFelt('balled', 'unballed');
  if (balled?.name === 'balled') {
    memory.trouble.balled_s = balled.tick;
    memory.trouble.balledLift = told.last_s('lift') > balled.tick;
  }
  const packed = told.acts('setFeed').findLast(([tick]) => tick <= (told.lastFelt('balled')?.tick ?? -1));
  if (packed) memory.stickyMost_frac = mostAfter(Number(packed[2].feed_frac));
  memory.sticky = stem.sound === 'sticky';
  rememberDrilling(memory, run, senses);
  if (memory.log) memory.booked = layersBooked(senses, told);
  if (memory.well) adoptWell(memory.well, senses, told);
  adoptStop(memory, senses, told);
  adoptSite(memory, told, senses);
  memory.cautionsRead = cautionsRead(run);
}

/** How many cautions, in their order, whoever plays has read; to whom the rest was left, they are read. */
function cautionsRead(run: Run): number {
  if (run.state.leaving === 'left') return HAZARD_IDS.length;
  const read = ownEntries(run)
    .filter(([, action]) => action === 'readCaution')
    .map(([, , { caution }]) => caution);
  let next = 0;
  while (next < HAZARD_IDS.length && read.includes(HAZARD_IDS[next]!)) next++;
  return next;
}

/** When the weight that is on now came on. */
function fedSince_s(told: Told): number {
  let since_s = 0;
  let on = false;
  for (const [tick, , { feed_frac }] of told.acts('setFeed')) {
    if (Number(feed_frac) > 0 && !on) since_s = tick;
    on = Number(feed_frac) > 0;
  }
  return since_s;
}

/** What went into the pit since it was dug, and how strong whoever put it in meant the fluid to be. */
function adoptFluid(memory: CarefulMemory, told: Told): void {
  const dug_s = told.last_s('setOut');
  for (const [tick, , { additive, mass_g }] of told.acts('addAdditive')) {
    if (tick < dug_s) continue;
    if (additive === 'polymer') memory.powderIn_g += Number(mass_g);
    if (additive === 'bentonite') memory.bentoniteIn_g += Number(mass_g);
    const { soak_s } = CARES[memory.care];
    if (soak_s > 0 && memory.soaked_s < 0) memory.soaked_s = tick + soak_s;
  }
  for (const [tick, , { water_L }] of told.acts('addWater'))
    if (tick >= dug_s) memory.water.poured_L += Number(water_L);
  thicken(memory.water, Math.min(THICK_gL, memory.powderIn_g / (memory.pit_L + memory.water.poured_L)));
  if (told.lastFelt('pitLow')) thicken(memory.water, WORKING_gL);
  if (told.lastFelt('returnsLost')) thicken(memory.water, THICK_gL);
}

/** How much came back in the flow so far, as the crew before saw it second by second; and whether water is still being filled up. */
function adoptWater({ water }: CarefulMemory, run: Run, senses: Senses, told: Told): void {
  const { columns, length } = run.record.trace;
  for (let row = 0; row < length; row++) {
    const then = {
      pump: { primed: true, throttle_frac: columns.flow_m3s[row]! > 0 ? 1 : 0 },
      returns: { share_frac: Math.round(columns.returns_frac[row]! * 20) / 20 },
      pit: { look: 'full' },
    } as Senses;
    for (let second = 0; second < TRACE_STEP_s; second++) watchWater(water, then);
  }
  const flow = told.lastFelt('flowStarted', 'flowStopped');
  const flows = flow?.name === 'flowStarted' && senses.pump.throttle_frac >= 1;
  water.flowing_s = flows ? senses.time_s - flow.tick : 0;
  const poured_s = told.last_s('addWater');
  water.filling = senses.pit.look !== 'full' && poured_s >= 0 && senses.time_s - poured_s < LATELY_s;
}

/** Where the bit went and whether the hole got deeper, by the rod marks that the crew before read off. */
function rememberDrilling(memory: CarefulMemory, run: Run, senses: Senses): void {
  const { columns, length } = run.record.trace;
  memory.progress.deeper_s = length > 0 ? columns.time_s[0]! : senses.time_s;
  for (let row = 0; row < length; row++) {
    const feed_frac = columns.feed_frac[row]!;
    const turning = columns.turning[row]! > 0;
    const then = {
      time_s: columns.time_s[row]!,
      stem: { bit_m: columns.bit_m[row]!, bottom_m: columns.depth_m[row]!, turning, feed_frac },
    } as Senses;
    keepTrail(memory.trail, then);
    if (feed_frac > 0)
      memory.sinking_ms += ((columns.sinking_ms[row]! - memory.sinking_ms) * TRACE_STEP_s) / RATE_OVER_s;
    // A row stands for the seconds up to the next.
    const before_s = memory.progress.drilled_s;
    keepProgress(memory.progress, then);
    if (memory.progress.drilled_s > before_s)
      memory.progress.drilled_s += (row > 0 ? then.time_s - columns.time_s[row - 1]! : 1) - 1;
  }
}

/** The stop that the crew finds itself in: to be cleared, or cleared and at rest. */
function adoptStop(memory: CarefulMemory, senses: Senses, told: Told): void {
  const done = senses.stem.bottom_m >= memory.goal_m || (memory.well !== null && deepEnough(memory.well, senses));
  const { ends, feedOff_s, cleared, lifted, still } = standing(senses, told, done);
  if (!ends) return;
  memory.stopping = still && cleared;
  memory.lifted = lifted;
  memory.clearing_s = senses.pump.throttle_frac > 0 ? feedOff_s : senses.time_s;
}

/** A pit that was dug but not filled. */
function adoptSite({ site }: CarefulMemory, told: Told, senses: Senses): void {
  const dug_s = told.last_s('setOut');
  if (dug_s < 0) return;
  const filling = told.last_s('fillPit') >= dug_s;
  site.toFill = filling;
  site.bare = !filling || senses.hands.tasks.some(({ action }) => action === 'fillPit');
}
