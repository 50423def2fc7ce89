// Swab and surge: a stem on the move drags fluid along and leaves, or pushes, pressure in the hole.
import { circleArea_m2, conduitLoss_Pa, createConduit, type Conduit, type LineFluid } from '../../hydraulics/pipe';
import { setAnnulus } from '../../hydraulics/annulus';
import { bedTop_m, type HoleState, type StemPlace } from '../hole';

/** The fluid next to a moving pipe goes with it: that share of its speed counts as flow along the ring (Burkhardt 1961, laminar, from memory: about .45). */
const CLINGING_frac = 0.45;
/** Share of the hole's section that the bit fills; discharge coefficient of what is left. ASSUMED. */
export const BIT_FILLS_frac = 0.6;
const GAP_Cd_ratio = 0.7;
/** Times the pressure at the bit grows when it is packed with clay, and when it stands in a bed. ASSUMED. */
const BALLED_TIMES = 2;
const BED_TIMES = 3;

export interface SwabInput {
  /** Speed of the stem in this tick, upwards, m/s; negative: down. */
  lift_ms: number;
  /** Mean width of the hole above the bit, m. */
  holeWidth_m: number;
  stem: StemPlace;
  /** The fluid in the ring. */
  fluid: LineFluid;
  /** What the pump sends down, m3/s: it fills the room that a rising bit leaves. */
  flow_m3s: number;
  balling_frac: number;
}

export interface Swab {
  /** The stem takes pressure off in this tick. */
  pulls: boolean;
  /** It moves, up or down. */
  moves: boolean;
  /** Size of the pressure by friction along the ring, from nothing at the mouth to this at the bit, and at the bit itself, felt only below it, Pa. */
  annulus_Pa: number;
  bit_Pa: number;
  conduit: Conduit;
}

export const createSwab = (): Swab => ({
  pulls: false,
  moves: false,
  annulus_Pa: 0,
  bit_Pa: 0,
  conduit: createConduit(),
});

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

/** Sets annulus_Pa and bit_Pa; on the way up the pump's flow is taken off what has to come down past the bit. */
function readSwab(swab: Swab, input: SwabInput, inBed: boolean): void {
  const { holeWidth_m, fluid } = input;
  const { bit_m, rodOutside_m } = input.stem;
  const speed_ms = Math.abs(input.lift_ms);
  const pumped_m3s = input.lift_ms > 0 ? input.flow_m3s : 0;
  setAnnulus(swab.conduit, bit_m, holeWidth_m, rodOutside_m, fluid);
  const dragged_m3s = swabVelocity_ms(speed_ms, holeWidth_m, rodOutside_m) * swab.conduit.area_m2;
  swab.annulus_Pa = conduitLoss_Pa(swab.conduit, Math.max(0, dragged_m3s - pumped_m3s));
  const net_ms = Math.max(0, speed_ms - pumped_m3s / (BIT_FILLS_frac * circleArea_m2(holeWidth_m)));
  const times = (1 + (BALLED_TIMES - 1) * input.balling_frac) * (inBed ? BED_TIMES : 1);
  swab.bit_Pa = times * bitGapPressure_Pa(fluid.density_kgm3, net_ms);
}

/**
 * Writes by cell what the moving stem adds to the pressure (down: surge) or takes off it (up: swab, negative), Pa: friction in
 * proportion to the way along the ring, all of it and the bit's own below the bit; 0 everywhere while it hangs still.
 */
export function surgeInto(out_Pa: Float64Array, hole: HoleState, swab: Swab, input: SwabInput): void {
  const { bit_m, rodOutside_m } = input.stem;
  const moves = input.lift_ms !== 0 && bit_m > 0 && input.holeWidth_m > rodOutside_m;
  swab.pulls = moves && input.lift_ms > 0;
  if (!moves) {
    if (swab.moves) out_Pa.fill(0);
    swab.moves = false;
    return;
  }
  swab.moves = true;
  readSwab(swab, input, bit_m > bedTop_m(hole, input.stem));
  const sign = swab.pulls ? -1 : 1;
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) {
    const depth_m = (i + 0.5) * hole.dz_m;
    out_Pa[i] = sign * (depth_m >= bit_m ? swab.annulus_Pa + swab.bit_Pa : (swab.annulus_Pa * depth_m) / bit_m);
  }
}
