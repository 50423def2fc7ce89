// What a crew can see, hear and feel, and nothing else. Crews and the learner's panel read only this record; its noise comes from the state.

import { DRIVE_SMELLS_C, DRIVE_WARM_C } from '../drilling/drive';
import { CLASS_COUNT, FIRST_VISIBLE_CLASS } from '../materials/sizes';
import { handsFree, handsThere } from './hands';
import { costOf } from './cost';
import type { ActionName, ColourWord, EventName, FeelWord, RefusalKey } from './names';
import { HIDDEN_EVENTS } from './names';
import { lightLeft_s } from './daylight';
import { jobOver } from './jobOver';
import { groundOf } from './ground';
import {
  heapLook,
  hoseLook,
  mouthLook,
  pitLook,
  skyLook,
  type HeapLook,
  type HoseLook,
  type MouthLook,
  type PitLook,
  type SkyLook,
} from './looks';
import { blur } from './noise';
import type { Run } from './run';
import type { RunState } from './state';
import { roundTo } from './roundTo';
import { dragShareNow, onBottom } from './stem';
import { trayOf, type TraySample } from './traySenses';
import { wellSensesOf, type WellSenses } from './wellSenses';

export type Amount = 'none' | 'few' | 'some' | 'many';
export type StemSound = 'still' | 'quiet' | 'hiss' | 'grind' | 'knock' | 'sticky';
export type TorqueFeel = 'free' | 'light' | 'firm' | 'heavy' | 'stalled';
export type PullFeel = 'normal' | 'dragging' | 'heavy' | 'stuck';
export type DriveFeel = 'cool' | 'warm' | 'hot' | 'tripped';
export type PumpSound = 'off' | 'steady' | 'labouring' | 'racing' | 'gulping';

export interface GrainGlance {
  readonly classIndex: number;
  readonly amount: Amount;
}

export interface Senses {
  readonly time_s: number;
  readonly ended: boolean;
  readonly returns: {
    readonly running: boolean;
    readonly share_frac: number;
    readonly colour: ColourWord;
    /** Sand and coarser in the returns: 0 runs clean, 1 heavily loaded. */
    readonly cloudiness_frac: number;
    /** Silt and clay in the returns: 0 clear, 1 like soup. */
    readonly murk_frac: number;
    readonly grains: readonly GrainGlance[];
  };
  /** The fluid between the fingers; salty: it tastes of salt, or a pen reads more in the returns. */
  readonly feel: { readonly word: FeelWord; readonly salty: boolean; readonly time_s: number } | null;
  readonly funnel: { readonly seconds_s: number; readonly time_s: number } | null;
  readonly stick: { readonly level_m: number; readonly time_s: number } | null;
  readonly tray: readonly TraySample[];
  readonly stem: {
    readonly rods: number;
    readonly rodsLeft: number;
    readonly bit_m: number;
    readonly bottom_m: number;
    readonly left_m: number;
    readonly turning: boolean;
    readonly feed_frac: number;
    readonly sound: StemSound;
    readonly torque: TorqueFeel;
    readonly pull: PullFeel;
    readonly sinking_mmin: number;
    /** The drive under the hand: a hot one smells and is about to trip, or has. */
    readonly drive: DriveFeel;
  };
  readonly pump: {
    readonly throttle_frac: number;
    readonly primed: boolean;
    readonly sound: PumpSound;
    /** The engine has died and does not start. */
    readonly dead: boolean;
    readonly hose: HoseLook;
  };
  readonly sky: SkyLook;
  readonly mouth: { readonly look: MouthLook };
  readonly pit: {
    readonly look: PitLook;
    readonly heap: HeapLook;
    readonly strainer_m: number;
    /** A ditch round it leads the rain away. */
    readonly ditch: boolean;
  };
  readonly hands: {
    readonly total: number;
    readonly free: number;
    readonly tasks: readonly { readonly action: ActionName; readonly left_s: number }[];
  };
  readonly stock: {
    readonly water_L: number;
    readonly powder_kg: number;
    readonly bentonite_kg: number;
    readonly clay_kg: number;
    readonly chlorine_kg: number;
    readonly petrol_L: number;
    readonly cost_marks: number;
  };
  /** Seconds of daylight left, 0 in the dark; null where nobody minds the hour. */
  readonly light_s: number | null;
  /** Number of the present hole, from 1. */
  readonly hole: number;
  readonly waiting: { readonly until: string; readonly left_s: number } | null;
  readonly lastRefusal: { readonly action: ActionName; readonly reason: RefusalKey; readonly tick: number } | null;
  /** The well under way; null where the job ends with the hole. */
  readonly well: WellSenses | null;
  /** What a crew could notice in the last second. */
  readonly felt: readonly EventName[];
}

