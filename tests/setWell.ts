// A well set at once: a hole as if just drilled, a casing in it, the ring filled as told. For tests of what comes after.
import { buildGround, createRun, DEFAULT_KIT, step, type GroundRecipe, type Run, type WellPlan } from '../sim';
import { createAnnulus } from '../sim/completion/annulus';
import { fillIndex, type FillName } from '../sim/completion/fills';
import { beginWell } from '../sim/run/wellBegin';
import { refreshWell } from '../sim/run/wellTick';
import { oneSoil, rigScenario } from './rig';
import { FULL_KIT, plainPlan } from './wellRig';

export interface SetWell {
  layers?: GroundRecipe['layers'];
  waterTable_m?: number;
  /** How much lower the water falls in the driest month. */
  swing_m?: number;
  depth_m?: number;
  plan?: Partial<WellPlan>;
  /** How far the drilling fluid went into the ground, and how much of a working dose of polymer it held. */
  invaded_m?: number;
  dose_ratio?: number;
  /** Stretches of the ring and what fills them, from above; the rest is open. */
  fill?: readonly { from_m: number; to_m: number; with: FillName }[];
  offMiddle_frac?: number;
  altitude_m?: number;
}

/** Sets a well. The hole is 100 mm wide and as deep as told. */
export function setWell(options: SetWell = {}): Run {
  const { depth_m = 15, waterTable_m = 4, swing_m = 1, invaded_m = 0.05, dose_ratio = 0, offMiddle_frac = 0 } = options;
  const base = rigScenario({ starter_m: depth_m, maxDepth_m: 32, waterTable_m });
  const layers = options.layers ?? oneSoil('mediumSand');
  const ground = buildGround({ layers, waterTable_m: [waterTable_m, waterTable_m], swing_m: [swing_m, swing_m] }, 1);
  const kit = { ...DEFAULT_KIT, altitude_m: options.altitude_m ?? 0 };
  const opening = { ...base.opening, chlorine_kg: 5 };
  const run = createRun({ ...base, ground, kit, opening, well: FULL_KIT });
  const { hole, completion, machine, signs, wall } = run.state;
  run.state.machine = { ...machine, job: 'casing', stem: 'out' };
  const plan = plainPlan(depth_m, options.plan);
  completion.plan = plan;
  const { casing } = completion;
  casing.look = 'set';
  casing.shoe_m = plan.screenTo_m + plan.sump_m;
  const used = Math.ceil(depth_m / hole.dz_m - 1e-9);
  const annulus = createAnnulus(hole.dz_m, hole.cells, used);
  annulus.radius_m.set(hole.radius_m);
  annulus.offMiddle_frac.fill(offMiddle_frac, 0, used);
  completion.annulus = annulus;
  const outside_m = 0.063;
  for (const stretch of options.fill ?? []) {
    for (let i = 0; i < used; i++) {
      const top_m = i * hole.dz_m;
      const part_m = Math.min(top_m + hole.dz_m, stretch.to_m) - Math.max(top_m, stretch.from_m);
      if (part_m <= 0) continue;
      const steel = top_m + hole.dz_m <= casing.shoe_m ? outside_m / 2 : 0;
      const area_m2 = Math.PI * (hole.radius_m[i] * hole.radius_m[i] - steel * steel);
      annulus.fill_m3[fillIndex(stretch.with) * hole.cells + i] += area_m2 * part_m;
    }
  }
  // What the ground drank, and with it the polymer.
  const porosity = ground.layers[ground.layers.length - 1].porosity_frac;
  hole.wall.lost_m2.fill(Math.PI * porosity * (invaded_m * invaded_m - 0.05 * 0.05), 0, used);
  wall.lost_m3 = 1;
  wall.lostPolymer_kg = dose_ratio * 1.3;
  signs.level_m = waterTable_m;
  beginWell(run);
  refreshWell(run);
  return run;
}

/** A pack round the screen and a seal above it. */
export const packedAndSealed = (depth_m = 15, pack: FillName = 'pack1'): SetWell['fill'] => [
  { from_m: 0, to_m: 1, with: 'cuttings' },
  { from_m: 1, to_m: 4, with: 'bentoniteGranules' },
  { from_m: 4, to_m: depth_m - 4.5, with: 'cuttings' },
  { from_m: depth_m - 4.5, to_m: depth_m, with: pack },
];

export function seconds(run: Run, count: number): void {
  for (let i = 0; i < count; i++) step(run);
}
