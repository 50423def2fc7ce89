// What a competent crew does when something breaks or somebody is away: feed off, pump shut, the bit drawn up, mend at once; a ditch against the rain; a hard thing under the bit is worked aside.

import type { MendWord, Senses } from '$sim';
import { does, type Deed } from './crew';
import { busyWith, mayTry, type Patience } from './patience';

export interface Mending {
  /** The bit was drawn up for what is wrong now. */
  drawn: boolean;
  /** Seconds in a row that the bit knocked and went no deeper, and how often the stem was worked for it. */
  knocks_s: number;
  worked: number;
}

export const createMending = (): Mending => ({ drawn: false, knocks_s: 0, worked: 0 });

/** The bit is drawn up so far, m. Common practice, no source. */
const DRAWN_m = 0.5;
/** Knocking so long without going deeper, s, is no ground to wait for; the stem is worked so long, s, and so often. */
const KNOCKS_s = 30;
const WORK_s = 120;
const WORKS = 4;

const broken = ({ pump }: Senses): MendWord | null => (pump.dead ? 'engine' : pump.hose === 'whole' ? null : 'hose');

/** The bit up, if it is to be and can be. Undefined when it hangs high enough. */
function drawUp(mending: Mending, patience: Patience, senses: Senses): Deed | null | undefined {
  const { stem, hands } = senses;
  if (mending.drawn || stem.bit_m < DRAWN_m || stem.pull === 'stuck') return undefined;
  if (stem.turning && hands.free < 1) return does('setTurning', { on: false });
  if (hands.free < 1 || !mayTry(patience, senses, 'lift')) return null;
  mending.drawn = true;
  return does('lift', { distance_m: DRAWN_m, speed_ms: 0.05 });
}

/** Engine or hose: everything stands still until it is mended. */
function mend(what: MendWord, mending: Mending, patience: Patience, senses: Senses, draws: boolean): Deed | null {
  const { stem, pump, hands } = senses;
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  const up = draws ? drawUp(mending, patience, senses) : undefined;
  if (up !== undefined) return up;
  if (busyWith(senses, 'lift')) return null;
  if (stem.turning) return does('setTurning', { on: false });
  if (busyWith(senses, 'mend')) return null;
  return hands.free >= 1 && mayTry(patience, senses, 'mend') ? does('mend', { what }) : null;
}

/** With one pair of hands no rod can be added: the stem hangs in the running stream until the helper is back. */
function waitForHelp(mending: Mending, patience: Patience, senses: Senses): Deed | null | undefined {
  const { stem, pump, pit } = senses;
  const low = pit.look === 'low' || pit.look === 'empty';
  if (pump.throttle_frac === 0 || low) return undefined;
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  const up = drawUp(mending, patience, senses);
  return up === undefined ? null : up;
}

/** Steel or a stone under the bit: the stem is worked up and down over it. */
function workAside(mending: Mending, patience: Patience, senses: Senses): Deed | null | undefined {
  const { stem, hands } = senses;
  const rides = stem.sound === 'knock' && stem.feed_frac > 0 && stem.sinking_mmin === 0;
  mending.knocks_s = rides ? mending.knocks_s + 1 : stem.feed_frac > 0 && stem.turning ? 0 : mending.knocks_s;
  if (mending.knocks_s < KNOCKS_s || mending.worked >= WORKS) return undefined;
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (stem.turning) return does('setTurning', { on: false });
  if (hands.free < 2 || !mayTry(patience, senses, 'workStem')) return null;
  mending.knocks_s = 0;
  mending.worked += 1;
  return does('workStem', { time_s: WORK_s });
}

/** The act against what has gone wrong, null to wait, undefined when nothing has. `draws`: the crew draws the bit up first. */
export function mendingDeed(
  mending: Mending,
  patience: Patience,
  senses: Senses,
  draws: boolean,
): Deed | null | undefined {
  const { hands, sky, pit } = senses;
  if (busyWith(senses, 'addRod') || busyWith(senses, 'removeRod')) return undefined;
  const what = broken(senses);
  if (what !== null) return mend(what, mending, patience, senses, draws);
  if (hands.total < 2) return draws ? waitForHelp(mending, patience, senses) : undefined;
  mending.drawn = false;
  if (busyWith(senses, 'workStem')) return undefined;
  if (sky === 'downpour' && !pit.ditch && !busyWith(senses, 'mend') && mayTry(patience, senses, 'mend')) {
    if (hands.free >= 1) return does('mend', { what: 'ditch' });
    if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  }
  if (senses.felt.includes('toolGone') || senses.felt.includes('newHole')) mending.worked = 0;
  return workAside(mending, patience, senses);
}
