// Items that judge the fluid where it works: its strength while the bit was in the ground that needs it, and whether anybody tried it.

import { thickened } from './additives';
import { acceptedActs } from './episodes';
import { bandOf, shareBetween, shown, type Bands, type Judged, type RunView } from './item';

/** A dose wrong by half counts for nothing, one between in proportion. ASSUMED. */
const WRONG_BY_frac = 0.5;

/** How well a strength fits, 0 to 1. */
function fitOf(dose_gL: number, least_gL: number, most_gL: number): number {
  if (dose_gL < least_gL) return shareBetween(dose_gL, least_gL, least_gL * (1 - WRONG_BY_frac));
  return shareBetween(dose_gL, most_gL, most_gL * (1 + WRONG_BY_frac));
}

/** Share of the drilling below a depth during which the soaked powder was neither too little nor too much. Bands: depth_m, least_gL, most_gL, full_frac, none_frac. */
export function doseFits(view: RunView, bands: Bands): Judged {
  const { soaked_gL, depth_m, time_s } = view.trace.columns;
  const from_m = bandOf(bands, 'depth_m');
  const least_gL = bandOf(bands, 'least_gL');
  const most_gL = bandOf(bands, 'most_gL');
  let drilled_m = 0;
  let fits_m = 0;
  let wrong_m = 0;
  let thin_m = 0;
  let worst = -1;
  for (let row = 1; row < view.trace.length; row++) {
    const made_m = depth_m[row]! - depth_m[row - 1]!;
    if (!(made_m > 0) || depth_m[row]! < from_m) continue;
    drilled_m += made_m;
    const dose_gL = soaked_gL[row]!;
    const fit = fitOf(dose_gL, least_gL, most_gL);
    fits_m += made_m * fit;
    if (fit === 1) continue;
    wrong_m += made_m;
    if (dose_gL < least_gL) thin_m += made_m;
    if (worst < 0) worst = row;
  }
  if (drilled_m === 0)
    return { share_frac: 0, reason: { key: 'reason.doseFits.none', data: { depth_m: from_m } }, evidence: [] };
  const share_frac = shareBetween(fits_m / drilled_m, bandOf(bands, 'full_frac'), bandOf(bands, 'none_frac'));
  const data = { least_gL, most_gL, wrong_m: shown(wrong_m, 1) };
  return {
    share_frac,
    reason: {
      key:
        share_frac === 1
          ? 'reason.doseFits.full'
          : thin_m * 2 >= wrong_m
            ? 'reason.doseFits.thin'
            : 'reason.doseFits.thick',
      data,
    },
    evidence:
      worst < 0
        ? []
        : [
            {
              tick: time_s[worst]!,
              depth_m: shown(depth_m[worst]!, 2),
              value: shown(soaked_gL[worst]!, 2),
              unit: 'g/L',
            },
          ],
  };
}

/**
 * The fluid was felt or run through the funnel once the powder had had its time; who tries it sooner tries water.
 * Bands: soak_s (after the last powder before the trial), times (trials that are enough).
 */
export function fluidTried(view: RunView, bands: Bands): Judged {
  const soak_s = bandOf(bands, 'soak_s');
  const times = bandOf(bands, 'times');
  const put = thickened(view).map(([tick]) => tick);
  const trials = [...acceptedActs(view, 'feelFluid'), ...acceptedActs(view, 'funnelTest')].map(([tick]) => tick);
  const telling = trials.filter((tick) => {
    let last = -Infinity;
    for (const at of put) if (at <= tick) last = Math.max(last, at);
    return last > -Infinity && tick - last >= soak_s;
  });
  const have = telling.length;
  return {
    share_frac: Math.min(1, have / times),
    reason:
      have >= times
        ? { key: 'reason.fluidTried.full', data: {} }
        : trials.length > have
          ? { key: 'reason.fluidTried.soon', data: {} }
          : { key: 'reason.fluidTried.lost', data: {} },
    evidence: trials.map((tick) => ({ tick })),
  };
}
