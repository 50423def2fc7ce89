// Settling in both chambers: how much sinks in a second, and how much leaner than the mean the fluid leaves.
import { CLASS_COUNT } from '../materials/sizes';
import { createMakeup } from '../fluid/makeup';
import { rheologyOf, type Rheology } from '../fluid/rheology';
import { suspensionDensity_kgm3 } from '../hole/load';
import { slipInto } from '../hole/slip';
import { floorRise_m, freeVolume_m3, levelBelowRim_m, readChamber, type ChamberReading } from './level';
import type { Chamber, PitState } from './pit';
import type { PitWork } from './work';

/** Shear rate that stirs the fluid of a pit round a falling grain, 1/s. ASSUMED: slow flow through. */
export const PIT_SHEAR_1s = 0.5;
/** A chamber settles as this many mixed tanks in a row: the settling chamber is led through, the suction chamber is stirred by the pump. ASSUMED. */
export const SETTLING_TANKS = 2;
export const SUCTION_TANKS = 1;
/** With less free depth over the deposit than this, m, the stream scours it and less settles. ASSUMED. */
const SCOUR_m = 0.1;

const reading: ChamberReading = { ...createMakeup(), density_kgm3: 0, load_frac: 0 };
const fluid: Rheology = { K_Pasn: 0, n_ratio: 1 };
const hinder = new Float64Array(CLASS_COUNT);

/**
 * Outflow of a chamber of n tanks in a row as a share of its mean concentration: x / ((1 + x/n)^n - 1), x = w / v_o with
 * v_o = Q/A the overflow rate; 1 for one tank. A mixed body of fluid that loses w A per second and gives off that share keeps
 * 1 - (1 + x/n)^-n of what comes in, the textbook removal of n tanks (Hazen 1904, Camp 1946), and settles as w/h when still.
 * settling_ratio x >= 0, tanks a whole number from 1. Worked value: x 1, n 3 -> .7297.
 */
export function outflowShare(settling_ratio: number, tanks: number): number {
  if (tanks === 1 || settling_ratio < 1e-9) return 1;
  let grown = 1;
  for (let i = 0; i < tanks; i++) grown *= 1 + settling_ratio / tanks;
  return Math.min(1, settling_ratio / (grown - 1));
}

/** Free depth of the fluid over the deposit, m. */
export const freeDepth_m = (chamber: Chamber): number =>
  Math.max(0, chamber.depth_m - levelBelowRim_m(chamber) - floorRise_m(chamber));

function settleChamber(chamber: Chamber, slip_ms: Float64Array, temperature_C: number, dt_s: number): void {
  readChamber(chamber, reading);
  rheologyOf(fluid, reading, temperature_C);
  const density_kgm3 = suspensionDensity_kgm3(reading.fines_frac, reading.bentonite_gL, reading.salt_gL);
  slipInto(slip_ms, hinder, fluid.K_Pasn, fluid.n_ratio, density_kgm3, PIT_SHEAR_1s);
  const volume_m3 = freeVolume_m3(chamber);
  if (volume_m3 <= 0) return;
  const kept = Math.min(1, freeDepth_m(chamber) / SCOUR_m);
  for (let k = 0; k < CLASS_COUNT; k++) {
    slip_ms[k] *= kept;
    const suspended = chamber.solids_m3[k];
    if (suspended <= 0) continue;
    // A mixed body of depth h loses w/h of its load in a second; implicit, so that no step is too long.
    const rate = (slip_ms[k] * chamber.area_m2 * dt_s) / volume_m3;
    const left = suspended / (1 + rate);
    chamber.solids_m3[k] = left;
    chamber.deposit_m3[k] += suspended - left;
  }
}

/** One tick of settling in both chambers; sets the slip of each class for the fluid as it is. */
export function settlePit(pit: PitState, work: PitWork, temperature_C: number, dt_s: number): void {
  work.dt_s = dt_s;
  settleChamber(pit.settling, work.slipSettling_ms, temperature_C, dt_s);
  settleChamber(pit.suction, work.slipSuction_ms, temperature_C, dt_s);
}
