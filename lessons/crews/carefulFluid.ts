// How the careful crew keeps its fluid on a long job: it feels it every few rods, and thickens it for stones.

import type { Senses } from '$sim';
import type { CarefulMemory } from './carefulMemory';
import { does, type Deed } from './crew';
import { mayTry } from './patience';

/** The fluid is felt on every so many rods. */
const RODS_BETWEEN = 4;
/** What is added when it feels like water, g. */
const FRESH_g = 350;
/** Stones want the working dose, g for a pit of 940 L; they are believed when heard for so long, s. */
const STONES_g = 1400;
const STONES_s = 30;

/** Sets how much powder is wanted; feels the fluid now and then. Undefined when there is nothing to do. */
export function carefulFluid(memory: CarefulMemory, senses: Senses): Deed | undefined {
  const { stem, feel } = senses;
  if (stem.sound === 'knock' && ++memory.stones_s === STONES_s) memory.dose_g = Math.max(memory.dose_g, STONES_g);
  const fresh = feel !== null && feel.time_s === senses.time_s - 1;
  if (fresh && feel.word === 'watery' && memory.powderIn_g >= memory.dose_g) memory.dose_g += FRESH_g;
  const due = stem.rods >= memory.feltRod + RODS_BETWEEN && senses.returns.running && memory.clearing_s >= 0;
  if (!due || senses.hands.free < 1 || !mayTry(memory.patience, senses, 'feelFluid')) return undefined;
  memory.feltRod = stem.rods;
  return does('feelFluid');
}
