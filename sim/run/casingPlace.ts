// Where the steel of the casing stands in the hole.

import type { CompletionState } from '../completion/completion';
import type { StemPlace } from '../hole/hole';
import type { RunState } from './state';

export const casingInHole = ({ completion }: RunState): boolean => completion.casing.shoe_m > 0;

/** The casing as steel in the hole: its lower end, and how much room it takes, fuller or emptier. */
export function casingPlaceInto(place: StemPlace, { casing }: CompletionState): StemPlace {
  place.bit_m = casing.shoe_m;
  place.rodOutside_m = casing.steel_m;
  return place;
}
