// Swelling: clay takes up water from the hole and grows into it.

/** Growth after one hour of clay that swells most, m. ASSUMED. */
const HOUR_m = 0.002;

const HOUR_s = 3600;
/** What working doses of polymer and of bentonite leave of it, and the doses that count as full, g/L. ASSUMED. */
const POLYMER_LEAVES_frac = 0.35;
const BENTONITE_LEAVES_frac = 0.5;
const POLYMER_FULL_gL = 1;
const BENTONITE_FULL_gL = 30;

/** What the fluid leaves of the swelling in water, .175 to 1. Worked values: water -> 1; 1 g/L soaked polymer -> .35; 30 g/L bentonite -> .5. */
export function inhibition_ratio(soaked_gL: number, bentonite_gL: number): number {
  const polymer = 1 - (1 - POLYMER_LEAVES_frac) * Math.min(1, soaked_gL / POLYMER_FULL_gL);
  const bentonite = 1 - (1 - BENTONITE_LEAVES_frac) * Math.min(1, bentonite_gL / BENTONITE_FULL_gL);
  return polymer * bentonite;
}

/**
 * Thickness swollen after dt_s more, m: sqrt(s^2 + k^2 dt), the law swell x 2 mm x sqrt(hours) carried on from what is there, so that it
 * begins anew where the bit has cut it back. swell_ratio: of the ground, 0 to 1. ASSUMED. Worked value: swell 1, from 0, 4 h -> .004.
 */
export function swollenAfter_m(swollen_m: number, swell_ratio: number, inhibition: number, dt_s: number): number {
  const hour_m = swell_ratio * HOUR_m * inhibition;
  return Math.sqrt(swollen_m * swollen_m + (hour_m * hour_m * dt_s) / HOUR_s);
}
