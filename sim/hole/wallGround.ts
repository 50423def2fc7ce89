// The ground as the wall of the hole meets it, cell by cell: worked out once from the profile, never state.
import type { Ground } from '../ground/ground';
import { layerAt } from '../ground/lookup';
import type { Layer } from '../ground/layer';
import { alongLogY } from '../numeric/curve';
import { waterDensity_kgm3 } from '../materials/water';
import { CLASS_COUNT } from '../materials/sizes';
import { tanOf } from '../numeric/angle';

const GRAVITY_ms2 = 9.81;
/** Water in the pores weighs what it does in the hole, so that a full hole and full pores balance, kg/m3. */
const WATER_kgm3 = waterDensity_kgm3(20);
/** No undrained strength: the ground drains, friction and cohesion hold it. */
export const DRAINED_kPa = -1;
/** d15 lies between d10 and d30 on a curve straight in the logarithm of the diameter. */
const D15_BETWEEN_frac = [0.1, 0.3];

/** Arrays by cell, taken at the depth of the cell's middle. */
export interface WallGround {
  cells: number;
  /** Index of the layer. */
  layer: Int32Array;
  K_ms: Float64Array;
  porosity_frac: Float64Array;
  /** Pore space that is filled with water before the hole comes, as a share of the pores: 1 where saturated. */
  saturation_frac: Float64Array;
  /** Depth below ground of the level to which this cell's water would rise; the cell's own depth where it is unsaturated. */
  head_m: Float64Array;
  /** Pore pressure and total and effective vertical stress, Pa; suction is not counted as pressure. */
  pore_Pa: Float64Array;
  total_Pa: Float64Array;
  effective_Pa: Float64Array;
  /** Mean unit weight of the ground that presses on the wall, N/m3: effective below the table, moist above. */
  unitWeight_Nm3: Float64Array;
  /** Undrained strength with its growth in depth, kPa; DRAINED_kPa where friction rules. */
  su_kPa: Float64Array;
  /** Cohesion without and of the capillary water, kPa; friction angle, degrees (0 where su rules). */
  cohesion_kPa: Float64Array;
  capillary_kPa: Float64Array;
  phi_deg: Float64Array;
  tauC_Pa: Float64Array;
  swell_ratio: Float64Array;
  d15_mm: Float64Array;
  d50_mm: Float64Array;
  /** Share of the falling grains in each class, class-major; cobbles count with the coarsest. */
  fractions: Float64Array;
  salt_gL: Float64Array;
}

/** The level to which water at a depth would rise, m below ground, or null where the ground is not saturated: inside an
 * aquifer its head; in tight ground between two aquifers in proportion; in tight ground elsewhere the nearest head. */
export function standingHead_m(ground: Ground, depth_m: number): number | null {
  let above: { edge_m: number; head_m: number } | null = null;
  let below: { edge_m: number; head_m: number } | null = null;
  for (const head of ground.heads) {
    if (depth_m >= head.top_m && depth_m < head.bottom_m) return depth_m >= head.head_m ? head.head_m : null;
    if (head.bottom_m <= depth_m && (above === null || head.bottom_m > above.edge_m))
      above = { edge_m: head.bottom_m, head_m: head.head_m };
    if (head.top_m > depth_m && (below === null || head.top_m < below.edge_m))
      below = { edge_m: head.top_m, head_m: head.head_m };
  }
  if (depth_m < ground.waterTable_m) return null;
  if (above !== null && below !== null && above.edge_m >= ground.waterTable_m) {
    const share = (depth_m - above.edge_m) / (below.edge_m - above.edge_m);
    return above.head_m + share * (below.head_m - above.head_m);
  }
  if (above !== null && above.edge_m >= ground.waterTable_m) return above.head_m;
  return ground.waterTable_m;
}

/** Weight of a cubic metre of a layer, N/m3, with this share of its pores filled: (1 - n) rho_s g + n S rho_w g. Worked value: n .42, S 1 -> 19198. */
export function unitWeight_Nm3(layer: Layer, saturation_frac: number): number {
  const n = layer.porosity_frac;
  return GRAVITY_ms2 * ((1 - n) * layer.grainDensity_kgm3 + n * saturation_frac * WATER_kgm3);
}

