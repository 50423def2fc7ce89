// Settling of grains: the drag law, the fall that the tick reads its slip from, and crowds of grains.
import { describe } from 'vitest';
import type { Rheology } from '../../sim/fluid/rheology';
import { dragCoefficient, dragLawOf } from '../../sim/hole/drag';
import { grainReynolds, terminalVelocity_ms } from '../../sim/hole/fall';
import { HINDERED_COUNT, hinderedExponent, hinderedInto, hinderedPlace, hinderedShare } from '../../sim/hole/hindered';
import { slipInto } from '../../sim/hole/slip';
import { CLASS_COUNT } from '../../sim/materials/sizes';
import { row } from './row';

const SPHERE = dragLawOf(1);
const CUTTINGS = dragLawOf(0.8);
const WATER: Rheology = { K_Pasn: 1.002e-3, n_ratio: 1 };
const QUARTZ_kgm3 = 2650;
const WATER_kgm3 = 998.2;
const G_ms2 = 9.81;

const inWater = (law: typeof SPHERE, grain_mm: number): number =>
  terminalVelocity_ms(law, grain_mm / 1000, QUARTZ_kgm3, WATER_kgm3, WATER, 0);

/** Ferguson & Church 2004 for natural sand by sieve diameter: an independent formula, kept on this side only. */
function fergusonChurch_ms(grain_mm: number, nu_m2s: number): number {
  const d = grain_mm / 1000;
  return (1.65 * G_ms2 * d * d) / (18 * nu_m2s + Math.sqrt(0.75 * 1.65 * G_ms2 * d ** 3));
}

describe('drag on a grain', () => {
  row({
    id: 'HL-2',
    mark: 'V',
    about: 'drag coefficient of a sphere at Reynolds number .002',
    source: 'Haider & Levenspiel 1989, value read in a public library of fluid formulas',
    expected: 12039.141,
    tolerance: { rel: 1e-6 },
    compute: () => dragCoefficient(SPHERE, 0.002),
  });
  row({
    id: 'HL-3',
    mark: 'D',
    about: 'drag coefficient of a sphere at Reynolds numbers 1 and 1e4',
    source: 'Haider & Levenspiel 1989, from the formula',
    expected: [28.3345, 0.42038],
    tolerance: { rel: 1e-4 },
    compute: () => [1, 1e4].map((re) => dragCoefficient(SPHERE, re)),
  });
  row({
    id: 'HL-4',
    mark: 'D',
    about: 'drag coefficient of cuttings (sphericity .8) at Reynolds numbers 1, 10, 100, 1000',
    source: 'Haider & Levenspiel 1989, non-sphere form from memory',
    expected: [31.588, 5.0563, 1.3042, 1.0602],
    tolerance: { rel: 1e-3 },
    compute: () => [1, 10, 100, 1000].map((re) => dragCoefficient(CUTTINGS, re)),
  });
  row({
    id: 'ST-1',
    mark: 'V',
    about: 'creeping flow: drag coefficient times Reynolds number comes to 24 (Stokes: 240 at Re .1)',
    source: 'Stokes law, 24/Re, read in a public library of fluid formulas',
    expected: 24,
    tolerance: { rel: 1e-4 },
    // At Re 1e-8 what the fit adds to Stokes is below one part in ten thousand.
    compute: () => 1e-8 * dragCoefficient(SPHERE, 1e-8),
  });
  row({
    id: 'SN-1',
    mark: 'D',
    about: 'drag of a sphere at Re .1, 1, 100, 200 lies within 5 % of Schiller & Naumann',
    source: 'Schiller & Naumann 1933, 24/Re (1 + .15 Re^.687)',
    expected: [247.4, 27.6, 1.0917, 0.80561],
    tolerance: { rel: 0.05 },
    compute: () => [0.1, 1, 100, 200].map((re) => dragCoefficient(SPHERE, re)),
  });
  row({
    id: 'CL-1',
    mark: 'V',
    about: 'drag of a sphere at Re 50, 500, 2500 lies within 5 % of Clift',
    source: 'Clift, Grace & Weber 1978, values read in a public library of fluid formulas',
    expected: [1.5743, 0.5549, 0.4082],
    tolerance: { rel: 0.05 },
    compute: () => [50, 500, 2500].map((re) => dragCoefficient(SPHERE, re)),
  });
});

