// Chlorine in the finished well: how much product, how much water it must reach, how long it works.

/** Dose that disinfects a well, g/L, from and to: 50-100 mg/L (extension sheets); least time it must stand, 6 h (the same; AWWA C654 12-24 h, from memory). */
export const DOSE_gL = [0.05, 0.1] as const;
export const CONTACT_s = 6 * 3600;
/** Left over at hand-over at most, g/L: .5 mg/L (WHO, from memory). */
export const RESIDUAL_gL = 0.0005;

/**
 * Product that gives a dose, kg: V dose/strength. V m3, dose g/L (kg/m3), strength share of free chlorine in the product, above 0.
 * Source: UNHCR 1997 (140 g of 70 % powder for 1 m3 at 100 mg/L; exact 142.9). Worked value: 1 m3, .1 g/L, .7 -> .14286.
 */
export const product_kg = (water_m3: number, dose_gL: number, strength_frac: number): number =>
  (water_m3 * dose_gL) / strength_frac;

/** Water in a pipe or a round shaft, m3: pi/4 d^2 h. d m the inside diameter, h m of water. Worked value: 57.0 mm, 1 m -> .002552. */
export const pipeWater_m3 = (bore_m: number, water_m: number): number => (Math.PI / 4) * bore_m * bore_m * water_m;

/** Water in the pores of a ring of pack, m3: n pi/4 (D^2 - d^2) h. Worked value: 150 round 63 mm, 4 m, n .35 -> .02038. */
export const packWater_m3 = (hole_m: number, casing_m: number, pack_m: number, porosity_frac: number): number =>
  porosity_frac * (pipeWater_m3(hole_m, pack_m) - pipeWater_m3(casing_m, pack_m));

/**
 * Contact, mg min/L: chlorine times the time it stands so, as it fades second by second. Source: product of both (CT).
 * Worked value: 50 mg/L, 12 h -> 36000.
 */
export const contact_mgminL = (chlorine_gL: number, time_s: number): number => (chlorine_gL * 1000 * time_s) / 60;
