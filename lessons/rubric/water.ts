// Items that judge the finished well by its measured water: yield, sand, clearness, lift, disinfection.

import type { Verdict } from '$sim';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';
import type { WordKey } from '../words/index';

const nothing = (key: WordKey): Judged => ({ share_frac: 0, reason: { key, data: {} }, evidence: [] });

/** The verdict of a well that gives water at all. */
function givingWater(view: RunView): Verdict | null {
  const verdict = view.well?.verdict ?? null;
  return verdict !== null && verdict.yield.now_Lmin > 0 ? verdict : null;
}

/** Yield in the driest month; success from 12 to 17 L/min (reference row Y-17), a hand pump's 17 (Y-12). Salt water serves nobody. Bands: full_Lmin, none_Lmin. */
export function yieldAtDry(view: RunView, bands: Bands): Judged {
  const verdict = givingWater(view);
  if (verdict === null) return nothing('reason.yieldAtDry.none');
  const { dry_Lmin } = verdict.yield;
  const fresh = verdict.water.class === 'fresh';
  const full_Lmin = bandOf(bands, 'full_Lmin');
  const share_frac = fresh ? shareBetween(dry_Lmin, full_Lmin, bandOf(bands, 'none_Lmin')) : 0;
  const data = { yield_Lmin: shown(dry_Lmin, 1), people: verdict.people.served };
  return {
    share_frac,
    reason: !fresh
      ? { key: 'reason.yieldAtDry.salt', data: { salt_gL: shown(verdict.water.salt_gL, 1) } }
      : share_frac === 1
        ? { key: 'reason.yieldAtDry.full', data }
        : { key: 'reason.yieldAtDry.lost', data: { ...data, goal_Lmin: full_Lmin } },
    evidence: [{ value: data.yield_Lmin, unit: 'L/min' }],
  };
}

/** Sand in the water, mg/L: 5 for homes (reference row Y-06). Bands: full_mgL, none_mgL. */
export function sandFree(view: RunView, bands: Bands): Judged {
  const verdict = givingWater(view);
  if (verdict === null) return nothing('reason.sandFree.none');
  const full_mgL = bandOf(bands, 'full_mgL');
  const share_frac = shareBetween(verdict.sand_mgL, full_mgL, bandOf(bands, 'none_mgL'));
  const data = { sand_mgL: shown(verdict.sand_mgL, 1), limit_mgL: full_mgL };
  return {
    share_frac,
    reason: { key: share_frac === 1 ? 'reason.sandFree.full' : 'reason.sandFree.lost', data },
    evidence: [{ value: data.sand_mgL, unit: 'mg/L' }],
  };
}

/** The worse of two: share of the undamaged yield that is there, and turbidity (reference row Y-08). Bands: full_frac, none_frac, full_NTU, none_NTU. */
export function developed(view: RunView, bands: Bands): Judged {
  const verdict = givingWater(view);
  if (verdict === null) return nothing('reason.developed.none');
  const { share_frac: given_frac } = verdict.yield;
  const byYield = shareBetween(given_frac, bandOf(bands, 'full_frac'), bandOf(bands, 'none_frac'));
  const byLook = shareBetween(verdict.turbidity_NTU, bandOf(bands, 'full_NTU'), bandOf(bands, 'none_NTU'));
  const data = { given_pct: shown(given_frac * 100, 0) };
  return {
    share_frac: Math.min(byYield, byLook),
    reason:
      byYield === 1 && byLook === 1
        ? { key: 'reason.developed.full', data }
        : byYield <= byLook
          ? { key: 'reason.developed.lost', data }
          : { key: 'reason.developed.cloudy', data: { turbidity_NTU: shown(verdict.turbidity_NTU, 0) } },
    evidence: [
      { value: shown(given_frac, 3), unit: '' },
      { value: shown(verdict.turbidity_NTU, 1), unit: 'NTU' },
    ],
  };
}

/** The fitted pump draws water in the driest month (reference rows Y-20 to Y-22). No bands. */
export function liftFits(view: RunView): Judged {
  const verdict = view.well?.verdict ?? null;
  if (verdict === null || verdict.fitted === null) return nothing('reason.liftFits.none');
  const level_m = shown(verdict.dryStatic_m + verdict.drawdown_m, 1);
  return {
    share_frac: verdict.fittedWorks ? 1 : 0,
    reason: { key: verdict.fittedWorks ? 'reason.liftFits.full' : 'reason.liftFits.lost', data: { level_m } },
    evidence: [{ depth_m: level_m }],
  };
}

/** Chlorine at a dose and for a time that disinfect: 50 to 100 mg/L, 6 h and more (reference rows C-02, C-03). No bands. */
export function disinfected(view: RunView): Judged {
  const verdict = view.well?.verdict ?? null;
  if (verdict === null || !verdict.disinfection.done) return nothing('reason.disinfected.none');
  const { enough, ct_mgminL } = verdict.disinfection;
  return {
    share_frac: enough ? 1 : 0.25,
    reason: {
      key: enough ? 'reason.disinfected.full' : 'reason.disinfected.short',
      data: { ct_mgminL: shown(ct_mgminL, 0) },
    },
    evidence: [{ value: shown(ct_mgminL, 0), unit: 'mg min/L' }],
  };
}
