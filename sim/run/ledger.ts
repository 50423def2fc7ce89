// The balance of water, of grains by class, of polymer and of each other substance: what the stores hold against what came in less what went out.

import { FILL_COUNT, SLURRY_FILL } from '../completion/fills';
import { BENTONITE, CHLORINE, SALT, SOAKED, SOAKING, SUBSTANCE_COUNT, SWELLING } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';
import type { Run } from './run';
import type { RunState } from './state';

/** Relative errors: the gap over all that was ever there. */
export interface Ledger {
  readonly water: number;
  readonly solids: number;
  readonly polymer: number;
  /** The worst of bentonite, chlorine and salt. */
  readonly additives: number;
  /** The worst of what was put round the casing, in bulk. */
  readonly fills: number;
}

const summed = (values: Float64Array): number => {
  let total = 0;
  for (const value of values) total += value;
  return total;
};

export function waterStored_m3({ hole, fill, pit, well }: RunState): number {
  return (well?.water_m3 ?? 0) + hole.water_m3 + summed(fill.water_m3) + pit.settling.water_m3 + pit.suction.water_m3;
}

/** Grain volume of one class in hole, bed, stem, pit and in the hand of whoever is catching a sample, m3. */
export function solidsStored_m3({ hole, fill, pit }: RunState, k: number): number {
  let total = hole.bed_m3[k];
  for (const chamber of [pit.settling, pit.suction]) total += chamber.solids_m3[k] + chamber.deposit_m3[k];
  for (let i = 0; i < hole.cells; i++) total += hole.solids_m3[k * hole.cells + i];
  for (let i = 0; i < fill.cells; i++) total += fill.solids_m3[k * fill.cells + i];
  return total;
}

/** One substance in hole, stem, pit and well, kg. */
export function dissolvedStored_kg({ hole, fill, pit, well }: RunState, s: number): number {
  let total = pit.settling.dissolved_kg[s] + pit.suction.dissolved_kg[s];
  if (s === CHLORINE && well) total += well.chlorine_kg;
  for (let i = 0; i < hole.cells; i++) total += hole.dissolved_kg[s * hole.cells + i];
  for (let i = 0; i < fill.cells; i++) total += fill.dissolved_kg[s * fill.cells + i];
  return total;
}

export function polymerStored_kg(state: RunState): number {
  const { settling, suction } = state.pit;
  const lumps_kg = settling.clumps_kg + suction.clumps_kg;
  return dissolvedStored_kg(state, SOAKED) + dissolvedStored_kg(state, SOAKING) + lumps_kg;
}

/** Writes down what the stores hold at the start. */
export function openLedger(state: RunState): void {
  state.boundary.waterStart_m3 = waterStored_m3(state);
  for (let k = 0; k < CLASS_COUNT; k++) state.boundary.solidsStart_m3[k] = solidsStored_m3(state, k);
  state.boundary.polymerStart_kg = polymerStored_kg(state);
  for (let s = 0; s < SUBSTANCE_COUNT; s++) state.boundary.dissolvedStart_kg[s] = dissolvedStored_kg(state, s);
}

const relative = (stored: number, start: number, came: number, went: number): number => {
  const ever = start + came;
  return ever > 0 ? Math.abs(start + came - went - stored) / ever : Math.abs(stored + went);
};

/** Substances that are balanced together: one turns into the other. */
const ADDITIVES: readonly (readonly number[])[] = [[BENTONITE, SWELLING], [CHLORINE], [SALT]];

/** What stands in the ring, falls there and has entered a pack against what was put in or caved in. */
function fillsGap({ completion: { annulus } }: RunState): number {
  if (!annulus) return 0;
  const { cells, fill_m3, falling_m3, put_m3, entered_m3 } = annulus;
  let worst = 0;
  for (let f = 0; f < FILL_COUNT; f++) {
    let stored_m3 = f === SLURRY_FILL ? entered_m3 : 0;
    for (let i = 0; i < cells; i++) stored_m3 += fill_m3[f * cells + i] + falling_m3[f * cells + i];
    worst = Math.max(worst, relative(stored_m3, 0, put_m3[f], 0));
  }
  return worst;
}

export function ledgerOf(run: Run): Ledger {
  const { state } = run;
  const b = state.boundary;
  let solids = 0;
  for (let k = 0; k < CLASS_COUNT; k++) {
    solids = Math.max(
      solids,
      relative(solidsStored_m3(state, k), b.solidsStart_m3[k], b.solidsIn_m3[k], b.solidsOut_m3[k]),
    );
  }
  let additives = 0;
  for (const kinds of ADDITIVES) {
    const sum = (amount: (s: number) => number): number => kinds.reduce((total, s) => total + amount(s), 0);
    const gap = relative(
      sum((s) => dissolvedStored_kg(state, s)),
      sum((s) => b.dissolvedStart_kg[s]),
      sum((s) => b.dissolvedIn_kg[s]),
      sum((s) => b.dissolvedOut_kg[s]),
    );
    additives = Math.max(additives, gap);
  }
  return {
    water: relative(waterStored_m3(state), b.waterStart_m3, b.waterIn_m3, b.waterOut_m3),
    solids,
    polymer: relative(polymerStored_kg(state), b.polymerStart_kg, b.polymerIn_kg, b.polymerOut_kg),
    additives,
    fills: fillsGap(state),
  };
}
