// How each crew plans its well, from its own book and what the neighbours say. Rules of thumb of the crews, ASSUMED.

import type { Senses, WellPlan } from '$sim';
import { coarseBelow, finestGrain_mm, ownLayers, type Stretch } from './ownLayers';

/** The stretch stands so far clear of its ends and of the water, m. */
const CLEAR_m = 0.3;
const UNDER_WATER_m = 0.5;
/** The shoe stands so far above the bottom, where some fill lies, m. */
const FILL_m = 0.3;
const SUMP_m = 0.5;
const toCentimetre = (depth_m: number): number => Math.round(depth_m * 100) / 100;

/** Packs by their sieves, with the middle grain, and the slot that holds each, mm. */
const PACKS = [
  { pack: 'pack1', middle_mm: 1.4, slot_mm: 1, spacing_mm: 20 },
  { pack: 'pack07', middle_mm: 0.92, slot_mm: 0.7, spacing_mm: 15 },
  { pack: 'pack04', middle_mm: 0.57, slot_mm: 0.4, spacing_mm: 10 },
] as const;
/** A pack holds sand whose middle grain is no smaller than its own by this ratio. */
const HOLDS_ratio = 6;

/** Where a screen of a length stands best: in the longest coarse stretch under water, as low in it as the hole allows. */
function screenIn(stretch: Stretch | undefined, bottom_m: number, length_m: number): Stretch {
  const lowest_m = bottom_m - FILL_m - SUMP_m;
  if (!stretch) return { from_m: Math.max(0.5, lowest_m - length_m), to_m: lowest_m };
  const to_m = Math.min(lowest_m, stretch.to_m - CLEAR_m);
  const from_m = Math.max(to_m - length_m, Math.min(stretch.from_m + CLEAR_m, to_m - 1));
  return { from_m, to_m };
}

const SLOTS = { slotRows: 2, slotArc_mm: 40 } as const;

/** Careful: three metres in coarse sand under the lowest water, pack for the finest grain seen there, cement over backfill. */
export function carefulPlan(senses: Senses, lowest_m: number): WellPlan {
  const { bottom_m } = senses.stem;
  const [stretch] = coarseBelow(ownLayers(senses), lowest_m + UNDER_WATER_m);
  const { from_m, to_m } = screenIn(stretch, bottom_m, 3);
  const grain_mm = finestGrain_mm(senses, from_m, to_m);
  const { pack, slot_mm, spacing_mm } =
    PACKS.find(({ middle_mm }) => middle_mm <= HOLDS_ratio * grain_mm) ?? PACKS[PACKS.length - 1]!;
  const packTop_m = Math.max(1, from_m - 1);
  return {
    casing: 'pvc63',
    screenFrom_m: toCentimetre(from_m),
    screenTo_m: toCentimetre(to_m),
    sump_m: SUMP_m,
    slotWidth_mm: slot_mm,
    ...SLOTS,
    slotSpacing_mm: spacing_mm,
    cloth: 'none',
    cap: true,
    centralisers: Math.ceil(to_m / 4) + 1,
    pack,
    packTop_m: toCentimetre(packTop_m),
    seal: 'cement',
    sealFrom_m: 0,
    sealTo_m: toCentimetre(Math.min(4, packTop_m - 0.5)),
    stickUp_m: 0.5,
  };
}

/** Sleeves, with the middle grain from which each holds the sand, mm. */
const SLEEVES = [
  { cloth: 'coarse', from_mm: 0.6 },
  { cloth: 'medium', from_mm: 0.3 },
  { cloth: 'fine', from_mm: 0 },
] as const;

/** Other: a cloth sleeve for the finest grain seen, any clean gravel round it, bentonite from the ground down. */
export function otherPlan(senses: Senses, lowest_m: number): WellPlan {
  const { bottom_m } = senses.stem;
  const [stretch] = coarseBelow(ownLayers(senses), lowest_m + UNDER_WATER_m);
  const { from_m, to_m } = screenIn(stretch, bottom_m, 3);
  const grain_mm = finestGrain_mm(senses, from_m, to_m);
  const { cloth } = SLEEVES.find(({ from_mm }) => grain_mm >= from_mm) ?? SLEEVES[SLEEVES.length - 1]!;
  const packTop_m = Math.max(1, from_m - 0.8);
  return {
    casing: 'pvc63',
    screenFrom_m: toCentimetre(from_m),
    screenTo_m: toCentimetre(to_m),
    sump_m: SUMP_m,
    slotWidth_mm: 1,
    ...SLOTS,
    slotSpacing_mm: 15,
    cloth,
    cap: true,
    centralisers: Math.ceil(to_m / 3) + 1,
    pack: 'pack1',
    packTop_m: toCentimetre(packTop_m),
    seal: 'bentoniteGranules',
    sealFrom_m: 0,
    sealTo_m: toCentimetre(Math.min(5, packTop_m - 0.5)),
    stickUp_m: 0.4,
  };
}

/** Steady: two metres of screen low in the coarse sand, the usual pack and slot, three metres of bentonite. */
export function steadyPlan(senses: Senses, lowest_m: number): WellPlan {
  const { bottom_m } = senses.stem;
  const [stretch] = coarseBelow(ownLayers(senses), lowest_m);
  const { from_m, to_m } = screenIn(stretch, bottom_m, 2);
  const packTop_m = Math.max(1, from_m - 0.6);
  return {
    casing: 'pvc63',
    screenFrom_m: toCentimetre(from_m),
    screenTo_m: toCentimetre(to_m),
    sump_m: SUMP_m,
    slotWidth_mm: 1,
    ...SLOTS,
    slotSpacing_mm: 20,
    cloth: 'none',
    cap: true,
    centralisers: 2,
    pack: 'pack1',
    packTop_m: toCentimetre(packTop_m),
    seal: 'bentoniteGranules',
    sealFrom_m: 0.3,
    sealTo_m: toCentimetre(Math.min(3.3, packTop_m - 0.3)),
    stickUp_m: 0.3,
  };
}

/** Green: the screen at the bottom of the hole, wide slots, any gravel, no seal. */
export function greenPlan(senses: Senses): WellPlan {
  const to_m = senses.stem.bottom_m - 0.1;
  const from_m = Math.max(0.5, to_m - 3);
  return {
    casing: 'pvc50',
    screenFrom_m: toCentimetre(from_m),
    screenTo_m: toCentimetre(to_m),
    sump_m: 0,
    slotWidth_mm: 2,
    slotRows: 2,
    slotArc_mm: 40,
    slotSpacing_mm: 40,
    cloth: 'none',
    cap: false,
    centralisers: 0,
    pack: 'pack2',
    packTop_m: toCentimetre(from_m),
    seal: 'none',
    sealFrom_m: 0,
    sealTo_m: 0,
    stickUp_m: 0.2,
  };
}
