// What a screen stands in: the aquifers it cuts, how much of them, and where their water stands.
import type { Head } from '../ground/ground';
import { shared_m, transmissivity_m2s, type Bed } from './transmissivity';

/** A bed with what drains from it when the table falls. */
export interface DrainingBed extends Bed {
  readonly Sy_frac: number;
}

/** What a screen draws on, all its aquifers taken together. */
export interface ScreenedAquifer {
  /** Of all the wet beds of the aquifers that the screen cuts, and of the part in the screen. */
  T_m2s: number;
  screened_m2s: number;
  /** Wet thickness of those aquifers, and of the screen. */
  thickness_m: number;
  wetScreen_m: number;
  /** Depth of the water at rest in the casing. */
  level_m: number;
  /** The greater part of the water comes from beds with a free table. */
  free: boolean;
  S_ratio: number;
  /** The screen reaches the upper or the lower end of the wet aquifer. */
  atAnEnd: boolean;
}

/** Water that a metre of sand under cover gives for a metre of fall. Domenico & Mifflin 1965 (from memory): 1.3e-4 dense to 1e-3 loose sand; ASSUMED between. */
export const SPECIFIC_STORAGE_1m = 2e-4;
/** Free tables give at least this, however fine the bed that the table stands in. ASSUMED. */
const LEAST_SY = 0.03;
/** A screen that ends so near the end of the aquifer reaches it. ASSUMED. */
const AT_END_m = 0.5;

/**
 * Reads the aquifers of a ground that a screen from screenTop_m to screenBottom_m cuts, with every level fall_m lower than in `heads`
 * (0 now; lowest minus present table in the driest month). Tight beds in the screen count for what they are; a screen in these alone
 * has only them. The level is the mean of the heads, weighed by the transmissivity in the screen. tableLevel_m: where no aquifer is cut.
 * Worked value: sand of K 1e-3 from 5 to 15 m, head 6, screen 12 to 15 -> T .009, screened .003, level 6, free, at an end.
 */
export function aquiferOf(
  beds: readonly DrainingBed[],
  heads: readonly Head[],
  tableLevel_m: number,
  fall_m: number,
  screenTop_m: number,
  screenBottom_m: number,
): ScreenedAquifer {
  const out: ScreenedAquifer = {
    T_m2s: 0,
    screened_m2s: 0,
    thickness_m: 0,
    wetScreen_m: 0,
    level_m: tableLevel_m + fall_m,
    free: false,
    S_ratio: 0,
    atAnEnd: false,
  };
  let weighed = 0;
  let free_m2s = 0;
  let inAquifers_m2s = 0;
  let inAquifers_m = 0;
  let drained = 0;
  for (const head of heads) {
    const level_m = head.head_m + fall_m;
    const wetTop_m = Math.max(head.top_m, level_m);
    const from_m = Math.max(wetTop_m, screenTop_m);
    const to_m = Math.min(head.bottom_m, screenBottom_m);
    if (!(to_m > from_m)) continue;
    const inScreen_m2s = transmissivity_m2s(beds, from_m, to_m);
    out.T_m2s += transmissivity_m2s(beds, wetTop_m, head.bottom_m);
    out.thickness_m += head.bottom_m - wetTop_m;
    inAquifers_m2s += inScreen_m2s;
    inAquifers_m += to_m - from_m;
    weighed += inScreen_m2s * level_m;
    if (level_m >= head.top_m) {
      free_m2s += inScreen_m2s;
      drained += inScreen_m2s * syAt(beds, level_m);
    }
    if (from_m - wetTop_m < AT_END_m || head.bottom_m - to_m < AT_END_m) out.atAnEnd = true;
  }
  if (inAquifers_m2s > 0) out.level_m = weighed / inAquifers_m2s;
  const wetScreenTop_m = Math.max(out.level_m, screenTop_m);
  out.wetScreen_m = Math.max(0, screenBottom_m - wetScreenTop_m);
  const tight_m2s = Math.max(0, transmissivity_m2s(beds, wetScreenTop_m, screenBottom_m) - inAquifers_m2s);
  out.screened_m2s = inAquifers_m2s + tight_m2s;
  out.T_m2s += tight_m2s;
  out.thickness_m += Math.max(0, out.wetScreen_m - inAquifers_m);
  out.free = inAquifers_m2s > 0 ? free_m2s > inAquifers_m2s / 2 : false;
  out.S_ratio = out.free ? Math.max(LEAST_SY, drained / free_m2s) : SPECIFIC_STORAGE_1m * out.thickness_m;
  if (inAquifers_m2s === 0) out.atAnEnd = true;
  return out;
}

/** What drains from the bed that the table stands in, for each metre of fall; of the nearest under it where it stands between. */
function syAt(beds: readonly DrainingBed[], level_m: number): number {
  for (const bed of beds) if (shared_m(bed, level_m, level_m + 1e-6) > 0) return bed.Sy_frac;
  return 0;
}
