// Weight of a suspension.
import { mixtureDensity_kgm3 } from '../fluid/density';
import { waterDensity_kgm3 } from '../materials/water';
import { GRAIN_kgm3 } from './slip';

/** Water of 20 C throughout the circuit: its density changes by .2 % over the temperatures of the trade. */
const WATER_kgm3 = waterDensity_kgm3(20);

/** Density of water with grains, kg/m3, at a grain volume fraction 0-1. Worked value: .05 -> 1080.8. */
export const suspensionDensity_kgm3 = (solids_frac: number): number =>
  mixtureDensity_kgm3(WATER_kgm3, solids_frac, GRAIN_kgm3);
