// Counting what crosses the boundary of hole, stem and pit, apart from the stores, so that a loss inside shows.

import { SOAKED, SOAKING, SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';
import type { Parcel } from '../hole/parcel';
import type { Boundary } from './state';

export function createBoundary(): Boundary {
  return {
    waterIn_m3: 0,
    waterOut_m3: 0,
    solidsIn_m3: new Float64Array(CLASS_COUNT),
    solidsOut_m3: new Float64Array(CLASS_COUNT),
    polymerIn_kg: 0,
    polymerOut_kg: 0,
    polymerRotted_kg: 0,
    waterStart_m3: 0,
    solidsStart_m3: new Float64Array(CLASS_COUNT),
    polymerStart_kg: 0,
    dissolvedIn_kg: new Float64Array(SUBSTANCE_COUNT),
    dissolvedOut_kg: new Float64Array(SUBSTANCE_COUNT),
    dissolvedStart_kg: new Float64Array(SUBSTANCE_COUNT),
  };
}

export function countIn(boundary: Boundary, parcel: Parcel): void {
  boundary.waterIn_m3 += parcel.water_m3;
  boundary.polymerIn_kg += parcel.dissolved_kg[SOAKED] + parcel.dissolved_kg[SOAKING];
  for (let s = 0; s < SUBSTANCE_COUNT; s++) boundary.dissolvedIn_kg[s] += parcel.dissolved_kg[s];
  for (let k = 0; k < CLASS_COUNT; k++) boundary.solidsIn_m3[k] += parcel.solids_m3[k];
}

export function countOut(boundary: Boundary, parcel: Parcel): void {
  boundary.waterOut_m3 += parcel.water_m3;
  boundary.polymerOut_kg += parcel.dissolved_kg[SOAKED] + parcel.dissolved_kg[SOAKING];
  for (let s = 0; s < SUBSTANCE_COUNT; s++) boundary.dissolvedOut_kg[s] += parcel.dissolved_kg[s];
  for (let k = 0; k < CLASS_COUNT; k++) boundary.solidsOut_m3[k] += parcel.solids_m3[k];
}
