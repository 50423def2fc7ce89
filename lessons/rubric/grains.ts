// Which names fit a sample, judged by its own grains alone: the share of each size class, as anyone at the tray can see it.

import { SIZE_CLASSES, type Gradation, type KindWord } from '$sim';

/** Names within this much of the largest share are right as well: a tray is read by eye. ASSUMED. */
const EYE_frac = 0.1;
/** Sums of twentieths do not meet to the last bit. */
const SLACK = 1e-9;

/** Silt enough among fine sand to call it silty. ASSUMED, after the usual "silty" from about a sixth. */
const SILTY_frac = 0.15;

/** Made ground and topsoil end above this depth in every lesson; deeper, the word is wrong, m. */
const TOPSOIL_END_m = 0.8;

type Group = 'clay' | 'silt' | 'fineSand' | 'mediumSand' | 'coarseSand' | 'gravel';

/** Shares of the eight size classes put together under the words of the tray: gravel is all above 2 mm. */
function groupShares(shares: readonly number[]): Record<Group, number> {
  return {
    clay: shares[0]!,
    silt: shares[1]!,
    fineSand: shares[2]!,
    mediumSand: shares[3]!,
    coarseSand: shares[4]!,
    gravel: shares[5]! + shares[6]! + shares[7]!,
  };
}

/**
 * Fine sand goes round with the fluid and lies in every bowl: a coarser word than that of the largest share fits as well when so much of the
 * sample is that coarse or coarser, and at least so much of that class. ASSUMED.
 */
const COARSER_frac = 0.3;
const OWN_frac = 0.1;

/** From fine to coarse. */
const SANDS: readonly (keyof ReturnType<typeof groupShares>)[] = ['fineSand', 'mediumSand', 'coarseSand', 'gravel'];

/** All words that fit the sample. */
export function fittingNames(shares: readonly number[], label_m: number): KindWord[] {
  const groups = groupShares(shares);
  const names = Object.keys(groups) as Group[];
  let largest = 0;
  for (const name of names) largest = Math.max(largest, groups[name]);
  const fitting: KindWord[] = names.filter((name) => groups[name] > 0 && groups[name] >= largest - EYE_frac - SLACK);
  let main = -1;
  SANDS.forEach((name, i) => {
    if (groups[name] === largest) main = i;
  });
  for (let i = SANDS.length - 1, coarser = 0; i > Math.max(0, main); i--) {
    const name = SANDS[i]!;
    coarser += groups[name];
    const fits = coarser >= COARSER_frac - SLACK && groups[name] >= OWN_frac - SLACK;
    if (fits && !fitting.includes(name)) fitting.push(name);
  }
  const fine = groups.fineSand + groups.silt + groups.clay;
  if (fine >= 0.5 && groups.fineSand >= SILTY_frac && groups.silt + groups.clay >= SILTY_frac)
    fitting.push('siltySand');
  if (label_m <= TOPSOIL_END_m) fitting.push('topsoil');
  return fitting;
}

/** Words of ground that a screen may stand in. */
const COARSE: readonly KindWord[] = ['mediumSand', 'coarseSand', 'gravel'];
const MEDIUM_SAND_CLASS = 3;

/** A word for coarse ground fits the sample. */
export const isCoarseSample = (shares: readonly number[], label_m: number): boolean =>
  fittingNames(shares, label_m).some((name) => COARSE.includes(name));

/** The sample without what goes round with the fluid: of coarse ground only medium sand and coarser. */
export const withoutOldFines = (shares: readonly number[], label_m: number): readonly number[] =>
  isCoarseSample(shares, label_m) ? shares.map((share, k) => (k < MEDIUM_SAND_CLASS ? 0 : share)) : shares;

/** Finest size that the eye gives to clay, mm; it has no lower limit. */
const CLAY_FINEST_mm = 0.001;

/** Five points of the grain-size curve of a sample, as the shares in the tray give it: straight within a class. */
export function curveOf(shares: readonly number[]): Gradation {
  const total = shares.reduce((sum, share) => sum + share, 0);
  const sizeAt_mm = (finer_frac: number): number => {
    let below = 0;
    for (let k = 0; k < shares.length; k++) {
      const share = total > 0 ? shares[k]! / total : 0;
      const { lower_mm, upper_mm } = SIZE_CLASSES[k]!;
      const from_mm = Math.max(CLAY_FINEST_mm, lower_mm);
      if (share > 0 && below + share >= finer_frac - 1e-9)
        return from_mm + (upper_mm - from_mm) * Math.min(1, (finer_frac - below) / share);
      below += share;
    }
    return CLAY_FINEST_mm;
  };
  return {
    d10_mm: sizeAt_mm(0.1),
    d30_mm: sizeAt_mm(0.3),
    d50_mm: sizeAt_mm(0.5),
    d60_mm: sizeAt_mm(0.6),
    d85_mm: sizeAt_mm(0.85),
  };
}
