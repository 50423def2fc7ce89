// The fluid that soaks into the wall: how thick it is in the pores, what cake it makes, what it leaves of the cake that is there.
import { cakeMakingInto } from '../../fluid/cakeMaking';
import { makeupInto } from '../../fluid/makeup';
import { rheologyOf } from '../../fluid/rheology';
import type { HoleState } from '../hole';
import { keptCake_frac } from './cake';
import { indexLogOf } from './conductance';
import { LOOK_TICKS } from './front';
import type { LossInput, LossWork } from './work';

/** Less water than this, m3, has no strength worth the name. */
const NO_WATER_m3 = 1e-6;

/**
 * Reads the mean of the column: its parts have all come past the open wall, so it stands for the fluid beside every cell and for what
 * was lost in all rings. Call readColumn first.
 */
export function readFluid(hole: HoleState, input: LossInput, work: LossWork): void {
  const { rheology, law, making, makeup } = work;
  // The room above the level is empty, and the water in the pores of the bed is not part of the column.
  const standing_m3 = hole.water_m3 - (work.bed_m3 - work.bedGrains_m3);
  const most_m3 = Math.min(standing_m3, work.room_m3 - work.grains_m3);
  const water_m3 = most_m3 > NO_WATER_m3 ? most_m3 : 0;
  const fluid_m3 = water_m3 + work.grains_m3;
  makeupInto(
    makeup,
    work.soaked_kg,
    work.bentonite_kg,
    work.swelling_kg,
    work.salt_kg,
    water_m3,
    fluid_m3 > 0 ? work.fines_m3 / fluid_m3 : 0,
    fluid_m3 > 0 ? work.clay_m3 / fluid_m3 : 0,
  );
  rheologyOf(rheology, makeup, input.temperature_C);
  if (rheology.n_ratio !== law.n_ratio) law.indexLog = indexLogOf(rheology.n_ratio);
  law.n_ratio = rheology.n_ratio;
  law.K_Pasn = rheology.K_Pasn;
  // Bentonite that has not swollen, or that salt has clotted, seals like plain clay.
  cakeMakingInto(making, makeup.soaked_gL, makeup.activeBentonite_gL, makeup.plainFines_frac);
  const c = making.perFiltrate_ratio;
  const turn_s = LOOK_TICKS * input.dt_s;
  work.keptInStream_frac = keptCake_frac(input.wallShear_Pa, input.turning, c, turn_s);
  work.keptInRest_frac = keptCake_frac(0, false, c, turn_s);
}
