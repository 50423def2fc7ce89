// How a crew that drills with care keeps its fluid: powder or bentonite in proportion to all the water that went in, more for stones; it tests it once it has soaked, and every few rods.

import type { Senses } from '$sim';
import { CARES } from './careStyle';
import type { CarefulMemory } from './carefulMemory';
import { thicken, thirsty, WORKING_gL } from './carefulWater';
import { does, type Deed } from './crew';
import { busyWith, mayTry } from './patience';

/** So much stronger when it feels like water, or runs like it through the funnel, g/L, up to the most: powder that has drawn damp is worth a third. Water takes 26 s. */
const FRESH_gL = 0.3;
const MOST_gL = 4;
const THIN_s = 28;
/** Stones want rather more than the working dose, g/L; they are believed when heard for so long, s. */
const STONES_gL = 1.5;
const STONES_s = 30;
/** Powder comes in portions up to this, g, and not in pinches. */
const PORTION_g = 350;
const PINCH_g = 70;
/** A lean mix of bentonite, g/L: a thick one keeps the pack from falling and stays in the ground. In bags up to this, g; with less than so much of it, kg, it is no use. ASSUMED. */
const BENTONITE_gL = 34;
const BAG_g = 25000;
const ENOUGH_kg = 25;

/** Sets how strong the fluid shall be; tests it now and then. Undefined when there is nothing to do. */
export function carefulFluid(memory: CarefulMemory, senses: Senses): Deed | undefined {
  const { stem, feel, funnel } = senses;
  const { water } = memory;
  const { test, rodsBetween } = CARES[memory.care];
  if (stem.sound === 'knock' && ++memory.stones_s === STONES_s) thicken(water, STONES_gL);
  const fresh = (reading: { readonly time_s: number } | null): boolean => reading?.time_s === senses.time_s - 1;
  // On thirsty ground the working dose has to feel slick: weak powder does not, however much by the book went in.
  const short = thirsty(water) && water.strength_gL >= WORKING_gL && feel?.word === 'slightlySlick';
  const thin =
    (fresh(feel) && (feel!.word === 'watery' || short)) ||
    (fresh(funnel) && funnel!.seconds_s < THIN_s && !bentoniteIn(memory));
  if (thin && owed_g(memory) < PINCH_g) thicken(water, Math.min(MOST_gL, water.strength_gL + FRESH_gL));
  // Once powder has soaked it is tested; then every few rods, while the hole runs clean.
  if (senses.felt.includes('soaked')) memory.toFeel = true;
  const due = stem.rods >= memory.feltRod + rodsBetween && senses.returns.running && memory.clearing_s >= 0;
  if (!(due || memory.toFeel) || senses.hands.free < 1 || !mayTry(memory.patience, senses, test)) return undefined;
  memory.feltRod = stem.rods;
  memory.toFeel = false;
  return does(test);
}

const bentoniteIn = (memory: CarefulMemory): boolean => memory.bentoniteIn_g > 0;

/** Powder that the water in the pit and all that was added still want, g; with bentonite in the pit only for what was added. */
const owed_g = (memory: CarefulMemory): number => {
  const { water, pit_L, powderIn_g } = memory;
  if (!bentoniteIn(memory)) return (pit_L + water.poured_L) * water.strength_gL - powderIn_g;
  const stronger_gL = water.strength_gL > WORKING_gL ? water.strength_gL - WORKING_gL : 0;
  return pit_L * stronger_gL + water.poured_L * water.strength_gL - powderIn_g;
};

/** True while the first fluid is still left to soak; then nothing is drilled. */
export const soaking = (memory: CarefulMemory, senses: Senses): boolean => senses.time_s < memory.soaked_s;

/** The next portion of powder or bentonite; undefined when none is owed or nobody can put it in. */
export function powder(memory: CarefulMemory, senses: Senses): Deed | undefined {
  if (senses.hands.free < 1 || busyWith(senses, 'addAdditive') || !mayTry(memory.patience, senses, 'addAdditive'))
    return undefined;
  const { bentonite, soak_s } = CARES[memory.care];
  const first = memory.soaked_s < 0;
  const { stock } = senses;
  const bag_g = Math.floor(
    Math.min(BAG_g, stock.bentonite_kg * 1000, memory.pit_L * BENTONITE_gL - memory.bentoniteIn_g),
  );
  const withBentonite =
    bentonite && memory.powderIn_g === 0 && (bentoniteIn(memory) || stock.bentonite_kg >= ENOUGH_kg);
  const portion_g =
    withBentonite && bag_g >= PINCH_g
      ? bag_g
      : Math.floor(Math.min(owed_g(memory), PORTION_g, stock.powder_kg * 1000) / 10) * 10;
  if (portion_g < PINCH_g) return undefined;
  if (first) memory.soaked_s = senses.time_s + soak_s;
  if (withBentonite && bag_g >= PINCH_g) memory.bentoniteIn_g += portion_g;
  else memory.powderIn_g += portion_g;
  return does('addAdditive', {
    additive: withBentonite && bag_g >= PINCH_g ? 'bentonite' : 'polymer',
    mass_g: portion_g,
    manner: 'sprinkled',
  });
}
