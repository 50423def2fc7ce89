// Dirty water on its way down: along the casing, through the ground, from a latrine.
import { expect, it } from 'vitest';
import { verdictOf, type Verdict } from '../../sim';
import { packedAndSealed, setWell, type SetWell } from '../setWell';

const YEAR_d = 365;
const leakOf = (options: SetWell): Verdict['leak'] => verdictOf(setWell(options))!.leak;
const clayOver = (thick_m: number): SetWell['layers'] => [
  { kind: 'firmClay', thickness_m: [thick_m, thick_m] },
  { kind: 'mediumSand', thickness_m: [40, 40] },
];

it('an unsealed loose ring leaks in hours; 3 m of sound bentonite in years, the ground path beside it', () => {
  const loose = leakOf({ layers: clayOver(6), fill: [{ from_m: 0, to_m: 15, with: 'ground' }] });
  expect(loose.annulus_d * 24).toBeLessThan(24);
  expect(loose.sealedLength_m).toBe(0);
  const open = leakOf({ layers: clayOver(6) });
  expect(open.annulus_d * 24).toBeLessThan(24);
  const sealed = leakOf({ layers: clayOver(6), fill: packedAndSealed() });
  expect(sealed.sealedLength_m).toBeCloseTo(3, 9);
  expect(sealed).toMatchObject({ sealFrom_m: 1, sealTo_m: 4 });
  expect(sealed.annulus_d).toBeGreaterThan(5 * YEAR_d);
  // The ground is the same for all of them: clay over the sand makes it slow, sand up to the surface quick.
  expect(sealed.ground_d).toBe(loose.ground_d);
  expect(sealed.ground_d).toBeGreaterThan(YEAR_d);
  expect(leakOf({ fill: packedAndSealed() }).ground_d).toBeLessThan(1);
});

it('a thinner seal leaks sooner', () => {
  const seal = (to_m: number): number =>
    leakOf({ layers: clayOver(6), fill: [{ from_m: 1, to_m, with: 'clay' }] }).annulus_d;
  expect(seal(2)).toBeLessThan(0.9 * seal(3));
  expect(seal(3)).toBeLessThan(0.95 * seal(4));
});

it('a pipe against the wall leaves a slit that pellets do not fill; cement runs into it', () => {
  const ring = (material: 'bentonitePellets' | 'cement', offMiddle_frac: number): number =>
    leakOf({ layers: clayOver(6), fill: [{ from_m: 1, to_m: 4, with: material }], offMiddle_frac }).annulus_d;
  expect(ring('bentonitePellets', 1)).toBeLessThan(0.05 * ring('bentonitePellets', 0));
  expect(ring('cement', 1)).toBeCloseTo(ring('cement', 0), 6);
});

it('the latrine is told with the distance that this ground asks for', () => {
  const leak = leakOf({ fill: packedAndSealed() });
  expect(leak.latrine_m).toBeGreaterThan(5);
  expect(leak.latrine_m).toBeLessThan(100);
  // Medium sand: 30 m alone is not enough once K is over 12 m a day (Q-R2 of the siting rows).
  expect(leak.safe_m).toBeGreaterThan(30);
  const tight = leakOf({ layers: [{ kind: 'siltySand', thickness_m: [40, 40] }], fill: packedAndSealed() });
  expect(tight.safe_m).toBeLessThan(5);
  expect(tight.latrine_d).toBeGreaterThan(leak.latrine_d);
});

it('a metre of water over the mouth hurries a leak along', () => {
  const dry = setWell({ layers: clayOver(6), fill: [{ from_m: 1, to_m: 4, with: 'cuttings' }] });
  const flooded = setWell({ layers: clayOver(6), fill: [{ from_m: 1, to_m: 4, with: 'cuttings' }] });
  dry.scenario.ground.site.floodLine_m = -1;
  flooded.scenario.ground.site.floodLine_m = 3;
  expect(verdictOf(flooded)!.leak.annulus_d).toBeLessThan(verdictOf(dry)!.leak.annulus_d);
  expect(verdictOf(flooded)!.headWorks.aboveFlood).toBe(false);
  expect(verdictOf(dry)!.headWorks.aboveFlood).toBe(true);
});
