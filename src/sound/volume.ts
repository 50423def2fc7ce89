// How loud each of the volumes is, as a share of all that there is.
import type { Settings } from '../app/records';

/** Each is about twice as loud to the ear as the one before: ten decibels, a factor of three. From memory. */
export const VOLUME_frac: Readonly<Record<Settings['volume'], number>> = { quiet: 0.1, middle: 0.32, loud: 1 };
