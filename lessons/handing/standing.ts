// How a hole stands that somebody else was drilling: whether a rod is down, since when it is cleared, whether all is at rest.

import type { Senses } from '$sim';
import { climb_s } from '../crews/climb';
import type { Told } from './told';

export interface Standing {
  /** The rod is down, or the hole deep enough: it is to be cleared, or was. */
  readonly ends: boolean;
  /** Job second at which the feed came off. */
  readonly feedOff_s: number;
  /** The flow went on long enough after that. */
  readonly cleared: boolean;
  /** The bit hangs off the bottom. */
  readonly lifted: boolean;
  /** Nothing turns. */
  readonly still: boolean;
}

/** A rod is down when no more than this would be left with the bit on the bottom, m. */
const ROD_END_m = 0.06;
const LIFTED_m = 0.12;
/** Flow beyond the climb that makes a hole clear, s. */
const BEYOND_CLIMB_s = 10;

export function standing(senses: Senses, told: Told, deepEnough: boolean): Standing {
  const { stem, pump, time_s } = senses;
  const lifted_m = stem.bottom_m - stem.bit_m;
  const rodDown = stem.left_m - lifted_m <= ROD_END_m;
  const off = told.acts('setFeed').findLast(([, , { feed_frac }]) => feed_frac === 0);
  const feedOff_s = off?.[0] ?? time_s;
  const shut = told.acts('setThrottle').findLast(([, , { throttle_frac }]) => throttle_frac === 0);
  const flowed_s = (pump.throttle_frac > 0 ? time_s : (shut?.[0] ?? time_s)) - feedOff_s;
  return {
    ends: stem.feed_frac === 0 && (rodDown || deepEnough),
    feedOff_s,
    cleared: flowed_s >= climb_s(senses) + BEYOND_CLIMB_s,
    lifted: lifted_m >= LIFTED_m,
    still: !stem.turning,
  };
}
