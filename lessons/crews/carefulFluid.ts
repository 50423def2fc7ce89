// How the careful crew keeps its fluid: powder in proportion to all the water that went in, more for stones; it feels it every few rods.

import type { Senses } from '$sim';
import type { CarefulMemory } from './carefulMemory';
import { thicken } from './carefulWater';
import { does, type Deed } from './crew';
import { busyWith, mayTry } from './patience';

/** The fluid is felt on every so many rods. */
const RODS_BETWEEN = 4;
/** So much stronger when it feels like water, g/L, up to the most. */
const FRESH_gL = 0.3;
const MOST_gL = 2;
/** Stones want rather more than the working dose, g/L; they are believed when heard for so long, s. */
const STONES_gL = 1.5;
const STONES_s = 30;
/** The pit as the crew knows it, L. Powder comes in portions up to this, g, and not in pinches. */
const PIT_L = 940;
const PORTION_g = 350;
const PINCH_g = 70;

/** Sets how strong the fluid shall be; feels it now and then. Undefined when there is nothing to do. */
export function carefulFluid(memory: CarefulMemory, senses: Senses): Deed | undefined {
  const { stem, feel } = senses;
  const { water } = memory;
  if (stem.sound === 'knock' && ++memory.stones_s === STONES_s) thicken(water, STONES_gL);
  const fresh = feel !== null && feel.time_s === senses.time_s - 1;
  if (fresh && feel.word === 'watery' && owed_g(memory) < PINCH_g)
    thicken(water, Math.min(MOST_gL, water.strength_gL + FRESH_gL));
  const due = stem.rods >= memory.feltRod + RODS_BETWEEN && senses.returns.running && memory.clearing_s >= 0;
  if (!due || senses.hands.free < 1 || !mayTry(memory.patience, senses, 'feelFluid')) return undefined;
  memory.feltRod = stem.rods;
  return does('feelFluid');
}

/** Powder that the water in the pit and all that was added still want, g. */
const owed_g = ({ water, powderIn_g }: CarefulMemory): number =>
  (PIT_L + water.poured_L) * water.strength_gL - powderIn_g;

/** The next portion of powder; undefined when none is owed or nobody can put it in. */
export function powder(memory: CarefulMemory, senses: Senses): Deed | undefined {
  const portion_g = Math.floor(Math.min(owed_g(memory), PORTION_g, senses.stock.powder_kg * 1000) / 10) * 10;
  if (portion_g < PINCH_g || senses.hands.free < 1 || busyWith(senses, 'addAdditive')) return undefined;
  if (!mayTry(memory.patience, senses, 'addAdditive')) return undefined;
  memory.powderIn_g += portion_g;
  return does('addAdditive', { additive: 'polymer', mass_g: portion_g, manner: 'sprinkled' });
}
