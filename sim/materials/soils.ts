// The kinds of ground and their parameters: the only place in sim where a kind's name decides anything.
// All values are ASSUMED defaults for calibration, chosen inside the published ranges that tests/reference lists, except
// K of clean sands and of fine gravel, which is Hazen's 0.01 d10^2 (d10 in mm, K in m/s).

export type ColourWord = 'brown' | 'grey' | 'yellow' | 'red' | 'black' | 'pale';

export type SoilKind =
  | 'topsoil'
  | 'lateriticCrust'
  | 'softClay'
  | 'firmClay'
  | 'stiffClay'
  | 'swellingClay'
  | 'silt'
  | 'siltySand'
  | 'fineSand'
  | 'mediumSand'
  | 'coarseSand'
  | 'fineGravel'
  | 'coarseGravel'
  | 'cobbles'
  | 'peat'
  | 'weatheredRock';

export interface Soil {
  readonly kind: SoilKind;
  /** Diameters that 10, 30, 50, 60, 85 % of the grains by weight are finer than. */
  readonly d10_mm: number;
  readonly d30_mm: number;
  readonly d50_mm: number;
  readonly d60_mm: number;
  readonly d85_mm: number;
  readonly porosity_frac: number;
  /** Hydraulic conductivity to water at 20 C. */
  readonly K_ms: number;
  /** Specific yield: share of the bulk volume that drains out by gravity. */
  readonly Sy_frac: number;
  /** Undrained shear strength; null where the ground drains and cohesion and friction hold it. */
  readonly su_kPa: number | null;
  /** su is at least this share of the effective weight above (normally consolidated ground); 0: does not grow. */
  readonly suGrowth_ratio: number;
  /** Cohesion above and below the water table. */
  readonly cAbove_kPa: number;
  readonly cBelow_kPa: number;
  /** Height of capillary rise that lends cohesion above the table, m. */
  readonly capillaryRise_m: number;
  /** Friction angle; null where su rules. */
  readonly phi_deg: number | null;
  /** Specific energy of drilling; null: refuses the bit. */
  readonly E_MPa: number | null;
  /** Wall shear stress above which flow carries the ground off. */
  readonly tauC_Pa: number;
  /** Swelling in water, relative to swelling clay. */
  readonly swell_ratio: number;
  readonly grainDensity_kgm3: number;
  /** Pattern number of FGDC-STD-013-2006 section 37; null: own pattern. */
  readonly fgdc: number | null;
  /** Colours it may have where air reaches it, and where it is always under water. */
  readonly oxidised: readonly ColourWord[];
  readonly reduced: readonly ColourWord[];
}

/** Quartz and most clay minerals. */
const MINERAL_kgm3 = 2650;

type Sizes = readonly [d10: number, d30: number, d50: number, d60: number, d85: number];
type Bulk = readonly [porosity: number, K: number, Sy: number];

function soil(
  kind: SoilKind,
  [d10_mm, d30_mm, d50_mm, d60_mm, d85_mm]: Sizes,
  [porosity_frac, K_ms, Sy_frac]: Bulk,
  strength: Partial<Soil> & Pick<Soil, 'E_MPa' | 'tauC_Pa' | 'fgdc' | 'oxidised'>,
): Soil {
  return {
    kind,
    d10_mm,
    d30_mm,
    d50_mm,
    d60_mm,
    d85_mm,
    porosity_frac,
    K_ms,
    Sy_frac,
    su_kPa: null,
    suGrowth_ratio: 0,
    cAbove_kPa: 0,
    cBelow_kPa: 0,
    capillaryRise_m: 0,
    phi_deg: null,
    swell_ratio: 0,
    grainDensity_kgm3: MINERAL_kgm3,
    reduced: ['grey'],
    ...strength,
  };
}

/**
 * The table. Weathered rock refuses the bit altogether: its rotten upper part, which a drag bit still cuts, is what the
 * ground generator calls silty sand or silt above it.
 */
