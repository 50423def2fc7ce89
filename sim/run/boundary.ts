// Counting what crosses the boundary of hole, stem and pit, apart from the stores, so that a loss inside shows.

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
  };
}

export function countIn(boundary: Boundary, parcel: Parcel): void {
  boundary.waterIn_m3 += parcel.water_m3;
  boundary.polymerIn_kg += parcel.soaked_kg + parcel.soaking_kg;
  for (let k = 0; k < CLASS_COUNT; k++) boundary.solidsIn_m3[k] += parcel.solids_m3[k];
}

export function countOut(boundary: Boundary, parcel: Parcel): void {
  boundary.waterOut_m3 += parcel.water_m3;
  boundary.polymerOut_kg += parcel.soaked_kg + parcel.soaking_kg;
  for (let k = 0; k < CLASS_COUNT; k++) boundary.solidsOut_m3[k] += parcel.solids_m3[k];
}
