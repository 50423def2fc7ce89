// The machine of a run: parallel regions for job, pump, stem, hole, returns and fluid. Only names and arrows; no clock, no actors, no physics.

import { initialTransition, setup, transition, type AnyMachineSnapshot } from 'xstate';

export type JobMode = 'siteSetup' | 'drilling' | 'pullingOut' | 'abandoned';
export type PumpMode = 'stopped' | 'priming' | 'running' | 'starved' | 'blocked';
export type StemMode = 'hanging' | 'turning' | 'onBottom' | 'tight' | 'stuck';
export type HoleMode = 'standing';
export type ReturnsMode = 'none' | 'partial' | 'full';
export type FluidMode = 'water' | 'soaking' | 'ready' | 'thin' | 'spent';

export interface MachineValue {
  job: JobMode;
  pump: PumpMode;
  stem: StemMode;
  hole: HoleMode;
  returns: ReturnsMode;
  fluid: FluidMode;
}

export const MACHINE_EVENTS = [
  'firstTurn',
  'stopDrilling',
  'giveUp',
  'primeBegins',
  'primeEnds',
  'pumpRuns',
  'pumpStops',
  'primeLost',
  'strainerBlocked',
  'strainerCleared',
  'stemHangs',
  'stemTurns',
  'stemOnBottom',
  'stemTight',
  'stemStuck',
  'stemFreed',
  'returnsNone',
  'returnsPartial',
  'returnsFull',
  'powderIn',
  'powderSoaked',
  'fluidThinned',
  'fluidSpent',
] as const;
export type MachineEvent = (typeof MACHINE_EVENTS)[number];

const stemArrows = {
  stemHangs: 'hanging',
  stemTurns: 'turning',
  stemOnBottom: 'onBottom',
  stemTight: 'tight',
  stemStuck: 'stuck',
} as const;
const { stemHangs, stemTurns, stemOnBottom, stemTight, stemStuck } = stemArrows;

export const drillingMachine = setup({ types: { events: {} as { type: MachineEvent } } }).createMachine({
  id: 'hole',
  type: 'parallel',
  states: {
    job: {
      initial: 'siteSetup',
      states: {
        siteSetup: { on: { firstTurn: 'drilling', stopDrilling: 'pullingOut', giveUp: 'abandoned' } },
        drilling: { on: { stopDrilling: 'pullingOut', giveUp: 'abandoned' } },
        pullingOut: { on: { giveUp: 'abandoned' } },
        abandoned: {},
      },
    },
    pump: {
      initial: 'stopped',
      states: {
        stopped: { on: { primeBegins: 'priming', pumpRuns: 'running' } },
        priming: { on: { primeEnds: 'stopped' } },
        running: { on: { pumpStops: 'stopped', primeLost: 'starved', strainerBlocked: 'blocked' } },
        starved: { on: { primeBegins: 'priming' } },
        blocked: { on: { pumpStops: 'stopped', primeLost: 'starved', strainerCleared: 'running' } },
      },
    },
    stem: {
      initial: 'hanging',
      states: {
        hanging: { on: { stemTurns, stemOnBottom, stemTight, stemStuck } },
        turning: { on: { stemHangs, stemOnBottom, stemTight, stemStuck } },
        onBottom: { on: { stemHangs, stemTurns, stemTight, stemStuck } },
        tight: { on: { stemHangs, stemTurns, stemOnBottom, stemStuck } },
        stuck: { on: { stemFreed: 'hanging' } },
      },
    },
    hole: { initial: 'standing', states: { standing: {} } },
    returns: {
      initial: 'none',
      states: {
        none: { on: { returnsPartial: 'partial', returnsFull: 'full' } },
        partial: { on: { returnsNone: 'none', returnsFull: 'full' } },
        full: { on: { returnsNone: 'none', returnsPartial: 'partial' } },
      },
    },
    fluid: {
      initial: 'water',
      states: {
        water: { on: { powderIn: 'soaking' } },
        soaking: { on: { powderSoaked: 'ready', fluidThinned: 'thin', fluidSpent: 'spent' } },
        ready: { on: { powderIn: 'soaking', fluidThinned: 'thin', fluidSpent: 'spent' } },
        thin: { on: { powderIn: 'soaking', powderSoaked: 'ready', fluidSpent: 'spent' } },
        spent: { on: { powderIn: 'soaking' } },
      },
    },
  },
});

/** The value that every run starts with. */
export function firstValue(): MachineValue {
  const [first] = initialTransition(drillingMachine);
  return first.value as MachineValue;
}

/** The value after one event; the same object when the event changes nothing. Pure: no actor, no clock. */
export function valueAfter(value: MachineValue, event: MachineEvent): MachineValue {
  const before = drillingMachine.resolveState({ value: { ...value }, context: {} }) as AnyMachineSnapshot;
  const [after] = transition(drillingMachine, before as never, { type: event });
  return after.value as MachineValue;
}
