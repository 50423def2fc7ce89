// Weight of the stem in the fluid, and how much of it the rope lets on the bit.
import { GRAVITY_MS2 } from '../numeric/units';
import type { Kit } from '../materials/kit';

/** Density of steel, kg/m3. */
const STEEL_kgm3 = 7850;

/**
 * Weight that hangs on the rope, N: swivel and drive, and the rods less their lift in the fluid.
 * density_kgm3: of the fluid round the rods. Worked value: default kit, 20 m, 1000 kg/m3 -> 459.5.
 */
export function hangingWeight_N(kit: Kit, stemLength_m: number, density_kgm3: number): number {
  const dry_Nm = (kit.rodMass_kg * GRAVITY_MS2) / kit.rodLength_m;
  return kit.hangingWeight_N + dry_Nm * (1 - density_kgm3 / STEEL_kgm3) * stemLength_m;
}

/** Weight on the bit, N: the share of the weight that is let down, no more than the crew can hold steady. Worked value: feed 1, 459.5 N, most 250 -> 250. */
export function weightOnBit_N(kit: Kit, feed_frac: number, weight_N: number): number {
  return Math.min(kit.bitLoadLimit_N, Math.max(0, feed_frac) * weight_N);
}