/** Volume fraction of sand at the mouth that looks heavily loaded, and of fines that looks like soup. ASSUMED: 2 % is a fifth of what stops the bit. */
const LOADED_frac = 0.02;
const SOUP_frac = 0.05;
/** Volume fractions at which a glance at the channel sees few, some and many grains of a class. ASSUMED. */
const GLANCE_frac = [1e-5, 4e-4, 3e-3];
/** A strainer this far shut makes the pump labour. ASSUMED. */
const LABOURING_frac = 0.5;

const between = (low: number, value: number, high: number): number => Math.min(high, Math.max(low, value));

function glances(state: RunState): GrainGlance[] {
  const eye = blur(state.noise, 'grains');
  const seen: GrainGlance[] = [];
  for (let k = FIRST_VISIBLE_CLASS; k < CLASS_COUNT; k++) {
    const c = state.signs.mouth_frac[k] * eye;
    const amount: Amount =
      c > GLANCE_frac[2] ? 'many' : c > GLANCE_frac[1] ? 'some' : c > GLANCE_frac[0] ? 'few' : 'none';
    seen.push({ classIndex: k, amount });
  }
  return seen;
}

/** Sound and feel follow from the grains and the strength of the soil at the bit, never from its name. Limits ASSUMED from trade use: sand hisses, gravel knocks, clay is silent and sticky. */
function stemSound(run: Run): StemSound {
  const { state } = run;
  if (!state.stem.turning) return 'still';
  if (!onBottom(state)) return 'quiet';
  if (state.faults.tool) return 'knock';
  const soil = groundOf(run).layers[state.stem.layerIndex];
  if (soil.d50_mm > 2) return 'knock';
  if (soil.d50_mm > 0.6) return 'grind';
  if (soil.d50_mm > 0.063) return 'hiss';
  return soil.su_kPa !== null ? 'sticky' : 'quiet';
}

function torqueFeel(run: Run): TorqueFeel {
  const { state, kit } = run;
  if (!state.stem.turning) return 'free';
  const share = (state.stem.torque_Nm / kit.stallTorque_Nm) * blur(state.noise, 'torque');
  if (share >= 1) return 'stalled';
  return share > 0.6 ? 'heavy' : share > 0.2 ? 'firm' : share > 0.05 ? 'light' : 'free';
}

function pullFeel(run: Run): PullFeel {
  const { state } = run;
  if (state.machine.stem === 'stuck') return 'stuck';
  // A crew knows what its stem weighs: only what comes on top of that tells it something.
  const share = dragShareNow(run) * blur(state.noise, 'pull');
  return share > 0.6 ? 'heavy' : share > 0.3 ? 'dragging' : 'normal';
}

function driveFeel({ stem }: RunState): DriveFeel {
  if (stem.driveTripped) return 'tripped';
  return stem.drive_C >= DRIVE_SMELLS_C ? 'hot' : stem.drive_C >= DRIVE_WARM_C ? 'warm' : 'cool';
}

