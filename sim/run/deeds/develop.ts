// Acts that clean the well: bailing, surging, pumping hard, washing back, chlorine against the polymer.

import { CHLORINE } from '../../fluid/substances';
import { CHLORINE as CHLORINE_POWDER } from '../../materials/chlorine';
import { DURATION_s } from '../../materials/durations';
import { product_kg } from '../../well/disinfect';
import { ringWater_m3 } from '../../well/ringChlorine';
import { WASH, WASH_METHODS, wash, type WashMethod } from '../../well/washing';
import { disturbSeals, shakeRing } from '../annulus';
import { closeIn } from '../closeIn';
import { groundOf } from '../ground';
import { send } from '../modes';
import type { RefusalKey } from '../names';
import type { Run } from '../run';
import type { Task } from '../state';
import { bailing_m3s, waterRefusal, isDry, tooDeep } from '../wellReach';
import { draw, refreshWell, standingNow } from '../wellTick';
import type { Payload } from '../check';
import type { Deeds } from './deed';

/** The ring is washed once in so many seconds, and reckoned anew once in so many. */
const WASH_s = 10;
/** Pouring in and drawing out change after so long, s. ASSUMED. */
const TURN_s = 60;
/** Pouring stops when the water stands this near the ground level, m. */
const BRIM_m = 0.1;
/** What a surge block brings out between its strokes, pulls of a bailer a minute. ASSUMED: bail often (consultant's plan, 1992). */
const SURGE_PULLS_min = 1;
/** Least water for washing back, L. */
const LEAST_L = 5;
const M3S_PER_LMIN = 1 / 60000;
/** Petrol of the drilling pump on the well, L/s. ASSUMED: as when drilling, 1.2 litres an hour. */
const PETROL_Ls = 1.2 / 3600;

/** Strokes or litres a minute, by what the method counts. */
function paceOf(method: WashMethod, payload: Payload): number {
  const asked = method === 'bail' || method === 'surge' ? payload.strokes_min : payload.rate_Lmin;
  return typeof asked === 'number' ? asked : WASH[method].usual;
}

/** The drilling pump sucks: the same limit as for a suction pump. */
const suctionFails = (run: Run): boolean => tooDeep(run, 'suction');

function developRefusal(run: Run, payload: Payload): RefusalKey | null {
  const without = waterRefusal(run);
  if (without) return without;
  const { state } = run;
  const method = payload.method as WashMethod;
  if (method === 'backWash' && state.stocks.water_L < LEAST_L) return 'noWater';
  if (method === 'overPump' && state.faults.engineDead) return 'engineDead';
  if (method === 'overPump' && state.stocks.petrol_L <= 0) return 'noPetrol';
  if (method === 'overPump' && suctionFails(run)) return 'tooDeepToLift';
  return state.well && method !== 'backWash' && isDry(run) ? 'wellDry' : null;
}

/** Draws with the drilling pump while it can; else nothing comes. */
function pump(run: Run, rate_Lmin: number, stirs_ratio: number): boolean {
  const { stocks, pump: engine } = run.state;
  if (stocks.petrol_L <= 0) return false;
  stocks.petrol_L = Math.max(0, stocks.petrol_L - PETROL_Ls);
  engine.running_s += 1;
  if (suctionFails(run)) return false;
  draw(run, rate_Lmin * M3S_PER_LMIN, stirs_ratio);
  return true;
}

/** A minute of pouring in from the water on hand, then a minute of drawing it out again. */
function washBack(run: Run, task: Task, rate_Lmin: number): boolean {
  const { well, stocks } = run.state;
  const out = Math.floor((task.endTick - run.state.tick) / TURN_s) % 2 === 0;
  const { stirs_ratio } = WASH.backWash;
  if (out) draw(run, Math.min(rate_Lmin * M3S_PER_LMIN, 2 * bailing_m3s(run, WASH.bail.usual)), stirs_ratio);
  else if (well!.level_m > BRIM_m) {
    const poured_L = Math.min(stocks.water_L, rate_Lmin / 60);
    stocks.water_L -= poured_L;
    stocks.waterUsed_L += poured_L;
    draw(run, -poured_L / 1000, stirs_ratio);
    return poured_L > 0;
  }
  return true;
}

