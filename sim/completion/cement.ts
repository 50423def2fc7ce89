// Cement slurry: density, yield and amounts for a water-cement ratio.
import { CEMENT } from '../materials/seals';

/** Density of mixing water, kg/m3: handbooks reckon slurry with 1 kg to the litre. */
const WATER_kgm3 = 1000;

/** Volume of slurry from a kilogram of cement, m3/kg: 1/rho_c + w/1000. Above 0. Worked value: w/c .4617 -> 7.792e-4 (38.96 L from 50 kg). */
export const slurryYield_m3 = (water_ratio: number): number => 1 / CEMENT.grain_kgm3 + water_ratio / WATER_kgm3;

/** Density of the slurry, kg/m3: (1 + w)/(yield). Worked value: w/c .4617 -> 1876. */
export const slurryDensity_kgm3 = (water_ratio: number): number => (1 + water_ratio) / slurryYield_m3(water_ratio);

/** Dry cement in a volume of slurry, kg. Worked value: 38.96 L at .4617 -> 50.0. */
export const cementIn_kg = (volume_m3: number, water_ratio: number): number => volume_m3 / slurryYield_m3(water_ratio);
