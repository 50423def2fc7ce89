// Items of the category screen that judge the plan by what the crew could know: its own samples and the neighbours' levels.

import {
  CLOTHS,
  entrance_ms,
  HAND_PUMP_M3S,
  held_frac,
  openPerMetre_m,
  PACK_HELD_frac,
  PACKS,
  passing_frac,
  staysLoose_frac,
  type Barrier,
  type WellPlan,
} from '$sim';
import { curveOf, isCoarseSample, withoutOldFines } from './grains';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

type Sample = RunView['tray'][number];

/** Steps in which the screen is gone along, m. */
const STEP_m = 0.1;
/** A sample says nothing about ground farther off than a rod's length, m. */
const REACH_m = 1.5;
export function nearest(tray: RunView['tray'], depth_m: number): Sample | null {
  let best: Sample | null = null;
  for (const sample of tray) {
    const off_m = Math.abs(sample.label_m - depth_m);
    if (off_m <= REACH_m && (best === null || off_m < Math.abs(best.label_m - depth_m))) best = sample;
  }
  return best;
}

/** The samples nearest to the screen, step by step, and the share of its length by which they are coarse. */
function alongScreen(view: RunView, plan: WellPlan): { samples: Sample[]; coarse_frac: number } {
  const samples: Sample[] = [];
  let steps = 0;
  let coarse = 0;
  for (let z_m = plan.screenFrom_m + STEP_m / 2; z_m < plan.screenTo_m; z_m += STEP_m) {
    const sample = nearest(view.tray, z_m);
    steps++;
    if (sample === null) continue;
    if (isCoarseSample(sample.shares, sample.label_m)) coarse++;
    if (!samples.includes(sample)) samples.push(sample);
  }
  return { samples, coarse_frac: steps > 0 ? coarse / steps : 0 };
}

/** Lowest level that a neighbour tells, m. */
export const toldLowest_m = (view: RunView): number =>
  (view.well?.site.wells ?? []).reduce((lowest_m, well) => Math.max(lowest_m, well.dryLevel_m), 0);

/**
 * Share of the planned screen that stands in coarse ground by the crew's own samples (reference rows S-16 to S-18), times the share that lies
 * below the neighbours' lowest level (T-08, S-19). Band: none_frac, the share from which down nothing is earned; 0 where it is left out.
 */
export function screenPlace(view: RunView, bands: Bands): Judged {
  const plan = view.well?.plan ?? null;
  if (plan === null || plan.screenTo_m <= plan.screenFrom_m)
    return { share_frac: 0, reason: { key: 'reason.screenPlace.none', data: {} }, evidence: [] };
  const { coarse_frac } = alongScreen(view, plan);
  const lowest_m = toldLowest_m(view);
  const length_m = plan.screenTo_m - plan.screenFrom_m;
  const below_frac = Math.min(1, Math.max(0, plan.screenTo_m - lowest_m) / length_m);
  const data = { from_m: shown(plan.screenFrom_m, 1), to_m: shown(plan.screenTo_m, 1) };
  return {
    share_frac: shareBetween(coarse_frac * below_frac, 1, bands.none_frac ?? 0),
    reason:
      coarse_frac === 1 && below_frac === 1
        ? { key: 'reason.screenPlace.full', data }
        : coarse_frac < 1
          ? { key: 'reason.screenPlace.fine', data: { share_pct: shown((1 - coarse_frac) * 100, 0) } }
          : { key: 'reason.screenPlace.dry', data: { lowest_m: shown(lowest_m, 1) } },
    evidence: [
      { depth_m: plan.screenFrom_m, value: shown(coarse_frac, 2), unit: '' },
      { depth_m: lowest_m, value: shown(below_frac, 2), unit: '' },
    ],
  };
}

function barrierOf(plan: WellPlan): Barrier {
  return {
    slotWidth_mm: plan.slotWidth_mm,
    ...(plan.cloth === 'none' ? {} : { cloth_mm: CLOTHS[plan.cloth].O95_mm }),
    ...(plan.pack === 'none' ? {} : { pack: PACKS[plan.pack] }),
  };
}

/**
 * Slot, cloth and pack against the finest grains seen where the screen stands: they hold it (reference rows S-05, S-10, S-28), and the slot holds
 * the pack (S-06). No bands.
 */
export function slotFits(view: RunView): Judged {
  const plan = view.well?.plan ?? null;
  const seen = plan === null ? [] : alongScreen(view, plan).samples;
  if (plan === null || seen.length === 0)
    return { share_frac: 0, reason: { key: 'reason.slotFits.none', data: {} }, evidence: [] };
  const barrier = barrierOf(plan);
  let loose_frac = 0;
  let finest_mm = Infinity;
  for (const sample of seen) {
    const curve = curveOf(withoutOldFines(sample.shares, sample.label_m));
    loose_frac = Math.max(loose_frac, staysLoose_frac(passing_frac(curve, barrier)));
    finest_mm = Math.min(finest_mm, curve.d50_mm);
  }
  const packHeld = barrier.pack === undefined || held_frac(barrier.pack, plan.slotWidth_mm) >= PACK_HELD_frac;
  const share_frac = plan.slotWidth_mm > 0 ? (packHeld ? 1 : 0.5) * (1 - loose_frac) : 0;
  const data = { slot_mm: shown(plan.slotWidth_mm, 2), median_mm: shown(finest_mm, 2) };
  return {
    share_frac,
    reason:
      share_frac === 1
        ? { key: 'reason.slotFits.full', data }
        : plan.slotWidth_mm === 0
          ? { key: 'reason.slotFits.shut', data: {} }
          : packHeld
            ? { key: 'reason.slotFits.wide', data }
            : { key: 'reason.slotFits.pack', data },
    evidence: [
      { value: data.slot_mm, unit: 'mm' },
      { value: data.median_mm, unit: 'mm' },
    ],
  };
}

/** How fast a hand pump's 17 L/min (Y-12) would enter the planned slots; at most .03 m/s (S-01). Bands: full_ms, none_ms. */
export function openAreaEnough(view: RunView, bands: Bands): Judged {
  const plan = view.well?.plan ?? null;
  const open_m2 = plan === null ? 0 : openPerMetre_m(plan) * (plan.screenTo_m - plan.screenFrom_m);
  if (plan === null || !(open_m2 > 0))
    return { share_frac: 0, reason: { key: 'reason.openAreaEnough.none', data: {} }, evidence: [] };
  const enters_ms = entrance_ms(HAND_PUMP_M3S, open_m2);
  const share_frac = shareBetween(enters_ms, bandOf(bands, 'full_ms'), bandOf(bands, 'none_ms'));
  const data = { speed_cms: shown(enters_ms * 100, 1), limit_cms: shown(bandOf(bands, 'full_ms') * 100, 1) };
  return {
    share_frac,
    reason: { key: share_frac === 1 ? 'reason.openAreaEnough.full' : 'reason.openAreaEnough.lost', data },
    evidence: [{ value: shown(enters_ms, 4), unit: 'm/s' }],
  };
}
