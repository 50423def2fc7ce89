// The plan of a well as the crew writes it down: plain words and numbers, the payload of an act.
import type { ClothName } from '../materials/cloths';
import type { PackName } from '../materials/packs';
import type { CasingName } from '../materials/pipes';
import type { SealName } from '../materials/seals';

/** Depths from ground level, positive down. */
export interface WellPlan {
  readonly casing: CasingName;
  readonly screenFrom_m: number;
  readonly screenTo_m: number;
  /** Blank pipe under the screen; 0: none. */
  readonly sump_m: number;
  readonly slotWidth_mm: number;
  /** Slots side by side round the pipe, at one height. */
  readonly slotRows: number;
  /** Length of one slot along the outside round the pipe. */
  readonly slotArc_mm: number;
  /** From one slot to the next along the pipe, middle to middle. */
  readonly slotSpacing_mm: number;
  readonly cloth: ClothName | 'none';
  /** A cap closes the lower end. */
  readonly cap: boolean;
  readonly centralisers: number;
  readonly pack: PackName | 'none';
  /** How high the pack shall stand. */
  readonly packTop_m: number;
  readonly seal: SealName | 'none';
  /** From the upper to the lower end. */
  readonly sealFrom_m: number;
  readonly sealTo_m: number;
  /** Casing above the ground. */
  readonly stickUp_m: number;
}

/** Depth of the lower end of the casing, m. Worked value: screen to 18, sump .5 -> 18.5. */
export const shoe_m = (plan: WellPlan): number => plan.screenTo_m + plan.sump_m;

/** Length of pipe in all, m, sticking up included. Worked value: shoe 18.5, .5 above -> 19. */
export const casingLength_m = (plan: WellPlan): number => shoe_m(plan) + plan.stickUp_m;
