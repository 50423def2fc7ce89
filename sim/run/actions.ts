// Every action as data: its fields with limits, how many hands it takes, how long. The check of a payload reads this table, and so do the hands on the screen.

import { ADDITIVE_NAMES } from '../materials/additives';
import { DURATION_s } from '../materials/durations';
import { KIND_WORDS, type ActionGroup, type ActionName } from './names';

export type FieldSpec =
  | {
      readonly name: string;
      readonly type: 'number';
      readonly min: number;
      readonly max: number;
      readonly whole?: boolean;
      readonly optional?: boolean;
    }
  | { readonly name: string; readonly type: 'boolean'; readonly optional?: boolean }
  | { readonly name: string; readonly type: 'word'; readonly words: readonly string[]; readonly optional?: boolean }
  | { readonly name: string; readonly type: 'text'; readonly maxLength: number; readonly optional?: boolean };

export interface ActionSpec {
  readonly group: ActionGroup;
  /** Hands of the crew that are busy while the act lasts. */
  readonly hands: number;
  /** Job seconds it takes; 0 is at once. Acts whose time depends on the payload say so in their deed. */
  readonly time_s: number;
  readonly fields: readonly FieldSpec[];
}

const number = (name: string, min: number, max: number): FieldSpec => ({ name, type: 'number', min, max });
const whole = (name: string, min: number, max: number): FieldSpec => ({ name, type: 'number', min, max, whole: true });
const word = (name: string, words: readonly string[], optional = false): FieldSpec => ({
  name,
  type: 'word',
  words,
  optional,
});
const text = (name: string, maxLength: number): FieldSpec => ({ name, type: 'text', maxLength });

export const COLOUR_WORDS = ['brown', 'grey', 'yellow', 'red', 'black', 'pale'] as const;
export const FEEL_WORDS_OF_GROUND = ['gritty', 'smooth', 'sticky', 'loose'] as const;
export const WAIT_WORDS = ['soaked', 'clear', 'taskDone', 'morning'] as const;

export const ACTION_SPECS: Readonly<Record<ActionName, ActionSpec>> = {
  setOut: {
    group: 'pit',
    hands: 2,
    time_s: 0,
    fields: [number('settling_m3', 0.2, 1.5), number('suction_m3', 0.2, 1.5), number('channel_m', 0.5, 4)],
  },
  fillPit: { group: 'pit', hands: 1, time_s: 0, fields: [number('water_L', 10, 2000)] },
  prime: { group: 'pump', hands: 1, time_s: 0, fields: [] },
  setThrottle: { group: 'pump', hands: 0, time_s: 0, fields: [number('throttle_frac', 0, 1)] },
  setTurning: { group: 'stem', hands: 0, time_s: 0, fields: [{ name: 'on', type: 'boolean' }] },
  setFeed: { group: 'stem', hands: 0, time_s: 0, fields: [number('feed_frac', 0, 1)] },
  lift: { group: 'stem', hands: 1, time_s: 0, fields: [number('distance_m', 0.05, 6), number('speed_ms', 0.02, 0.5)] },
  lower: { group: 'stem', hands: 1, time_s: 0, fields: [number('distance_m', 0.05, 6), number('speed_ms', 0.02, 0.5)] },
  addRod: { group: 'stem', hands: 2, time_s: DURATION_s.addRod, fields: [] },
  removeRod: { group: 'stem', hands: 2, time_s: DURATION_s.removeRod, fields: [number('speed_ms', 0.02, 0.5)] },
  workStem: { group: 'stem', hands: 2, time_s: 0, fields: [whole('time_s', 10, 300)] },
  catchSample: { group: 'tray', hands: 1, time_s: DURATION_s.catchSample, fields: [number('label_m', 0, 100)] },
  nameSample: {
    group: 'tray',
    hands: 0,
    time_s: 0,
    fields: [
      whole('sample', 1, 999),
      word('main', KIND_WORDS),
      word('secondary', KIND_WORDS, true),
      word('colour', COLOUR_WORDS, true),
      word('feel', FEEL_WORDS_OF_GROUND, true),
    ],
  },
  addAdditive: {
    group: 'fluid',
    hands: 1,
    time_s: 0,
    fields: [word('additive', ADDITIVE_NAMES), number('mass_g', 10, 25000), word('manner', ['sprinkled', 'dumped'])],
  },
  stir: { group: 'fluid', hands: 1, time_s: 0, fields: [whole('time_s', 10, 600)] },
  feelFluid: { group: 'fluid', hands: 1, time_s: DURATION_s.feelFluid, fields: [] },
  readStick: { group: 'pit', hands: 1, time_s: DURATION_s.readStick, fields: [] },
  funnelTest: { group: 'fluid', hands: 1, time_s: DURATION_s.funnelTest, fields: [] },
  addWater: { group: 'pit', hands: 1, time_s: 0, fields: [number('water_L', 5, 500)] },
  topUp: { group: 'pit', hands: 1, time_s: 0, fields: [number('fluid_L', 2, 200)] },
  digOutPit: {
    group: 'pit',
    hands: 1,
    time_s: 0,
    fields: [word('chamber', ['settling', 'suction']), number('spoil_L', 1, 500)],
  },
  clearStrainer: { group: 'pump', hands: 1, time_s: DURATION_s.clearStrainer, fields: [] },
  setStrainer: { group: 'pump', hands: 1, time_s: DURATION_s.setStrainer, fields: [number('height_m', 0, 1)] },
  note: { group: 'book', hands: 0, time_s: 0, fields: [text('text', 500)] },
  logLayer: {
    group: 'book',
    hands: 0,
    time_s: 0,
    fields: [number('from_m', 0, 100), number('to_m', 0, 100), word('kind', KIND_WORDS)],
  },
  waitFor: {
    group: 'book',
    hands: 0,
    time_s: 0,
    fields: [
      { name: 'time_s', type: 'number', min: 1, max: 14400, whole: true, optional: true },
      word('until', WAIT_WORDS, true),
      { name: 'cap_s', type: 'number', min: 1, max: 14400, whole: true, optional: true },
    ],
  },
  stopDrilling: { group: 'well', hands: 0, time_s: 0, fields: [] },
  abandon: { group: 'well', hands: 0, time_s: 0, fields: [{ name: 'move', type: 'boolean', optional: true }] },
  readCaution: { group: 'book', hands: 0, time_s: 0, fields: [text('caution', 60)] },
  useHint: { group: 'book', hands: 0, time_s: 0, fields: [text('hint', 60), whole('level', 1, 3)] },
  goBack: { group: 'book', hands: 0, time_s: 0, fields: [whole('fromTick', 0, 10000000)] },
};
