// Digging the deposit out with a shovel.
import type { Parcel } from '../hole/parcel';
import type { Chamber } from './pit';

/** Takes up to spoil_m3 of deposit with its pore water out of the chamber into out, and stirs fines up. Returns the volume, m3. */
export function digOut(_chamber: Chamber, _spoil_m3: number, _out: Parcel): number {
  throw new Error('not filled in yet');
}
