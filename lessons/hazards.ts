// The dangers of the real work that a lesson can show on its hazard card. Reading one is an act and enters the log.

import type { ActionName } from '$sim';
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
  'lifting',
  'glue',
  'cement',
  'lightning',
] as const;
export type HazardId = (typeof HAZARD_IDS)[number];

export function hazardWords(hazard: HazardId): { readonly title: WordKey; readonly text: WordKey } {
  return { title: `hazard.${hazard}.title`, text: `hazard.${hazard}.text` };
}

/** Acts that a caution belongs to, where it is not the turning stem: it is read in time when it was read before the first of them. */
const BEFORE: Readonly<Partial<Record<HazardId, readonly ActionName[]>>> = {
  chlorine: ['breakPolymer', 'disinfect', 'addAdditive'],
  lifting: ['pullOut', 'removeRod', 'runCasing'],
  glue: ['joinCasing'],
  cement: ['placeSeal'],
  water: ['handOver'],
};

export const actsWarnedOf = (hazard: string): readonly ActionName[] => BEFORE[hazard as HazardId] ?? ['setTurning'];
