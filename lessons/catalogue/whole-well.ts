// What the lessons of a whole well have in common: the cart, the things to make a well of, what is judged, the cautions.

import type { Lesson } from '../schema';

export const WELL_SENSES: Lesson['senses'] = [
  'returns',
  'tray',
  'stem',
  'pump',
  'pit',
  'feel',
  'stick',
  'funnel',
  'clock',
];

export const ALL_HANDS: Lesson['hands'] = ['stem', 'pump', 'pit', 'fluid', 'tray', 'well', 'book'];

export const WELL_OPENING: Lesson['opening'] = {
  rods: 1,
  rodsInAll: 12,
  starter_m: 0.3,
  pit_L: 940,
  primed: false,
  water_L: 8000,
  powder_kg: 8,
  bentonite_kg: 50,
  chlorine_kg: 3,
  petrol_L: 30,
  setOut: true,
  maxDepth_m: 18,
};

export const WELL_KIT: NonNullable<Lesson['well']> = {
  casings: ['pvc50', 'pvc63', 'pvc63thin'],
  cloths: ['fine', 'medium', 'coarse'],
  packs: ['pack04', 'pack07', 'pack1', 'pack2'],
  seals: ['bentoniteGranules', 'bentonitePellets', 'cement', 'clay', 'cuttings'],
  lifts: ['suction', 'deepPiston'],
  bits_mm: [75, 100, 125, 150],
  pumps: ['small', 'middle'],
  people: 250,
};

/** Sources of the bands stand beside the items of `../rubric`. */
export const WELL_RUBRIC: Lesson['rubric'] = [
  {
    item: 'fluidReady',
    weight: 3,
    bands: { depth_m: 6, full_gL: 0.5, none_gL: 0.1, bedFull_m: 0.05, bedNone_m: 0.15 },
  },
  { item: 'notTooThick', weight: 1, bands: { full_gL: 2.2, none_gL: 3.2 } },
  { item: 'noFishEyes', weight: 1, bands: {} },
  { item: 'screenPlace', weight: 5, bands: {} },
  { item: 'slotFits', weight: 8, bands: {} },
  { item: 'openAreaEnough', weight: 1, bands: { full_ms: 0.03, none_ms: 0.06 } },
  { item: 'sandFree', weight: 7, bands: { full_mgL: 5, none_mgL: 50 } },
  { item: 'developed', weight: 7, bands: { full_frac: 0.85, none_frac: 0.5, full_NTU: 5, none_NTU: 50 } },
  { item: 'yieldAtDry', weight: 3, bands: { full_Lmin: 12, none_Lmin: 3 } },
  { item: 'liftFits', weight: 1, bands: {} },
  { item: 'packDone', weight: 1, bands: { above_m: 0.5, sound_frac: 0.5 } },
  { item: 'sealPlace', weight: 5, bands: { full_m: 3, none_m: 1, from_m: 0.5 } },
  { item: 'sealMade', weight: 10, essential: true, bands: { full_d: 3650, none_d: 50 } },
  { item: 'headWorks', weight: 3, bands: { apron_m: 1.5, drain_m: 3, stickUp_m: 0.3 } },
  { item: 'clearedStops', weight: 2, bands: { full_m: 0.05, none_m: 0.15 } },
  { item: 'notBuried', weight: 2, bands: { full_m: 0.05, none_m: 0.3 } },
  { item: 'fairFeed', weight: 1, bands: { loading_frac: 0.05, full_frac: 0.05, none_frac: 0.4 } },
  { item: 'levelKept', weight: 3, bands: { full_m: 0.5, none_m: 2 } },
  { item: 'casingSoon', weight: 2, bands: { full_s: 900, none_s: 3600 } },
  { item: 'casingDown', weight: 1, bands: { full_m: 0.15, none_m: 1 } },
  { item: 'casingStrong', weight: 1, bands: { full_ratio: 2, none_ratio: 1, section_frac: 0.4 } },
  { item: 'sampleEachRod', weight: 2, bands: { rod_m: 1.5 } },
  { item: 'labelsTrue', weight: 1, bands: { rod_m: 1.5, limit_m: 0.5 } },
  { item: 'namedRight', weight: 1, bands: { rod_m: 1.5 } },
  { item: 'ownLogTrue', weight: 2, bands: {} },
  { item: 'recordKept', weight: 2, bands: { fields: 8 } },
  { item: 'cautionsRead', weight: 3, bands: {} },
  { item: 'rodsHandledStill', weight: 1, bands: { none: 2 } },
  { item: 'siteChosen', weight: 15, essential: true, bands: { away_m: 30, line_m: 10 } },
  { item: 'disinfected', weight: 3, essential: true, bands: {} },
  { item: 'jobTime', weight: 1, bands: { full_s: 216000, none_s: 259200 } },
  {
    item: 'suppliesUsed',
    weight: 1,
    bands: { powderFull_g: 4500, powderNone_g: 8000, waterFull_L: 5000, waterNone_L: 8000 },
  },
];

export const WELL_HAZARDS: Lesson['hazards'] = [
  'turningStem',
  'rods',
  'petrol',
  'electric',
  'pits',
  'powder',
  'overhead',
  'hoses',
  'lifting',
  'glue',
  'cement',
  'chlorine',
  'lightning',
  'water',
];
