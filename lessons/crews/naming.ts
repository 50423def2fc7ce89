// How a crew names a sample: by the largest share in the tray, with fine sand and silt together called silty sand.

import type { KindWord, Senses } from '$sim';

const WORDS: readonly KindWord[] = [
  'clay',
  'silt',
  'fineSand',
  'mediumSand',
  'coarseSand',
  'gravel',
  'gravel',
  'gravel',
];

export function nameOf(sample: Senses['tray'][number]): KindWord {
  const sums = new Map<KindWord, number>();
  for (let k = 0; k < WORDS.length; k++) sums.set(WORDS[k]!, (sums.get(WORDS[k]!) ?? 0) + sample.shares[k]!);
  let best: KindWord = 'unknown';
  let most = 0;
  for (const [word, share] of sums) {
    if (share > most) {
      best = word;
      most = share;
    }
  }
  return best;
}

/** Old fine sand goes round with the fluid: the ground is as coarse as the coarsest word that so much of the sample bears out. ASSUMED rule of thumb. */
const BORNE_OUT_frac = 0.3;
const COARSER: readonly (readonly [KindWord, number])[] = [
  ['gravel', 5],
  ['coarseSand', 4],
  ['mediumSand', 3],
];

/** The name that a crew gives who knows what goes round: the ground that is being cut, not the largest share. */
export function groundNameOf(sample: Senses['tray'][number]): KindWord {
  for (const [word, from] of COARSER) {
    let coarser = 0;
    for (let k = from; k < sample.shares.length; k++) coarser += sample.shares[k]!;
    if (coarser >= BORNE_OUT_frac - 1e-9 && sample.shares[from]! >= 0.1 - 1e-9) return word;
  }
  return nameOf(sample);
}

/** The first sample of the tray without a name. */
export function unnamedSample(senses: Senses): Senses['tray'][number] | null {
  return senses.tray.find((sample) => sample.named === null) ?? null;
}
