// A hole for tests: full of water, the bit at its bottom, swept second by second; and what may never be wrong in one.
import { SOAKED } from '../../../sim/fluid/substances';
import { PACKED_frac } from '../../../sim/hole/cells';
import { bedTop_m, cellVolume_m3, createHole, type HoleState } from '../../../sim/hole/hole';
import { holeCapacity_m3, holeContent_m3 } from './holds';
import { createParcel, emptyParcel, type Parcel } from '../../../sim/hole/parcel';
import { createHoleWork, sweepHole, type HoleWork, type SweepInput } from '../../../sim/hole/sweep';
import { CLASS_COUNT } from '../../../sim/materials/sizes';

export const ROD_m = 0.0337;
export const RING_m2 = (Math.PI / 4) * (0.01 - ROD_m * ROD_m);
export const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((a, b) => a + b, 0);

export interface Bench {
  hole: HoleState;
  work: HoleWork;
  mouth: Parcel;
  input: SweepInput;
}

/** A hole of a depth, full of water, with the bit at its bottom. */
export function fullHole(depth_m: number, maxDepth_m = depth_m + 2): Bench {
  const hole = createHole({ dz_m: 0.25, maxDepth_m, bit_m: 0.1, starter_m: depth_m });
  const input: SweepInput = {
    dt_s: 1,
    bit_m: depth_m,
    rodOutside_m: ROD_m,
    temperature_C: 25,
    inflow: createParcel(),
    ambient_1s: 30,
    leave_m3: new Float64Array(hole.cells),
    leaveFines_frac: new Float64Array(hole.cells),
    saltIn_gL: new Float64Array(hole.cells),
  };
  const bench = { hole, work: createHoleWork(hole), mouth: createParcel(), input };
  hole.water_m3 = holeCapacity_m3(hole, input);
  hole.shortfall_m3 = 0;
  return bench;
}

export function sweep(bench: Bench, flow_m3s: number, load: Partial<Record<number, number>> = {}): void {
  const { inflow } = bench.input;
  emptyParcel(inflow);
  inflow.water_m3 = flow_m3s;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const grains = flow_m3s * (load[k] ?? 0);
    inflow.solids_m3[k] = grains;
    inflow.moment_m4[k] = grains * bench.input.bit_m;
    inflow.water_m3 -= grains;
  }
  bench.input.ambient_1s = flow_m3s > 0 ? 30 : 0.05;
  sweepHole(bench.hole, bench.work, bench.input, bench.mouth);
}

export const suspended = (hole: HoleState, k: number): number =>
  sum(hole.solids_m3.subarray(k * hole.cells, (k + 1) * hole.cells));

/** Faults of a hole in words; none in a sound one. Plain comparisons: it runs thousands of times. */
export function faults({ hole, input }: Bench): string[] {
  const found: string[] = [];
  const gap = holeCapacity_m3(hole, input) - holeContent_m3(hole) - hole.shortfall_m3;
  if (!(Math.abs(gap) < 1e-12)) found.push(`volumes are off by ${gap} m3`);
  const bedTop = bedTop_m(hole, input);
  for (let i = 0; i < hole.cells; i++) {
    let grains = 0;
    for (let k = 0; k < CLASS_COUNT; k++) {
      const here = hole.solids_m3[k * hole.cells + i];
      if (!(here >= 0)) found.push(`class ${k} in cell ${i} is ${here}`);
      if (!(hole.moment_m4[k * hole.cells + i] <= here * hole.depth_m * (1 + 1e-9))) found.push(`origin in cell ${i}`);
      if (i >= hole.used && here !== 0) found.push(`grains below the bed in cell ${i}`);
      grains += here;
    }
    const soaked_kg = hole.dissolved_kg[SOAKED * hole.cells + i];
    if (!(soaked_kg >= 0)) found.push(`polymer in cell ${i} is ${soaked_kg}`);
    if (i >= hole.used) continue;
    const bottom_m = i === hole.used - 1 ? bedTop : (i + 1) * hole.dz_m;
    // The slice that a growing bed swallows in the same second may pack a little closer.
    const most = PACKED_frac * 1.1 * cellVolume_m3(hole, i, bottom_m, input) + 1e-12;
    if (!(grains <= most)) found.push(`cell ${i} holds ${grains} of at most ${most} m3`);
  }
  if (!(hole.water_m3 >= 0)) found.push(`water is ${hole.water_m3}`);
  return found;
}
