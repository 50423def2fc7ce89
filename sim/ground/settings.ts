// Six landscapes: which layer tends to lie under which, how thick, where the water stands. All numbers are our own choice
// (ASSUMED), shaped after the usual build of such ground: a river lays gravel, then sand, then silt and clay on top, so going
// down it coarsens until the base of the channel and then drops into clay; beds as thick as facies texts give (channel sand
// 2-20 m, bank silts .5-3, basin clay 1-10, gravel .2-1.5, clay plugs 1-5; Allen 1965, Miall 1985, from memory).
import type { SoilKind } from '../materials/soils';
import { FLAT_GROUND } from './surroundings';
import type { Surroundings } from './surroundings';

/** Log-normal thickness: median in m, and standard deviation of its natural logarithm. */
export type Thickness = readonly [median_m: number, spread: number];

export interface Setting extends Surroundings {
  /** What the profile begins with. */
  readonly first: SoilKind;
  /** For each kind: how thick, and in how many of 100 cases each other kind lies under it. */
  readonly beds: Readonly<
    Partial<Record<SoilKind, { thick: Thickness; under: Readonly<Partial<Record<SoilKind, number>>> }>>
  >;
}

export const SETTINGS = ['flood-plain', 'old-channel', 'coastal', 'terrace', 'delta', 'laterite-upland'] as const;
export type SettingId = (typeof SETTINGS)[number];

