// What comes out of the mouth of the hole in one tick.
import type { Parcel } from './parcel';
import { createParcel } from './parcel';

/** The returns of one tick; moment_m4 / solids_m3 is the mean depth that the grains of a class were cut at. */
export type MouthFlux = Parcel;

export const createMouth = (): MouthFlux => createParcel();
