// Chlorine in casing and ring: it breaks the polymer that the drilling left, is used up by it and by dirt, and fades.
import type { BreakPace } from '../fluid/chlorine';
import { CHLORINE as LAW } from '../materials/chlorine';
import { POLYMER } from '../materials/polymer';
import type { Ground } from '../ground/ground';
import { pipeWater_m3 } from './disinfect';
import { layerOf } from './intake';
import type { ScreenRing } from './ring';

/** Chlorine works this much more slowly in the ring than in a bucket: it must get there first. ASSUMED: handbooks wait 1 to 12 h. */
const IN_RING_ratio = 0.3;
/** Cloudiness that doubles the fading, NTU. ASSUMED: develop first (WHO, from memory, without a figure). */
const DIRTY_NTU = 50;

/** Water in the pores from the casing to the invaded radius along the screen, m3. pores: those of the ground. */
export function ringWater_m3(ring: ScreenRing, screen_m: number, ground: Ground): number {
  let water_m3 = 0;
  for (let i = 0; i < ring.count; i++) {
    const { porosity_frac } = layerOf(ground, ring, i);
    const outer_m = Math.max(ring.hole_m[i], ring.invaded_m[i]);
    water_m3 +=
      porosity_frac * (pipeWater_m3(2 * outer_m, ring.height_m[i]) - pipeWater_m3(2 * screen_m, ring.height_m[i]));
  }
  return Math.max(0, water_m3);
}

/** Polymer in the invaded ground, kg: dose in working doses, of what is whole. */
export function ringPolymer_kg(ring: ScreenRing, i: number, porosity_frac: number): number {
  const { hole_m, invaded_m, height_m, dose_ratio, mud_frac, whole_frac } = ring;
  const pores_m3 =
    porosity_frac * Math.max(0, pipeWater_m3(2 * invaded_m[i], height_m[i]) - pipeWater_m3(2 * hole_m[i], height_m[i]));
  return pores_m3 * dose_ratio[i] * POLYMER.workingDose_gL * mud_frac[i] * whole_frac[i];
}

/**
 * One tick, in place; returns the chlorine left, kg. Second order as in the fluid (see ../fluid/chlorine), slower by .3; what breaks uses
 * chlorine up; the rest fades, twice as fast at 50 NTU.
 * Worked value: 0 chlorine -> 0, nothing broken.
 */
export function breakRing(
  ring: ScreenRing,
  ground: Ground,
  chlorine_kg: number,
  water_m3: number,
  turbidity_NTU: number,
  pace: BreakPace,
): number {
  if (!(chlorine_kg > 0) || !(water_m3 > 0)) return 0;
  const contact = (IN_RING_ratio * pace.breaks_m3kg * chlorine_kg) / water_m3;
  let used_kg = 0;
  for (let i = 0; i < ring.count; i++) {
    if (!(ring.whole_frac[i] > 0)) continue;
    const polymer_kg = ringPolymer_kg(ring, i, layerOf(ground, ring, i).porosity_frac);
    const broken = contact / (1 + contact);
    used_kg += LAW.used_ratio * polymer_kg * broken;
    ring.whole_frac[i] -= ring.whole_frac[i] * broken;
  }
  const left_kg = Math.max(0, chlorine_kg - used_kg);
  return left_kg * (1 - Math.min(1, pace.fade_frac * (1 + turbidity_NTU / DIRTY_NTU)));
}

/** Polymer rots by itself: the share of a tick, in place. */
export function rotRing(ring: ScreenRing, rot_frac: number): void {
  for (let i = 0; i < ring.count; i++) ring.whole_frac[i] -= ring.whole_frac[i] * rot_frac;
}
