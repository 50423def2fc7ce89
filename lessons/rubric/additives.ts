// Items of the category additives: fluid ready when it is needed, not too thick for the pit, powder that soaked whole.

import type { LogEntry } from '$sim';
import { acceptedActs, rowAtDepth, stopsOf } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

interface Portion {
  readonly tick: number;
  readonly mass_g: number;
  readonly dumped: boolean;
}

/** Goes of what thickens the fluid; chlorine, which thins it, is none. */
export const thickened = (view: RunView): LogEntry[] =>
  acceptedActs(view, 'addAdditive').filter(([, , payload]) => payload.additive !== 'chlorine');

function portionsOf(view: RunView): Portion[] {
  return thickened(view).map(([tick, , payload]) => {
    const given = payload as { mass_g?: number; manner?: string };
    return { tick, mass_g: given.mass_g ?? 0, dumped: given.manner === 'dumped' };
  });
}

/**
 * Either the powder had soaked when the bit came to the depth that the briefing warns of, or the grains came up all the same: the better of the two.
 * Bands: depth_m, full_gL, none_gL (soaked), bedFull_m, bedNone_m (bed left at stops below that depth).
 */
export function fluidReady(view: RunView, bands: Bands): Judged {
  const depth_m = bandOf(bands, 'depth_m');
  const row = rowAtDepth(view, depth_m);
  if (row < 0) return { share_frac: 0, reason: { key: 'reason.fluidReady.none', data: { depth_m } }, evidence: [] };
  const soaked_gL = view.trace.columns.soaked_gL[row]!;
  const bySoak = shareBetween(soaked_gL, bandOf(bands, 'full_gL'), bandOf(bands, 'none_gL'));
  const later = stopsOf(view).filter((stop) => stop.depth_m > depth_m + 0.5);
  let left_m = 0;
  for (const stop of later) left_m = Math.max(left_m, stop.left_m);
  const byLift = later.length === 0 ? 0 : shareBetween(left_m, bandOf(bands, 'bedFull_m'), bandOf(bands, 'bedNone_m'));
  const soakedData = { depth_m, dose_gL: shown(soaked_gL, 2) };
  const reached = { tick: view.trace.columns.time_s[row]!, depth_m, value: shown(soaked_gL, 3), unit: 'g/L' };
  return {
    share_frac: Math.max(bySoak, byLift),
    reason:
      bySoak === 1
        ? { key: 'reason.fluidReady.soaked', data: soakedData }
        : byLift >= bySoak && byLift > 0
          ? { key: 'reason.fluidReady.lifted', data: { left_cm: shown(left_m * 100, 0) } }
          : { key: 'reason.fluidReady.lost', data: soakedData },
    evidence: [
      reached,
      ...later.map((stop) => ({ tick: stop.tick, depth_m: stop.depth_m, value: shown(stop.left_m, 3), unit: 'm' })),
    ],
  };
}

/**
 * The most powder ever soaked in the fluid that the pump drew; fluid that was no thicker than at the take-over is not blamed.
 * Bands: full_gL, none_gL. Without powder it follows fluidReady: nothing was shown.
 */
export function notTooThick(view: RunView, bands: Bands): Judged {
  if (portionsOf(view).length === 0 && view.powderBefore_kg === 0)
    return { share_frac: 0, reason: { key: 'reason.notTooThick.none', data: {} }, evidence: [] };
  const { soaked_gL, time_s } = view.trace.columns;
  let most = 0;
  for (let row = 1; row < view.trace.length; row++) if (soaked_gL[row]! > soaked_gL[most]!) most = row;
  const most_gL = view.trace.length > 0 ? soaked_gL[most]! : 0;
  const found = view.powderBefore_kg > 0 && most === 0;
  const share_frac = found ? 1 : shareBetween(most_gL, bandOf(bands, 'full_gL'), bandOf(bands, 'none_gL'));
  return {
    share_frac,
    reason:
      share_frac === 1
        ? { key: 'reason.notTooThick.full', data: {} }
        : { key: 'reason.notTooThick.lost', data: { dose_gL: shown(most_gL, 1) } },
    evidence: [{ tick: view.trace.length > 0 ? time_s[most]! : 0, value: shown(most_gL, 3), unit: 'g/L' }],
  };
}

/** Share of the powder that was sprinkled; what is dumped in one go makes lumps that never soak. Full where the crew before had mixed enough. No bands. */
export function noFishEyes(view: RunView): Judged {
  const portions = portionsOf(view);
  if (portions.length === 0 && view.powderBefore_kg > 0)
    return { share_frac: 1, reason: { key: 'reason.noFishEyes.before', data: {} }, evidence: [] };
  if (portions.length === 0)
    return { share_frac: 0, reason: { key: 'reason.noFishEyes.none', data: {} }, evidence: [] };
  let all_g = 0;
  let lump_g = 0;
  for (const portion of portions) {
    all_g += portion.mass_g;
    if (portion.dumped) lump_g += portion.mass_g;
  }
  const share_frac = all_g > 0 ? 1 - lump_g / all_g : 0;
  return {
    share_frac,
    reason:
      lump_g === 0
        ? { key: 'reason.noFishEyes.full', data: {} }
        : { key: 'reason.noFishEyes.lost', data: { lump_g: shown(lump_g, 0) } },
    evidence: portions.map((portion) => ({ tick: portion.tick, value: portion.mass_g, unit: 'g' })),
  };
}
