// Published and recomputed doses for the chlorine of a finished well.
import { describe } from 'vitest';
import { contact_mgminL, packWater_m3, pipeWater_m3, product_kg } from '../../sim/well/disinfect';
import { row } from './row';

const IMPERIAL_GALLON_m3 = 4.54609e-3;
const US_GALLON_m3 = 3.78541e-3;
const OUNCE_kg = 0.0283495;
/** Water in a foot of 4, 6 and 8 inch casing, in imperial gallons, as the sheet prints it. */
const A_FOOT_m3 = [1.1, 2.4, 4.2].map((gallons) => gallons * IMPERIAL_GALLON_m3);
const ALBERTA = 'Alberta Agriculture, module 6';
const millilitres = (water_m3: number, dose_gL: number, strength_frac: number): number =>
  1e6 * (product_kg(water_m3, dose_gL, strength_frac) / 1000);

describe('how much of the product', () => {
  row({
    id: 'C-R1',
    mark: 'V',
    about: '70 % powder for 200 mg/L in a foot of 4, 6, 8 inch casing, g',
    source: ALBERTA,
    expected: [1.44, 3.12, 5.46],
    tolerance: { rel: 0.01 },
    compute: () => A_FOOT_m3.map((water_m3) => 1000 * product_kg(water_m3, 0.2, 0.7)),
  });
  row({
    id: 'C-R2',
    mark: 'V',
    about: '5.25 % bleach for the same, L',
    source: ALBERTA,
    expected: [0.019, 0.042, 0.072],
    tolerance: { rel: 0.015 },
    compute: () => A_FOOT_m3.map((water_m3) => millilitres(water_m3, 0.2, 0.0525) / 1000),
  });
  row({
    id: 'C-R3',
    mark: 'V',
    about: '12 % bleach for the same, L (rounded in print)',
    source: ALBERTA,
    expected: [0.008, 0.018, 0.032],
    tolerance: { rel: 0.05 },
    compute: () => A_FOOT_m3.map((water_m3) => millilitres(water_m3, 0.2, 0.12) / 1000),
  });
  row({
    id: 'C-R4',
    mark: 'V',
    about: '5.25 % bleach for 50 mg/L in 5.0, 10.9, 19.1 L, mL',
    source: 'an extension sheet',
    expected: [4.75, 10.5, 18],
    tolerance: { rel: 0.015 },
    compute: () => [5, 10.9, 19.1].map((litres) => millilitres(litres / 1000, 0.05, 0.0525)),
  });
  row({
    id: 'C-R5',
    mark: 'V',
    about: '12 % bleach for the same, mL',
    source: 'an extension sheet',
    expected: [2.1, 4.55, 8],
    tolerance: { rel: 0.015 },
    compute: () => [5, 10.9, 19.1].map((litres) => millilitres(litres / 1000, 0.05, 0.12)),
  });
  row({
    id: 'C-03',
    mark: 'V',
    about: '140 g of 70 % powder for 1 m3 at 100 mg/L (exact 142.9, rounded down by 2 %)',
    source: 'UNHCR Guidelines 1997',
    expected: 140,
    tolerance: { rel: 0.021 },
    compute: () => 1000 * product_kg(1, 0.1, 0.7),
  });
  row({
    id: 'C-03b',
    mark: 'R',
    about: 'the same, exact',
    source: 'recomputed',
    expected: 142.857,
    tolerance: { rel: 1e-5 },
    compute: () => 1000 * product_kg(1, 0.1, 0.7),
  });
  row({
    id: 'C-R8',
    mark: 'V',
    about: '4 oz of 65 to 75 % powder in 50 gal: 389 to 449 mg/L, no dose to copy',
    source: 'a county table',
    expected: [4, 4],
    tolerance: { rel: 0.01 },
    compute: () =>
      [
        [0.389, 0.65],
        [0.449, 0.75],
      ].map(([dose_gL, strength]) => product_kg(50 * US_GALLON_m3, dose_gL, strength) / OUNCE_kg),
  });
});

describe('how much water', () => {
  row({
    id: 'C-R6',
    mark: 'R',
    about: 'a dug well of 1.40 m with 3.5 m of water: 5.388 m3 (the text rounds to 5)',
    source: 'recomputed',
    expected: 5.388,
    tolerance: { rel: 1e-3 },
    compute: () => pipeWater_m3(1.4, 3.5),
  });
  row({
    id: 'C-R7',
    mark: 'V',
    about: 'US gallons in a foot of 2, 4, 5, 6, 8 inches',
    source: 'a county table',
    expected: [0.16, 0.65, 1.02, 1.47, 2.61],
    tolerance: { rel: 0.021 },
    compute: () => [2, 4, 5, 6, 8].map((inches) => pipeWater_m3(inches * 0.0254, 0.3048) / US_GALLON_m3),
  });
  row({
    id: 'C-R9',
    mark: 'R',
    about: 'litres in a metre of pipe, bore 44.3, 57.0, 67.8, 81.4, 99.4 mm',
    source: 'recomputed',
    expected: [1.541, 2.552, 3.61, 5.204, 7.76],
    tolerance: { rel: 1e-3 },
    compute: () => [44.3, 57, 67.8, 81.4, 99.4].map((bore_mm) => 1000 * pipeWater_m3(bore_mm / 1000, 1)),
  });
  row({
    id: 'C-R11',
    mark: 'R',
    about:
      'pores of 4 m of pack, 150 round 63 mm, .35: 20.38 L; with 20 m of 57 mm 71.41 L, 100 mg/L of 65 %: 10.99 g, doubled 21.97 g',
    source: 'recomputed',
    expected: [20.38, 71.41, 10.99, 21.97],
    tolerance: { rel: 1e-3 },
    compute: () => {
      const pack_m3 = packWater_m3(0.15, 0.063, 4, 0.35);
      const water_m3 = pack_m3 + pipeWater_m3(0.057, 20);
      const powder_g = 1000 * product_kg(water_m3, 0.1, 0.65);
      return [1000 * pack_m3, 1000 * water_m3, powder_g, 2 * powder_g];
    },
  });
});

describe('how long', () => {
  row({
    id: 'C-R12',
    mark: 'R',
    about: '50 mg/L for 12 h: 36 000 mg min/L',
    source: 'recomputed',
    expected: 36000,
    tolerance: { rel: 1e-12 },
    compute: () => contact_mgminL(0.05, 12 * 3600),
  });
});
