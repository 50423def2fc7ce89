// Items that judge how the wall was kept: what fell, how the level stood, how long the flow stood, how fast the stem was drawn. Wall and level of an unfinished hole earn in the measure of its depth.

import { inMeasure } from './economy';
import { acceptedActs, eventsNamed, figure, SHORT_HOLE_m } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';
import type { WordKey } from '../words/index';

const nothing = (key: WordKey): Judged => ({ share_frac: 0, reason: { key, data: {} }, evidence: [] });

/** Who drilled less than this beyond what was there has shown nothing of how a hole is kept, m. */
const DRILLED_m = 0.5;

const tooShort = ({ trace, depth_m }: RunView): boolean =>
  trace.length === 0 || depth_m < trace.columns.depth_m[0]! + DRILLED_m;

/** So much of the flow comes back: the hole is full. */
const FILLED_frac = 0.5;

/** The sentence for each cause of a fall; squeeze and swelling of clay are not the crew's. */
const BECAUSE: Readonly<Record<string, WordKey>> = {
  level: 'reason.wallStood.level',
  inflow: 'reason.wallStood.inflow',
  noCake: 'reason.wallStood.noCake',
  gap: 'reason.wallStood.noCake',
  swab: 'reason.wallStood.swab',
  washout: 'reason.wallStood.washout',
};

/** Ground that fell from the wall or was washed off it. Bands: full_L, none_L. */
export function wallStood(view: RunView, bands: Bands): Judged {
  if (tooShort(view)) return nothing('reason.wallStood.none');
  const { fallen_m3 } = view.trace.columns;
  const fallen_L = (fallen_m3[view.trace.length - 1]! - fallen_m3[0]!) * 1000;
  const falls = eventsNamed(view, 'wallFails').filter(({ data }) => BECAUSE[String(data.cause)] !== undefined);
  const told = new Map<string, number>();
  for (const { data } of falls) told.set(String(data.cause), (told.get(String(data.cause)) ?? 0) + 1);
  let cause = '';
  for (const [name, times] of told) if (cause === '' || times > told.get(cause)!) cause = name;
  const { share_frac, key } = inMeasure(
    view,
    shareBetween(fallen_L, bandOf(bands, 'full_L'), bandOf(bands, 'none_L')),
    {
      full: 'reason.wallStood.full',
      lost: BECAUSE[cause] ?? 'reason.wallStood.lost',
      unfinished: 'reason.wallStood.unfinished',
    },
  );
  return {
    share_frac,
    reason: { key, data: { fallen_L: shown(fallen_L, 0) } },
    evidence: falls.map((fall) => ({ tick: fall.tick, depth_m: figure(fall, 'from_m') })),
  };
}

/** How far the fluid in the hole ever sank below the ground, once it had first run over. Bands: full_m, none_m. */
export function levelHeld(view: RunView, bands: Bands): Judged {
  if (tooShort(view)) return nothing('reason.levelHeld.none');
  const { holeLevel_m, returns_frac, time_s, depth_m } = view.trace.columns;
  let worst = -1;
  let filled = false;
  for (let row = 0; row < view.trace.length; row++) {
    filled ||= returns_frac[row]! > FILLED_frac;
    if (!filled || depth_m[row]! < SHORT_HOLE_m) continue;
    if (worst < 0 || holeLevel_m[row]! > holeLevel_m[worst]!) worst = row;
  }
  if (worst < 0) return nothing('reason.levelHeld.none');
  const low_m = holeLevel_m[worst]!;
  const { share_frac, key } = inMeasure(view, shareBetween(low_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m')), {
    full: 'reason.levelHeld.full',
    lost: 'reason.levelHeld.lost',
    unfinished: 'reason.levelHeld.unfinished',
  });
  return {
    share_frac,
    reason: { key, data: { level_m: shown(low_m, 1) } },
    evidence: [{ tick: time_s[worst]!, depth_m: shown(low_m, 2) }],
  };
}

/** The longest that the flow stood in the hole before it ran again. Bands: full_s, none_s. */
export function shortStops(view: RunView, bands: Bands): Judged {
  const starts = eventsNamed(view, 'flowStarted');
  const stops = eventsNamed(view, 'flowStopped')
    .filter((event) => figure(event, 'depth_m') >= SHORT_HOLE_m)
    .flatMap(({ tick }) => {
      const next = starts.find((start) => start.tick > tick);
      return next === undefined ? [] : [{ tick, stood_s: next.tick - tick }];
    });
  if (tooShort(view) || stops.length === 0) return nothing('reason.shortStops.none');
  let longest = stops[0]!;
  for (const stop of stops) if (stop.stood_s > longest.stood_s) longest = stop;
  const share_frac = shareBetween(longest.stood_s, bandOf(bands, 'full_s'), bandOf(bands, 'none_s'));
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.shortStops.full' : 'reason.shortStops.lost',
      data: { stood_s: longest.stood_s },
    },
    evidence: stops.map(({ tick, stood_s }) => ({ tick, value: stood_s, unit: 's' })),
  };
}

/** The fastest pull of the stem in the hole; half the speed has a quarter of the suction. Who never draws it shows nothing. Bands: full_ms, none_ms. */
export function slowPulls(view: RunView, bands: Bands): Judged {
  if (tooShort(view)) return nothing('reason.slowPulls.none');
  const pulls = [...acceptedActs(view, 'lift'), ...acceptedActs(view, 'removeRod')].map(([tick, , payload]) => ({
    tick,
    speed_ms: (payload as { speed_ms?: number }).speed_ms ?? 0,
  }));
  if (pulls.length === 0) return nothing('reason.slowPulls.never');
  let fastest_ms = 0;
  for (const { speed_ms } of pulls) fastest_ms = Math.max(fastest_ms, speed_ms);
  const share_frac = shareBetween(fastest_ms, bandOf(bands, 'full_ms'), bandOf(bands, 'none_ms'));
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.slowPulls.full' : 'reason.slowPulls.lost',
      data: { speed_ms: shown(fastest_ms, 2) },
    },
    evidence: pulls
      .filter(({ speed_ms }) => speed_ms === fastest_ms)
      .map(({ tick }) => ({ tick, value: fastest_ms, unit: 'm/s' })),
  };
}
