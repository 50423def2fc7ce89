// Sand and gravel for the filter pack, washed and sieved between two sizes.

export const PACK_NAMES = ['pack04', 'pack07', 'pack1', 'pack2', 'pack4'] as const;
export type PackName = (typeof PACK_NAMES)[number];

export interface Pack {
  /** Sieved between these. */
  readonly from_mm: number;
  readonly to_mm: number;
  readonly d10_mm: number;
  readonly d30_mm: number;
  readonly d50_mm: number;
  readonly d60_mm: number;
  readonly d85_mm: number;
  /** Poured, not tamped. */
  readonly porosity_frac: number;
  readonly K_ms: number;
}

/**
 * ASSUMED: a curve straight in the logarithm of the size from nothing finer than the lower sieve to all finer than the upper
 * one, rounded. K is Hazen's .01 d10^2 up to d10 2.5 mm; beyond it .1 m/s, a middle value for gravel (Freeze and Cherry 1979,
 * from memory). Porosity of poured, even, rounded grains.
 */
export const PACKS: Readonly<Record<PackName, Pack>> = {
  pack04: {
    from_mm: 0.4,
    to_mm: 0.8,
    d10_mm: 0.43,
    d30_mm: 0.49,
    d50_mm: 0.57,
    d60_mm: 0.61,
    d85_mm: 0.72,
    porosity_frac: 0.4,
    K_ms: 1.8e-3,
  },
  pack07: {
    from_mm: 0.7,
    to_mm: 1.2,
    d10_mm: 0.74,
    d30_mm: 0.82,
    d50_mm: 0.92,
    d60_mm: 0.97,
    d85_mm: 1.11,
    porosity_frac: 0.4,
    K_ms: 5.5e-3,
  },
  pack1: {
    from_mm: 1,
    to_mm: 2,
    d10_mm: 1.07,
    d30_mm: 1.23,
    d50_mm: 1.41,
    d60_mm: 1.52,
    d85_mm: 1.8,
    porosity_frac: 0.4,
    K_ms: 1.15e-2,
  },
  pack2: {
    from_mm: 2,
    to_mm: 4,
    d10_mm: 2.14,
    d30_mm: 2.46,
    d50_mm: 2.83,
    d60_mm: 3.03,
    d85_mm: 3.6,
    porosity_frac: 0.4,
    K_ms: 4.6e-2,
  },
  pack4: {
    from_mm: 4,
    to_mm: 8,
    d10_mm: 4.29,
    d30_mm: 4.92,
    d50_mm: 5.66,
    d60_mm: 6.06,
    d85_mm: 7.21,
    porosity_frac: 0.4,
    K_ms: 0.1,
  },
};

/** Density of the grains, kg/m3: quartz. */
export const PACK_GRAIN_kgm3 = 2650;