/**
 * Cohesion that capillary water lends to sand above the table, kPa: 9.81 h_c .5 tan(phi), the mean suction of the capillary
 * fringe times friction. ASSUMED: half of the height, as the mean. Worked value: fine sand, h_c .35 m, phi 30 -> .991.
 */
export function capillaryCohesion_kPa(rise_m: number, phi_deg: number): number {
  return GRAVITY_ms2 * rise_m * 0.5 * tanOf(phi_deg);
}

export function saltAt_gL(ground: Ground, depth_m: number): number {
  let salt_gL = 0;
  for (const step of ground.salinity) if (depth_m >= step.from_m) salt_gL = step.salt_gL;
  return salt_gL;
}

/** Reads the profile into cells of dz_m from the ground level down. */
export function createWallGround(ground: Ground, dz_m: number, cells: number): WallGround {
  const array = (): Float64Array => new Float64Array(cells);
  const wall: WallGround = {
    cells,
    layer: new Int32Array(cells),
    K_ms: array(),
    porosity_frac: array(),
    saturation_frac: array(),
    head_m: array(),
    pore_Pa: array(),
    total_Pa: array(),
    effective_Pa: array(),
    unitWeight_Nm3: array(),
    su_kPa: array(),
    cohesion_kPa: array(),
    capillary_kPa: array(),
    phi_deg: array(),
    tauC_Pa: array(),
    swell_ratio: array(),
    d15_mm: array(),
    d50_mm: array(),
    fractions: new Float64Array(CLASS_COUNT * cells),
    salt_gL: array(),
  };
  let total_Pa = 0;
  for (let i = 0; i < cells; i++) {
    const depth_m = (i + 0.5) * dz_m;
    const layer = layerAt(ground, depth_m);
    const head_m = standingHead_m(ground, depth_m);
    const n = layer.porosity_frac;
    const saturation = head_m === null ? (n - layer.Sy_frac) / n : 1;
    const weight_Nm3 = unitWeight_Nm3(layer, saturation);
    total_Pa += 0.5 * dz_m * weight_Nm3;
    const pore_Pa = head_m === null ? 0 : WATER_kgm3 * GRAVITY_ms2 * (depth_m - head_m);
    const effective_Pa = Math.max(0, total_Pa - pore_Pa);
    wall.layer[i] = ground.layers.indexOf(layer);
    wall.K_ms[i] = layer.K_ms;
    wall.porosity_frac[i] = n;
    wall.saturation_frac[i] = saturation;
    wall.head_m[i] = head_m ?? depth_m;
    wall.pore_Pa[i] = pore_Pa;
    wall.total_Pa[i] = total_Pa;
    wall.effective_Pa[i] = effective_Pa;
    wall.unitWeight_Nm3[i] = head_m === null ? weight_Nm3 : weight_Nm3 - WATER_kgm3 * GRAVITY_ms2;
    wall.su_kPa[i] =
      layer.su_kPa === null ? DRAINED_kPa : Math.max(layer.su_kPa, (layer.suGrowth_ratio * effective_Pa) / 1000);
    wall.cohesion_kPa[i] = head_m === null ? layer.cAbove_kPa : layer.cBelow_kPa;
    wall.phi_deg[i] = layer.phi_deg ?? 0;
    wall.capillary_kPa[i] =
      head_m === null && layer.phi_deg !== null ? capillaryCohesion_kPa(layer.capillaryRise_m, layer.phi_deg) : 0;
    wall.tauC_Pa[i] = layer.tauC_Pa;
    wall.swell_ratio[i] = layer.swell_ratio;
    wall.d15_mm[i] = alongLogY(D15_BETWEEN_frac, [layer.d10_mm, layer.d30_mm], 0.15);
    wall.d50_mm[i] = layer.d50_mm;
    for (let k = 0; k < CLASS_COUNT; k++)
      wall.fractions[k * cells + i] = layer.fractions[k] + (k === CLASS_COUNT - 1 ? layer.cobble_frac : 0);
    wall.salt_gL[i] = saltAt_gL(ground, depth_m);
    total_Pa += 0.5 * dz_m * weight_Nm3;
  }
  return wall;
}
