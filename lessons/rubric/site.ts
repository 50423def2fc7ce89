// The item of the site: a spot far from dirt, above the flood, clear of wires, as far as the plan offers one.

import type { Contamination, Place, Site, Spot } from '$sim';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

const between_m = (a: Place, b: Place): number => {
  const east_m = a.east_m - b.east_m;
  const north_m = a.north_m - b.north_m;
  return Math.sqrt(east_m * east_m + north_m * north_m);
};

/** Metres from a place to the stretch between two others. */
export function toLine_m(place: Place, from: Place, to: Place): number {
  const length_m = between_m(from, to);
  if (length_m === 0) return between_m(place, from);
  const along =
    ((place.east_m - from.east_m) * (to.east_m - from.east_m) +
      (place.north_m - from.north_m) * (to.north_m - from.north_m)) /
    (length_m * length_m);
  const t = Math.min(1, Math.max(0, along));
  return between_m(place, {
    east_m: from.east_m + t * (to.east_m - from.east_m),
    north_m: from.north_m + t * (to.north_m - from.north_m),
  });
}

interface Standing {
  /** To the nearest latrine, pen or refuse pit. */
  readonly dirt_m: number;
  /** Over the highest flood; negative: under it. */
  readonly dry_m: number;
  /** To the overhead line; Infinity without one. */
  readonly line_m: number;
  readonly share_frac: number;
  /** What is worst about it. */
  readonly worst: 'dirt' | 'flood' | 'line';
}

/** How a spot stands: as its worst measure says, for dry feet do not make up for a latrine, nor a latrine far off for a wire overhead. */
function standingOf(spot: Spot, site: Site, contamination: readonly Contamination[], bands: Bands): Standing {
  let dirt_m = Infinity;
  for (const source of contamination) dirt_m = Math.min(dirt_m, between_m(spot, source));
  const dry_m = spot.rise_m - site.floodLine_m;
  const line_m = site.overheadLine ? toLine_m(spot, site.overheadLine.from, site.overheadLine.to) : Infinity;
  const byDirt = shareBetween(dirt_m, bandOf(bands, 'away_m'), bandOf(bands, 'away_m') / 3);
  const byFlood = shareBetween(dry_m, 0, -0.5);
  const byLine = shareBetween(line_m, bandOf(bands, 'line_m'), bandOf(bands, 'line_m') / 2);
  const share_frac = Math.min(byDirt, byFlood, byLine);
  const worst = share_frac === byLine ? 'line' : share_frac === byFlood ? 'flood' : 'dirt';
  return { dirt_m, dry_m, line_m, share_frac, worst };
}

/**
 * The chosen spot against the best that the plan offers: 30 m from latrines and other dirt (reference row Q-01), above the highest flood
 * and farther from a line than a stem stands high (common practice, no source). Bands: away_m, line_m.
 */
export function siteChosen(view: RunView, bands: Bands): Judged {
  const { well } = view;
  const chosen = well?.site.spots.find(({ id }) => id === well.spot) ?? well?.site.spots[0];
  const begun = view.events.some(({ name }) => name === 'flowStarted');
  if (!well || !chosen || !begun)
    return { share_frac: 0, reason: { key: 'reason.siteChosen.none', data: {} }, evidence: [] };
  const own = standingOf(chosen, well.site, well.contamination, bands);
  let best = 0;
  for (const spot of well.site.spots)
    best = Math.max(best, standingOf(spot, well.site, well.contamination, bands).share_frac);
  const share_frac = best > 0 ? own.share_frac / best : 1;
  const data = { dirt_m: shown(own.dirt_m, 0) };
  return {
    share_frac,
    reason:
      share_frac === 1
        ? { key: 'reason.siteChosen.full', data }
        : own.worst === 'line'
          ? { key: 'reason.siteChosen.line', data: { line_m: shown(own.line_m, 0) } }
          : own.worst === 'flood'
            ? { key: 'reason.siteChosen.flood', data: { under_m: shown(-own.dry_m, 1) } }
            : { key: 'reason.siteChosen.dirt', data },
    evidence: [
      { value: shown(own.dirt_m, 1), unit: 'm' },
      { value: shown(own.dry_m, 1), unit: 'm' },
    ],
  };
}
