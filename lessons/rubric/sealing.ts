// Items of the decisions about a seal: from where to where by the line, and the patience that it wants.

import { SEALS, type ActionName, type SealName } from '$sim';
import { acceptedActs, eventsNamed, figure, leftAt } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

/** Acts that shake a ring or load it; filling in other stuff on top is judged by what the seal became. */
const SHAKES: readonly ActionName[] = ['develop', 'headWorks'];

/**
 * Share of its time that each seal had before the well was washed or built upon: bentonite hours (row A-12), cement a day. The worst
 * counts. What needs no time, or was never shaken, has had enough. No bands.
 */
export function sealWaited(view: RunView): Judged {
  const left_tick = leftAt(view);
  const placed = eventsNamed(view, 'sealPlaced').filter(
    ({ tick, data }) => data.seal !== 'cuttings' && tick <= left_tick,
  );
  if (placed.length === 0) return { share_frac: 0, reason: { key: 'reason.sealWaited.none', data: {} }, evidence: [] };
  const shakes = SHAKES.flatMap((action) => acceptedActs(view, action).map(([tick]) => tick)).filter(
    (tick) => tick <= left_tick,
  );
  let share_frac = 1;
  let at_tick = 0;
  for (const { tick, data } of placed) {
    const { ready_s } = SEALS[data.seal as SealName];
    for (const shaken of shakes) {
      if (shaken < tick || shaken >= tick + ready_s) continue;
      const had_frac = (shaken - tick) / ready_s;
      if (had_frac >= share_frac) continue;
      share_frac = had_frac;
      at_tick = shaken;
    }
  }
  return {
    share_frac,
    reason:
      share_frac === 1
        ? { key: 'reason.sealWaited.full', data: {} }
        : { key: 'reason.sealWaited.lost', data: { had_pct: Math.round(share_frac * 100) } },
    evidence: share_frac === 1 ? placed.map(({ tick }) => ({ tick })) : [{ tick: at_tick }],
  };
}

/** Ticks of the learner's acts that put in a seal; cuttings are no seal, and what a crew does to which the rest was left does not count. */
function sealings(view: RunView): number[] {
  const placed = acceptedActs(view, 'placeSeal').filter(([, , payload]) => payload.seal !== 'cuttings');
  const filled = acceptedActs(view, 'backfill').filter(
    ([, , { material }]) => material !== 'cuttings' && String(material) in SEALS,
  );
  const left_tick = leftAt(view);
  return [...placed, ...filled]
    .map(([tick]) => tick)
    .filter((tick) => tick <= left_tick)
    .sort((a, b) => a - b);
}

/** Ticks at which anything else went into the ring. */
function otherFills(view: RunView): number[] {
  const sealed = sealings(view);
  return [...acceptedActs(view, 'placeSeal'), ...acceptedActs(view, 'backfill'), ...acceptedActs(view, 'pourPack')]
    .map(([tick]) => tick)
    .filter((tick) => !sealed.includes(tick));
}

/**
 * Length of what was put in as a seal, and how high it comes, by the soundings before and after, with nothing else poured between them: 3 m at least (row
 * A-08), up to the ground.
 * Whether it became tight is another matter. Bands: full_m, none_m, from_m (deepest upper end).
 */
export function sealInterval(view: RunView, bands: Bands): Judged {
  const placed = sealings(view);
  const first = placed[0];
  if (first === undefined)
    return { share_frac: 0, reason: { key: 'reason.sealInterval.none', data: {} }, evidence: [] };
  const soundings = eventsNamed(view, 'sounded');
  const before = soundings.filter(({ tick }) => tick <= first).at(-1);
  const after = soundings.filter(({ tick }) => tick > placed.at(-1)!)[0];
  const mixed = otherFills(view).some((tick) => before && after && tick > before.tick && tick <= after.tick);
  if (!before || !after || mixed)
    return {
      share_frac: 0,
      reason: { key: 'reason.sealInterval.blind', data: {} },
      evidence: placed.map((tick) => ({ tick })),
    };
  const from_m = figure(after, 'top_m');
  const to_m = figure(before, 'top_m');
  const byLength = shareBetween(to_m - from_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m'));
  const highest_m = bandOf(bands, 'from_m');
  const byTop = shareBetween(from_m, highest_m, highest_m + 2);
  const share_frac = Math.min(byLength, byTop);
  const data = { from_m: shown(from_m, 1), to_m: shown(to_m, 1), length_m: shown(to_m - from_m, 1) };
  return {
    share_frac,
    reason: {
      key:
        share_frac === 1
          ? 'reason.sealInterval.full'
          : byLength <= byTop
            ? 'reason.sealInterval.short'
            : 'reason.sealInterval.deep',
      data,
    },
    evidence: [
      { tick: before.tick, depth_m: data.to_m },
      { tick: after.tick, depth_m: data.from_m },
    ],
  };
}
