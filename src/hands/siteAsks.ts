// The questions of setting out: the pit, with bit and pump where there is a choice, and filling it.
import type { Ask } from './ask';
import { amount } from './askParts';

/** A chamber of the pit, told in litres. */
const chamber = { unit: 'L', scale: 0.001, step: 0.05, chips: [0.3, 0.5, 0.8, 1], start: 0.5 } as const;

export const SITE_ASKS = {
  setOut: {
    action: 'setOut',
    heading: 'work.ask.setOut.heading',
    say: 'work.ask.setOut.say',
    choices: [
      {
        field: 'bit_mm',
        label: 'work.ask.setOut.bit',
        offered: 'bits_mm',
        options: [
          { value: 75, label: 'work.ask.setOut.bit.75', say: 'work.ask.setOut.bit.say' },
          { value: 100, label: 'work.ask.setOut.bit.100', say: 'work.ask.setOut.bit.say' },
          { value: 125, label: 'work.ask.setOut.bit.125', say: 'work.ask.setOut.bit.say' },
          { value: 150, label: 'work.ask.setOut.bit.150', say: 'work.ask.setOut.bit.say' },
        ],
        start: 100,
      },
      {
        field: 'pump',
        label: 'work.ask.setOut.pump',
        offered: 'pumps',
        options: [
          { value: 'small', label: 'work.ask.setOut.pump.small', say: 'work.ask.setOut.pump.say' },
          { value: 'middle', label: 'work.ask.setOut.pump.middle', say: 'work.ask.setOut.pump.say' },
          { value: 'large', label: 'work.ask.setOut.pump.large', say: 'work.ask.setOut.pump.say' },
        ],
        start: 'small',
      },
    ],
    amounts: [
      amount('setOut', { ...chamber, field: 'settling_m3', label: 'work.ask.setOut.settling' }),
      amount('setOut', { ...chamber, field: 'suction_m3', label: 'work.ask.setOut.suction' }),
      amount('setOut', {
        field: 'channel_m',
        label: 'work.ask.setOut.channel',
        unit: 'm',
        step: 0.25,
        chips: [1, 1.5, 2, 3],
        start: 1.5,
      }),
    ],
    confirm: 'work.ask.setOut.do',
  },
  fillPit: {
    action: 'fillPit',
    heading: 'work.ask.fillPit.heading',
    say: 'work.ask.fillPit.say',
    amounts: [amount('fillPit', { field: 'water_L', unit: 'L', step: 50, chips: [200, 500, 1000, 1500], start: 500 })],
    confirm: 'work.ask.fillPit.do',
  },
} as const satisfies Readonly<Record<string, Ask>>;
