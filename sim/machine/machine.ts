// The machine of a run: parallel regions for job, pump, stem, hole, returns and fluid. Only names and arrows; no clock, no actors, no physics.

import { initialTransition, setup, transition, type AnyMachineSnapshot } from 'xstate';

export type JobMode =
  | 'siteSetup'
  | 'drilling'
  | 'pullingOut'
  | 'casing'
  | 'packing'
  | 'sealing'
  | 'developing'
  | 'testing'
  | 'handedOver'
  | 'abandoned';
export type PumpMode = 'stopped' | 'priming' | 'running' | 'starved' | 'blocked';
export type StemMode = 'hanging' | 'turning' | 'onBottom' | 'tight' | 'stuck' | 'out';
export type HoleMode = 'standing' | 'sloughing' | 'closed';
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
  'moveOn',
  'casingBegins',
  'packBegins',
  'sealBegins',
  'developBegins',
  'testBegins',
  'handOver',
  'giveUp',
  'primeBegins',
  'primeEnds',
  'pumpRuns',
  'pumpStops',
  'primeLost',
  'strainerBlocked',
  'stemHangs',
  'stemTurns',
  'stemOnBottom',
  'stemTight',
  'stemStuck',
  'stemFreed',
  'stemOut',
  'holeStands',
  'holeSloughs',
  'holeCloses',
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
  stemOut: 'out',
} as const;

/** Once the casing is in, the crew may go back and forth between packing, sealing, washing and testing. */
const jobArrows = {
  packBegins: 'packing',
  sealBegins: 'sealing',
  developBegins: 'developing',
  testBegins: 'testing',
  handOver: 'handedOver',
  moveOn: 'siteSetup',
  giveUp: 'abandoned',
} as const;
const { packBegins, sealBegins, developBegins, testBegins, handOver, moveOn, giveUp } = jobArrows;
const { stemHangs, stemTurns, stemOnBottom, stemTight, stemStuck, stemOut } = stemArrows;

export const drillingMachine = setup({ types: { events: {} as { type: MachineEvent } } }).createMachine({
  id: 'hole',
  type: 'parallel',
  states: {
    job: {
      initial: 'siteSetup',
      states: {
        siteSetup: { on: { firstTurn: 'drilling', stopDrilling: 'pullingOut', giveUp } },
        drilling: { on: { moveOn, stopDrilling: 'pullingOut', giveUp } },
        pullingOut: { on: { casingBegins: 'casing', moveOn, giveUp } },
        casing: { on: { packBegins, sealBegins, developBegins, testBegins, handOver, moveOn, giveUp } },
        packing: { on: { sealBegins, developBegins, testBegins, handOver, moveOn, giveUp } },
        sealing: { on: { packBegins, developBegins, testBegins, handOver, moveOn, giveUp } },
        developing: { on: { packBegins, sealBegins, testBegins, handOver, moveOn, giveUp } },
        testing: { on: { packBegins, sealBegins, developBegins, handOver, moveOn, giveUp } },
        handedOver: {},
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
        blocked: { on: { pumpStops: 'stopped', primeLost: 'starved' } },
      },
    },
    stem: {
      initial: 'hanging',
      states: {
        hanging: { on: { stemTurns, stemOnBottom, stemTight, stemOut } },
        turning: { on: { stemHangs, stemOnBottom, stemTight, stemOut } },
        onBottom: { on: { stemHangs, stemTurns, stemTight, stemOut } },
        tight: { on: { stemHangs, stemTurns, stemOnBottom, stemStuck } },
        stuck: { on: { stemFreed: 'hanging' } },
        out: { on: { stemHangs, stemTurns, stemOnBottom } },
      },
    },
    hole: {
      initial: 'standing',
      states: {
        standing: { on: { holeSloughs: 'sloughing', holeCloses: 'closed' } },
        sloughing: { on: { holeStands: 'standing', holeCloses: 'closed' } },
        closed: { on: { holeStands: 'standing', holeSloughs: 'sloughing' } },
      },
    },
    returns: {
      initial: 'none',
      states: {
        none: { on: { returnsPartial: 'partial' } },
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

// The arrows lead from the same value to the same value each time, so each way is looked up in the machine once. No part of any run.
const ways = new Map<string, MachineValue>();

/** The value after one event. Pure: no actor, no clock. */
export function valueAfter(value: MachineValue, event: MachineEvent): MachineValue {
  const { job, pump, stem, hole, returns, fluid } = value;
  const way = `${event} ${job} ${pump} ${stem} ${hole} ${returns} ${fluid}`;
  let after = ways.get(way);
  if (after === undefined) {
    after = walk(value, event);
    ways.set(way, after);
  }
  // Each run has a value of its own.
  return { ...after };
}

function walk(value: MachineValue, event: MachineEvent): MachineValue {
  const before = drillingMachine.resolveState({ value: { ...value }, context: {} }) as AnyMachineSnapshot;
  const [after] = transition(drillingMachine, before as never, { type: event });
  return after.value as MachineValue;
}
