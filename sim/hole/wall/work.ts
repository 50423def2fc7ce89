// Scratch of the wall: tables of the ground, and what one tick reads and hands on. Never state.
import { createConduit, type Conduit } from '../../hydraulics/pipe';
import type { WallGround } from '../wallGround';
import { createFailures, type Failures } from './failures';
import { createFallen, type Fallen } from './fallen';
import { createNeedTable, type NeedTable } from './need';
import { createRetreat } from './slough';
import { createWallPath, type PathInput, type WallPath } from './support';
import { createSwab, type Swab } from './swab';
import { createWashTable, type WashTable } from './washout';

/** What the stream can do in a hole as wide as the bit. */
export interface Stream {
  /** Shear stress along the rods and past the bit, Pa: no more in any wider cell. */
  ring_Pa: number;
  bit_Pa: number;
  /** What its thickness leaves of the pick-up of sand, and what its skin on clay leaves of the wear. */
  thin_ratio: number;
  coated_ratio: number;
}

export interface WallWork {
  readonly need: NeedTable;
  readonly wash: WashTable;
  /** How fast each cell retreats unsupported, m/s. */
  readonly retreat_ms: Float64Array;
  readonly path: WallPath;
  readonly pathInput: PathInput;
  readonly swab: Swab;
  readonly conduit: Conduit;
  readonly stream: Stream;
  /** What this tick took off the wall, and why. */
  readonly fallen: Fallen;
  readonly failures: Failures;
  /** How many cells are falling in now, and how many have closed. */
  sloughing: number;
  closed: number;
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
      logRadius: 0,
      K_ms: 0,
      porosity_frac: 0,
      room_frac: 0,
      saturated: true,
      lost_m2: 0,
      cakeResistance_s: 0,
      conductance_ms: 0,
    },
    swab: createSwab(),
    conduit: createConduit(),
    stream: { ring_Pa: 0, bit_Pa: 0, thin_ratio: 1, coated_ratio: 1 },
    fallen: createFallen(ground.cells),
    failures: createFailures(CAUSES_AT_ONCE * ground.cells),
    sloughing: 0,
    closed: 0,
  };
}
