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

/** The first sample of the tray without a name. */
export function unnamedSample(senses: Senses): Senses['tray'][number] | null {
  return senses.tray.find((sample) => sample.named === null) ?? null;
}
