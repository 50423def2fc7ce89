// Items that judge the work in sticky ground: the pace where the bit hardly gets on, and a bit kept clean of clay.

import { eventsNamed } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

const HOUR_s = 3600;

/**
 * Metres an hour while the bit cut where it hardly gets on: too little weight is slow, and so is a bit packed by too much of it or by too little flow.
 * Bands: slow_mh (slower is hard going), full_mh, none_mh, least_m (of such ground, or nothing shows).
 */
export function clayPace(view: RunView, bands: Bands): Judged {
  const { depth_m, sinking_ms, time_s, turning, feed_frac } = view.trace.columns;
  const slow_mh = bandOf(bands, 'slow_mh');
  let worked_s = 0;
  let made_m = 0;
  let first = -1;
  for (let row = 1; row < view.trace.length; row++) {
    const hard = sinking_ms[row]! > 0 && sinking_ms[row]! * HOUR_s < slow_mh;
    if (!hard || turning[row] !== 1 || !(feed_frac[row]! > 0)) continue;
    if (first < 0) first = row;
    worked_s += time_s[row]! - time_s[row - 1]!;
    made_m += Math.max(0, depth_m[row]! - depth_m[row - 1]!);
  }
  if (made_m < bandOf(bands, 'least_m'))
    return { share_frac: 0, reason: { key: 'reason.clayPace.none', data: {} }, evidence: [] };
  const pace_mh = (made_m / worked_s) * HOUR_s;
  const share_frac = shareBetween(pace_mh, bandOf(bands, 'full_mh'), bandOf(bands, 'none_mh'));
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.clayPace.full' : 'reason.clayPace.lost',
      data: { pace_mh: shown(pace_mh, 1) },
    },
    evidence: [{ tick: time_s[first]!, depth_m: shown(depth_m[first]!, 2), value: shown(pace_mh, 2), unit: 'm/h' }],
  };
}

/** How far the bit was ever packed with clay. Bands: full_frac, none_frac, least_m (metres that must be drilled at all). */
export function bitClean(view: RunView, bands: Bands): Judged {
  const { balling_frac, depth_m, time_s } = view.trace.columns;
  if (view.trace.length === 0 || view.depth_m - depth_m[0]! < bandOf(bands, 'least_m'))
    return { share_frac: 0, reason: { key: 'reason.bitClean.none', data: {} }, evidence: [] };
  let worst = 0;
  for (let row = 0; row < view.trace.length; row++) if (balling_frac[row]! > balling_frac[worst]!) worst = row;
  const most_frac = balling_frac[worst]!;
  const share_frac = shareBetween(most_frac, bandOf(bands, 'full_frac'), bandOf(bands, 'none_frac'));
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.bitClean.full' : 'reason.bitClean.lost',
      data: { packed_pct: shown(most_frac * 100, 0) },
    },
    evidence: [
      { tick: time_s[worst]!, depth_m: shown(depth_m[worst]!, 2), value: shown(most_frac, 2), unit: '' },
      ...eventsNamed(view, 'balled').map(({ tick }) => ({ tick })),
    ],
  };
}
