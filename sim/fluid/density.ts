// Density of a mixture of water and grains.

/**
 * rho = rho_w (1 - c) + rho_s c, kg/m3. water_kgm3: density of the water; solids_frac c: grains' share of the volume, 0-1;
 * grain_kgm3: their density. Worked value: water 1000, c .05, grains 2650 -> 1082.5.
 */
export function mixtureDensity_kgm3(water_kgm3: number, solids_frac: number, grain_kgm3: number): number {
  return water_kgm3 + solids_frac * (grain_kgm3 - water_kgm3);
}
