// What a run starts from: the ground, the kit, the stocks on hand. Plain data; a lesson makes it, a run file carries it.

import type { Ground } from '../ground/ground';
import type { ClothName } from '../materials/cloths';
import type { DrillingPumpName } from '../materials/drillingPumps';
import type { Kit } from '../materials/kit';
import type { PackName } from '../materials/packs';
import type { CasingName } from '../materials/pipes';
import type { SealName } from '../materials/seals';
import type { WellPumpName } from '../materials/wellPumps';
import type { EventName } from './names';
import type { ScheduledFault } from './faultState';

export interface Opening {
  /** Rods already screwed on and hung over the mouth; at least 1. */
  readonly rods: number;
  /** Rods there are in all, those in the stem included. */
  readonly rodsInAll: number;
  /** Depth of the starter hole dug by hand, m: the bit hangs just above its bottom. */
  readonly starter_m: number;
  /** Fluid in the pit at the start, litres. */
  readonly pit_L: number;
  readonly primed: boolean;
  /** Water on hand beside the pit, litres. */
  readonly water_L: number;
  readonly powder_kg: number;
  /** Other additives on hand; none where left out. Clay is that of the site, dug and reckoned dry. */
  readonly bentonite_kg?: number;
  readonly clay_kg?: number;
  readonly chlorine_kg?: number;
  readonly petrol_L: number;
  /** The crew digs the pit itself (setOut), and has none before; else the pit of the kit is there. */
  readonly setOut?: boolean;
  /** Fluid seeps through floor and walls of the pit; else it is lined. */
  readonly unlinedPit?: boolean;
  /** Share of its head that an old pump has lost already. */
  readonly pumpWorn_frac?: number;
  /** Deepest hole the scenario has room for, m; sets the size of the grid. */
  readonly maxDepth_m: number;
}

/** A shower between two job seconds. */
export interface Shower {
  readonly from_s: number;
  readonly to_s: number;
  readonly rain_mmh: number;
}

export interface Weather {
  /** Evaporation from open water, mm a day. */
  readonly evaporation_mmDay: number;
  readonly showers: readonly Shower[];
}

/** Work goes on from start_h in the morning; after light_h hours it is dark until the next morning. */
export interface WorkingDay {
  readonly start_h: number;
  readonly light_h: number;
  /** Hour of the day at which the run begins, 0 to 24; left out: in the morning. */
  readonly from_h?: number;
}

/** What there is to make a well of; everything is bought as it is used. */
export interface WellKit {
  /** What is offered, by id; the plan names one of each. */
  readonly casings: readonly CasingName[];
  readonly cloths: readonly ClothName[];
  readonly packs: readonly PackName[];
  readonly seals: readonly SealName[];
  readonly lifts: readonly WellPumpName[];
  /** Bits and drilling pumps to choose from when setting out, by width in millimetres and by id. */
  readonly bits_mm: readonly number[];
  readonly pumps: readonly DrillingPumpName[];
  /** People who will drink from the well. */
  readonly people: number;
}

export interface Scenario {
  readonly id: string;
  readonly version: number;
  readonly seed: number;
  /** Another course of chance on the same ground; left out: that of the seed. For judging a ground by several runs on it. */
  readonly noise?: number;
  /** In practice a learner may go back; in a pass not. */
  readonly practice: boolean;
  readonly ground: Ground;
  /** Grounds of the holes that can be begun one after the other; the first is `ground`. Left out: there is no other. */
  readonly grounds?: readonly Ground[];
  /** Left out: dry and still. */
  readonly weather?: Weather;
  /** Left out: always light. */
  readonly day?: WorkingDay;
  readonly kit: Kit;
  readonly opening: Opening;
  /** The job goes on from the hole to the well; left out: it ends when drilling is stopped. */
  readonly well?: WellKit;
  /** With a well kit on hand the job ends all the same when drilling is stopped. */
  readonly endsAtStop?: true;
  /** Another crew works first, until it is relieved. */
  readonly relieves?: true;
  /** The rest may be left to another crew once this has happened; left out: never. */
  readonly leavesFrom?: EventName;
  /** What goes wrong on the way, and when; left out: nothing. */
  readonly faults?: readonly ScheduledFault[];
  /** An instructor may let things go wrong by hand, outside practice too. */
  readonly live?: boolean;
}
