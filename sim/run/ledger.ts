// The balance of water, of grains by class and of polymer: what the stores hold against what came in less what went out.

import { CLASS_COUNT } from '../materials/sizes';
import type { Run } from './run';
import type { RunState } from './state';

/** Relative errors: the gap over all that was ever there. */
export interface Ledger {
  readonly water: number;
  readonly solids: number;
  readonly polymer: number;
}

const summed = (values: Float64Array): number => {
  let total = 0;
  for (const value of values) total += value;
  return total;
};

export function waterStored_m3({ hole, fill, pit }: RunState): number {
  return hole.water_m3 + summed(fill.water_m3) + pit.settling.water_m3 + pit.suction.water_m3;
}

/** Grain volume of one class in hole, bed, stem, pit and in the hand of whoever is catching a sample, m3. */
export function solidsStored_m3({ hole, fill, pit }: RunState, k: number): number {
  let total = hole.bed_m3[k];
  for (const chamber of [pit.settling, pit.suction]) total += chamber.solids_m3[k] + chamber.deposit_m3[k];
  for (let i = 0; i < hole.cells; i++) total += hole.solids_m3[k * hole.cells + i];
  for (let i = 0; i < fill.cells; i++) total += fill.solids_m3[k * fill.cells + i];
  return total;
}

export function polymerStored_kg({ hole, fill, pit }: RunState): number {
  const { settling, suction } = pit;
  const inPit =
    settling.soaked_kg +
    settling.soaking_kg +
    settling.clumps_kg +
    suction.soaked_kg +
    suction.soaking_kg +
    suction.clumps_kg;
  return summed(hole.soaked_kg) + summed(hole.soaking_kg) + summed(fill.soaked_kg) + summed(fill.soaking_kg) + inPit;
}

/** Writes down what the stores hold at the start. */
export function openLedger(state: RunState): void {
  state.boundary.waterStart_m3 = waterStored_m3(state);
  for (let k = 0; k < CLASS_COUNT; k++) state.boundary.solidsStart_m3[k] = solidsStored_m3(state, k);
  state.boundary.polymerStart_kg = polymerStored_kg(state);
}

const relative = (stored: number, start: number, came: number, went: number): number => {
  const ever = start + came;
  return ever > 0 ? Math.abs(start + came - went - stored) / ever : Math.abs(stored + went);
};

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
  return {
    water: relative(waterStored_m3(state), b.waterStart_m3, b.waterIn_m3, b.waterOut_m3),
    solids,
    polymer: relative(polymerStored_kg(state), b.polymerStart_kg, b.polymerIn_kg, b.polymerOut_kg),
  };
}
