// Items of the stop decision: room for a screen below the lowest water, and no metre more than that.

import { eventsNamed } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';
import { toldLowest_m } from './screen';
import { coarseStretch } from './stretch';

/** Who sees the good sand end has gone so far beyond it, m: the climb of the grains and half a rod. ASSUMED. */
const SEEN_m = 1;
/** Steps in which the hole is gone down, m. */
const STEP_m = 0.1;

/** From this share of the wanted stretch on there is room for some screen. ASSUMED. */
const ROOM_frac = 0.5;

const stoppedAt = (view: RunView): number | null => eventsNamed(view, 'drillingStopped').at(-1)?.tick ?? null;

/**
 * Metres of coarse ground below the neighbours' lowest level when drilling stopped: 3 m of screen (rows S-16 to S-19, T-08), sump (S-22) and some
 * fill must find room. Judged by the learner's own samples. Bands: full_m, none_m.
 */
export function stretchEnough(view: RunView, bands: Bands): Judged {
  const stopped = stoppedAt(view);
  if (stopped === null) return { share_frac: 0, reason: { key: 'reason.stretchEnough.none', data: {} }, evidence: [] };
  const { from_m, to_m } = coarseStretch(view, view.depth_m);
  const length_m = to_m - from_m;
  const share_frac = shareBetween(length_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m'));
  const data = {
    length_m: shown(length_m, 1),
    lowest_m: shown(toldLowest_m(view), 1),
    goal_m: bandOf(bands, 'full_m'),
  };
  return {
    share_frac,
    reason: { key: share_frac === 1 ? 'reason.stretchEnough.full' : 'reason.stretchEnough.lost', data },
    evidence: [
      { tick: stopped, depth_m: shown(view.depth_m, 2) },
      { depth_m: shown(from_m, 1), value: data.length_m, unit: 'm' },
    ],
  };
}

/**
 * Metres drilled on when there was enough, or when the good sand had ended and been seen to; nothing for who goes deeper than where neighbours met
 * salt or clay (common practice, no source). Stopping early is no merit: it earns in the measure of the good sand found, all from half of what is
 * wanted on. Bands: want_m, full_m, none_m, told_m.
 */
export function noDeeper(view: RunView, bands: Bands): Judged {
  const stopped = stoppedAt(view);
  if (stopped === null) return { share_frac: 0, reason: { key: 'reason.noDeeper.none', data: {} }, evidence: [] };
  const want_m = bandOf(bands, 'want_m');
  const told_m = bandOf(bands, 'told_m');
  const last = coarseStretch(view, view.depth_m);
  let enough_m = Math.min(view.depth_m, last.to_m + SEEN_m);
  for (let depth_m = last.from_m + want_m; depth_m < enough_m; depth_m += STEP_m) {
    const { from_m, to_m } = coarseStretch(view, depth_m);
    if (to_m - from_m >= want_m - STEP_m) enough_m = depth_m;
  }
  const over_m = Math.max(0, view.depth_m - enough_m);
  const warned = view.depth_m > told_m;
  const found_frac = Math.min(1, (last.to_m - last.from_m) / (ROOM_frac * want_m));
  const share_frac = warned ? 0 : found_frac * shareBetween(over_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m'));
  const data = { over_m: shown(over_m, 1), depth_m: shown(view.depth_m, 1) };
  return {
    share_frac,
    reason: warned
      ? { key: 'reason.noDeeper.told', data: { told_m } }
      : found_frac < 1
        ? { key: 'reason.noDeeper.short', data: {} }
        : { key: share_frac === 1 ? 'reason.noDeeper.full' : 'reason.noDeeper.lost', data },
    evidence: [{ tick: stopped, depth_m: data.depth_m, value: data.over_m, unit: 'm' }],
  };
}
