// What a crew knows of the well under way: its plan, the casing in its hands, what it has poured and sounded, the water it has brought out.

import { piecesFor } from '../completion/amounts';
import type { CasingLook } from '../completion/casing';
import type { FillName } from '../completion/fills';
import type { WellPlan } from '../completion/plan';
import { casingLength_m, shoe_m } from '../completion/plan';
import type { JobMode } from '../machine/machine';
import type { SealName } from '../materials/seals';
import type { Run } from './run';
import { wellWaterOf, type WellWater } from './wellWater';

export interface CasingSenses {
  /** Pieces in the plan and joined so far, and their length. */
  readonly pieces: number;
  readonly joined: number;
  readonly length_m: number;
  /** Depth of the lower end, by the length that has gone down; and as planned. */
  readonly shoe_m: number;
  readonly planned_m: number;
  readonly look: CasingLook;
  /** It went light in the hands. */
  readonly snapped: boolean;
}

export interface WellSenses extends WellWater {
  readonly job: JobMode;
  readonly plan: WellPlan | null;
  readonly casing: CasingSenses;
  readonly poured: readonly { readonly fill: FillName; readonly volume_L: number }[];
  readonly sounded: { readonly top_m: number; readonly time_s: number } | null;
  readonly seals: readonly {
    readonly seal: SealName;
    readonly volume_L: number;
    readonly since_s: number;
    readonly set: boolean;
  }[];
}

const CENTIMETRE_m = 0.01;
const toCentimetre = (depth_m: number): number => Math.round(depth_m / CENTIMETRE_m) * CENTIMETRE_m;

export function wellSensesOf(run: Run): WellSenses | null {
  const { state, scenario } = run;
  if (!scenario.well) return null;
  const { plan, casing, poured, seals, sounded } = state.completion;
  const { water, dip, test, smellsOfChlorine, headWorks } = wellWaterOf(run);
  return {
    job: state.machine.job,
    plan,
    casing: {
      pieces: plan ? piecesFor(casingLength_m(plan)) : 0,
      joined: casing.joined,
      length_m: toCentimetre(casing.length_m),
      shoe_m: toCentimetre(casing.shoe_m),
      planned_m: plan ? toCentimetre(shoe_m(plan)) : 0,
      look: casing.look,
      snapped: casing.snapped,
    },
    poured: poured.map(({ fill, volume_m3 }) => ({ fill, volume_L: volume_m3 * 1000 })),
    sounded: sounded && { top_m: sounded.top_m, time_s: sounded.tick },
    seals: seals.map(({ seal, volume_m3, placed_tick, ready_tick }) => ({
      seal,
      volume_L: volume_m3 * 1000,
      since_s: state.tick - placed_tick,
      set: state.tick >= ready_tick,
    })),
    water,
    dip,
    test,
    smellsOfChlorine,
    headWorks,
  };
}
