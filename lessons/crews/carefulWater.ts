// How the careful crew keeps water in the hole: it watches what comes back and how the pit stands, tops up, thickens for thirsty ground, fights for lost returns, and knows when that fight is lost.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { busyWith, mayTry, type Patience } from './patience';

export interface Water {
  /** What comes back of what is pumped, as a slow mean, and seconds that the flow has run on end. */
  returns_frac: number;
  flowing_s: number;
  /** Water added so far, L, and strength that the fluid shall have, g/L. */
  poured_L: number;
  strength_gL: number;
  /** Job second at which returns were found lost, or -1; how often that was; the bit was lifted for it; no hope is left. */
  lost_s: number;
  fights: number;
  lifted: boolean;
  givenUp: boolean;
  /** Water is being added until the pit stands well again. */
  filling: boolean;
}

/** The working dose; for stones or lost returns more. */
export const WORKING_gL = 1.3;
export const THICK_gL = 2;
/** After a start the room at the mouth fills first, s; then the mean runs over so many seconds. */
const FILLS_s = 45;
const MEAN_s = 30;
/** Less than this comes back: the ground is thirsty; so little, that buckets cannot make up for it: returns are lost; so much: they are back. ASSUMED rules of thumb. */
const THIRSTY_frac = 0.92;
const LOST_frac = 0.75;
const BACK_frac = 0.88;
/** A fight for the returns lasts no longer than powder needs to soak and work, s, and is fought so many times. */
const FIGHT_s = 1800;
const FIGHTS = 3;
/** Water is carried in portions, L. */
const WATER_L = 60;

export function createWater(strength_gL: number): Water {
  return {
    returns_frac: 1,
    flowing_s: 0,
    poured_L: 0,
    strength_gL,
    lost_s: -1,
    fights: 0,
    lifted: false,
    givenUp: false,
    filling: false,
  };
}

export const thicken = (water: Water, strength_gL: number): void => {
  water.strength_gL = Math.max(water.strength_gL, strength_gL);
};

/** The pit wants water now. */
export const low = ({ pit }: Senses): boolean => pit.look === 'low' || pit.look === 'empty';

/** Less comes back than is pumped. */
export const thirsty = (water: Water): boolean => water.returns_frac < THIRSTY_frac;

/** Looks at returns and pit, once a second. */
export function watchWater(water: Water, senses: Senses): void {
  const { pump, returns } = senses;
  water.flowing_s = pump.primed && pump.throttle_frac >= 1 ? water.flowing_s + 1 : 0;
  // What a torn hose throws on the ground is not lost in the hole.
  if (pump.hose !== 'whole') water.flowing_s = 0;
  if (water.flowing_s > FILLS_s) water.returns_frac += (returns.share_frac - water.returns_frac) / MEAN_s;
  if (thirsty(water) || low(senses)) thicken(water, WORKING_gL);
}

/** Water into the pit when it is low, or down on thirsty ground and a hand is free; the feed comes off for a low one. Undefined when none is wanted. */
export function pourWater(water: Water, patience: Patience, senses: Senses): Deed | null | undefined {
  const { pit, stock, hands, stem } = senses;
  if (low(senses)) water.filling = true;
  if (pit.look === 'full') water.filling = false;
  const wanted = low(senses) || (pit.look === 'down' && (water.filling || thirsty(water)));
  if (!wanted || stock.water_L < WATER_L || busyWith(senses, 'addWater')) return undefined;
  if (!mayTry(patience, senses, 'addWater')) return undefined;
  if (hands.free < 1) return low(senses) && stem.feed_frac > 0 ? does('setFeed', { feed_frac: 0 }) : undefined;
  water.poured_L += WATER_L;
  return does('addWater', { water_L: WATER_L });
}

/** While the flow stands and a hand is free, the hole is topped up whenever its fluid is not at the brim: a bucket, or two when the fluid is out of sight. */
export function topUp(patience: Patience, senses: Senses, bucket_L: number): Deed | undefined {
  const { mouth, pump, hands } = senses;
  const stands = pump.throttle_frac === 0 || !pump.primed;
  if (!stands || mouth.look === 'brim' || low(senses)) return undefined;
  if (hands.free < 1 || busyWith(senses, 'topUp') || !mayTry(patience, senses, 'topUp')) return undefined;
  return does('topUp', { fluid_L: mouth.look === 'gone' ? 2 * bucket_L : bucket_L });
}

/** Lost returns: nothing is drilled; the bit off the bottom, thicker fluid, water after it, until they are back. Undefined when there is no such trouble. */
export function fightLoss(water: Water, patience: Patience, senses: Senses): Deed | null | undefined {
  if (water.lost_s < 0) {
    if (water.flowing_s <= FILLS_s || water.returns_frac >= LOST_frac) return undefined;
    water.lost_s = senses.time_s;
    water.fights++;
    water.lifted = false;
    thicken(water, THICK_gL);
  }
  if (water.flowing_s > FILLS_s && water.returns_frac > BACK_frac) {
    water.lost_s = -1;
    return undefined;
  }
  const dry = low(senses) && (senses.pump.sound === 'gulping' || senses.pump.sound === 'racing');
  const out = low(senses) && senses.stock.water_L < WATER_L;
  if (dry || out || water.fights > FIGHTS || senses.time_s - water.lost_s > FIGHT_s) water.givenUp = true;
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (water.lifted || senses.stem.bit_m < 1 || senses.hands.free < 1 || !mayTry(patience, senses, 'lift'))
    return undefined;
  water.lifted = true;
  return does('lift', { distance_m: 0.3, speed_ms: 0.05 });
}

/** There is no sense in going on. */
export function giveUp(water: Water): void {
  if (water.givenUp) return;
  water.givenUp = true;
  water.lifted = false;
}

/** All is lost but the stem: the bit is drawn off the bottom, all comes to rest, the hole is given up while the stem is free. */
export function leaveHole(water: Water, patience: Patience, senses: Senses): Deed | null {
  const { stem, pump } = senses;
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (stem.pull === 'stuck') return does('abandon');
  if (busyWith(senses, 'lift')) return null;
  if (!water.lifted && stem.bit_m > 1 && senses.hands.free >= 1 && mayTry(patience, senses, 'lift')) {
    water.lifted = true;
    return does('lift', { distance_m: 0.3, speed_ms: 0.05 });
  }
  if (stem.turning) return does('setTurning', { on: false });
  if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  return does('abandon');
}
