// Swab and surge: a stem on the move drags fluid along and leaves, or pushes, pressure in the hole.
import { circleArea_m2, conduitLoss_Pa, createConduit, type Conduit, type LineFluid } from '../../hydraulics/pipe';
import { setAnnulus } from '../../hydraulics/annulus';

/** The fluid next to a moving pipe goes with it: that share of its speed counts as flow along the ring (Burkhardt 1961, laminar, from memory: about .45). */
const CLINGING_frac = 0.45;
/** Share of the hole's section that the bit fills; discharge coefficient of what is left. ASSUMED. */
export const BIT_FILLS_frac = 0.6;
const GAP_Cd_ratio = 0.7;
/** Times the pressure at the bit grows when it is packed with clay, and when it stands in a bed. ASSUMED. */
const BALLED_TIMES = 2;
const BED_TIMES = 3;

export interface SwabInput {
  /** Speed of the stem, up or down, m/s, 0 or more. */
  speed_ms: number;
  holeWidth_m: number;
  rodOutside_m: number;
  bit_m: number;
  fluid: LineFluid;
  /** What the pump sends down, m3/s: it fills the room that a rising bit leaves. */
  flow_m3s: number;
  balling_frac: number;
  inBed: boolean;
}

export interface Swab {
  /** Pressure change by friction along the ring, from nothing at the mouth to this at the bit; and at the bit itself, felt only below it, Pa. */
  annulus_Pa: number;
  bit_Pa: number;
  conduit: Conduit;
}

export const createSwab = (): Swab => ({ annulus_Pa: 0, bit_Pa: 0, conduit: createConduit() });

/**
 * Speed of the fluid along the ring that a closed pipe at v brings about, m/s: v (.45 + d^2/(D^2 - d^2)).
 * Source: Burkhardt 1961, in Bourgoyne et al. 1986 section 4.13 (from memory). Worked value: v .3, D .1, d .0337 -> .1734.
 */
export const swabVelocity_ms = (speed_ms: number, hole_m: number, rod_m: number): number =>
  speed_ms * (CLINGING_frac + (rod_m * rod_m) / (hole_m * hole_m - rod_m * rod_m));

/**
 * Pressure at a bit that fills .6 of the hole, Pa: rho/2 (v (.6/.4)/.7)^2 (orifice with coefficient .7).
 * Worked value: 1000 kg/m3, .3 m/s -> 206.6.
 */
export function bitGapPressure_Pa(density_kgm3: number, speed_ms: number): number {
  const gap_ms = (speed_ms * BIT_FILLS_frac) / (1 - BIT_FILLS_frac) / GAP_Cd_ratio;
  return 0.5 * density_kgm3 * gap_ms * gap_ms;
}

/** Sets annulus_Pa and bit_Pa for a stem on the move; the pump's flow is taken off what has to come down past the bit. */
export function swabInto(out: Swab, input: SwabInput): void {
  const { holeWidth_m, rodOutside_m, fluid } = input;
  out.annulus_Pa = 0;
  out.bit_Pa = 0;
  if (!(input.speed_ms > 0) || holeWidth_m <= rodOutside_m) return;
  setAnnulus(out.conduit, input.bit_m, holeWidth_m, rodOutside_m, fluid);
  const dragged_m3s = swabVelocity_ms(input.speed_ms, holeWidth_m, rodOutside_m) * out.conduit.area_m2;
  out.annulus_Pa = conduitLoss_Pa(out.conduit, Math.max(0, dragged_m3s - input.flow_m3s));
  const bitArea_m2 = BIT_FILLS_frac * circleArea_m2(holeWidth_m);
  const net_ms = Math.max(0, input.speed_ms - input.flow_m3s / bitArea_m2);
  const times = (1 + (BALLED_TIMES - 1) * input.balling_frac) * (input.inBed ? BED_TIMES : 1);
  out.bit_Pa = times * bitGapPressure_Pa(fluid.density_kgm3, net_ms);
}

/** Change of pressure at a depth, Pa: the friction in proportion to the way along the ring, all of it and the bit's below the bit. */
export function swabAt_Pa(swab: Swab, depth_m: number, bit_m: number): number {
  return depth_m >= bit_m ? swab.annulus_Pa + swab.bit_Pa : (swab.annulus_Pa * depth_m) / bit_m;
}
