// The casing in the hole: how many pieces it is of, where its steel stands, how it goes down.

import { casingLength_m, type WellPlan } from '../completion/plan';
import { PVC } from '../materials/pipes';

/** Length below which a piece is none, m: rounding. */
const NO_PIECE_m = 1e-9;

/** Pieces of 3 m, the last one cut. Worked value: 19 m -> 7. */
export const piecesPlanned = (plan: WellPlan): number => Math.ceil(casingLength_m(plan) / PVC.piece_m - NO_PIECE_m);
