// The questions of the way from the hole to the well: pulling out, casing, pack, seal, washing.
import { PACK_NAMES, SEAL_NAMES } from '$sim';
import type { Ask, ChoiceAsk } from './ask';
import { amount, speed, yesNo } from './askParts';
import { contact, FINISH_ASKS, pumpRate } from './finishAsks';

const packs: ChoiceAsk = {
  field: 'pack',
  label: 'work.ask.pack',
  options: PACK_NAMES.map((value) => ({ value, label: `work.pack.${value}` })),
  start: 'pack1',
  offered: 'packs',
};

const seals: ChoiceAsk = {
  field: 'seal',
  label: 'work.ask.seal',
  options: SEAL_NAMES.map((value) =>
    value === 'cement'
      ? { value, label: `work.seal.${value}`, say: `work.seal.${value}.say`, caution: 'work.caution.cement' }
      : { value, label: `work.seal.${value}`, say: `work.seal.${value}.say` },
  ),
  start: 'bentoniteGranules',
  offered: 'seals',
};

const pourVolume = { field: 'volume_L', unit: 'L', step: 1, bigStep: 5, chips: [5, 10, 20, 40], start: 10 } as const;
const pourRate = {
  field: 'rate_Lmin',
  label: 'work.ask.rate',
  unit: 'Lmin',
  step: 0.5,
  chips: [0.5, 1, 2, 5, 10],
  start: 2,
} as const;
const PUMPED = ['overPump', 'backWash'];

export const WELL_ASKS = {
  pullOut: {
    action: 'pullOut',
    heading: 'work.ask.pullOut.heading',
    caution: 'work.caution.rods',
    choices: [
      speed,
      yesNo('topUp', 'work.ask.pullOut.topUp', true, {
        yes: 'work.ask.pullOut.topUp.yes',
        no: 'work.ask.pullOut.topUp.no',
      }),
    ],
    confirm: 'work.ask.pullOut.do',
  },
  runCasing: {
    action: 'runCasing',
    heading: 'work.ask.runCasing.heading',
    caution: 'work.caution.lifting',
    choices: [
      yesNo('fill', 'work.ask.runCasing.fill', true, {
        yes: 'work.ask.runCasing.fill.yes',
        no: 'work.ask.runCasing.fill.no',
      }),
      speed,
    ],
    confirm: 'work.ask.runCasing.do',
  },
  workCasing: {
    action: 'workCasing',
    heading: 'work.ask.workCasing.heading',
    say: 'work.ask.workCasing.say',
    amounts: [amount('workCasing', { field: 'time_s', unit: 's', step: 30, chips: [60, 120, 300, 600], start: 120 })],
    confirm: 'work.ask.workCasing.do',
  },
  pourPack: {
    action: 'pourPack',
    heading: 'work.ask.pourPack.heading',
    say: 'work.ask.pourPack.say',
    choices: [packs],
    amounts: [amount('pourPack', pourVolume), amount('pourPack', pourRate)],
    confirm: 'work.ask.pourPack.do',
  },
  placeSeal: {
    action: 'placeSeal',
    heading: 'work.ask.placeSeal.heading',
    choices: [seals],
    amounts: [amount('placeSeal', pourVolume), amount('placeSeal', pourRate)],
    confirm: 'work.ask.placeSeal.do',
  },
  backfill: {
    action: 'backfill',
    heading: 'work.ask.backfill.heading',
    say: 'work.ask.backfill.say',
    choices: [
      {
        field: 'material',
        label: 'work.ask.backfill.with',
        options: [
          { value: 'cuttings', label: 'work.seal.cuttings' },
          { value: 'clay', label: 'work.seal.clay' },
        ],
        start: 'cuttings',
        offered: 'seals',
      },
    ],
    amounts: [amount('backfill', pourVolume)],
    confirm: 'work.ask.backfill.do',
  },
  develop: {
    action: 'develop',
    heading: 'work.ask.develop.heading',
    choices: [
      {
        field: 'method',
        label: 'work.ask.develop.how',
        options: [
          { value: 'bail', label: 'work.develop.bail', say: 'work.develop.bail.say' },
          { value: 'surge', label: 'work.develop.surge', say: 'work.develop.surge.say' },
          {
            value: 'overPump',
            label: 'work.develop.overPump',
            say: 'work.develop.overPump.say',
            caution: 'work.caution.petrol',
          },
          {
            value: 'backWash',
            label: 'work.develop.backWash',
            say: 'work.develop.backWash.say',
            caution: 'work.caution.petrol',
          },
        ],
        start: 'surge',
      },
    ],
    amounts: [
      amount('develop', {
        field: 'time_s',
        label: 'work.ask.howLong',
        unit: 's',
        step: 300,
        bigStep: 1800,
        chips: [600, 1800, 3600, 7200],
        start: 1800,
      }),
      amount('develop', {
        field: 'strokes_min',
        label: 'work.ask.strokes',
        unit: 'perMin',
        step: 1,
        chips: [5, 10, 20],
        start: 10,
        when: { field: 'method', is: ['surge'] },
      }),
      amount('develop', {
        ...pumpRate,
        field: 'rate_Lmin',
        label: 'work.ask.rate',
        start: 20,
        when: { field: 'method', is: PUMPED },
      }),
    ],
    confirm: 'work.ask.develop.do',
  },
  breakPolymer: {
    action: 'breakPolymer',
    heading: 'work.ask.breakPolymer.heading',
    say: 'work.ask.breakPolymer.say',
    caution: 'work.caution.chlorine',
    amounts: [
      amount('breakPolymer', {
        field: 'dose_mgL',
        label: 'work.ask.dose',
        unit: 'mgL',
        step: 50,
        chips: [100, 300, 500, 1000],
        start: 500,
      }),
      amount('breakPolymer', { ...contact, chips: [3600, 7200, 14400, 43200], start: 7200 }),
    ],
    confirm: 'work.ask.breakPolymer.do',
  },
  ...FINISH_ASKS,
} as const satisfies Readonly<Record<string, Ask>>;
