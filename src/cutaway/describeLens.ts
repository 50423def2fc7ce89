// What the hand lens is held to, how much larger it shows things and how wide a piece, in words.

import type { LensFacts } from './part';

export const describeLens = ({ at, times, across_m }: LensFacts): { key: string; data: { n: number; cm: number } } => ({
  key: `work.cutaway.lensAt.${at}`,
  data: { n: times, cm: across_m * 100 },
});
