// Parts of one tick as plain functions, each on a state of full load, so that a bench can time them one by one.
import { DEFAULT_KIT } from '../../sim';
import { rheologyInto } from '../../sim/fluid/rheology';
import { SOAKED, SOAKING } from '../../sim/fluid/substances';
import { createHole } from '../../sim/hole/hole';
import { holeCapacity_m3 } from '../sim/hole/holds';
import { lossInto } from '../../sim/hole/loss/loss';
import { createParcel } from '../../sim/hole/parcel';
import { slipInto } from '../../sim/hole/slip';
import { createStemFill, pushThroughStem } from '../../sim/hole/stemFill';
import { createHoleWork, readHole, sweepHole } from '../../sim/hole/sweep';
import { createFlowResult, solveFlow } from '../../sim/hydraulics/flow';
import { CLASS_COUNT } from '../../sim/materials/sizes';
import { createPitWork, levelOut } from '../../sim/pit/exchange';
import { createPit } from '../../sim/pit/pit';
import { settlePit } from '../../sim/pit/settle';
import { FINE, keptFull, MEDIUM, sandHole } from '../sim/hole/loss/sandHole';
import { wallOf } from './wall';

export interface Submodel {
  readonly what: string;
  /** Does the work of one tick once. */
  once(): void;
}

const FLOW_m3s = 0.002;
const fluid = { density_kgm3: 1010, ...rheologyInto({ K_Pasn: 0, n_ratio: 1 }, 1.3, 0, 0.01, 25) };

function flowOf(bit_m: number): () => void {
  const input = {
    kit: DEFAULT_KIT,
    throttle_frac: 1,
    stemLength_m: bit_m,
    bit_m,
    holeDiameter_m: 0.1,
    pitLevel_m: 0.1,
    mouthLevel_m: 0,
    blockage_frac: 0,
    headLeft_ratio: 1,
    lost_frac: 0,
    hose: fluid,
    stem: fluid,
    annulus: fluid,
  };
  const out = createFlowResult();
  let warm_m3s = FLOW_m3s;
  return () => {
    warm_m3s = solveFlow(input, warm_m3s, out);
  };
}

/** A hole with so many classes, from clay on, and both kinds of polymer in every cell; what leaves is put in again at the bit. */
function transportOf(cells: number, classes = CLASS_COUNT): () => void {
  const depth_m = cells * 0.25;
  const hole = createHole({ dz_m: 0.25, maxDepth_m: depth_m, bit_m: 0.1, starter_m: depth_m });
  const work = createHoleWork(hole);
  const inflow = createParcel();
  const mouth = createParcel();
  const none = new Float64Array(cells);
  const still = { leave_m3: none, leaveFines_frac: none, saltIn_gL: none };
  const input = { dt_s: 1, bit_m: depth_m, rodOutside_m: 0.0337, temperature_C: 25, inflow, ambient_1s: 30, ...still };
  for (let i = 0; i < hole.used; i++) {
    for (let k = 0; k < classes; k++) hole.solids_m3[k * hole.cells + i] = 1e-6;
    hole.dissolved_kg[SOAKED * hole.cells + i] = 2e-3;
    hole.dissolved_kg[SOAKING * hole.cells + i] = 1e-4;
  }
  hole.water_m3 = holeCapacity_m3(hole, input) - classes * hole.used * 1e-6;
  hole.shortfall_m3 = 0;
  return () => {
    inflow.water_m3 = FLOW_m3s;
    inflow.dissolved_kg[SOAKED] = 2e-3;
    inflow.dissolved_kg[SOAKING] = 1e-4;
    // Coarse grains fall to the bed in this fluid: enough is brought in each second to keep every class present.
    for (let k = 0; k < classes; k++) {
      hole.bed_m3[k] = 0;
      inflow.solids_m3[k] = 1e-6;
    }
    readHole(hole, depth_m, 0.0337, 25, work);
    sweepHole(hole, work, input, mouth);
    hole.water_m3 += hole.shortfall_m3;
    hole.shortfall_m3 = 0;
  };
}

/** Loss of a full hole in sand, all of it open, with polymer and a cake that grows; the water table at 4 m. */
function lossOf(cells: number): () => void {
  const depth_m = cells * 0.25;
  const bench = sandHole({ depth_m, table_m: 4, sand: (z) => (z < depth_m / 2 ? FINE : MEDIUM), soaked_gL: 1.3 });
  const { hole, ground, input, work } = bench;
  for (let i = 0; i < CLASS_COUNT * hole.cells; i++) if (i % hole.cells < hole.used) hole.solids_m3[i] = 1e-6;
  input.turning = true;
  keptFull(bench, 60);
  return () => {
    input.tick += 1;
    lossInto(hole, ground, input, work);
  };
}

function pitOf(): () => void {
  const pit = createPit({
    settling: { area_m2: 0.6, depth_m: 0.8 },
    suction: { area_m2: 0.6, depth_m: 0.8 },
    notch_m: 0.15,
    strainer_m: 0.2,
  });
  for (const chamber of [pit.settling, pit.suction]) {
    chamber.water_m3 = 0.42;
    chamber.dissolved_kg[SOAKED] = 0.5;
  }
  const work = createPitWork();
  return () => {
    for (let k = 0; k < CLASS_COUNT; k++) {
      pit.settling.solids_m3[k] = 1e-4;
      pit.suction.solids_m3[k] = 1e-5;
    }
    pit.settling.deposit_m3.fill(0);
    pit.suction.deposit_m3.fill(0);
    settlePit(pit, work, 25, 1);
    levelOut(pit, work);
  };
}

function stemOf(): () => void {
  const fill = createStemFill(0.0087);
  const inflow = createParcel();
  const outflow = createParcel();
  inflow.water_m3 = FLOW_m3s;
  inflow.dissolved_kg[SOAKED] = 2e-3;
  inflow.solids_m3.fill(1e-6);
  return () => pushThroughStem(fill, inflow, outflow);
}

function slipOf(): () => void {
  const slip_ms = new Float64Array(CLASS_COUNT);
  const hinder = new Float64Array(CLASS_COUNT);
  let i = 0;
  return () => {
    i = (i + 1) % 50;
    slipInto(slip_ms, hinder, 0.07 + 0.0002 * i, 0.7, 1010, 30);
  };
}

export const SUBMODELS: readonly Submodel[] = [
  { what: 'flow, bit at 20 m', once: flowOf(20) },
  { what: 'hole of 45 cells, all classes', once: transportOf(45) },
  { what: 'hole of 120 cells, all classes', once: transportOf(120) },
  { what: 'hole of 45 cells, clay to medium sand', once: transportOf(45, 4) },
  { what: 'hole of 120 cells, clay to medium sand', once: transportOf(120, 4) },
  { what: 'loss and level, 45 cells open', once: lossOf(45) },
  { what: 'loss and level, 120 cells open', once: lossOf(120) },
  { what: 'stem', once: stemOf() },
  { what: 'pit, both chambers', once: pitOf() },
  { what: 'slip of eight classes from the grid', once: slipOf() },
  { what: 'wall of 120 cells, pump on', once: wallOf(0) },
  { what: 'wall of 120 cells, stem pulled at .3 m/s', once: wallOf(0.3) },
];
