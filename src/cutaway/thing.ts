// The things of the drawing by name, and what is said of one.

import type { SlotData } from '../words';

export const THINGS = [
  'crew',
  'rain',
  'drive',
  'swivel',
  'rope',
  'winch',
  'tripod',
  'stem',
  'bit',
  'fluid',
  'air',
  'wall',
  'cake',
  'falling',
  'seep',
  'bed',
  'nominal',
  'casing',
  'screen',
  'casingWater',
  'inflow',
  'drawn',
  'pack',
  'seal',
  'cavedIn',
  'void',
  'sounded',
  'cone',
  'apron',
  'wellPump',
  'channel',
  'settling',
  'heap',
  'suction',
  'strainer',
  'pump',
  'deliveryHose',
  'suctionHose',
  'rack',
  'ruler',
  'ownLog',
  'neighbours',
  'ground',
] as const;
export type Thing = (typeof THINGS)[number];

export interface Description {
  thing: Thing;
  key: string;
  data?: SlotData;
}

export const round = (value: number, step: number): number => Math.round(value / step) * step;

export const keyOf = (name: string): string => `cutaway.tell.${name}`;
