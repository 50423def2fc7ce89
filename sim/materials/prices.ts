// What things cost, in the demo currency "marks". All ASSUMED; petrol per hour the pump runs, crew per person and hour.
import type { CasingName } from './pipes';
import type { SealName } from './seals';

export const PRICE_marks = {
  polymerPerKg: 12,
  bentonitePerKg: 0.6,
  /** Per kilogram of the powder, not of the chlorine in it. Clay of the site costs only the hours. */
  chlorinePerKg: 4,
  petrolPerHour: 1.5,
  waterPerL: 0.01,
  crewPerHour: 3,
  clothPerM: 1.2,
  packPerL: 0.05,
  cap: 1,
  centraliser: 0.8,
  /** Solvent for one joint. */
  joint: 0.3,
} as const;

/** Casing by the metre. */
export const CASING_PRICE_marks: Readonly<Record<CasingName, number>> = {
  pvc50: 2,
  pvc63: 2.8,
  pvc63thin: 1.9,
  pvc110: 6,
};

/** Sealing stuff by the kilogram; clay and cuttings of the site cost only the hours. */
export const SEAL_PRICE_marks: Readonly<Record<SealName, number>> = {
  bentoniteGranules: 0.6,
  bentonitePellets: 0.9,
  cement: 0.2,
  clay: 0,
  cuttings: 0,
};
