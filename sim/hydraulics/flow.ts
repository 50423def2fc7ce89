// The flow that pump, hoses, stem, nozzles and annulus agree on.
import { solveBracketed } from '../numeric/root';
import { GRAVITY_MS2 } from '../numeric/units';
import type { Kit } from '../materials/kit';
import { vapourPressure_Pa } from '../materials/water';
import { annulusVelocity_ms, setAnnulus, slotWallRate_1s, slotWallShear_Pa } from './annulus';
import { engineSpeed_frac } from './engine';
import { nozzlePressure_Pa, nozzleVelocity_ms } from './nozzle';
import { conduitLoss_Pa, createConduit, fittingLoss_Pa, setPipe, type LineFluid } from './pipe';
import { pumpHead_m } from './pump';
import { NPSH_LIMIT_m, airPressure_Pa, npshAvailable_m, strainerLossGrowth_ratio } from './suction';

export interface FlowInput {
  kit: Kit;
  throttle_frac: number;
  /** Rods screwed together, m. */
  stemLength_m: number;
  bit_m: number;
  /** Mean diameter of the hole above the bit, m. */
  holeDiameter_m: number;
  /** Level of the fluid in the suction chamber, and in the annulus, below ground level, m. */
  pitLevel_m: number;
  mouthLevel_m: number;
  /** Share of the strainer that is blocked, 0 to 1. */
  blockage_frac: number;
  /** Fluid in the hoses (from the suction chamber), in the stem, in the annulus. */
  hose: LineFluid;
  stem: LineFluid;
  annulus: LineFluid;
}

export interface FlowResult {
  flow_m3s: number;
  /** Head of the pump at this flow, m. */
  pumpHead_m: number;
  strainer_Pa: number;
  suctionHose_Pa: number;
  deliveryHose_Pa: number;
  swivel_Pa: number;
  stem_Pa: number;
  nozzle_Pa: number;
  annulus_Pa: number;
  /** Weight of the columns to be lifted: level difference and heavier annulus. */
  static_Pa: number;
  /** Net positive suction head available, m. */
  npsh_m: number;
  /** The suction side, not the pump, sets the flow: the pump cavitates. */
  starved: boolean;
  nozzleVelocity_ms: number;
  stemVelocity_ms: number;
  annulusVelocity_ms: number;
  /** Shear stress and shear rate at the wall of the hole. */
  wallShear_Pa: number;
  wallRate_1s: number;
}

export function createFlowResult(): FlowResult {
  return {
    flow_m3s: 0,
    pumpHead_m: 0,
    strainer_Pa: 0,
    suctionHose_Pa: 0,
    deliveryHose_Pa: 0,
    swivel_Pa: 0,
    stem_Pa: 0,
    nozzle_Pa: 0,
    annulus_Pa: 0,
    static_Pa: 0,
    npsh_m: 0,
    starved: false,
    nozzleVelocity_ms: 0,
    stemVelocity_ms: 0,
    annulusVelocity_ms: 0,
    wallShear_Pa: 0,
    wallRate_1s: 0,
  };
}

/** Width of the bracket at which the root counts as found, m3/s: a millionth of the pump's flow. */
const TOLERANCE_m3s = 1e-9;

// Scratch of one solve: set in full at its start, read only within it.
const suctionHose = createConduit();
const deliveryHose = createConduit();
const stemBore = createConduit();
const ring = createConduit();
let now: FlowInput | null = null;
let speed_frac = 0;
let static_Pa = 0;
let strainer_ratio = 0;
let air_Pa = 0;
let vapour_Pa = 0;
let lift_m = 0;

const strainerLoss = (input: FlowInput, flow_m3s: number): number =>
  fittingLoss_Pa(strainer_ratio, input.hose.density_kgm3, flow_m3s, input.kit.hoseBore_m);

const swivelLoss = (input: FlowInput, flow_m3s: number): number =>
  fittingLoss_Pa(input.kit.swivelLoss_ratio, input.hose.density_kgm3, flow_m3s, input.kit.rodBore_m);

function nozzleLoss(input: FlowInput, flow_m3s: number): number {
  const { kit } = input;
  const velocity_ms = nozzleVelocity_ms(flow_m3s, kit.nozzles, kit.nozzle_m);
  return nozzlePressure_Pa(input.stem.density_kgm3, velocity_ms, kit.nozzleCd_ratio);
}

function pumpPressure_Pa(input: FlowInput, flow_m3s: number): number {
  const head_m = pumpHead_m(input.kit.shutOff_m, input.kit.free_m3s, speed_frac, flow_m3s);
  return input.hose.density_kgm3 * GRAVITY_MS2 * head_m;
}

/** Pressure left over at a flow, Pa: falls steadily as the flow grows. */
function surplus_Pa(flow_m3s: number): number {
  const input = now!;
  return (
    pumpPressure_Pa(input, flow_m3s) -
    static_Pa -
    strainerLoss(input, flow_m3s) -
    conduitLoss_Pa(suctionHose, flow_m3s) -
    conduitLoss_Pa(deliveryHose, flow_m3s) -
    swivelLoss(input, flow_m3s) -
    conduitLoss_Pa(stemBore, flow_m3s) -
    nozzleLoss(input, flow_m3s) -
    conduitLoss_Pa(ring, flow_m3s)
  );
}

