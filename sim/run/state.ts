// The whole state of a run: plain numbers, words and typed arrays, nothing else. Whatever can change what happens next is in here and enters the hash.

import type { CompletionState } from '../completion/completion';
import type { HoleState } from '../hole/hole';
import type { StemFill } from '../hole/stemFill';
import type { DrillingPumpName } from '../materials/drillingPumps';
import type { PitState } from '../pit/pit';
import type { MachineValue } from '../machine/machine';
import type { WellState } from '../well/wellState';
import type { RecordField } from './actions';
import type { FaultState } from './faultState';
import type { ActionName, ColourWord, EventName, FeelWord, KindWord, RefusalKey } from './names';

export interface StemState {
  rods: number;
  /** Depth of the bit below ground level, m. */
  bit_m: number;
  turning: boolean;
  /** Share of the stem's weight that the rope lets on the bit, 0 to 1. */
  feed_frac: number;
  /** A lift (negative) or lowering (positive) under way: metres left and speed. */
  motion_m: number;
  motion_ms: number;
  /** Share of the bit that is packed with clay, 0 to 1. */
  balling_frac: number;
  torque_Nm: number;
  pull_N: number;
  /** How fast the bit went down in the last second, m/s. */
  sinking_ms: number;
  /** Index of the layer that the bit last stood in. */
  layerIndex: number;
  /** Edges already told, so that each is told once. */
  rodDownTold: boolean;
  buriedTold: boolean;
  balledTold: boolean;
  stalled: boolean;
  stalledTold: boolean;
  /** Worked free and on its way up out of what held it. */
  freeing: boolean;
  /** Temperature of the drive, C; tripped: it must cool before it turns again. */
  drive_C: number;
  driveTripped: boolean;
  /** Seconds in a row that the ground has refused the bit, and the depth at which that was last told, m; -1: never. */
  refused_s: number;
  refusedAt_m: number;
}

export interface PumpState {
  throttle_frac: number;
  primed: boolean;
  flow_m3s: number;
  /** Job seconds with the engine running. */
  running_s: number;
  flowTold: boolean;
  /** The suction side cannot feed the pump, or air comes with the fluid: it gulps. */
  gulping: boolean;
  gulpingTold: boolean;
  /** Share of its head that the impeller has lost. */
  worn_frac: number;
  wornTold: boolean;
  /** Seconds that it has turned without water, and whether its seal has burnt. */
  dry_s: number;
  sealBurnt: boolean;
}

export interface Task {
  action: ActionName;
  hands: number;
  endTick: number;
  /** Numbers that the end of the task needs, by name. */
  data: Record<string, number>;
  word: string;
}

export interface Wait {
  until: 'time' | 'soaked' | 'clear' | 'taskDone' | 'morning' | 'set' | 'recovered';
  endTick: number;
}

export interface Sample {
  sample: number;
  tick: number;
  label_m: number;
  /** Solid volume caught, by size class, m3, and the same times the depth it came from, m4. */
  solids_m3: number[];
  moment_m4: number[];
  colour: ColourWord;
  named: { main: KindWord; secondary: KindWord | null; colour: ColourWord | null; feel: string | null } | null;
}

/** What had been done and used when a crew was relieved. */
export interface Relief {
  tick: number;
  depth_m: number;
  waterUsed_L: number;
  powderUsed_kg: number;
}

export interface OwnLayer {
  from_m: number;
  to_m: number;
  kind: KindWord;
}

/** Everything that crossed the boundary of hole, stem and pit since the start, counted where it crosses. */
export interface Boundary {
  waterIn_m3: number;
  waterOut_m3: number;
  solidsIn_m3: Float64Array;
  solidsOut_m3: Float64Array;
  /** Polymer whatever its state: soaked, soaking and lumps. */
  polymerIn_kg: number;
  polymerOut_kg: number;
  /** Of what went out, the part that rotted. */
  polymerRotted_kg: number;
  /** What the stores held at the start. */
  waterStart_m3: number;
  solidsStart_m3: Float64Array;
  polymerStart_kg: number;
  /** The same by substance, kg. What soaks or rots passes from one to the next without a count here. */
  dissolvedIn_kg: Float64Array;
  dissolvedOut_kg: Float64Array;
  dissolvedStart_kg: Float64Array;
}

