// Items of the category hole: cleared before each stop, never buried, a fair feed, the depth.

import { eventsNamed, figure, SHORT_HOLE_m, stopsOf } from './episodes';
import { bandOf, ownDepthShare, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

/** Share of a hole's job that was done: what was done well on the first metre says little of the rest. A well's crew decides its depth itself. */
const drilledShare = (view: RunView): number => (view.well !== null ? 1 : ownDepthShare(view));

/** What each stop left to fall, mean over the stops; of a hole not finished only in the measure of its depth. Bands: full_m, none_m (bed in metres). */
export function clearedStops(view: RunView, bands: Bands): Judged {
  const stops = stopsOf(view);
  if (stops.length === 0) return { share_frac: 0, reason: { key: 'reason.clearedStops.none', data: {} }, evidence: [] };
  const full_m = bandOf(bands, 'full_m');
  const none_m = bandOf(bands, 'none_m');
  let sum = 0;
  let worst = stops[0]!;
  for (const stop of stops) {
    sum += shareBetween(stop.left_m, full_m, none_m);
    if (stop.left_m > worst.left_m) worst = stop;
  }
  const cleared = sum / stops.length;
  const done = drilledShare(view);
  const share_frac = cleared * done;
  return {
    share_frac,
    reason:
      cleared === 1 && done < 1
        ? { key: 'reason.clearedStops.short', data: { depth_m: shown(view.depth_m, 1), goal_m: view.goal_m } }
        : share_frac === 1
          ? { key: 'reason.clearedStops.full', data: { stops: stops.length } }
          : { key: 'reason.clearedStops.lost', data: { left_cm: shown(worst.left_m * 100, 0) } },
    evidence: stops.map((stop) => ({
      tick: stop.tick,
      depth_m: stop.depth_m,
      value: shown(stop.left_m, 3),
      unit: 'm',
    })),
  };
}

/** How far the bed ever stood over the bit. Bands: full_m, none_m. */
export function notBuried(view: RunView, bands: Bands): Judged {
  if (stopsOf(view).length === 0)
    return { share_frac: 0, reason: { key: 'reason.notBuried.none', data: {} }, evidence: [] };
  const burials = view.events.filter(
    (event) => (event.name === 'buried' || event.name === 'rodAdded') && figure(event, 'buried_m') > 0,
  );
  let worst_m = 0;
  for (const event of burials) worst_m = Math.max(worst_m, figure(event, 'buried_m'));
  const share_frac = shareBetween(worst_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m'));
  return {
    share_frac,
    reason:
      share_frac === 1
        ? { key: 'reason.notBuried.full', data: {} }
        : { key: 'reason.notBuried.lost', data: { buried_cm: shown(worst_m * 100, 0) } },
    evidence: burials.map((event) => ({ tick: event.tick, value: shown(figure(event, 'buried_m'), 3), unit: 'm' })),
  };
}

/** Points lost by each time the stem jammed. ASSUMED: three jams spoil the item. */
const JAM_COST_frac = 0.34;

/** Share of the drilling time with an overloaded stream, and jams; of a hole not finished only in the measure of its depth. Bands: loading_frac (from there it is overloaded), full_frac, none_frac. */
export function fairFeed(view: RunView, bands: Bands): Judged {
  const { sinking_ms, loading_frac, depth_m } = view.trace.columns;
  const limit_frac = bandOf(bands, 'loading_frac');
  let drilling = 0;
  let loaded = 0;
  let worstRow = -1;
  for (let row = 1; row < view.trace.length; row++) {
    if (!(sinking_ms[row]! > 0) || !(depth_m[row]! > depth_m[row - 1]!)) continue;
    drilling++;
    if (loading_frac[row]! > limit_frac) loaded++;
    if (worstRow < 0 || loading_frac[row]! > loading_frac[worstRow]!) worstRow = row;
  }
  if (drilling === 0 || view.depth_m < SHORT_HOLE_m) {
    return { share_frac: 0, reason: { key: 'reason.fairFeed.none', data: {} }, evidence: [] };
  }
  const jams = view.events.filter(
    (event) => event.name === 'stalled' || event.name === 'balled' || event.name === 'tight' || event.name === 'stuck',
  );
  const loadedShare = loaded / drilling;
  const byLoad = shareBetween(loadedShare, bandOf(bands, 'full_frac'), bandOf(bands, 'none_frac'));
  const byJams = Math.max(0, 1 - JAM_COST_frac * jams.length);
  const fair = Math.min(byLoad, byJams);
  const done = drilledShare(view);
  const share_frac = fair * done;
  const worst = {
    tick: view.trace.columns.time_s[worstRow]!,
    depth_m: depth_m[worstRow]!,
    value: shown(loading_frac[worstRow]!, 3),
    unit: '',
  };
  return {
    share_frac,
    reason:
      fair === 1 && done < 1
        ? { key: 'reason.fairFeed.short', data: { depth_m: shown(view.depth_m, 1), goal_m: view.goal_m } }
        : share_frac === 1
          ? { key: 'reason.fairFeed.full', data: {} }
          : byJams < byLoad
            ? { key: 'reason.fairFeed.jammed', data: { times: jams.length } }
            : { key: 'reason.fairFeed.loaded', data: { share_pct: shown(loadedShare * 100, 0) } },
    evidence: [worst, ...jams.map((event) => ({ tick: event.tick }))],
  };
}

/** Bands: from_m (nothing earned up to there), goal_m. */
export function depthReached(view: RunView, bands: Bands): Judged {
  const goal_m = bandOf(bands, 'goal_m');
  const share_frac = shareBetween(view.depth_m, goal_m, bandOf(bands, 'from_m'));
  const depth_m = shown(view.depth_m, 2);
  const ending = eventsNamed(view, 'drillingStopped');
  return {
    share_frac,
    reason:
      share_frac === 1
        ? { key: 'reason.depthReached.full', data: { depth_m } }
        : { key: 'reason.depthReached.lost', data: { depth_m, goal_m } },
    evidence: [{ tick: ending.length > 0 ? ending[0]!.tick : view.ticks, depth_m: view.depth_m }],
  };
}
