// Which part of the hole's pressure holds the wall up: what the fluid spends near the wall, on cake and in the first ring of ground.
import { ln } from '../../numeric/functions';
import { REACH_m } from '../loss/front';

const REACH_LN = ln(REACH_m);
/** The ring of ground that has to stand reaches from the wall to this many radii; its logarithm. ASSUMED: twice. */
const RING_ratio = 2;
const RING_LN = ln(RING_ratio);
/** Rings thinner than this share of the radius are no ring. */
const NO_RING = 1e-6;
/** Ground that is all but full of water takes no less than this share of its bulk. ASSUMED. */
const LEAST_ROOM_frac = 0.01;

/** The way out of the hole as resistances 2 pi K (head/flow per metre), without dimension: plain water through bare ground from r to R is ln(R/r). */
export interface WallPath {
  /** Cake: K delta/(r K_c). */
  cake: number;
  /** From r to 2 r. */
  near: number;
  total: number;
  /** Thickness of the fluid in the pores next to the wall over that of water. */
  thick_ratio: number;
}

export const createWallPath = (): WallPath => ({ cake: 0, near: RING_LN, total: 1, thick_ratio: 1 });

export interface PathInput {
  radius_m: number;
  /** Its natural logarithm. */
  logRadius: number;
  K_ms: number;
  porosity_frac: number;
  /** Pore space the fluid can fill, as a share of the bulk: all of it in saturated ground, what holds air above the water. */
  room_frac: number;
  saturated: boolean;
  /** Fluid that went into the ground, m3/m. */
  lost_m2: number;
  /** Thickness of the cake over its conductivity, s. */
  cakeResistance_s: number;
  /** Flow per head of a metre of wall, m2/s per m, as the loss reckons it; 0: not reckoned yet. */
  conductance_ms: number;
}

/**
 * Reads the path out of one cell. The whole is 2 pi K / conductance, the same as in the loss; the cake's part is
 * K (delta/K_c)/r; beyond the invaded ring (r_i^2 = r^2 + V/(pi n)) lies ground water, ln(R/r_i); what is left over is the
 * invaded ring. In ground without water the wetted ring, at least to 2 r, is the whole way.
 */
export function readPath(out: WallPath, input: PathInput): void {
  const r = input.radius_m;
  const share = input.saturated ? input.porosity_frac : Math.max(LEAST_ROOM_frac, input.room_frac);
  // ln(r_i/r), and ln of the way to where the ground's own water takes over.
  const wetted = 0.5 * ln(1 + input.lost_m2 / (Math.PI * share * r * r));
  const whole = Math.max(RING_LN, input.saturated ? REACH_LN - input.logRadius : wetted);
  const ring = input.saturated ? Math.min(wetted, whole) : whole;
  const beyond = whole - ring;
  out.cake = (input.K_ms * input.cakeResistance_s) / r;
  const plain = out.cake + whole;
  const told = input.conductance_ms > 0 ? (2 * Math.PI * input.K_ms) / input.conductance_ms : plain;
  const invaded = ring > NO_RING ? Math.max(0, told - out.cake - beyond) : 0;
  out.thick_ratio = ring > NO_RING ? invaded / ring : 1;
  out.total = out.cake + invaded + beyond;
  out.near = ring >= RING_LN ? out.thick_ratio * RING_LN : invaded + RING_LN - ring;
  if (!(out.total > 0)) {
    // Nothing resists: the fluid runs away and holds nothing.
    out.total = plain;
    out.near = 0;
    out.cake = 0;
  }
}

/**
 * Share e of the pressure difference that acts on the ring of ground at the wall: (cake + near) / total, 0 to 1.
 * ASSUMED form (limit: a membrane carries all, e = 1; bare ground ln 2/ln(R/r)). Worked value: bare, r .05, R 5 -> .1505.
 */
export const supportShare_frac = (path: WallPath): number => Math.min(1, (path.cake + path.near) / path.total);

/** Outward gradient in the ground at the wall, m/m, for so much head of the hole over the ground: head thick/(r total). Worked value: bare, 1 m, r .05, R 5 -> 4.34. */
export const wallGradient_ratio = (path: WallPath, head_m: number, radius_m: number): number =>
  (head_m * path.thick_ratio) / (radius_m * path.total);

/** Stability ratio is kept within these. */
const LEAST_ratio = -2;
export const MOST_ratio = 9;

/**
 * Stability F of a wall: 1 + (support - need)/friction need, -2 to 9, with need = friction need - what cohesion spares.
 * Without cohesion that is support over need; with it F is still 1 exactly when support equals need, and stays finite when cohesion alone would do.
 * Worked value: support 542, friction 271, spared 0 -> 2.
 */
export function stability_ratio(support_Pa: number, friction_Pa: number, spared_Pa: number): number {
  if (!(friction_Pa > 0)) return MOST_ratio;
  const F = (support_Pa + spared_Pa) / friction_Pa;
  return F < LEAST_ratio ? LEAST_ratio : F > MOST_ratio ? MOST_ratio : F;
}
