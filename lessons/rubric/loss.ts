// Items that judge how lost fluid was met: what came back, what was drilled meanwhile, how much went into the ground.

import { eventsNamed, SHORT_HOLE_m } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';
import type { WordKey } from '../words/index';

const nothing = (key: WordKey): Judged => ({ share_frac: 0, reason: { key, data: {} }, evidence: [] });

/** After a start the room at the mouth fills first, s. */
const FILLS_s = 60;

/** Rows in which the flow had run for long enough in a hole that the returns tell of the ground. */
function tellingRows({ trace }: RunView): number[] {
  const { flow_m3s, time_s, depth_m } = trace.columns;
  const rows: number[] = [];
  let since_s = Infinity;
  for (let row = 0; row < trace.length; row++) {
    if (!(flow_m3s[row]! > 0)) since_s = Infinity;
    else if (since_s === Infinity) since_s = time_s[row]!;
    if (time_s[row]! - since_s > FILLS_s && depth_m[row]! >= SHORT_HOLE_m) rows.push(row);
  }
  return rows;
}

/** Metres drilled while less than a share of the flow came back. Bands: share_frac, full_m, none_m, least_m (metres that must be drilled at all). */
export function easedOff(view: RunView, bands: Bands): Judged {
  const { returns_frac, depth_m, time_s } = view.trace.columns;
  const limit_frac = bandOf(bands, 'share_frac');
  if (view.trace.length === 0 || view.depth_m - depth_m[0]! < bandOf(bands, 'least_m'))
    return nothing('reason.easedOff.none');
  let blind_m = 0;
  let first = -1;
  for (const row of tellingRows(view)) {
    if (row === 0 || returns_frac[row]! >= limit_frac) continue;
    const made_m = Math.max(0, depth_m[row]! - depth_m[row - 1]!);
    if (made_m > 0 && first < 0) first = row;
    blind_m += made_m;
  }
  const share_frac = shareBetween(blind_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m'));
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.easedOff.full' : 'reason.easedOff.lost',
      data: { blind_m: shown(blind_m, 1) },
    },
    evidence: first < 0 ? [] : [{ tick: time_s[first]!, depth_m: shown(depth_m[first]!, 2) }],
  };
}

/** Fluid that the ground drank in all. Bands: full_L, none_L, least_m (metres that must be drilled at all). */
export function littleLost(view: RunView, bands: Bands): Judged {
  const { lost_m3, depth_m } = view.trace.columns;
  const last = view.trace.length - 1;
  if (last < 0 || view.depth_m - depth_m[0]! < bandOf(bands, 'least_m')) return nothing('reason.littleLost.none');
  const lost_L = (lost_m3[last]! - lost_m3[0]!) * 1000;
  const share_frac = shareBetween(lost_L, bandOf(bands, 'full_L'), bandOf(bands, 'none_L'));
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.littleLost.full' : 'reason.littleLost.lost',
      data: { lost_L: shown(lost_L, 0) },
    },
    evidence: eventsNamed(view, 'returnsLost').map(({ tick }) => ({ tick })),
  };
}
