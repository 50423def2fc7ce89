// What a crew calls the ground, and the usual ground behind each word: grains for planning on one's own log.
import type { SoilKind } from './soils';

/** null: nothing can be said. Firm clay and fine gravel stand for all clay and gravel: ASSUMED, the commonest. */
export const USUAL_SOILS = {
  topsoil: 'topsoil',
  clay: 'firmClay',
  silt: 'silt',
  siltySand: 'siltySand',
  fineSand: 'fineSand',
  mediumSand: 'mediumSand',
  coarseSand: 'coarseSand',
  gravel: 'fineGravel',
  peat: 'peat',
  unknown: null,
} as const satisfies Readonly<Record<string, SoilKind | null>>;
