// What can be put into the annulus above the pack: bentonite, cement slurry, clay of the site, cuttings.

export const SEAL_NAMES = ['bentoniteGranules', 'bentonitePellets', 'cement', 'clay', 'cuttings'] as const;
export type SealName = (typeof SEAL_NAMES)[number];

export interface Seal {
  /** As it is bought or heaped: dry bentonite, dry cement, moist clay. */
  readonly bulk_kgm3: number;
  /** Kilograms of that in a cubic metre of finished seal. */
  readonly placed_kgm3: number;
  /** Size of its pieces; 0: a slurry. They jam where the gap is under five of them. */
  readonly piece_mm: number;
  /** From placing until it may be built upon: swollen, or set. */
  readonly ready_s: number;
  /** Placed and left as it should be. */
  readonly K_ms: number;
  /** In water too salty for it, where it dries out, thrown in loose, or disturbed before it was ready. */
  readonly spoiltK_ms: number;
  /** Dissolved salt beyond which it does not swell; null: salt does it no harm. */
  readonly saltLimit_gL: number | null;
  /** Cracks where the ground stays dry. */
  readonly driesOut: boolean;
  /** A slurry runs into the pores of a pack it stands on. */
  readonly entersPack: boolean;
}

/**
 * K: ASSUMED within good bentonite 1e-11 to 1e-9, neat cement 1e-10 to 1e-8, clay cuttings 1e-8 to 1e-6 (handbooks, from memory);
 * spoilt: ASSUMED, cracked or loose lumps pass water like silty sand. Ready: bentonite 1/2 to 1 h is usual, 4 to 24 h by the
 * stricter guidance (EPA 1992); cement 24 h to work on. Salt: Oregon, OAR 690-210-0340, no bentonite above 800 ppm. Bentonite
 * fails where it dries out: California Bulletin 74-90. Densities: ASSUMED, handbook values; a dry cement of 1.283 t makes a
 * cubic metre at 23.1 L of water to 50 kg.
 */
export const SEALS: Readonly<Record<SealName, Seal>> = {
  bentoniteGranules: {
    bulk_kgm3: 1000,
    placed_kgm3: 1000,
    piece_mm: 3,
    ready_s: 3600,
    K_ms: 1e-10,
    spoiltK_ms: 1e-5,
    saltLimit_gL: 0.8,
    driesOut: true,
    entersPack: false,
  },
  bentonitePellets: {
    bulk_kgm3: 1150,
    placed_kgm3: 1150,
    piece_mm: 8,
    ready_s: 7200,
    K_ms: 1e-10,
    spoiltK_ms: 1e-5,
    saltLimit_gL: 0.8,
    driesOut: true,
    entersPack: false,
  },
  cement: {
    bulk_kgm3: 1440,
    placed_kgm3: 1283,
    piece_mm: 0,
    ready_s: 86400,
    K_ms: 1e-9,
    spoiltK_ms: 1e-6,
    saltLimit_gL: null,
    driesOut: false,
    entersPack: true,
  },
  clay: {
    bulk_kgm3: 1300,
    placed_kgm3: 1700,
    piece_mm: 5,
    ready_s: 0,
    K_ms: 1e-7,
    spoiltK_ms: 1e-5,
    saltLimit_gL: null,
    driesOut: true,
    entersPack: false,
  },
  cuttings: {
    bulk_kgm3: 1500,
    placed_kgm3: 1500,
    piece_mm: 2,
    ready_s: 0,
    K_ms: 1e-5,
    spoiltK_ms: 1e-4,
    saltLimit_gL: null,
    driesOut: false,
    entersPack: false,
  },
};

/** Cement and its water. The density of the grains is the handbook value, 3.15; the mix is the wettest that Ohio allows (OAC 3745-9-07). */
export const CEMENT = { grain_kgm3: 3150, water_ratio: 0.4617 } as const;

/** Water for the swelling of bentonite, litres a kilogram: about 1 US gal for 2 lb (Kern County). */
export const BENTONITE_WATER_L = 4.17;
