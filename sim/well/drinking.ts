// What water may hold: limits and classes for sand, cloudiness and salt. Everything else only a laboratory tells.

/** Sand in the water of homes and schools at most, g/L: 5 mg/L (EPA-570/9-75-001, from memory). */
export const SAND_LIMIT_gL = 0.005;
/** Cloudiness, NTU: above it a person sees it; most before chlorine; acceptable in small supplies (WHO 2017/2022, from memory). */
export const TURBIDITY_NTU = { seen: 4, beforeChlorine: 1, smallSupply: 5 } as const;
/** Dissolved solids, g/L: tastes good below the first, poor above the second (WHO, from memory). */
export const TASTE_gL = [0.6, 1] as const;
/** Brackish from here, salt from here, brine from here, g/L (Freeze & Cherry 1979, table 3.2, from memory). */
const CLASS_FROM_gL = [1, 10, 100] as const;
/** Dissolved solids for each uS/cm, mg/L: .64, between .55 and .75 (Hem 1985, from memory). */
const SOLIDS_PER_uScm = 0.64;
export type SaltClass = 'fresh' | 'brackish' | 'saline' | 'brine';

/** Class of dissolved solids, g/L. Source: Freeze & Cherry 1979 (from memory). Worked values: .5 -> fresh, 1 -> brackish, 35 -> saline. */
export function saltClass(salt_gL: number): SaltClass {
  const [brackish, saline, brine] = CLASS_FROM_gL;
  return salt_gL < brackish ? 'fresh' : salt_gL < saline ? 'brackish' : salt_gL < brine ? 'saline' : 'brine';
}

/** What a meter shows, uS/cm: solids in mg/L over .64. Source: Hem 1985 (from memory). Worked value: 1 g/L -> 1562.5. */
export const conductivity_uScm = (salt_gL: number): number => (salt_gL * 1000) / SOLIDS_PER_uScm;