export interface Stocks {
  water_L: number;
  powder_kg: number;
  bentonite_kg: number;
  /** Clay dug at the site and crumbled, reckoned dry. */
  clay_kg: number;
  /** Chlorine powder, not the chlorine in it. */
  chlorine_kg: number;
  petrol_L: number;
  /** Used so far, for the cost. */
  waterUsed_L: number;
  powderUsed_kg: number;
  bentoniteUsed_kg: number;
  clayUsed_kg: number;
  chlorineUsed_kg: number;
  /** What casing, pack and seals have cost so far: bought as they are used. */
  wellSpent_marks: number;
}

/** Ends of stocks already told. */
export interface OutTold {
  water: boolean;
  powder: boolean;
  petrol: boolean;
}

/** A hole given up. */
export interface OldHole {
  tick: number;
  depth_m: number;
  rodsLost: number;
  /** Casing that stays in it, m. */
  casingLost_m: number;
  /** What was thrown in before it was left, m3. */
  backfilled_m3: number;
  ownLog: OwnLayer[];
}

/** What has been dug on the site. */
export interface SiteState {
  pitDug: boolean;
  /** Length of the channel from the mouth to the pit, m. */
  channel_m: number;
  /** Spot of the plan that the hole stands on; '': none chosen yet. */
  spot: string;
}

/** What was chosen when setting out. */
export interface Gear {
  bit_m: number;
  /** Drilling pump; '': that of the kit. */
  pump: DrillingPumpName | '';
}

/** Slow signs of the last seconds, smoothed as an eye or an ear would. */
export interface Signs {
  /** How far below ground the fluid stands in the hole, m. */
  level_m: number;
  /** Returns as a share of the pump's flow, smoothed. */
  returns_frac: number;
  /** Sand and coarser at the mouth, volume fraction, smoothed. */
  grit_frac: number;
  /** Silt and clay at the mouth, volume fraction, smoothed. */
  fines_frac: number;
  /** Volume fraction by class at the mouth, smoothed. */
  mouth_frac: Float64Array;
  /** Salt in the returns, smoothed. */
  salt_gL: number;
  colour: ColourWord;
  /** Ticks in a row that the returns have run clean; starts to count after they were loaded. */
  cleanTicks: number;
  wasLoaded: boolean;
  pitLowTold: boolean;
  pitFullTold: boolean;
}

/** What each cause of failure has taken off the wall, in the order of CAUSES, and when it may be told again. */
export interface WallTally {
  /** Fluid that has gone into the ground, and ground water that has come in, so far, m3. */
  lost_m3: number;
  came_m3: number;
  /** Soaked polymer in what was lost. */
  lostPolymer_kg: number;
  taken_m3: Float64Array;
  toldAgain_tick: Float64Array;
}

export interface RunState {
  tick: number;
  machine: MachineValue;
  stem: StemState;
  pump: PumpState;
  fill: StemFill;
  /** Number of the present hole, from 1; the ones given up before it. */
  holeNumber: number;
  oldHoles: OldHole[];
  /** Rods there still are, those in the stem included. */
  rodsInAll: number;
  hole: HoleState;
  site: SiteState;
  gear: Gear;
  wall: WallTally;
  pit: PitState;
  /** The finished well; null until the casing is set. */
  well: WellState | null;
  tasks: Task[];
  wait: Wait | null;
  stocks: Stocks;
  outTold: OutTold;
  boundary: Boundary;
  signs: Signs;
  faults: FaultState;
  feel: { word: FeelWord; salty: boolean; tick: number } | null;
  funnel: { seconds_s: number; tick: number } | null;
  stick: { level_m: number; tick: number } | null;
  /** Plan, casing and what stands round it; as at the start where the job ends with the hole. */
  completion: CompletionState;
  /** What the hand has caught so far of a sample under way. */
  caught: { solids_m3: Float64Array; moment_m4: Float64Array };
  samples: Sample[];
  notes: { tick: number; text: string }[];
  ownLog: OwnLayer[];
  /** What the crew has written into the driller's record. Left out until the first field is written. */
  recordFields?: Partial<Record<RecordField, string>>;
  cautions: string[];
  hints: { hint: string; level: number; tick: number }[];
  wentBack: number;
  /** How things stood when the crew before was relieved. Left out until then, and where there was none. */
  relief?: Relief;
  /** The rest may be left to another crew, or was. Left out before that, and where it is not offered. */
  leaving?: 'offered' | 'left';
  lastRefusal: { action: ActionName; reason: RefusalKey; tick: number } | null;
  /** What happened in the last second and since, oldest first. */
  recent: { tick: number; name: EventName }[];
  /** Slowly wandering noise of the senses, one value per sense, of mean 0 and variance 1. */
  noise: Float64Array;
}
