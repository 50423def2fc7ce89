// What codes and handbooks ask of a seal. Local code decides: a hand-drilled gap breaks most codes for machine-drilled wells.

export type SealRuleId =
  'handWells' | 'montana' | 'california' | 'californiaTown' | 'wyoming' | 'reliefPack' | 'monitoringPack';

export interface SealRule {
  readonly id: SealRuleId;
  /** Least depth or thickness. */
  readonly least_m: number;
}

/**
 * Depth that the seal reaches below the ground. Hand-made and rural wells: 3 m (RWSN code 2010 and handbooks, partly from memory).
 * Montana ARM 36.21: 18 ft. California Bulletin 74-81/74-90 section 9A: 20 ft for one household, 50 ft for a community.
 */
export const DEPTH_RULES: readonly SealRule[] = [
  { id: 'handWells', least_m: 3 },
  { id: 'montana', least_m: 5.5 },
  { id: 'california', least_m: 6.1 },
  { id: 'californiaTown', least_m: 15.2 },
];

/**
 * Gap all round the casing. Montana ARM 36.21: 1.5 in. California Bulletin 74-90 section 9E: 2 in. Wyoming, water quality rules
 * chapter 26: a hole of casing + 4 in.
 */
export const GAP_RULES: readonly SealRule[] = [
  { id: 'montana', least_m: 0.038 },
  { id: 'california', least_m: 0.051 },
  { id: 'wyoming', least_m: 0.0508 },
];

/** Bentonite on the pack, under anything else: a relief agency's default .5 m; ASTM D5092 .9 to 1.5 m (from memory). */
export const ON_PACK_RULES: readonly SealRule[] = [
  { id: 'reliefPack', least_m: 0.5 },
  { id: 'monitoringPack', least_m: 0.9 },
];

/** Depth from which a hand-made well counts as sealed, m. */
export const HAND_WELL_SEAL_m = DEPTH_RULES[0].least_m;

/** The rules that ask for more. Worked value: depth rules, 4 m -> montana, california, californiaTown. */
export const stricterThan = (rules: readonly SealRule[], have_m: number): SealRule[] =>
  rules.filter(({ least_m }) => have_m < least_m);

/** Water that seeps down a filled ring under a full gradient, m3/s: K A. Worked value: 150 mm, 63 mm (.014554 m2), 1e-9 -> 1.455e-11 (.001257 L a day). */
export const ringSeepage_m3s = (K_ms: number, ring_m2: number): number => K_ms * ring_m2;
