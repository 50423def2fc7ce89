// Items that judge what goes with a screen in the plan: pack over it, sump and cap under it.

import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

/** Pack over the screen, .6 to 1 m (row S-13): it settles when the well is washed. Without a pack there is nothing to plan. Bands: full_m, none_m. */
export function packCovers(view: RunView, bands: Bands): Judged {
  const plan = view.well?.plan ?? null;
  if (plan === null) return { share_frac: 0, reason: { key: 'reason.packCovers.none', data: {} }, evidence: [] };
  if (plan.pack === 'none')
    return { share_frac: 1, reason: { key: 'reason.packCovers.without', data: {} }, evidence: [] };
  const above_m = plan.screenFrom_m - plan.packTop_m;
  const share_frac = shareBetween(above_m, bandOf(bands, 'full_m'), bandOf(bands, 'none_m'));
  const data = { above_m: shown(above_m, 1), goal_m: bandOf(bands, 'full_m') };
  return {
    share_frac,
    reason: { key: share_frac === 1 ? 'reason.packCovers.full' : 'reason.packCovers.lost', data },
    evidence: [{ depth_m: plan.packTop_m, value: data.above_m, unit: 'm' }],
  };
}

/** A closed end and a sump under the screen (row S-22: .5 to 1 m), half each. Bands: full_m. */
export function screenFoot(view: RunView, bands: Bands): Judged {
  const plan = view.well?.plan ?? null;
  if (plan === null) return { share_frac: 0, reason: { key: 'reason.screenFoot.none', data: {} }, evidence: [] };
  const bySump = shareBetween(plan.sump_m, bandOf(bands, 'full_m'), 0);
  const data = { sump_m: shown(plan.sump_m, 1), goal_m: bandOf(bands, 'full_m') };
  return {
    share_frac: (bySump + (plan.cap ? 1 : 0)) / 2,
    reason: {
      key: !plan.cap ? 'reason.screenFoot.open' : bySump === 1 ? 'reason.screenFoot.full' : 'reason.screenFoot.lost',
      data,
    },
    evidence: [{ depth_m: plan.screenTo_m, value: data.sump_m, unit: 'm' }],
  };
}
