// What the finished well is worth: water, its dangers, the people it serves.
import type { WellPumpName } from '../materials/wellPumps';
import type { SaltClass } from './drinking';
import type { TravelRisk } from './latrine';
import type { TestFit } from './testFit';

/** A lift as it would do on this well in the driest month. */
export interface LiftVerdict {
  readonly lift: WellPumpName;
  /** It fits the bore and draws from the lowest level at a useful rate. */
  readonly reaches: boolean;
  readonly flow_Lmin: number;
}

/** What bounds the yield: the ground, the reach of the lift, choked slots and ring, or no water over the screen. */
export type YieldLimit = 'ground' | 'lift' | 'screen' | 'dry';

export interface Verdict {
  readonly yield: {
    /** At the present level, and in the driest month. */
    readonly now_Lmin: number;
    readonly dry_Lmin: number;
    /** Of the same screen in the driest month, the ring undamaged; and the share of it that is there. */
    readonly whole_Lmin: number;
    readonly share_frac: number;
    readonly limitedBy: YieldLimit;
  };
  readonly static_m: number;
  readonly dryStatic_m: number;
  /** At the dry yield. */
  readonly drawdown_m: number;
  readonly lifts: readonly LiftVerdict[];
  /** What the head works carry, and whether it draws water in the driest month; null and false without. */
  readonly fitted: WellPumpName | null;
  readonly fittedWorks: boolean;
  readonly sand_mgL: number;
  readonly turbidity_NTU: number;
  /** Days that dirty water is under way, at most LONGEST_d: along the casing, through the ground above the screen, from the nearest latrine. */
  readonly leak: {
    readonly annulus_d: number;
    readonly ground_d: number;
    readonly latrine_d: number;
    readonly latrine_m: number;
    readonly latrineRisk: TravelRisk;
    /** Distance that the ground here asks for, by the time that is thought safe. */
    readonly safe_m: number;
    /** The seal as it lies; 0 and 0 without one. */
    readonly sealFrom_m: number;
    readonly sealTo_m: number;
    readonly sealedLength_m: number;
    /** Narrowest gap between casing and wall along the seal. */
    readonly minGap_mm: number;
  };
  readonly casing: {
    /** Pressure at which it folds over the most it meets: bailed dry, or grouted while empty. */
    readonly collapse_ratio: number;
    readonly section_frac: number;
    readonly snapped: boolean;
    readonly depth_m: number;
  };
  readonly screen: {
    readonly from_m: number;
    readonly to_m: number;
    readonly openShare_frac: number;
    readonly inAquifer_frac: number;
    readonly belowLowest_frac: number;
    /** At what is drawn in daily use. */
    readonly entrance_ms: number;
  };
  readonly water: {
    readonly salt_gL: number;
    readonly class: SaltClass;
    readonly meter_uScm: number;
    readonly laboratoryNeeded: true;
  };
  readonly disinfection: {
    readonly done: boolean;
    readonly ct_mgminL: number;
    readonly enough: boolean;
    /** Free chlorine still in the water. */
    readonly left_mgL: number;
  };
  readonly headWorks: {
    readonly apron_m: number;
    readonly drain_m: number;
    readonly cap: boolean;
    readonly stickUp_m: number;
    readonly aboveFlood: boolean;
  };
  readonly people: { readonly served: number; readonly asked: number };
  /** What the test says of the ground; null without one. */
  readonly test: TestFit | null;
  /** How far the use of this well draws the nearest neighbour's down by the end of the dry season; 0 without one. */
  readonly neighbourFall_m: number;
  readonly hours_h: number;
  readonly cost_marks: number;
}

/** Longest time that is told, days: a hundred years. */
export const LONGEST_d = 36500;