export const SETTING: Readonly<Record<SettingId, Setting>> = {
  'flood-plain': {
    ...FLAT_GROUND,
    waterTable_m: [1.5, 5],
    swing_m: [1, 3.5],
    floodLine_m: [-0.2, 1],
    first: 'topsoil',
    beds: {
      topsoil: { thick: [0.6, 0.35], under: { softClay: 25, firmClay: 15, silt: 35, siltySand: 20, fineSand: 5 } },
      softClay: { thick: [1.8, 0.5], under: { firmClay: 15, silt: 35, siltySand: 20, fineSand: 20, peat: 10 } },
      firmClay: { thick: [2.5, 0.55], under: { silt: 35, siltySand: 20, fineSand: 30, mediumSand: 15 } },
      silt: { thick: [1.5, 0.5], under: { softClay: 15, firmClay: 10, siltySand: 30, fineSand: 35, mediumSand: 10 } },
      siltySand: { thick: [1.8, 0.5], under: { silt: 15, softClay: 10, fineSand: 45, mediumSand: 30 } },
      fineSand: { thick: [3, 0.6], under: { silt: 10, firmClay: 10, siltySand: 10, mediumSand: 55, coarseSand: 15 } },
      mediumSand: { thick: [4, 0.6], under: { firmClay: 15, silt: 5, fineSand: 20, coarseSand: 45, fineGravel: 15 } },
      coarseSand: { thick: [3.5, 0.6], under: { firmClay: 25, silt: 10, mediumSand: 30, fineGravel: 35 } },
      fineGravel: { thick: [0.8, 0.5], under: { firmClay: 45, silt: 15, mediumSand: 20, coarseSand: 20 } },
      peat: { thick: [0.5, 0.4], under: { softClay: 70, silt: 30 } },
    },
  },
  'old-channel': {
    ...FLAT_GROUND,
    waterTable_m: [1, 3.5],
    swing_m: [0.8, 2.5],
    floodLine_m: [0.2, 1.5],
    first: 'topsoil',
    beds: {
      topsoil: { thick: [0.4, 0.35], under: { softClay: 35, silt: 30, siltySand: 25, fineSand: 10 } },
      softClay: { thick: [2.2, 0.5], under: { peat: 15, silt: 35, fineSand: 35, mediumSand: 15 } },
      peat: { thick: [0.5, 0.4], under: { softClay: 60, silt: 25, fineSand: 15 } },
      silt: { thick: [1.2, 0.5], under: { softClay: 15, siltySand: 35, fineSand: 40, mediumSand: 10 } },
      siltySand: { thick: [1.5, 0.5], under: { silt: 15, fineSand: 50, mediumSand: 35 } },
      fineSand: { thick: [3, 0.6], under: { siltySand: 10, mediumSand: 65, coarseSand: 25 } },
      mediumSand: { thick: [5, 0.6], under: { fineSand: 15, coarseSand: 60, fineGravel: 20, stiffClay: 5 } },
      coarseSand: { thick: [5, 0.6], under: { mediumSand: 25, fineGravel: 45, coarseGravel: 15, stiffClay: 15 } },
      fineGravel: { thick: [1, 0.5], under: { coarseSand: 35, mediumSand: 15, coarseGravel: 20, stiffClay: 30 } },
      coarseGravel: { thick: [0.7, 0.5], under: { coarseSand: 30, fineGravel: 20, stiffClay: 50 } },
      stiffClay: { thick: [5, 0.5], under: { silt: 30, fineSand: 40, mediumSand: 30 } },
    },
  },
  coastal: {
    ...FLAT_GROUND,
    waterTable_m: [1, 3],
    swing_m: [0.4, 1.2],
    confinedRise_m: [-0.3, 0.8],
    floodLine_m: [-0.5, 0.8],
    salt: { brackish_m: [8, 22], brackish_gL: [1.5, 5], salt_m: [6, 20], salt_gL: [15, 35] },
    first: 'topsoil',
    beds: {
      topsoil: { thick: [0.3, 0.35], under: { fineSand: 65, siltySand: 25, softClay: 10 } },
      fineSand: { thick: [4, 0.55], under: { siltySand: 25, mediumSand: 30, softClay: 25, silt: 15, peat: 5 } },
      mediumSand: { thick: [3, 0.55], under: { fineSand: 45, coarseSand: 20, softClay: 25, siltySand: 10 } },
      coarseSand: { thick: [1.5, 0.5], under: { mediumSand: 45, fineSand: 20, fineGravel: 15, softClay: 20 } },
      fineGravel: { thick: [0.5, 0.4], under: { coarseSand: 50, softClay: 50 } },
      siltySand: { thick: [1.5, 0.5], under: { fineSand: 45, softClay: 30, silt: 25 } },
      silt: { thick: [1.5, 0.5], under: { softClay: 35, siltySand: 30, fineSand: 35 } },
      softClay: { thick: [3, 0.6], under: { fineSand: 30, silt: 20, siltySand: 20, peat: 10, firmClay: 20 } },
      firmClay: { thick: [3, 0.5], under: { fineSand: 50, mediumSand: 25, silt: 25 } },
      peat: { thick: [0.6, 0.4], under: { softClay: 65, fineSand: 35 } },
    },
  },
  terrace: {
    ...FLAT_GROUND,
    waterTable_m: [4, 9],
    swing_m: [1, 3],
    floodLine_m: [-4, -1],
    first: 'topsoil',
    beds: {
      topsoil: {
        thick: [0.5, 0.35],
        under: { firmClay: 30, stiffClay: 20, siltySand: 30, fineGravel: 10, mediumSand: 10 },
      },
      firmClay: {
        thick: [2.5, 0.5],
        under: { stiffClay: 20, siltySand: 25, mediumSand: 25, coarseSand: 20, fineGravel: 10 },
      },
      stiffClay: { thick: [3.5, 0.5], under: { siltySand: 20, mediumSand: 30, coarseSand: 30, fineGravel: 20 } },
      siltySand: { thick: [1.5, 0.5], under: { firmClay: 20, mediumSand: 50, coarseSand: 30 } },
      mediumSand: { thick: [3, 0.55], under: { firmClay: 15, siltySand: 10, coarseSand: 50, fineGravel: 25 } },
      coarseSand: { thick: [3.5, 0.55], under: { mediumSand: 20, fineGravel: 45, coarseGravel: 20, stiffClay: 15 } },
      fineGravel: { thick: [1.5, 0.5], under: { coarseSand: 35, coarseGravel: 30, stiffClay: 25, cobbles: 10 } },
      coarseGravel: { thick: [1.5, 0.5], under: { fineGravel: 30, coarseSand: 20, cobbles: 20, stiffClay: 30 } },
      cobbles: { thick: [0.5, 0.4], under: { coarseGravel: 40, coarseSand: 20, stiffClay: 40 } },
    },
  },
  delta: {
    ...FLAT_GROUND,
    waterTable_m: [0.8, 2.5],
    swing_m: [0.5, 1.5],
    confinedRise_m: [-0.5, 1],
    floodLine_m: [0.3, 2],
    salt: { brackish_m: [18, 35], brackish_gL: [1, 4], salt_m: [10, 25], salt_gL: [8, 25] },
    first: 'topsoil',
    beds: {
      topsoil: { thick: [0.6, 0.35], under: { softClay: 45, silt: 35, siltySand: 20 } },
      softClay: { thick: [4, 0.6], under: { silt: 40, siltySand: 20, fineSand: 20, peat: 20 } },
      silt: { thick: [2.5, 0.55], under: { softClay: 35, siltySand: 35, fineSand: 30 } },
      siltySand: { thick: [2, 0.5], under: { softClay: 15, silt: 25, fineSand: 60 } },
      fineSand: { thick: [4, 0.6], under: { softClay: 20, silt: 20, siltySand: 20, mediumSand: 40 } },
      mediumSand: { thick: [5, 0.6], under: { softClay: 20, fineSand: 50, coarseSand: 20, firmClay: 10 } },
      coarseSand: { thick: [2.5, 0.5], under: { mediumSand: 55, firmClay: 45 } },
      firmClay: { thick: [4, 0.5], under: { silt: 30, fineSand: 40, mediumSand: 30 } },
      peat: { thick: [0.8, 0.4], under: { softClay: 80, silt: 20 } },
    },
  },
  'laterite-upland': {
    ...FLAT_GROUND,
    waterTable_m: [6, 14],
    swing_m: [2, 5],
    perched_frac: 0.6,
    floodLine_m: [-8, -3],
    tint: 'red',
    first: 'topsoil',
    beds: {
      topsoil: { thick: [0.5, 0.4], under: { lateriticCrust: 35, firmClay: 25, swellingClay: 20, siltySand: 20 } },
      lateriticCrust: { thick: [0.8, 0.4], under: { firmClay: 50, stiffClay: 30, siltySand: 20 } },
      firmClay: {
        thick: [3, 0.5],
        under: { stiffClay: 35, silt: 25, siltySand: 25, lateriticCrust: 5, swellingClay: 10 },
      },
      swellingClay: { thick: [2, 0.5], under: { firmClay: 40, stiffClay: 30, siltySand: 30 } },
      stiffClay: { thick: [3.5, 0.5], under: { firmClay: 15, silt: 35, siltySand: 35, coarseSand: 15 } },
      silt: { thick: [4, 0.5], under: { siltySand: 60, coarseSand: 25, stiffClay: 15 } },
      siltySand: { thick: [5, 0.5], under: { silt: 15, coarseSand: 50, stiffClay: 10, weatheredRock: 25 } },
      coarseSand: { thick: [3, 0.5], under: { siltySand: 20, fineGravel: 20, weatheredRock: 60 } },
      fineGravel: { thick: [0.7, 0.4], under: { coarseSand: 30, weatheredRock: 70 } },
      // Rock goes on to the bottom of nearly every profile; rarely a rotten seam lies in it.
      weatheredRock: { thick: [25, 0.4], under: { siltySand: 60, coarseSand: 40 } },
    },
  },
};