/** One second of a method; false when nothing moves. */
function work(run: Run, task: Task, method: WashMethod, pace: number): boolean {
  const { stirs_ratio } = WASH[method];
  switch (method) {
    case 'bail':
      draw(run, bailing_m3s(run, pace), stirs_ratio);
      return !isDry(run);
    case 'surge':
      draw(run, bailing_m3s(run, SURGE_PULLS_min), stirs_ratio);
      return !isDry(run);
    case 'overPump':
      return pump(run, pace, stirs_ratio);
    case 'backWash':
      return washBack(run, task, pace);
  }
}

/** Chlorine of so many g/L for casing and ring, kg of the powder. */
function powderFor_kg(run: Run, dose_mgL: number): number {
  const water_m3 = chlorinated_m3(run);
  return product_kg(water_m3, dose_mgL / 1000, CHLORINE_POWDER.strength_frac);
}

/** The water that a dose must reach: in the casing, and in the ground as far as the drilling fluid went. */
function chlorinated_m3(run: Run): number {
  const { well } = run.state;
  return well!.water_m3 + ringWater_m3(well!.ring, standingNow(run).pipe.outside_m / 2, groundOf(run));
}

/** Puts chlorine into the well, from the powder on hand. */
export function dose(run: Run, dose_mgL: number, water_m3: number): void {
  const { stocks, well, boundary } = run.state;
  const powder_kg = product_kg(water_m3, dose_mgL / 1000, CHLORINE_POWDER.strength_frac);
  const chlorine_kg = powder_kg * CHLORINE_POWDER.strength_frac;
  stocks.chlorine_kg = Math.max(0, stocks.chlorine_kg - powder_kg);
  stocks.chlorineUsed_kg += powder_kg;
  well!.chlorine_kg += chlorine_kg;
  well!.chlorineIn_m3 = water_m3;
  boundary.dissolvedIn_kg[CHLORINE] += chlorine_kg;
}

/** Methods that push the water out through the screen and shake what stands round it. */
const SHAKES: readonly WashMethod[] = ['surge', 'backWash'];

export const developDeeds: Deeds = {
  develop: {
    refusal: developRefusal,
    time_s: (_run, payload) => payload.time_s as number,
    begin: (run, payload, task) => {
      closeIn(run);
      disturbSeals(run);
      send(run, 'developBegins');
      refreshWell(run);
      const method = payload.method as WashMethod;
      if (!task) return;
      task.word = method;
      task.data.pace = paceOf(method, payload);
    },
    during: (run, task) => {
      const { well, tick } = run.state;
      if (!well) return;
      const method = task.word as WashMethod;
      const moves = work(run, task, method, task.data.pace);
      well.washed_s[WASH_METHODS.indexOf(method)] += 1;
      if (!moves || tick % WASH_s !== 0) return;
      wash(well.ring, standingNow(run), method, task.data.pace, WASH_s);
      if (SHAKES.includes(method)) shakeRing(run);
    },
    end: refreshWell,
  },
  breakPolymer: {
    refusal: (run, payload) => {
      const without = waterRefusal(run);
      if (without) return without;
      if (!(run.state.stocks.chlorine_kg > 0)) return 'noChlorine';
      if (!run.state.well) return null;
      return powderFor_kg(run, payload.dose_mgL as number) > run.state.stocks.chlorine_kg ? 'noChlorine' : null;
    },
    time_s: (_run, payload) => DURATION_s.addChlorine + (payload.contact_s as number),
    begin: (run, payload) => {
      closeIn(run);
      send(run, 'developBegins');
      dose(run, payload.dose_mgL as number, chlorinated_m3(run));
    },
    end: refreshWell,
  },
};
