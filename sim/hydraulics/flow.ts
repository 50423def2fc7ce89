// The flow that pump, hoses, stem, nozzles and annulus agree on.

/** The fixed parts of the circuit. */
export interface Circuit {
  /** Pump at full throttle at sea level: head at no flow, flow at no head. */
  shutOff_m: number;
  free_m3s: number;
  altitude_m: number;
  /** Height of the pump's eye above ground level, m. */
  pumpHeight_m: number;
  suctionLength_m: number;
  deliveryLength_m: number;
  hoseBore_m: number;
  rodBore_m: number;
  rodOutside_m: number;
  nozzles: number;
  nozzle_m: number;
}

/** A fluid as the losses feel it. */
export interface LineFluid {
  density_kgm3: number;
  K_Pasn: number;
  n_ratio: number;
}

export interface FlowInput {
  circuit: Circuit;
  throttle_frac: number;
  temperature_C: number;
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
  /** Head of the pump at this flow, m, and as pressure. */
  pumpHead_m: number;
  pump_Pa: number;
  strainer_Pa: number;
  suctionHose_Pa: number;
  deliveryHose_Pa: number;
  swivel_Pa: number;
  stem_Pa: number;
  nozzle_Pa: number;
  annulus_Pa: number;
  /** Weight of the columns to be lifted: level difference and heavier annulus. */
  static_Pa: number;
  /** Net positive suction head available, m; the pump starves where it falls below what it needs. */
  npsh_m: number;
  starved: boolean;
  nozzleVelocity_ms: number;
  stemVelocity_ms: number;
  annulusVelocity_ms: number;
  /** Shear stress and shear rate at the wall of the hole. */
  wallShear_Pa: number;
  wallRate_s: number;
}

export function createFlowResult(): FlowResult {
  return {
    flow_m3s: 0,
    pumpHead_m: 0,
    pump_Pa: 0,
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
    wallRate_s: 0,
  };
}

/** Solves the flow, m3/s, starting from that of the tick before; out receives losses and velocities. */
export function solveFlow(_input: FlowInput, _warm_m3s: number, _out: FlowResult): number {
  throw new Error('not filled in yet');
}
