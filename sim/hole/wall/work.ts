// Scratch of the wall: tables of the ground, and what one tick reads and hands on. Never state.
import { createConduit, type Conduit } from '../../hydraulics/pipe';
import type { WallGround } from '../wallGround';
import { createFailures, type Failures } from './failures';
import { createFallen, type Fallen } from './fallen';
import { createNeedTable, type NeedTable } from './need';
import { createRetreat } from './slough';
import { createWallPath, type PathInput, type WallPath } from './support';
import { createSwab, type Swab, type SwabInput } from './swab';
import { createWashTable, type WashTable } from './washout';

export interface WallWork {
  readonly need: NeedTable;
  readonly wash: WashTable;
  /** How fast each cell retreats unsupported, m/s. */
  readonly retreat_ms: Float64Array;
  readonly path: WallPath;
  readonly pathInput: PathInput;
  readonly swab: Swab;
  readonly swabInput: SwabInput;
  readonly conduit: Conduit;
  /** What this tick took off the wall, and why. */
  readonly fallen: Fallen;
  readonly failures: Failures;
}

/** Entries of the list of failures for one cell: fall, swab and wash-out in one tick. */
const CAUSES_AT_ONCE = 3;

export function createWallWork(ground: WallGround, dz_m: number): WallWork {
  return {
    need: createNeedTable(ground, dz_m),
    wash: createWashTable(ground),
    retreat_ms: createRetreat(ground),
    path: createWallPath(),
    pathInput: {
      radius_m: 0,
      K_ms: 0,
      porosity_frac: 0,
      room_frac: 0,
      saturated: true,
      lost_m2: 0,
      cakeResistance_s: 0,
      conductance_ms: 0,
    },
    swab: createSwab(),
    swabInput: {
      speed_ms: 0,
      holeWidth_m: 0,
      rodOutside_m: 0,
      bit_m: 0,
      fluid: { density_kgm3: 1000, K_Pasn: 1e-3, n_ratio: 1 },
      flow_m3s: 0,
      balling_frac: 0,
      inBed: false,
    },
    conduit: createConduit(),
    fallen: createFallen(ground.cells),
    failures: createFailures(CAUSES_AT_ONCE * ground.cells),
  };
}
