// The questions asked before an act that needs an amount, a choice or a second thought: as data, one form shows them all.
// Limits come from the run's own table of actions, so that the hands offer nothing that the run calls malformed.
import type { Ask } from './ask';
import { amount, speed } from './askParts';
import { SITE_ASKS } from './siteAsks';
import { WELL_ASKS } from './wellAsks';

const stemLength = { field: 'distance_m', unit: 'm', step: 0.05, chips: [0.1, 0.3, 0.5, 1, 1.5], start: 0.5 } as const;

export const ASKS = {
  ...WELL_ASKS,
  ...SITE_ASKS,
  lift: {
    action: 'lift',
    heading: 'work.ask.lift.heading',
    amounts: [amount('lift', stemLength)],
    choices: [speed],
    confirm: 'work.ask.lift.do',
  },
  lower: {
    action: 'lower',
    heading: 'work.ask.lower.heading',
    amounts: [amount('lower', stemLength)],
    choices: [speed],
    confirm: 'work.ask.lower.do',
  },
  removeRod: {
    action: 'removeRod',
    heading: 'work.ask.removeRod.heading',
    say: 'work.ask.removeRod.say',
    choices: [speed],
    confirm: 'work.ask.removeRod.do',
  },
  workStem: {
    action: 'workStem',
    heading: 'work.ask.workStem.heading',
    say: 'work.ask.workStem.say',
    amounts: [amount('workStem', { field: 'time_s', unit: 's', step: 10, chips: [30, 60, 120, 300], start: 60 })],
    confirm: 'work.ask.workStem.do',
  },
  addWater: {
    action: 'addWater',
    heading: 'work.ask.addWater.heading',
    amounts: [amount('addWater', { field: 'water_L', unit: 'L', step: 5, chips: [20, 50, 100, 200], start: 50 })],
    confirm: 'work.ask.addWater.do',
  },
  topUp: {
    action: 'topUp',
    heading: 'work.ask.topUp.heading',
    say: 'work.ask.topUp.say',
    amounts: [amount('topUp', { field: 'fluid_L', unit: 'L', step: 5, chips: [5, 10, 20, 50], start: 10 })],
    confirm: 'work.ask.topUp.do',
  },
  digOut: {
    action: 'digOutPit',
    heading: 'work.ask.digOut.heading',
    say: 'work.ask.digOut.say',
    choices: [
      {
        field: 'chamber',
        label: 'work.ask.digOut.chamber',
        options: [
          { value: 'settling', label: 'work.ask.digOut.settling' },
          { value: 'suction', label: 'work.ask.digOut.suction' },
        ],
        start: 'settling',
      },
    ],
    amounts: [amount('digOutPit', { field: 'spoil_L', unit: 'L', step: 5, chips: [10, 20, 50, 100], start: 20 })],
    confirm: 'work.ask.digOut.do',
  },
  setStrainer: {
    action: 'setStrainer',
    heading: 'work.ask.setStrainer.heading',
    say: 'work.ask.setStrainer.say',
    amounts: [
      amount('setStrainer', {
        field: 'height_m',
        unit: 'm',
        step: 0.05,
        chips: [0, 0.1, 0.2, 0.3, 0.5],
        start: 0.2,
      }),
    ],
    confirm: 'work.ask.setStrainer.do',
  },
  addPowder: {
    action: 'addAdditive',
    heading: 'work.ask.addPowder.heading',
    choices: [
      {
        field: 'additive',
        label: 'work.ask.addPowder.what',
        options: [
          { value: 'polymer', label: 'work.additive.polymer', say: 'work.ask.addPowder.polymer' },
          {
            value: 'bentonite',
            label: 'work.additive.bentonite',
            say: 'work.ask.addPowder.bentonite',
            needs: 'bentonite_kg',
          },
          { value: 'nativeClay', label: 'work.additive.nativeClay', say: 'work.ask.addPowder.clay', needs: 'clay_kg' },
          {
            value: 'chlorine',
            label: 'work.additive.chlorine',
            say: 'work.ask.addPowder.chlorine',
            needs: 'chlorine_kg',
          },
        ],
        start: 'polymer',
      },
      {
        field: 'manner',
        label: 'work.ask.addPowder.manner',
        options: [
          { value: 'sprinkled', label: 'work.ask.addPowder.sprinkled' },
          { value: 'dumped', label: 'work.ask.addPowder.dumped' },
        ],
        start: 'sprinkled',
        when: { field: 'additive', is: ['polymer', 'bentonite', 'nativeClay'] },
      },
    ],
    amounts: [
      amount('addAdditive', {
        field: 'mass_g',
        unit: 'g',
        step: 50,
        chips: [100, 200, 500, 1000],
        start: 100,
        max: 5000,
        when: { field: 'additive', is: ['polymer'] },
      }),
      amount('addAdditive', {
        field: 'mass_g',
        unit: 'kg',
        scale: 1000,
        step: 1000,
        chips: [5000, 10000, 25000],
        start: 10000,
        when: { field: 'additive', is: ['bentonite', 'nativeClay'] },
      }),
      amount('addAdditive', {
        field: 'mass_g',
        unit: 'g',
        step: 10,
        chips: [20, 50, 100, 200],
        start: 50,
        max: 1000,
        when: { field: 'additive', is: ['chlorine'] },
      }),
    ],
    confirm: 'work.ask.addPowder.do',
  },
  stir: {
    action: 'stir',
    heading: 'work.ask.stir.heading',
    amounts: [amount('stir', { field: 'time_s', unit: 's', step: 10, chips: [30, 60, 120, 300], start: 60 })],
    confirm: 'work.ask.stir.do',
  },
  catchSample: {
    action: 'catchSample',
    heading: 'work.ask.catchSample.heading',
    say: 'work.ask.catchSample.say',
    amounts: [
      amount('catchSample', {
        field: 'label_m',
        label: 'work.ask.catchSample.label',
        unit: 'm',
        step: 0.1,
        bigStep: 0.5,
        chips: [],
        start: 0,
      }),
    ],
    confirm: 'work.ask.catchSample.do',
  },
  stopDrilling: {
    action: 'stopDrilling',
    heading: 'work.ask.stopDrilling.heading',
    say: 'work.ask.stopDrilling.say',
    confirm: 'work.ask.stopDrilling.do',
  },
  abandon: {
    action: 'abandon',
    heading: 'work.ask.abandon.heading',
    choices: [
      {
        field: 'move',
        label: 'work.ask.abandon.then',
        options: [
          { value: false, label: 'work.ask.abandon.end', say: 'work.ask.abandon.say' },
          { value: true, label: 'work.ask.abandon.move', say: 'work.ask.abandon.sayMove', needs: 'moreGround' },
        ],
        start: false,
      },
    ],
    confirm: 'work.ask.abandon.do',
  },
} as const satisfies Readonly<Record<string, Ask>>;

export type AskId = keyof typeof ASKS;

export const isAsk = (panel: string): panel is AskId => panel in ASKS;
