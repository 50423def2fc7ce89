// Scratch of loss and level: what each tick works out afresh. Never state.
import { createLossLaw, type LossLaw } from './conductance';
import type { CakeMaking } from '../../fluid/cakeMaking';
import { createMakeup, type FluidMakeup } from '../../fluid/makeup';
import type { Rheology } from '../../fluid/rheology';

export interface LossInput {
  /** Length of the tick, s, and its number. */
  dt_s: number;
  tick: number;
  /** Depth of the bit at the end of this tick, m. */
  bit_m: number;
  rodOutside_m: number;
  temperature_C: number;
  /** Volume that leaves the nozzles in this tick, grains with it, m3. */
  inflow_m3: number;
  /** Whether the rods turn. */
  turning: boolean;
  /** Of the stream in the annulus: shear stress at the wall, Pa, and pressure lost per metre, Pa/m; 0 at rest. */
  wallShear_Pa: number;
  friction_Pam: number;
}

export interface LossWork {
  /** Result: level of the fluid below ground level at the end of the tick, m, 0 when full; what comes over the sill, m3. */
  level_m: number;
  returns_m3: number;
  /** Result, by cell in use: what goes into the ground in this tick (negative: comes in), m3. */
  leave_m3: Float64Array;
  /** Result, by cell of the wall: pressure of the fluid at the end of the tick, Pa; 0 above the level. */
  pressure_Pa: Float64Array;
  /** Argument, by cell of the wall: pressure that a moving stem adds (surge) or takes off (swab), Pa. Kept until set anew. */
  surge_Pa: Float64Array;

  /** The column from the mouth to the top of the bed: its cells, the depth of its end, and what it and the bed hold. */
  cells: number;
  bottom_m: number;
  grains_m3: number;
  bed_m3: number;
  bedGrains_m3: number;
  /** Room of the column, m3; in it clay, and clay and silt together, m3, and what is dissolved, kg. */
  room_m3: number;
  clay_m3: number;
  fines_m3: number;
  soaked_kg: number;
  bentonite_kg: number;
  swelling_kg: number;
  salt_kg: number;
  /** By cell of the column: height, room, density of the mixture, pressure at middle and bottom when full to the mouth. */
  height_m: Float64Array;
  cellRoom_m3: Float64Array;
  density_kgm3: Float64Array;
  middle_Pa: Float64Array;
  bottom_Pa: Float64Array;
  /** What flow and moving stem add to it, Pa. */
  added_Pa: Float64Array;
  /** By cell: grains in suspension, m3. */
  load_m3: Float64Array;
  /** By cell: pressure of the ground water against the open part, Pa; flow in a tick per pressure, m3/Pa. */
  ground_Pa: Float64Array;
  flow_m3Pa: Float64Array;

  /** Logarithms by cell for the radius they were worked out at: the same number each time, so no state. */
  logRadius_m: Float64Array;
  reachLog: Float64Array;
  poreLog: Float64Array;
  /** Share of cake makers held back, by cell; -1 until worked out. */
  capture_frac: Float64Array;
  law: LossLaw;
  /** The fluid, and how much of a cake it leaves from one look to the next: beside the stem, and below the bit. */
  makeup: FluidMakeup;
  making: CakeMaking;
  rheology: Rheology;
  keptInStream_frac: number;
  keptInRest_frac: number;
}

export function createLossWork(cells: number): LossWork {
  const array = (): Float64Array => new Float64Array(cells);
  return {
    level_m: 0,
    returns_m3: 0,
    leave_m3: array(),
    pressure_Pa: array(),
    surge_Pa: array(),
    cells: 0,
    bottom_m: 0,
    grains_m3: 0,
    bed_m3: 0,
    bedGrains_m3: 0,
    room_m3: 0,
    clay_m3: 0,
    fines_m3: 0,
    soaked_kg: 0,
    bentonite_kg: 0,
    swelling_kg: 0,
    salt_kg: 0,
    height_m: array(),
    cellRoom_m3: array(),
    density_kgm3: array(),
    middle_Pa: array(),
    bottom_Pa: array(),
    added_Pa: array(),
    load_m3: array(),
    ground_Pa: array(),
    flow_m3Pa: array(),
    logRadius_m: array(),
    reachLog: array(),
    poreLog: array(),
    capture_frac: array().fill(-1),
    law: createLossLaw(),
    makeup: createMakeup(),
    making: { perFiltrate_ratio: 0, conductivity_ms: 1 },
    rheology: { K_Pasn: 1e-3, n_ratio: 1 },
    keptInStream_frac: 1,
    keptInRest_frac: 1,
  };
}
