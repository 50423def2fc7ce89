// One hole in ground of exactly the table's values, for tests of the wall.
import { createHole, type HoleState } from '../../../../sim/hole/hole';
import { holeCapacity_m3 } from '../holds';
import { createParcel, type Parcel } from '../../../../sim/hole/parcel';
import { createWallGround, type WallGround } from '../../../../sim/hole/wallGround';
import { dropFallen } from '../../../../sim/hole/wall/fallen';
import { CAUSES, type Cause } from '../../../../sim/hole/wall/failures';
import type { WallInput } from '../../../../sim/hole/wall/input';
import { surgeInto, type SwabInput } from '../../../../sim/hole/wall/swab';
import { wallInto } from '../../../../sim/hole/wall/wall';
import { createWallWork, type WallWork } from '../../../../sim/hole/wall/work';
import { fractionsOf } from '../../../../sim/ground/gradation';
import type { Ground } from '../../../../sim/ground/ground';
import type { Layer } from '../../../../sim/ground/layer';
import { SOILS, type SoilKind } from '../../../../sim/materials/soils';

export const DZ_m = 0.25;

export function layerOf(kind: SoilKind, top_m: number, bottom_m: number): Layer {
  const soil = SOILS[kind];
  return { ...soil, ...fractionsOf(soil), top_m, bottom_m, colour: 'grey' };
}

/** Layers from the top: kind and depth of its lower end; aquifers all stand at the table. */
export function groundOf(layers: readonly (readonly [SoilKind, number])[], waterTable_m: number): Ground {
  let top_m = 0;
  const built = layers.map(([kind, bottom_m]) => {
    const layer = layerOf(kind, top_m, bottom_m);
    top_m = bottom_m;
    return layer;
  });
  return {
    version: 1,
    setting: 'test',
    seed: 0,
    depth_m: top_m,
    layers: built,
    waterTable_m,
    lowestWater_m: waterTable_m,
    heads: [],
    salinity: [],
    contamination: [],
    site: { width_m: 10, breadth_m: 10, spots: [], wells: [], floodLine_m: -1, overheadLine: null },
  };
}

export interface Site {
  hole: HoleState;
  ground: WallGround;
  work: WallWork;
  input: WallInput;
  moving: SwabInput;
  level_m: number;
  /** What came in from the ground in the last tick. */
  came: Parcel;
  /** Volume that fell, washed off or came in, by cause, and how often each began. */
  volume_m3: Record<Cause, number>;
  begun: Record<Cause, number>;
}

const zero = (): Record<Cause, number> =>
  Object.fromEntries(CAUSES.map((cause) => [cause, 0])) as Record<Cause, number>;

const WATER = { density_kgm3: 1000, K_Pasn: 1e-3, n_ratio: 1 };

/** A hole of depth_m, full of water up to level_m, the stem hanging at the mouth. */
export function siteOf(profile: Ground, depth_m: number, level_m: number): Site {
  const cells = Math.ceil(profile.depth_m / DZ_m);
  const hole = createHole({ dz_m: DZ_m, maxDepth_m: cells * DZ_m, bit_m: 0.1, starter_m: depth_m });
  const ground = createWallGround(profile, DZ_m, cells);
  const stem = { bit_m: 0, rodOutside_m: 0.0337 };
  hole.water_m3 = holeCapacity_m3(hole, stem) * Math.max(0, 1 - level_m / depth_m);
  hole.shortfall_m3 = holeCapacity_m3(hole, stem) - hole.water_m3;
  return {
    hole,
    ground,
    work: createWallWork(ground, DZ_m),
    came: createParcel(),
    volume_m3: zero(),
    begun: zero(),
    input: {
      tick: 0,
      dt_s: 1,
      pressure_Pa: new Float64Array(cells),
      surge_Pa: new Float64Array(cells),
      ground_Pa: ground.pore_Pa,
      stem,
      bitWidth_m: 0.1,
      flow_m3s: 0,
      fluid: WATER,
      soaked_gL: 0,
      bentonite_gL: 0,
    },
    moving: { lift_ms: 0, holeWidth_m: 0.1, stem, fluid: WATER, flow_m3s: 0, balling_frac: 0 },
    level_m,
  };
}

/** Seconds of the wall alone; the level stays where it is. */
export function stand(site: Site, seconds: number, each?: () => void): void {
  const { hole, ground, work, input } = site;
  for (let s = 0; s < seconds; s++) {
    site.moving.fluid = input.fluid;
    site.moving.flow_m3s = input.flow_m3s;
    surgeInto(input.surge_Pa, hole, work.swab, site.moving);
    for (let i = 0; i < hole.cells; i++) {
      const under_m = (i + 0.5) * hole.dz_m - site.level_m;
      const weight_Pa = input.fluid.density_kgm3 * 9.81 * under_m;
      input.pressure_Pa[i] = under_m > 0 ? weight_Pa + input.surge_Pa[i] : 0;
      if (under_m > 0 && ground.saturation_frac[i] < 1) hole.wall.wetted_s[i] += 1;
    }
    wallInto(hole, ground, work, input);
    dropFallen(hole, work.fallen, site.level_m, site.came);
    const { failures } = work;
    for (let f = 0; f < failures.count; f++) {
      site.volume_m3[CAUSES[failures.cause[f]]] += failures.volume_m3[f];
      site.begun[CAUSES[failures.cause[f]]] += failures.begins[f];
    }
    each?.();
    input.tick += 1;
  }
}

/** A membrane that resists as much as this many ln(R/r) of the bare ground, on every cell. */
export function plaster({ hole, ground }: Site, share: number, cake_m = 3e-4): void {
  for (let i = 0; i * DZ_m < hole.depth_m; i++) {
    hole.wall.cake_m[i] = cake_m;
    hole.wall.cakeResistance_s[i] = (share * Math.log(5 / 0.05) * hole.radius_m[i]) / ground.K_ms[i];
  }
}

export const widest_m = ({ hole }: Site): number => 2 * Math.max(...hole.radius_m);

export const TABLE_m = 2.5;
/** Eight metres of one ground, its water at TABLE_m, the fluid head_m above that. */
export const sandSite = (head_m: number, kind: SoilKind = 'fineSand'): Site =>
  siteOf(groundOf([[kind, 30]], TABLE_m), 8, TABLE_m - head_m);

export const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);
export const allSolids_m3 = ({ hole }: Site): number => sum(hole.solids_m3) + sum(hole.bed_m3);