describe('fall of one grain', () => {
  row({
    id: 'VT-1',
    mark: 'V',
    about: '70 um sphere of 2600 kg/m3 in water of 1000 kg/m3 and 1 mPa s falls at 4.14 mm/s',
    source: "Perry's handbook, 8th ed., problem as worked in a public library of fluid formulas with another drag law",
    expected: 0.00414,
    tolerance: { rel: 0.05 },
    compute: () => terminalVelocity_ms(SPHERE, 70e-6, 2600, 1000, { K_Pasn: 1e-3, n_ratio: 1 }, 0),
  });
  const SIZES_mm = [0.002, 0.01, 0.02, 0.0625, 0.1, 0.125, 0.2, 0.25, 0.5, 1, 2, 4, 8];
  row({
    id: '1b-HL',
    mark: 'D',
    about: 'quartz spheres of .002 to 8 mm in water of 20 C, m/s',
    source: 'Haider & Levenspiel 1989, solved apart from this code',
    expected: [
      3.59e-6, 8.96e-5, 3.56e-4, 0.003292, 0.007781, 0.01143, 0.02399, 0.03293, 0.0771, 0.1558, 0.2846, 0.4619, 0.6597,
    ],
    tolerance: { rel: 0.003 },
    compute: () => SIZES_mm.map((d) => inWater(SPHERE, d)),
  });
  row({
    id: '1b-Gibbs-fine',
    mark: 'D',
    about: 'quartz spheres up to 1 mm: within 2 % of measured falls as fitted by Gibbs',
    source: 'Gibbs, Matthews & Link 1971 (formula read in public code), values derived',
    expected: [8.97e-5, 3.57e-4, 0.003292, 0.007751, 0.01135, 0.02371, 0.03251, 0.07633, 0.1535],
    tolerance: { rel: 0.02 },
    compute: () => SIZES_mm.slice(1, 10).map((d) => inWater(SPHERE, d)),
  });
  row({
    id: '1b-Gibbs-coarse',
    mark: 'D',
    about: 'quartz spheres of 2, 4, 8 mm: within 6 % of the same fit',
    source: 'Gibbs, Matthews & Link 1971 (formula read in public code), values derived',
    expected: [0.2747, 0.4502, 0.6935],
    tolerance: { rel: 0.06 },
    compute: () => SIZES_mm.slice(10).map((d) => inWater(SPHERE, d)),
  });
  row({
    id: '1b-FC',
    mark: 'D',
    about:
      'cuttings of .0625 to 8 mm: within 15 % of natural sand by sieve size, the spread of the published relations',
    source: 'Ferguson & Church 2004, C1 18, C2 1.0',
    expected: [0.003194, 0.007509, 0.01102, 0.02318, 0.03177, 0.07096, 0.1262, 0.1964, 0.2879, 0.4125],
    tolerance: { rel: 0.15 },
    compute: () => SIZES_mm.slice(3).map((d) => inWater(CUTTINGS, d)),
  });
  row({
    id: '1b-Dietrich',
    mark: 'D',
    about: 'quartz spheres of .0625 to 8 mm: within 9 % of Dietrich',
    source: 'Dietrich 1982, sphere equation from memory, values derived',
    expected: [0.003293, 0.007461, 0.01075, 0.0221, 0.03037, 0.07384, 0.1549, 0.2827, 0.4564, 0.6666],
    tolerance: { rel: 0.09 },
    compute: () => SIZES_mm.slice(3).map((d) => inWater(SPHERE, d)),
  });
  row({
    id: '1c-thick',
    mark: 'D',
    about: 'ten times the viscosity of water: 4 mm keeps about 85 % of its fall, .25 mm a sixth',
    source: 'Ferguson & Church 2004 at .001 and .010 Pa s',
    expected: [fergusonChurch_ms(4, 1e-5) / fergusonChurch_ms(4, 1e-6), 0.005221 / 0.03184],
    tolerance: { abs: 0.12 },
    compute: () =>
      [4, 0.25].map(
        (d) =>
          terminalVelocity_ms(CUTTINGS, d / 1000, QUARTZ_kgm3, 1000, { K_Pasn: 0.01, n_ratio: 1 }, 0) /
          terminalVelocity_ms(CUTTINGS, d / 1000, QUARTZ_kgm3, 1000, { K_Pasn: 0.001, n_ratio: 1 }, 0),
      ),
  });
  row({
    id: 'CH-1',
    mark: 'D',
    about: '2 mm cuttings at 1, 10, 30 mPa s: within 20 % of the drilling law of Chien',
    source: 'Chien 1994 (SPE 26121), formula from memory',
    expected: [0.18182, 0.13605, 0.07864],
    tolerance: { rel: 0.2 },
    compute: () =>
      [0.001, 0.01, 0.03].map((K_Pasn) =>
        terminalVelocity_ms(CUTTINGS, 0.002, QUARTZ_kgm3, 1010, { K_Pasn, n_ratio: 1 }, 0),
      ),
  });
  row({
    id: 'SL-1',
    mark: 'D',
    about: 'slip of the eight classes in water, as the tick reads it off its grid, equals the solved fall within .3 %',
    source: 'derived: Haider & Levenspiel 1989 at sphericity .8, classes of ISO 14688-1',
    expected: [0.001, 0.011, 0.11, 0.35, 1.1, 3.5, 11, 35].map((d) => inWater(CUTTINGS, d)),
    tolerance: { rel: 0.003 },
    compute: () => {
      const slip_ms = new Float64Array(CLASS_COUNT);
      slipInto(slip_ms, new Float64Array(CLASS_COUNT), WATER.K_Pasn, 1, WATER_kgm3, 0.5);
      return Array.from(slip_ms);
    },
  });
});

