// Items of the category seal: pack sounded, seal placed, seal made, head works. Where codes are stricter the reason says so.

import { eventsNamed, figure } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

/** A sounding this far into the seal still speaks of what lies under it, m. */
const EDGE_m = 0.3;

/** A sounding shows that what fills the annulus stands over the screen (S-13) and under the seal. Bands: above_m (over the screen), sound_frac (earned by any sounding). */
export function packDone(view: RunView, bands: Bands): Judged {
  const { plan, verdict } = view.well ?? { plan: null, verdict: null };
  const sounded = eventsNamed(view, 'sounded');
  if (!plan || !verdict || sounded.length === 0)
    return { share_frac: 0, reason: { key: 'reason.packDone.none', data: {} }, evidence: [] };
  const wanted_m = verdict.screen.from_m - bandOf(bands, 'above_m');
  const underSeal_m = verdict.leak.sealTo_m - EDGE_m;
  const tops = sounded.map((event) => figure(event, 'top_m'));
  const good = tops.filter((top_m) => top_m <= wanted_m + 0.05 && top_m >= underSeal_m);
  // A sounding on top of the seal says nothing of the fill under it: told only where there is no other.
  const underneath = tops.filter((top_m) => top_m >= underSeal_m);
  const highest_m = Math.min(...(underneath.length > 0 ? underneath : tops));
  return {
    share_frac: good.length > 0 ? 1 : bandOf(bands, 'sound_frac'),
    reason:
      good.length > 0
        ? { key: 'reason.packDone.full', data: { top_m: shown(good.at(-1)!, 1) } }
        : { key: 'reason.packDone.lost', data: { top_m: shown(highest_m, 1), wanted_m: shown(wanted_m, 1) } },
    evidence: sounded.map((event) => ({ tick: event.tick, depth_m: shown(figure(event, 'top_m'), 2) })),
  };
}

/** At least 3 m of seal, up to the ground, not on the screen. Bands: full_m, none_m, from_m (deepest upper end). */
export function sealPlace(view: RunView, bands: Bands): Judged {
  const verdict = view.well?.verdict ?? null;
  if (verdict === null || verdict.leak.sealedLength_m <= 0)
    return { share_frac: 0, reason: { key: 'reason.sealPlace.none', data: {} }, evidence: [] };
  const { sealFrom_m, sealTo_m, sealedLength_m } = verdict.leak;
  const byLength = shareBetween(sealedLength_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m'));
  const from_m = bandOf(bands, 'from_m');
  const byTop = shareBetween(sealFrom_m, from_m, from_m + 2);
  const onScreen = sealTo_m > verdict.screen.from_m;
  const share_frac = onScreen ? 0 : Math.min(byLength, byTop);
  const data = { from_m: shown(sealFrom_m, 1), to_m: shown(sealTo_m, 1), length_m: shown(sealedLength_m, 1) };
  return {
    share_frac,
    reason: onScreen
      ? { key: 'reason.sealPlace.screen', data }
      : share_frac === 1
        ? { key: 'reason.sealPlace.full', data }
        : byLength <= byTop
          ? { key: 'reason.sealPlace.short', data }
          : { key: 'reason.sealPlace.deep', data },
    evidence: [{ depth_m: data.from_m }, { depth_m: data.to_m, value: data.length_m, unit: 'm' }],
  };
}

/** Days that dirty water needs down along the casing, as computed; beyond the ground's own time the seal is as good as it can be. Bands: full_d, none_d. */
export function sealMade(view: RunView, bands: Bands): Judged {
  const verdict = view.well?.verdict ?? null;
  if (verdict === null || verdict.leak.sealedLength_m <= 0)
    return { share_frac: 0, reason: { key: 'reason.sealMade.none', data: {} }, evidence: [] };
  const { annulus_d, ground_d, minGap_mm } = verdict.leak;
  const share_frac = shareBetween(annulus_d, bandOf(bands, 'full_d'), bandOf(bands, 'none_d'));
  const data = { leak_d: shown(annulus_d, annulus_d < 10 ? 1 : 0), ground_d: shown(ground_d, 0) };
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.sealMade.full' : 'reason.sealMade.lost',
      data: share_frac === 1 ? { leak_y: shown(annulus_d / 365, 0) } : data,
    },
    evidence: [
      { value: data.leak_d, unit: 'd' },
      { value: data.ground_d, unit: 'd' },
      { value: shown(minGap_mm, 0), unit: 'mm' },
    ],
  };
}

/** Apron, drain, cap, casing over the ground: a quarter each. Bands: apron_m, drain_m, stickUp_m. */
export function headWorks(view: RunView, bands: Bands): Judged {
  const verdict = view.well?.verdict ?? null;
  if (verdict === null || verdict.headWorks.apron_m <= 0)
    return { share_frac: 0, reason: { key: 'reason.headWorks.none', data: {} }, evidence: [] };
  const { apron_m, drain_m, cap, stickUp_m } = verdict.headWorks;
  const byApron = shareBetween(apron_m, bandOf(bands, 'apron_m'), bandOf(bands, 'apron_m') / 3);
  const byDrain = shareBetween(drain_m, bandOf(bands, 'drain_m'), 0);
  const byStickUp = shareBetween(stickUp_m, bandOf(bands, 'stickUp_m'), 0);
  const share_frac = (byApron + byDrain + byStickUp + (cap ? 1 : 0)) / 4;
  const data = { apron_m: shown(apron_m, 1), drain_m: shown(drain_m, 0), stickUp_cm: shown(stickUp_m * 100, 0) };
  return {
    share_frac,
    reason: {
      key: share_frac === 1 ? 'reason.headWorks.full' : cap ? 'reason.headWorks.lost' : 'reason.headWorks.cap',
      data,
    },
    evidence: [
      { value: data.apron_m, unit: 'm' },
      { value: data.drain_m, unit: 'm' },
    ],
  };
}
