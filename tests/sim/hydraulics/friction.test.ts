// Friction without jumps: over the regimes, and from a power-law fluid to water.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  createFrictionLaw,
  fanningFactor,
  frictionGradient_Pam,
  setFrictionLaw,
  wallPart,
  type FrictionLaw,
} from '../../../sim/hydraulics/friction';
import { annulusArea_m2, setAnnulus, slotWallShear_Pa } from '../../../sim/hydraulics/annulus';
import {
  conduitLoss_Pa,
  createConduit,
  fittingLoss_Pa,
  setPipe,
  type Conduit,
  type LineFluid,
} from '../../../sim/hydraulics/pipe';
import { airPressure_Pa, npshAvailable_m, strainerLossGrowth_ratio } from '../../../sim/hydraulics/suction';

function lawOf(n_ratio: number, roughness_ratio: number): FrictionLaw {
  const law = createFrictionLaw();
  setFrictionLaw(law, n_ratio, roughness_ratio);
  return law;
}

function pipeOf(fluid: LineFluid): Conduit {
  const conduit = createConduit();
  setPipe(conduit, 10, 0.0272, 4.5e-5, fluid);
  return conduit;
}

const index = fc.double({ min: 0.35, max: 1, noNaN: true });
const roughness = fc.double({ min: 0, max: 0.02, noNaN: true });
const consistency = fc.double({ min: 7e-4, max: 0.6, noNaN: true });
const flow = fc.double({ min: 1e-6, max: 6e-3, noNaN: true });

test('the friction factor does not jump at either end of the transition band', () => {
  fc.assert(
    fc.property(index, roughness, (n, e) => {
      const law = lawOf(n, e);
      for (const end of [law.laminarEnd, law.turbulentStart]) {
        const below = fanningFactor(law, Math.log(end * (1 - 1e-9)));
        const above = fanningFactor(law, Math.log(end * (1 + 1e-9)));
        expect(Math.abs(above / below - 1)).toBeLessThan(1e-6);
      }
    }),
    { seed: 1 },
  );
});

test('a fluid that is almost water loses almost what water loses', () => {
  for (const q of [1e-4, 5e-4, 1e-3, 2e-3, 4e-3]) {
    const water = conduitLoss_Pa(pipeOf({ density_kgm3: 998, K_Pasn: 1e-3, n_ratio: 1 }), q);
    const nearly = conduitLoss_Pa(pipeOf({ density_kgm3: 998, K_Pasn: 1e-3, n_ratio: 1 - 1e-7 }), q);
    expect(Math.abs(nearly / water - 1)).toBeLessThan(1e-5);
  }
});

test('more flow always loses more, in pipe and annulus, through every regime', () => {
  fc.assert(
    fc.property(index, consistency, flow, flow, (n_ratio, K_Pasn, a, b) => {
      fc.pre(Math.abs(a - b) > 1e-9);
      const fluid = { density_kgm3: 1010, K_Pasn, n_ratio };
      const ring = createConduit();
      setAnnulus(ring, 10, 0.1, 0.0337, fluid);
      for (const conduit of [pipeOf(fluid), ring]) {
        const less = conduitLoss_Pa(conduit, Math.min(a, b));
        expect(conduitLoss_Pa(conduit, Math.max(a, b))).toBeGreaterThan(less);
      }
    }),
    { seed: 2, numRuns: 400 },
  );
});

test('no flow, no loss', () => {
  expect(conduitLoss_Pa(pipeOf({ density_kgm3: 1010, K_Pasn: 0.1, n_ratio: 0.6 }), 0)).toBe(0);
});

test('worked values', () => {
  expect(wallPart(1e-4)).toBeCloseTo(8.498e-6, 8);
  expect(frictionGradient_Pam(0.00833, 1258.2, 0.6623, 0.0881907)).toBeCloseTo(104.3, 1);
  expect(annulusArea_m2(0.1, 0.0337)).toBeCloseTo(0.00696201, 8);
  expect(airPressure_Pa(1609)).toBeCloseTo(83428, -2);
  expect(npshAvailable_m(101325, 2339, 998.2, 6.7, 0)).toBeCloseTo(3.41, 2);
  expect(strainerLossGrowth_ratio(0.5)).toBeCloseTo(4, 12);
  expect(fittingLoss_Pa(1, 1000, 0.002, 0.032)).toBeCloseTo(3092, 0);
  expect(slotWallShear_Pa(61.5, 0.0663)).toBeCloseTo(1.019, 3);
  const conduit = createConduit();
  setPipe(conduit, 1.5, 0.0272, 4.5e-5, { density_kgm3: 998.2, K_Pasn: 1.002e-3, n_ratio: 1 });
  expect(conduitLoss_Pa(conduit, 150 / 60000) / 1000).toBeCloseTo(12.15, 1);
});
