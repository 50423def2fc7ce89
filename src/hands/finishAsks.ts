// The questions of the last steps: yield test, chlorine, apron and pump, handing over.
import { WELL_PUMP_NAMES } from '$sim';
import type { Ask, ChoiceAsk } from './ask';
import { amount, yesNo } from './askParts';

const lifts: ChoiceAsk = {
  field: 'lift',
  label: 'work.ask.lift.which',
  options: WELL_PUMP_NAMES.map((value) => ({ value, label: `work.lift.${value}`, say: `work.lift.${value}.say` })),
  start: 'suction',
  offered: 'lifts',
};

export const pumpRate = { unit: 'Lmin', step: 1, bigStep: 5, chips: [5, 10, 15, 20, 30] } as const;
export const contact = { field: 'contact_s', label: 'work.ask.contact', unit: 's', step: 3600 } as const;

export const FINISH_ASKS = {
  yieldTest: {
    action: 'yieldTest',
    heading: 'work.ask.yieldTest.heading',
    choices: [
      lifts,
      {
        field: 'rates',
        label: 'work.ask.yieldTest.rates',
        options: [
          { value: 1, label: 'work.ask.yieldTest.one' },
          { value: 2, label: 'work.ask.yieldTest.two' },
          { value: 3, label: 'work.ask.yieldTest.three' },
        ],
        start: 1,
        aside: true,
      },
    ],
    amounts: [
      amount('yieldTest', { ...pumpRate, field: 'rate1_Lmin', label: 'work.ask.yieldTest.rate1', start: 10 }),
      amount('yieldTest', {
        ...pumpRate,
        field: 'rate2_Lmin',
        label: 'work.ask.yieldTest.rate2',
        start: 15,
        when: { field: 'rates', is: ['2', '3'] },
      }),
      amount('yieldTest', {
        ...pumpRate,
        field: 'rate3_Lmin',
        label: 'work.ask.yieldTest.rate3',
        start: 20,
        when: { field: 'rates', is: ['3'] },
      }),
      amount('yieldTest', {
        field: 'step_s',
        label: 'work.ask.yieldTest.step',
        unit: 's',
        step: 600,
        chips: [1800, 3600, 7200, 14400],
        start: 3600,
      }),
      amount('yieldTest', {
        field: 'recovery_s',
        label: 'work.ask.yieldTest.recovery',
        unit: 's',
        step: 600,
        chips: [0, 1800, 3600, 7200],
        start: 3600,
      }),
    ],
    confirm: 'work.ask.yieldTest.do',
  },
  disinfect: {
    action: 'disinfect',
    heading: 'work.ask.disinfect.heading',
    say: 'work.ask.disinfect.say',
    caution: 'work.caution.chlorine',
    amounts: [
      amount('disinfect', {
        field: 'dose_mgL',
        label: 'work.ask.dose',
        unit: 'mgL',
        step: 10,
        chips: [10, 50, 100, 200],
        start: 50,
      }),
      amount('disinfect', { ...contact, chips: [3600, 14400, 43200, 86400], start: 43200 }),
    ],
    confirm: 'work.ask.disinfect.do',
  },
  headWorks: {
    action: 'headWorks',
    heading: 'work.ask.headWorks.heading',
    caution: 'work.caution.cement',
    choices: [
      lifts,
      yesNo('cap', 'work.ask.headWorks.cap', true, {
        yes: 'work.ask.headWorks.cap.yes',
        no: 'work.ask.headWorks.cap.no',
      }),
    ],
    amounts: [
      amount('headWorks', {
        field: 'apron_m',
        label: 'work.ask.headWorks.apron',
        unit: 'm',
        step: 0.25,
        chips: [0, 1, 1.5, 2],
        start: 1,
      }),
      amount('headWorks', {
        field: 'drain_m',
        label: 'work.ask.headWorks.drain',
        unit: 'm',
        step: 0.5,
        chips: [0, 2, 3, 6],
        start: 3,
      }),
    ],
    confirm: 'work.ask.headWorks.do',
  },
  handOver: {
    action: 'handOver',
    heading: 'work.ask.handOver.heading',
    say: 'work.ask.handOver.say',
    caution: 'work.caution.water',
    confirm: 'work.ask.handOver.do',
  },
} as const satisfies Readonly<Record<string, Ask>>;
