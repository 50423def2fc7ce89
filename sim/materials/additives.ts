// What a crew can put into the fluid, and what tipping it in at one go costs.
import { BENTONITE_LUMPS_WHEN_DUMPED_frac } from './bentonite';
import { CLAY_LUMPS_WHEN_DUMPED_frac } from './nativeClay';
import { CLUMPS_WHEN_DUMPED_frac } from './polymer';

export const ADDITIVE_NAMES = ['polymer', 'bentonite', 'nativeClay', 'chlorine'] as const;
export type AdditiveName = (typeof ADDITIVE_NAMES)[number];

const lumps: Readonly<Record<AdditiveName, number>> = {
  polymer: CLUMPS_WHEN_DUMPED_frac,
  bentonite: BENTONITE_LUMPS_WHEN_DUMPED_frac,
  nativeClay: CLAY_LUMPS_WHEN_DUMPED_frac,
  chlorine: 0,
};

/** Share that clots into lumps when it is dumped; sprinkled, nothing does. Chlorine dissolves either way. Worked value: bentonite -> .5. */
export const lumpsWhenDumped_frac = (additive: AdditiveName): number => lumps[additive];