/** Suction head left over the need of the pump at a flow, m: falls steadily as the flow grows. */
function suctionSurplus_m(flow_m3s: number): number {
  const input = now!;
  const weight_Nm3 = input.hose.density_kgm3 * GRAVITY_MS2;
  const friction_m = (strainerLoss(input, flow_m3s) + conduitLoss_Pa(suctionHose, flow_m3s)) / weight_Nm3;
  return npshAvailable_m(air_Pa, vapour_Pa, input.hose.density_kgm3, lift_m, friction_m) - NPSH_LIMIT_m;
}

function setUp(input: FlowInput): void {
  const { kit, hose, stem, annulus } = input;
  now = input;
  speed_frac = Math.min(1, Math.max(0, input.throttle_frac)) * engineSpeed_frac(kit.altitude_m);
  setPipe(suctionHose, kit.suctionHose_m, kit.hoseBore_m, kit.hoseRoughness_m, hose);
  setPipe(deliveryHose, kit.deliveryHose_m, kit.hoseBore_m, kit.hoseRoughness_m, hose);
  setPipe(stemBore, input.stemLength_m, kit.rodBore_m, kit.rodRoughness_m, stem);
  const wet_m = Math.max(0, input.bit_m - input.mouthLevel_m);
  setAnnulus(ring, wet_m, input.holeDiameter_m, kit.rodOutside_m, annulus);
  // The annulus is a column to be lifted, the stem one that helps; a loaded annulus is the heavier.
  static_Pa =
    GRAVITY_MS2 *
    (annulus.density_kgm3 * wet_m - stem.density_kgm3 * input.bit_m + hose.density_kgm3 * input.pitLevel_m);
  strainer_ratio = kit.strainerLoss_ratio * strainerLossGrowth_ratio(input.blockage_frac);
  air_Pa = airPressure_Pa(kit.altitude_m);
  vapour_Pa = vapourPressure_Pa(kit.temperature_C);
  lift_m = kit.pumpAbovePit_m + input.pitLevel_m;
}

function balancedFlow(guess_m3s: number): number {
  if (!(speed_frac > 0) || surplus_Pa(0) <= 0) return 0;
  // A hole whose fluid stands below the pit helps the pump beyond its own free flow.
  let most_m3s = now!.kit.free_m3s * speed_frac;
  while (surplus_Pa(most_m3s) > 0) most_m3s *= 2;
  return solveBracketed(surplus_Pa, 0, most_m3s, guess_m3s, TOLERANCE_m3s);
}

/**
 * Flow, m3/s, at which the pump's pressure equals all losses and the columns to be lifted; 0 when it cannot lift them.
 * warm_m3s: the flow of the tick before, where the search starts. out receives losses and velocities at that flow.
 * Where the suction side cannot feed the pump, its need of suction head sets the flow instead (starved).
 * Worked value (calibration, default kit, water): about 148, 121, 110.5 L/min with the bit at 3, 20, 30 m.
 */
export function solveFlow(input: FlowInput, warm_m3s: number, out: FlowResult): number {
  setUp(input);
  let flow_m3s = balancedFlow(warm_m3s);
  out.starved = false;
  if (flow_m3s > 0 && suctionSurplus_m(flow_m3s) < 0) {
    out.starved = true;
    flow_m3s = suctionSurplus_m(0) <= 0 ? 0 : solveBracketed(suctionSurplus_m, 0, flow_m3s, warm_m3s, TOLERANCE_m3s);
  }
  const { kit } = input;
  const width_m = input.holeDiameter_m - kit.rodOutside_m;
  out.flow_m3s = flow_m3s;
  out.pumpHead_m = pumpHead_m(kit.shutOff_m, kit.free_m3s, speed_frac, flow_m3s);
  out.strainer_Pa = strainerLoss(input, flow_m3s);
  out.suctionHose_Pa = conduitLoss_Pa(suctionHose, flow_m3s);
  out.deliveryHose_Pa = conduitLoss_Pa(deliveryHose, flow_m3s);
  out.swivel_Pa = swivelLoss(input, flow_m3s);
  out.stem_Pa = conduitLoss_Pa(stemBore, flow_m3s);
  out.nozzle_Pa = nozzleLoss(input, flow_m3s);
  out.annulus_Pa = conduitLoss_Pa(ring, flow_m3s);
  out.static_Pa = static_Pa;
  out.npsh_m = suctionSurplus_m(flow_m3s) + NPSH_LIMIT_m;
  out.nozzleVelocity_ms = nozzleVelocity_ms(flow_m3s, kit.nozzles, kit.nozzle_m);
  out.stemVelocity_ms = flow_m3s / stemBore.area_m2;
  out.annulusVelocity_ms = annulusVelocity_ms(flow_m3s, input.holeDiameter_m, kit.rodOutside_m);
  out.wallShear_Pa = ring.length_m > 0 ? slotWallShear_Pa(out.annulus_Pa / ring.length_m, width_m) : 0;
  out.wallRate_1s = slotWallRate_1s(out.annulusVelocity_ms, width_m, input.annulus.n_ratio);
  return flow_m3s;
}
