// Items of the category hole once the rods come out: the level kept, casing at once, casing down, casing strong.

import { shoe_m } from '$sim';
import { acceptedActs, eventsNamed } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

/** When the casing came to rest: landed or hung, whichever was first; or null. */
function casedAt(view: RunView): number | null {
  const ends = view.events.filter(({ name }) => name === 'casingLanded' || name === 'casingHung');
  return ends.length > 0 ? ends[0]!.tick : null;
}

/** When the last rod was out; where another crew had pulled, the learner answers from the take-over on. */
function pulledAt(view: RunView): { readonly tick: number } | null {
  return eventsNamed(view, 'stemPulled').at(-1) ?? (view.start_tick > 0 ? { tick: view.start_tick } : null);
}

/** Lowest stand of the fluid from the end of drilling until the casing was in. Bands: full_m, none_m (below the ground). */
export function levelKept(view: RunView, bands: Bands): Judged {
  // Where another crew had stopped the drilling, the learner answers for the level from the take-over on.
  const stopped =
    eventsNamed(view, 'drillingStopped').at(-1) ?? (view.start_tick > 0 ? { tick: view.start_tick } : null);
  const cased = casedAt(view);
  if (!stopped || cased === null || !pulledAt(view))
    return { share_frac: 0, reason: { key: 'reason.levelKept.none', data: {} }, evidence: [] };
  const { time_s, holeLevel_m } = view.trace.columns;
  let lowest_m = 0;
  let at_s = stopped.tick;
  for (let row = 0; row < view.trace.length; row++) {
    if (time_s[row]! < stopped.tick || time_s[row]! > cased || holeLevel_m[row]! <= lowest_m) continue;
    lowest_m = holeLevel_m[row]!;
    at_s = time_s[row]!;
  }
  const share_frac = shareBetween(lowest_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m'));
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.levelKept.full' : 'reason.levelKept.lost',
      data: { level_m: shown(lowest_m, 1) },
    },
    evidence: [{ tick: at_s, depth_m: shown(lowest_m, 2) }],
  };
}

/** How long the hole stood open after the last rod (common practice, no source: casing goes in at once). Bands: full_s, none_s. */
export function casingSoon(view: RunView, bands: Bands): Judged {
  const pulled = pulledAt(view);
  const cased = casedAt(view);
  if (!pulled || cased === null)
    return { share_frac: 0, reason: { key: 'reason.casingSoon.none', data: {} }, evidence: [] };
  const open_s = Math.max(0, cased - pulled.tick);
  const share_frac = shareBetween(open_s, bandOf(bands, 'full_s'), bandOf(bands, 'none_s'));
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.casingSoon.full' : 'reason.casingSoon.lost',
      data: { open_min: shown(open_s / 60, 0) },
    },
    evidence: [{ tick: pulled.tick }, { tick: cased }],
  };
}

/** How far above its planned place the casing was set; a snapped one earns nothing. Bands: full_m, none_m. */
export function casingDown(view: RunView, bands: Bands): Judged {
  const { plan, verdict } = view.well ?? { plan: null, verdict: null };
  if (!plan || !verdict) return { share_frac: 0, reason: { key: 'reason.casingDown.none', data: {} }, evidence: [] };
  const above_m = Math.abs(shoe_m(plan) - verdict.casing.depth_m);
  const { snapped } = verdict.casing;
  const share_frac = snapped ? 0 : shareBetween(above_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m'));
  const data = { depth_m: shown(verdict.casing.depth_m, 1), above_m: shown(above_m, 1) };
  return {
    share_frac,
    reason: snapped
      ? { key: 'reason.casingDown.snapped', data: {} }
      : { key: share_frac === 1 ? 'reason.casingDown.full' : 'reason.casingDown.lost', data },
    evidence: acceptedActs(view, 'runCasing').map(([tick]) => ({ tick, depth_m: data.depth_m })),
  };
}

/** Margin against collapse (P-F3: 2 to 3), and section left between the slots (P-F6). Bands: full_ratio, none_ratio, section_frac. */
export function casingStrong(view: RunView, bands: Bands): Judged {
  const verdict = view.well?.verdict ?? null;
  if (verdict === null) return { share_frac: 0, reason: { key: 'reason.casingStrong.none', data: {} }, evidence: [] };
  const { collapse_ratio, section_frac } = verdict.casing;
  const byCollapse = shareBetween(collapse_ratio, bandOf(bands, 'full_ratio'), bandOf(bands, 'none_ratio'));
  const bySection = shareBetween(section_frac, bandOf(bands, 'section_frac'), bandOf(bands, 'section_frac') / 2);
  return {
    share_frac: Math.min(byCollapse, bySection),
    reason:
      byCollapse === 1 && bySection === 1
        ? { key: 'reason.casingStrong.full', data: { margin: shown(collapse_ratio, 1) } }
        : byCollapse <= bySection
          ? { key: 'reason.casingStrong.folds', data: { margin: shown(collapse_ratio, 1) } }
          : { key: 'reason.casingStrong.slots', data: { section_pct: shown(section_frac * 100, 0) } },
    evidence: [
      { value: shown(collapse_ratio, 2), unit: '' },
      { value: shown(section_frac, 2), unit: '' },
    ],
  };
}