export const SOILS: Readonly<Record<SoilKind, Soil>> = {
  topsoil: soil('topsoil', [0.01, 0.05, 0.12, 0.2, 0.6], [0.45, 1e-6, 0.1], {
    cAbove_kPa: 3,
    cBelow_kPa: 1,
    phi_deg: 28,
    E_MPa: 0.9,
    tauC_Pa: 0.5,
    fgdc: null,
    oxidised: ['brown'],
  }),
  lateriticCrust: soil('lateriticCrust', [0.2, 1, 2, 3, 10], [0.25, 1e-6, 0.05], {
    cAbove_kPa: 200,
    cBelow_kPa: 200,
    phi_deg: 35,
    E_MPa: 80,
    tauC_Pa: 100,
    fgdc: null,
    oxidised: ['red'],
    reduced: ['red'],
  }),
  softClay: soil('softClay', [0.0005, 0.001, 0.003, 0.005, 0.02], [0.5, 1e-9, 0.03], {
    su_kPa: 15,
    suGrowth_ratio: 0.25,
    E_MPa: 2.8,
    tauC_Pa: 1,
    swell_ratio: 0.2,
    fgdc: 620,
    oxidised: ['brown', 'yellow'],
  }),
  firmClay: soil('firmClay', [0.0005, 0.001, 0.003, 0.005, 0.02], [0.42, 5e-10, 0.02], {
    su_kPa: 60,
    E_MPa: 5,
    tauC_Pa: 5,
    swell_ratio: 0.2,
    fgdc: 620,
    oxidised: ['brown', 'yellow', 'red'],
  }),
  stiffClay: soil('stiffClay', [0.0004, 0.001, 0.002, 0.004, 0.02], [0.38, 2e-10, 0.02], {
    su_kPa: 140,
    E_MPa: 10,
    tauC_Pa: 20,
    swell_ratio: 0.1,
    fgdc: 620,
    oxidised: ['red', 'yellow'],
  }),
  swellingClay: soil('swellingClay', [0.0002, 0.0005, 0.001, 0.002, 0.01], [0.48, 1e-10, 0.02], {
    su_kPa: 80,
    E_MPa: 4.6,
    tauC_Pa: 5,
    swell_ratio: 1,
    fgdc: 620,
    oxidised: ['brown', 'red'],
  }),
  silt: soil('silt', [0.004, 0.015, 0.025, 0.03, 0.05], [0.45, 2e-7, 0.08], {
    cAbove_kPa: 2,
    cBelow_kPa: 0.5,
    phi_deg: 28,
    E_MPa: 1.2,
    tauC_Pa: 0.12,
    fgdc: 616,
    oxidised: ['brown', 'yellow'],
  }),
  siltySand: soil('siltySand', [0.02, 0.07, 0.11, 0.13, 0.25], [0.4, 4e-6, 0.15], {
    cAbove_kPa: 1,
    cBelow_kPa: 0.05,
    phi_deg: 30,
    E_MPa: 0.7,
    tauC_Pa: 0.14,
    fgdc: 612,
    oxidised: ['brown', 'yellow'],
  }),
  fineSand: soil('fineSand', [0.08, 0.12, 0.15, 0.17, 0.25], [0.42, 6.4e-5, 0.21], {
    capillaryRise_m: 0.35,
    phi_deg: 30,
    E_MPa: 0.5,
    tauC_Pa: 0.14,
    fgdc: 608,
    oxidised: ['yellow', 'brown'],
  }),
  mediumSand: soil('mediumSand', [0.18, 0.28, 0.36, 0.42, 0.65], [0.39, 3.24e-4, 0.26], {
    capillaryRise_m: 0.2,
    phi_deg: 32,
    E_MPa: 0.5,
    tauC_Pa: 0.2,
    fgdc: 607,
    oxidised: ['yellow', 'brown'],
  }),
  coarseSand: soil('coarseSand', [0.3, 0.6, 0.95, 1.2, 2.2], [0.37, 9e-4, 0.27], {
    capillaryRise_m: 0.08,
    phi_deg: 33,
    E_MPa: 0.5,
    tauC_Pa: 0.5,
    fgdc: 607,
    oxidised: ['yellow', 'brown'],
  }),
  fineGravel: soil('fineGravel', [0.9, 2.2, 3.6, 4.2, 7], [0.34, 8.1e-3, 0.25], {
    phi_deg: 35,
    E_MPa: 12,
    tauC_Pa: 3,
    fgdc: 601,
    oxidised: ['yellow', 'brown'],
  }),
  coarseGravel: soil('coarseGravel', [2.5, 9, 18, 24, 45], [0.3, 4e-2, 0.22], {
    phi_deg: 37,
    E_MPa: 40,
    tauC_Pa: 14,
    fgdc: 601,
    oxidised: ['yellow', 'brown'],
  }),
  cobbles: soil('cobbles', [5, 40, 80, 100, 160], [0.28, 1e-1, 0.2], {
    phi_deg: 38,
    E_MPa: null,
    tauC_Pa: 60,
    fgdc: null,
    oxidised: ['brown'],
  }),
  peat: soil('peat', [0.05, 0.3, 0.8, 1, 3], [0.85, 1e-5, 0.44], {
    su_kPa: 8,
    suGrowth_ratio: 0.25,
    E_MPa: 0.8,
    tauC_Pa: 1,
    // Plant matter with some silt in it: 1050-1400 kg/m3.
    grainDensity_kgm3: 1250,
    fgdc: 657,
    oxidised: ['black', 'brown'],
    reduced: ['black'],
  }),
  weatheredRock: soil('weatheredRock', [0.1, 0.5, 1, 2, 8], [0.1, 1e-7, 0.02], {
    cAbove_kPa: 500,
    cBelow_kPa: 500,
    phi_deg: 40,
    E_MPa: null,
    tauC_Pa: 500,
    fgdc: null,
    oxidised: ['yellow', 'red'],
    reduced: ['pale'],
  }),
};

export const SOIL_KINDS = Object.keys(SOILS) as SoilKind[];
