// The gear of one crew as plain numbers. Every default is ASSUMED for a demo kit of ordinary size; a scenario may change any.

/** One of the two pit chambers, straight-walled. */
export interface ChamberSize {
  readonly area_m2: number;
  readonly depth_m: number;
}

export interface Kit {
  /** Diameter of the drag bit, m; 0.075, 0.100, 0.125, 0.150 are usual. */
  readonly bit_m: number;
  /** Water ways in the bit, their bore, and their discharge coefficient (0.95: oilfield custom). */
  readonly nozzles: number;
  readonly nozzle_m: number;
  readonly nozzleCd_ratio: number;
  /** Rods: 1.5 m is common practice, no source; 1-inch steel pipe. */
  readonly rodLength_m: number;
  readonly rodOutside_m: number;
  readonly rodBore_m: number;
  readonly rodMass_kg: number;
  /** Inner roughness of used steel pipe, m (commercial steel .045 mm, Moody 1944). */
  readonly rodRoughness_m: number;
  /** Pump at full throttle at sea level: head at no flow, flow at no head. */
  readonly shutOff_m: number;
  readonly free_m3s: number;
  readonly suctionHose_m: number;
  readonly deliveryHose_m: number;
  readonly hoseBore_m: number;
  readonly hoseRoughness_m: number;
  /** Loss of the swivel and the bends, in velocity heads of the rod bore. */
  readonly swivelLoss_ratio: number;
  /** Loss of the clean strainer and the non-return valve, in velocity heads of the hose. */
  readonly strainerLoss_ratio: number;
  /** Open area of the clean strainer, m2. */
  readonly strainerArea_m2: number;
  /** Strainer's height above the suction chamber's floor at the start, m; it stands clear of the floor. */
  readonly strainer_m: number;
  /** Height of the pump's eye above the full pit, m. */
  readonly pumpAbovePit_m: number;
  /** Drill motor: power, torque at which it stalls, speed at the bit. */
  readonly drivePower_W: number;
  readonly stallTorque_Nm: number;
  readonly turning_rpm: number;
  /** Weight of swivel and drive that hangs on the stem, N. */
  readonly hangingWeight_N: number;
  /** Most weight the crew can let on the bit, and most pull it has on the rope, N. */
  readonly bitLoadLimit_N: number;
  readonly pullLimit_N: number;
  /** Flow the crew counts on, m3/s: what the kit gives at working depth. */
  readonly nominalFlow_m3s: number;
  readonly crew: number;
  /** Pit: settling chamber, suction chamber; depth of the notch between them below the rim. */
  readonly settling: ChamberSize;
  readonly suction: ChamberSize;
  readonly notch_m: number;
  /** Length of one cell of the hole, m. */
  readonly dz_m: number;
  readonly altitude_m: number;
  readonly temperature_C: number;
}

export const DEFAULT_KIT: Kit = {
  bit_m: 0.1,
  nozzles: 2,
  nozzle_m: 0.01,
  nozzleCd_ratio: 0.95,
  rodLength_m: 1.5,
  rodOutside_m: 0.0337,
  rodBore_m: 0.0272,
  rodMass_kg: 3.5,
  rodRoughness_m: 4.5e-5,
  shutOff_m: 28,
  free_m3s: 0.006,
  suctionHose_m: 3,
  deliveryHose_m: 12,
  hoseBore_m: 0.032,
  hoseRoughness_m: 2e-5,
  swivelLoss_ratio: 1.5,
  strainerLoss_ratio: 2,
  strainerArea_m2: 0.02,
  strainer_m: 0.2,
  pumpAbovePit_m: 0.5,
  drivePower_W: 700,
  stallTorque_Nm: 45,
  turning_rpm: 90,
  hangingWeight_N: 60,
  bitLoadLimit_N: 250,
  pullLimit_N: 1500,
  nominalFlow_m3s: 0.002,
  crew: 2,
  settling: { area_m2: 0.6, depth_m: 0.8 },
  suction: { area_m2: 0.6, depth_m: 0.8 },
  notch_m: 0.15,
  dz_m: 0.25,
  altitude_m: 0,
  temperature_C: 25,
};