describe('crowded grains', () => {
  const share = (solids_frac: number, exponent: number): number => {
    const powers = new Float64Array(HINDERED_COUNT);
    hinderedInto(powers, 0, solids_frac);
    return hinderedShare(powers, 0, hinderedPlace(exponent));
  };
  row({
    id: 'RZ-1',
    mark: 'D',
    about: 'exponent of hindered fall at Re .1, .5, 10, 1000',
    source: 'Richardson & Zaki 1954, from memory',
    expected: [4.65, 4.35 * 0.5 ** -0.03, 4.45 * 10 ** -0.1, 2.39],
    tolerance: { rel: 1e-9 },
    compute: () => [0.1, 0.5, 10, 1000].map(hinderedExponent),
  });
  row({
    id: 'RZ-2',
    mark: 'D',
    about: 'share of the fall left at 2, 5, 10, 20 % of coarse grains',
    source: 'Richardson & Zaki 1954, (1-c)^2.39',
    expected: [0.9529, 0.8846, 0.7774, 0.5867],
    tolerance: { rel: 0.002 },
    compute: () => [0.02, 0.05, 0.1, 0.2].map((c) => share(c, 2.39)),
  });
  row({
    id: 'RE-1',
    mark: 'D',
    about: 'grain Reynolds number of VT-1: .00396 m/s of a 70 um sphere',
    source: 'definition rho w d / mu',
    expected: 0.2772,
    tolerance: { rel: 1e-6 },
    compute: () => grainReynolds(70e-6, 0.00396, 1000, { K_Pasn: 1e-3, n_ratio: 1 }, 0),
  });
});
