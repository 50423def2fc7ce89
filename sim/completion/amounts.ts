// How much of everything a plan takes, and what that costs and how long the hands need.
import { DURATION_s } from '../materials/durations';
import { CASINGS, PVC } from '../materials/pipes';
import { CASING_PRICE_marks, PRICE_marks, SEAL_PRICE_marks } from '../materials/prices';
import type { PackName } from '../materials/packs';
import { BENTONITE_WATER_L, CEMENT, SEALS, type SealName } from '../materials/seals';
import { cementIn_kg } from './cement';
import { casingLength_m, shoe_m, type WellPlan } from './plan';
import { annulusVolume_m3, packMass_kg, withAllowance_m3, type HoleShape } from './quantities';

/** Litres in a cubic metre. */
const L_PER_M3 = 1000;

export interface Amounts {
  /** Pieces of casing bought whole, and joints between them. */
  readonly pieces: number;
  readonly joints: number;
  readonly slots: number;
  readonly cloth_m: number;
  /** Neat volumes in the ring, from the bottom of the hole up; pack with the allowance to buy. */
  readonly pack_m3: number;
  readonly packBought_m3: number;
  readonly pack_kg: number;
  readonly seal_m3: number;
  readonly seal_kg: number;
  readonly sealWater_L: number;
  /** Ring above the pack that no seal takes. */
  readonly backfill_m3: number;
}

/** Pieces of 3 m that a length takes. Worked value: 19 m -> 7. */
export const piecesFor = (length_m: number): number => Math.ceil(length_m / PVC.piece_m - 1e-9);

/** Stuff for a volume of finished seal, kg; dry cement for a slurry. Worked value: 10 L of granules -> 10; 38.96 L of slurry -> 50. */
export function sealMass_kg(seal: SealName, volume_m3: number): number {
  const { entersPack, placed_kgm3 } = SEALS[seal];
  return entersPack ? cementIn_kg(volume_m3, CEMENT.water_ratio) : placed_kgm3 * volume_m3;
}

/** Water for it, L: mixing water of a slurry, water that bentonite drinks, none for the rest. Worked value: 50 kg of cement -> 23.1. */
export function sealWater_L(seal: SealName, mass_kg: number): number {
  const { entersPack, saltLimit_gL } = SEALS[seal];
  if (entersPack) return CEMENT.water_ratio * mass_kg;
  return saltLimit_gL === null ? 0 : BENTONITE_WATER_L * mass_kg;
}

/** Amounts of a plan in a hole of a depth and shape. */
export function amountsOf(plan: WellPlan, hole: HoleShape, depth_m: number): Amounts {
  const { outside_m } = CASINGS[plan.casing];
  const room_m3 = (from_m: number, to_m: number): number =>
    annulusVolume_m3(hole, outside_m, shoe_m(plan), from_m, Math.max(from_m, to_m));
  const pieces = piecesFor(casingLength_m(plan));
  const screen_m = Math.max(0, plan.screenTo_m - plan.screenFrom_m);
  const heights = plan.slotRows > 0 ? Math.floor((screen_m * 1000) / plan.slotSpacing_mm) : 0;
  const packTop_m = plan.pack === 'none' ? depth_m : Math.min(depth_m, plan.packTop_m);
  const pack_m3 = room_m3(packTop_m, depth_m);
  const seal_m3 = plan.seal === 'none' ? 0 : room_m3(plan.sealFrom_m, Math.min(plan.sealTo_m, packTop_m));
  const seal_kg = plan.seal === 'none' ? 0 : sealMass_kg(plan.seal, seal_m3);
  return {
    pieces,
    joints: pieces - 1,
    slots: plan.slotRows * heights,
    cloth_m: plan.cloth === 'none' ? 0 : screen_m,
    pack_m3,
    packBought_m3: withAllowance_m3(pack_m3),
    pack_kg: plan.pack === 'none' ? 0 : packMass_kg(plan.pack, pack_m3),
    seal_m3,
    seal_kg,
    sealWater_L: plan.seal === 'none' ? 0 : sealWater_L(plan.seal, seal_kg),
    backfill_m3: Math.max(0, room_m3(0, packTop_m) - seal_m3),
  };
}

/** Price of casing, cloth, cap, centralisers and solvent, marks. Worked value: pvc63, 7 pieces, 4 m of cloth, cap, 3 centralisers -> 68.8. */
export function casingCost_marks(plan: WellPlan, { pieces, joints, cloth_m }: Amounts): number {
  const { clothPerM, cap, centraliser, joint } = PRICE_marks;
  const pipe = pieces * PVC.piece_m * CASING_PRICE_marks[plan.casing];
  return (
    pipe + cloth_m * clothPerM + (plan.cap ? cap : 0) + plan.centralisers * centraliser + Math.max(0, joints) * joint
  );
}

/** Price of pack, marks. Worked value: 100 L -> 5. */
export const packCost_marks = (volume_m3: number): number => volume_m3 * L_PER_M3 * PRICE_marks.packPerL;

/** Price of sealing stuff and its water, marks. Worked value: 50 kg of cement, 23.1 L -> 10.23. */
export const sealCost_marks = (seal: SealName, mass_kg: number): number =>
  mass_kg * SEAL_PRICE_marks[seal] + sealWater_L(seal, mass_kg) * PRICE_marks.waterPerL;

/** Hours of sawing slots and drawing the sleeve on: done at home, before the hole is there. Worked value: 999 slots, 4 m of sleeve -> 3.663. */
export const madeReady_h = ({ slots, cloth_m }: Amounts): number =>
  (slots * DURATION_s.sawSlot + cloth_m * DURATION_s.drawCloth_m) / 3600;

/** Hours that hands are busy at the hole: glueing, and pouring by hand. Worked value: 6 joints, 180 L -> .6. */
export function handsHours_h({ joints, pack_m3, seal_m3, backfill_m3 }: Amounts): number {
  const poured_L = (pack_m3 + seal_m3 + backfill_m3) * L_PER_M3;
  return (joints * DURATION_s.joinCasing + poured_L * DURATION_s.backfill_L) / 3600;
}

/** Hours of waiting: every joint until it has set, the seal until it has swollen or set. Worked value: pvc63, 6 joints, granules -> 1.5. */
export function waitHours_h(plan: WellPlan, joints: number): number {
  const seal_s = plan.seal === 'none' ? 0 : SEALS[plan.seal].ready_s;
  return (joints * CASINGS[plan.casing].jointSets_s + seal_s) / 3600;
}

/** Price of so much of a pack or a seal, marks. Worked value: 20 L of pack -> 1. */
export const fillCost_marks = (fill: PackName | SealName | 'ground', volume_m3: number): number =>
  fill in SEALS
    ? sealCost_marks(fill as SealName, sealMass_kg(fill as SealName, volume_m3))
    : packCost_marks(volume_m3);
