// The word for how the fluid feels between two fingers.
import { POLYMER } from '../materials/polymer';
import type { Rheology } from './rheology';

export type FeelWord = 'watery' | 'slightlySlick' | 'slick' | 'stringy' | 'creamy';

/**
 * From this K on (Pa s^n) the word holds. ASSUMED: the working dose (1.3 g/L, K .08) is slick, a third of it is not yet
 * slick, the dose that is too thick (2.5 g/L, K .26) is stringy. Only polymer pulls strings: a fluid
 * as thick with less than the working dose in it is creamy with clay.
 */
export const FEEL_FROM_Pasn = { slightlySlick: 0.01, slick: 0.05, stringy: 0.2 } as const;

/** Word for a fluid's K and its soaked polymer, g/L. Worked values: K .08 -> slick; K .8 without polymer -> creamy. */
export function feelWord(fluid: Rheology, soaked_gL: number): FeelWord {
  if (fluid.K_Pasn >= FEEL_FROM_Pasn.stringy) return soaked_gL < POLYMER.workingDose_gL ? 'creamy' : 'stringy';
  if (fluid.K_Pasn >= FEEL_FROM_Pasn.slick) return 'slick';
  return fluid.K_Pasn >= FEEL_FROM_Pasn.slightlySlick ? 'slightlySlick' : 'watery';
}
