// The flow that pump, hoses, stem, nozzles and annulus agree on.
import { ln } from '../numeric/functions';
import { GRAVITY_MS2 } from '../numeric/units';
import type { Kit } from '../materials/kit';
import { vapourPressure_Pa } from '../materials/water';
import { annulusVelocity_ms, setAnnulus, slotWallRate_1s, slotWallShear_Pa } from './annulus';
import { flowThatSpends } from './balance';
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
  /** Share of its head that the pump still gives: worn, or with air in it, less than 1. */
  headLeft_ratio: number;
  /** Share of the flow that leaves by a tear where the hose meets the swivel, 0 to .9: the rest goes down the stem. */
  lost_frac: number;
  /** Fluid in the hoses (from the suction chamber), in the stem, in the annulus. */
  hose: LineFluid;
  stem: LineFluid;
  annulus: LineFluid;
}

export interface FlowResult {
  flow_m3s: number;
  /** What of it goes down the stem. */
  stemFlow_m3s: number;
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
    stemFlow_m3s: 0,
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

/** Step of the search at which the flow counts as found, m3/s: a millionth of the pump's flow. */
const TOLERANCE_m3s = 1e-9;

// Scratch of one solve: set in full at its start, read only within it.
// Both hoses hold one fluid and are of one bore: their friction is worked out once, for their whole length.
const hoses = createConduit();
const stemBore = createConduit();
const ring = createConduit();
let now: FlowInput | null = null;
let speed_frac = 0;
let static_Pa = 0;
/** Losses that grow as the square of the flow, at 1 m3/s, Pa. */
let strainer1_Pa = 0;
let swivel1_Pa = 0;
let nozzle1_Pa = 0;
let pump1_Pa = 0;
/** Pressure left over, and suction head left over, at no flow. */
let atRest_Pa = 0;
let atRest_m = 0;
let suctionShare = 0;
/** Share of the flow that goes down the stem, and its logarithm. */
let kept_frac = 1;
let logKept = 0;

const pumpPressure_Pa = (input: FlowInput, flow_m3s: number): number =>
  input.hose.density_kgm3 *
  GRAVITY_MS2 *
  pumpHead_m(input.kit.shutOff_m * input.headLeft_ratio, input.kit.free_m3s, speed_frac, flow_m3s);

/** Pressure left over at a flow above 0, Pa: falls steadily as the flow grows. */
function surplus_Pa(flow_m3s: number): number {
  const logFlow = ln(flow_m3s);
  return (
    atRest_Pa -
    (pump1_Pa + strainer1_Pa + swivel1_Pa + nozzle1_Pa) * flow_m3s * flow_m3s -
    conduitLoss_Pa(hoses, flow_m3s, logFlow) -
    conduitLoss_Pa(stemBore, flow_m3s * kept_frac, logFlow + logKept) -
    conduitLoss_Pa(ring, flow_m3s * kept_frac, logFlow + logKept)
  );
}

/** Suction head left over the need of the pump at a flow above 0, m: falls steadily as the flow grows. */
function suctionSurplus_m(flow_m3s: number): number {
  const friction_Pa = strainer1_Pa * flow_m3s * flow_m3s + suctionShare * conduitLoss_Pa(hoses, flow_m3s);
  return atRest_m - friction_Pa / (now!.hose.density_kgm3 * GRAVITY_MS2);
}

function setUp(input: FlowInput): void {
  const { kit, hose, stem, annulus } = input;
  now = input;
  speed_frac = Math.min(1, Math.max(0, input.throttle_frac)) * engineSpeed_frac(kit.altitude_m);
  const hoses_m = kit.suctionHose_m + kit.deliveryHose_m;
  suctionShare = hoses_m > 0 ? kit.suctionHose_m / hoses_m : 0;
  setPipe(hoses, hoses_m, kit.hoseBore_m, kit.hoseRoughness_m, hose);
  setPipe(stemBore, input.stemLength_m, kit.rodBore_m, kit.rodRoughness_m, stem);
  const wet_m = Math.max(0, input.bit_m - input.mouthLevel_m);
  setAnnulus(ring, wet_m, input.holeDiameter_m, kit.rodOutside_m, annulus);
  // The annulus is a column to be lifted, the stem one that helps; a loaded annulus is the heavier.
  static_Pa =
    GRAVITY_MS2 *
    (annulus.density_kgm3 * wet_m - stem.density_kgm3 * input.bit_m + hose.density_kgm3 * input.pitLevel_m);
  const strainer_ratio = kit.strainerLoss_ratio * strainerLossGrowth_ratio(input.blockage_frac);
  strainer1_Pa = fittingLoss_Pa(strainer_ratio, hose.density_kgm3, 1, kit.hoseBore_m);
  kept_frac = 1 - input.lost_frac;
  logKept = kept_frac < 1 ? ln(kept_frac) : 0;
  const stemSquare = kept_frac * kept_frac;
  swivel1_Pa = stemSquare * fittingLoss_Pa(kit.swivelLoss_ratio, hose.density_kgm3, 1, kit.rodBore_m);
  nozzle1_Pa = nozzlePressure_Pa(
    stem.density_kgm3,
    nozzleVelocity_ms(kept_frac, kit.nozzles, kit.nozzle_m),
    kit.nozzleCd_ratio,
  );
  const shut_Pa = pumpPressure_Pa(input, 0);
  pump1_Pa = shut_Pa - pumpPressure_Pa(input, 1);
  atRest_Pa = shut_Pa - static_Pa;
  atRest_m = suctionHeadAtRest_m(kit, hose.density_kgm3, input.pitLevel_m) - NPSH_LIMIT_m;
}

function balancedFlow(warm_m3s: number): number {
  if (!(speed_frac > 0) || atRest_Pa <= 0) return 0;
  let most_m3s = now!.kit.free_m3s * speed_frac;
  // A hole whose fluid stands below the pit helps the pump beyond its own free flow.
  if (static_Pa < 0) while (surplus_Pa(most_m3s) > 0) most_m3s *= 2;
  return flowThatSpends(surplus_Pa, atRest_Pa, most_m3s, warm_m3s, TOLERANCE_m3s);
}

/** The flow, and whether the suction side sets it. */
function findFlow(warm_m3s: number, out: FlowResult): number {
  const flow_m3s = balancedFlow(warm_m3s);
  out.starved = flow_m3s > 0 && suctionSurplus_m(flow_m3s) < 0;
  if (!out.starved) return flow_m3s;
  return atRest_m <= 0 ? 0 : flowThatSpends(suctionSurplus_m, atRest_m, flow_m3s, warm_m3s, TOLERANCE_m3s);
}

/** Suction head left at the eye of a pump that stands this high over still fluid, m: what priming has to work with. Below 0 no water comes up. */
export function suctionHeadAtRest_m(kit: Kit, density_kgm3: number, pitLevel_m: number): number {
  const air_Pa = airPressure_Pa(kit.altitude_m);
  const vapour_Pa = vapourPressure_Pa(kit.temperature_C);
  return npshAvailable_m(air_Pa, vapour_Pa, density_kgm3, kit.pumpAbovePit_m + pitLevel_m, 0);
}

/**
 * Flow, m3/s, at which the pump's pressure equals all losses and the columns to be lifted; 0 when it cannot lift them.
 * warm_m3s: the flow of the tick before, where the search starts. out receives losses and velocities at that flow.
 * Where the suction side cannot feed the pump, its need of suction head sets the flow instead (starved).
 * Worked value (calibration, default kit, water): about 148, 121, 110.5 L/min with the bit at 3, 20, 30 m.
 */
export function solveFlow(input: FlowInput, warm_m3s: number, out: FlowResult): number {
  setUp(input);
  const flow_m3s = findFlow(warm_m3s, out);
  const { kit } = input;
  const square = flow_m3s * flow_m3s;
  const stemFlow_m3s = flow_m3s * kept_frac;
  const width_m = input.holeDiameter_m - kit.rodOutside_m;
  const hoses_Pa = conduitLoss_Pa(hoses, flow_m3s);
  out.flow_m3s = flow_m3s;
  out.stemFlow_m3s = stemFlow_m3s;
  out.pumpHead_m = pumpHead_m(kit.shutOff_m * input.headLeft_ratio, kit.free_m3s, speed_frac, flow_m3s);
  out.strainer_Pa = strainer1_Pa * square;
  out.suctionHose_Pa = suctionShare * hoses_Pa;
  out.deliveryHose_Pa = hoses_Pa - out.suctionHose_Pa;
  out.swivel_Pa = swivel1_Pa * square;
  out.stem_Pa = conduitLoss_Pa(stemBore, stemFlow_m3s);
  out.nozzle_Pa = nozzle1_Pa * square;
  out.annulus_Pa = conduitLoss_Pa(ring, stemFlow_m3s);
  out.static_Pa = static_Pa;
  const suction_Pa = out.strainer_Pa + out.suctionHose_Pa;
  out.npsh_m = atRest_m + NPSH_LIMIT_m - suction_Pa / (input.hose.density_kgm3 * GRAVITY_MS2);
  out.nozzleVelocity_ms = nozzleVelocity_ms(stemFlow_m3s, kit.nozzles, kit.nozzle_m);
  out.stemVelocity_ms = stemFlow_m3s / stemBore.area_m2;
  out.annulusVelocity_ms = annulusVelocity_ms(stemFlow_m3s, input.holeDiameter_m, kit.rodOutside_m);
  out.wallShear_Pa = ring.length_m > 0 ? slotWallShear_Pa(out.annulus_Pa / ring.length_m, width_m) : 0;
  out.wallRate_1s = slotWallRate_1s(out.annulusVelocity_ms, width_m, input.annulus.n_ratio);
  return flow_m3s;
}
