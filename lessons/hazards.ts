// The dangers of the real work that a lesson can show on its hazard card. Reading one is an act and enters the log.

import type { WordKey } from './words/index';

export const HAZARD_IDS = [
  'turningStem',
  'rods',
  'petrol',
  'electric',
  'pits',
  'powder',
  'chlorine',
  'overhead',
  'hoses',
  'water',
] as const;
export type HazardId = (typeof HAZARD_IDS)[number];

export function hazardWords(hazard: HazardId): { readonly title: WordKey; readonly text: WordKey } {
  return { title: `hazard.${hazard}.title`, text: `hazard.${hazard}.text` };
}
