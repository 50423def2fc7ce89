// What the pit's state means for a crew: room, heap, the fluid in a chamber.

import { rheologyOf } from '../fluid/rheology';
import { floorRise_m, levelBelowRim_m, readChamber } from '../pit/level';
import type { Chamber, PitState } from '../pit/pit';
import type { Run } from './run';

/** The pit is filled to this far below its rim, m: the hole and the stem give some back. ASSUMED. */
const FREEBOARD_m = 0.05;

const roomOf_m3 = (chamber: Chamber): number => (levelBelowRim_m(chamber) - FREEBOARD_m) * chamber.area_m2;

/** Water that can still be poured in, m3. */
export const pitRoom_m3 = (pit: PitState): number => Math.max(0, roomOf_m3(pit.settling) + roomOf_m3(pit.suction));

/** Height of the sand heap as a share of the chamber's depth. */
export const heapShare = (chamber: Chamber): number => floorRise_m(chamber) / chamber.depth_m;

/** Deposit that a shovel can take out, m3. */
export const diggable_m3 = (chamber: Chamber): number => floorRise_m(chamber) * chamber.area_m2;

/** K and n of the fluid in a chamber, into run.work.rheology. */
export function chamberRheologyInto(run: Run, chamber: Chamber): void {
  const { chamberReading, rheology } = run.work;
  readChamber(chamber, chamberReading);
  rheologyOf(rheology, chamberReading, run.kit.temperature_C);
}

export function chamberDensity_kgm3(run: Run, chamber: Chamber): number {
  readChamber(chamber, run.work.chamberReading);
  return run.work.chamberReading.density_kgm3;
}