function pumpSound(state: RunState): PumpSound {
  switch (state.machine.pump) {
    case 'stopped':
    case 'priming':
      return 'off';
    case 'starved':
      return state.pump.throttle_frac > 0 ? 'racing' : 'off';
    case 'blocked':
      return 'gulping';
    default:
      return state.pump.gulping ? 'gulping' : state.pit.blockage_frac > LABOURING_frac ? 'labouring' : 'steady';
  }
}

/** Most seconds bring nothing: then nothing is looked through. */
function feltNow({ recent }: RunState): EventName[] {
  const felt: EventName[] = [];
  for (const { name } of recent) if (!HIDDEN_EVENTS.includes(name)) felt.push(name);
  return felt;
}

export function sensesOf(run: Run): Senses {
  const { state, scenario, kit } = run;
  const { stem, noise, signs, stocks } = state;
  const running = state.machine.returns !== 'none';
  return {
    time_s: state.tick,
    ended: jobOver(run),
    returns: {
      running,
      share_frac: running ? between(0, roundTo(signs.returns_frac * blur(noise, 'returns'), 0.05), 1) : 0,
      colour: signs.colour,
      cloudiness_frac: running ? between(0, (signs.grit_frac / LOADED_frac) * blur(noise, 'grit'), 1) : 0,
      murk_frac: running ? between(0, (signs.fines_frac / SOUP_frac) * blur(noise, 'fines'), 1) : 0,
      grains: running ? glances(state) : [],
    },
    feel: state.feel && { word: state.feel.word, salty: state.feel.salty, time_s: state.feel.tick },
    funnel: state.funnel && { seconds_s: state.funnel.seconds_s, time_s: state.funnel.tick },
    // Fluid that is just running over the rim is read as none below it.
    stick: state.stick && { level_m: Math.max(0, state.stick.level_m), time_s: state.stick.tick },
    tray: trayOf(state, run.work.seen),
    stem: {
      rods: stem.rods,
      rodsLeft: state.rodsInAll - stem.rods,
      bit_m: roundTo(stem.bit_m, 0.01),
      bottom_m: roundTo(state.hole.depth_m, 0.01),
      left_m: roundTo(Math.max(0, stem.rods * kit.rodLength_m - stem.bit_m), 0.01),
      turning: stem.turning,
      feed_frac: stem.feed_frac,
      sound: stemSound(run),
      torque: torqueFeel(run),
      pull: pullFeel(run),
      sinking_mmin: Math.max(0, roundTo(stem.sinking_ms * 60 * blur(noise, 'sinking'), 0.01)),
      drive: driveFeel(state),
    },
    pump: {
      throttle_frac: state.pump.throttle_frac,
      primed: state.pump.primed,
      sound: pumpSound(state),
      dead: state.faults.engineDead,
      hose: hoseLook(state),
    },
    sky: skyLook(run),
    mouth: { look: mouthLook(state) },
    pit: { look: pitLook(run), heap: heapLook(run), strainer_m: state.pit.strainer_m, ditch: state.faults.ditch },
    hands: {
      total: handsThere(run),
      free: handsFree(run),
      tasks: state.tasks.map((task) => ({ action: task.action, left_s: Math.max(0, task.endTick - state.tick) })),
    },
    stock: {
      water_L: stocks.water_L,
      powder_kg: stocks.powder_kg,
      bentonite_kg: stocks.bentonite_kg,
      clay_kg: stocks.clay_kg,
      chlorine_kg: stocks.chlorine_kg,
      petrol_L: stocks.petrol_L,
      cost_marks: costOf(run),
    },
    light_s: lightLeft_s(scenario, state.tick),
    hole: state.holeNumber,
    waiting: state.wait && { until: state.wait.until, left_s: Math.max(0, state.wait.endTick - state.tick) },
    lastRefusal: state.lastRefusal,
    well: wellSensesOf(run),
    felt: feltNow(state),
  };
}
