// No fluid is heavier than the grains in it, however dry the pit.
import { expect, it } from 'vitest';
import { suspensionDensity_kgm3 } from '../../../sim/hole/load';
import { GRAIN_kgm3, slipInto } from '../../../sim/hole/slip';

it('a pit all but dry, with bentonite and salt left in it, weighs no more than its grains, and they still fall', () => {
  for (const solids_frac of [0, 0.3, 0.6, 0.985]) {
    const density_kgm3 = suspensionDensity_kgm3(solids_frac, 21158, 5000);
    expect(density_kgm3).toBeLessThan(GRAIN_kgm3);
    const slip_ms = new Float64Array(8);
    slipInto(slip_ms, new Float64Array(8), 1e9, 0.35, density_kgm3, 0.5);
    for (const speed_ms of slip_ms) expect(speed_ms).toBeGreaterThanOrEqual(0);
  }
});
