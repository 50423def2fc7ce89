// Every action as data: its fields with limits, how many hands it takes, how long. The check of a payload reads this table, and so do the hands on the screen.

import { ADDITIVE_NAMES } from '../materials/additives';
import { CLOTH_NAMES } from '../materials/cloths';
import { DRILLING_PUMP_NAMES } from '../materials/drillingPumps';
import { DURATION_s } from '../materials/durations';
import { FAULT_NAMES, MEND_WORDS } from '../materials/faults';
import { PACK_NAMES } from '../materials/packs';
import { CASING_NAMES } from '../materials/pipes';
import { SEAL_NAMES } from '../materials/seals';
import { WELL_PUMP_NAMES } from '../materials/wellPumps';
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
const ifGiven = (name: string, min: number, max: number): FieldSpec => ({ ...number(name, min, max), optional: true });
const yesNo = (name: string): FieldSpec => ({ name, type: 'boolean' });
const word = (name: string, words: readonly string[], optional = false): FieldSpec => ({
  name,
  type: 'word',
  words,
  optional,
});
const text = (name: string, maxLength: number): FieldSpec => ({ name, type: 'text', maxLength });

export const COLOUR_WORDS = ['brown', 'grey', 'yellow', 'red', 'black', 'pale'] as const;
export const FEEL_WORDS_OF_GROUND = ['gritty', 'smooth', 'sticky', 'loose'] as const;
export const WAIT_WORDS = ['soaked', 'clear', 'taskDone', 'morning', 'set', 'recovered'] as const;
/** Places of people who take turns at one screen: at the stem, at pump, pit and fluid, at tray and book. */
export const SEAT_WORDS = ['driller', 'pumpHand', 'logger'] as const;
export type SeatWord = (typeof SEAT_WORDS)[number];
export const DEVELOP_WORDS = ['bail', 'surge', 'overPump', 'backWash'] as const;
/**
 * Fields of the driller's record that the crew fills in by hand; the rest is taken from what it logged, named, poured and read.
 * Laid out from the standard sets: name, place, owner, driller, elevation (state record surveys; Guam completion report),
 * water strikes and losses of flush (ASTM D5434, BS 5930, ISO 22475-1), drill feel and collapse (jetting), remarks.
 */
export const RECORD_FIELDS = [
  'well',
  'place',
  'coordinates',
  'datum',
  'owner',
  'driller',
  'use',
  'permit',
  'siting',
  'waterMet',
  'drilling',
  'waterLook',
  'laboratory',
  'remarks',
] as const;
export type RecordField = (typeof RECORD_FIELDS)[number];

export const ACTION_SPECS: Readonly<Record<ActionName, ActionSpec>> = {
  chooseSite: { group: 'well', hands: 0, time_s: 0, fields: [text('spot', 10)] },
  setOut: {
    group: 'pit',
    hands: 2,
    time_s: 0,
    fields: [
      number('settling_m3', 0.2, 1.5),
      number('suction_m3', 0.2, 1.5),
      number('channel_m', 0.5, 4),
      ifGiven('bit_mm', 75, 150),
      word('pump', DRILLING_PUMP_NAMES, true),
    ],
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
      { name: 'time_s', type: 'number', min: 1, max: 259200, whole: true, optional: true },
      word('until', WAIT_WORDS, true),
      { name: 'cap_s', type: 'number', min: 1, max: 259200, whole: true, optional: true },
    ],
  },
  mend: { group: 'pump', hands: 1, time_s: 0, fields: [word('what', MEND_WORDS)] },
  stopDrilling: { group: 'well', hands: 0, time_s: 0, fields: [] },
  planWell: {
    group: 'well',
    hands: 0,
    time_s: 0,
    fields: [
      word('casing', CASING_NAMES),
      number('screenFrom_m', 0, 100),
      number('screenTo_m', 0, 100),
      number('sump_m', 0, 10),
      number('slotWidth_mm', 0, 10),
      whole('slotRows', 0, 12),
      number('slotArc_mm', 0, 350),
      number('slotSpacing_mm', 2, 500),
      word('cloth', ['none', ...CLOTH_NAMES]),
      yesNo('cap'),
      whole('centralisers', 0, 30),
      word('pack', ['none', ...PACK_NAMES]),
      number('packTop_m', 0, 100),
      word('seal', ['none', ...SEAL_NAMES]),
      number('sealFrom_m', 0, 100),
      number('sealTo_m', 0, 100),
      number('stickUp_m', 0, 2),
    ],
  },
  pullOut: { group: 'well', hands: 2, time_s: 0, fields: [number('speed_ms', 0.02, 0.5), yesNo('topUp')] },
  joinCasing: { group: 'well', hands: 1, time_s: DURATION_s.joinCasing, fields: [] },
  runCasing: { group: 'well', hands: 2, time_s: 0, fields: [yesNo('fill'), number('speed_ms', 0.02, 0.5)] },
  workCasing: { group: 'well', hands: 2, time_s: 0, fields: [whole('time_s', 10, 600)] },
  pourPack: {
    group: 'well',
    hands: 1,
    time_s: 0,
    fields: [word('pack', PACK_NAMES), number('volume_L', 1, 500), number('rate_Lmin', 0.5, 60)],
  },
  sound: { group: 'well', hands: 1, time_s: DURATION_s.sound, fields: [] },
  placeSeal: {
    group: 'well',
    hands: 1,
    time_s: 0,
    fields: [word('seal', SEAL_NAMES), number('volume_L', 1, 500), number('rate_Lmin', 0.5, 60)],
  },
  backfill: {
    group: 'well',
    hands: 1,
    time_s: 0,
    fields: [word('material', [...SEAL_NAMES, ...PACK_NAMES]), number('volume_L', 1, 1000)],
  },
  develop: {
    group: 'well',
    hands: 2,
    time_s: 0,
    fields: [
      word('method', DEVELOP_WORDS),
      whole('time_s', 60, 14400),
      ifGiven('strokes_min', 1, 60),
      ifGiven('rate_Lmin', 1, 120),
    ],
  },
  breakPolymer: {
    group: 'well',
    hands: 1,
    time_s: 0,
    fields: [number('dose_mgL', 10, 5000), whole('contact_s', 0, 172800)],
  },
  dipWell: { group: 'well', hands: 1, time_s: DURATION_s.dipWell, fields: [] },
  yieldTest: {
    group: 'well',
    hands: 1,
    time_s: 0,
    fields: [
      word('lift', WELL_PUMP_NAMES),
      number('rate1_Lmin', 1, 120),
      ifGiven('rate2_Lmin', 1, 120),
      ifGiven('rate3_Lmin', 1, 120),
      whole('step_s', 60, 86400),
      whole('recovery_s', 0, 86400),
    ],
  },
  disinfect: {
    group: 'well',
    hands: 1,
    time_s: 0,
    fields: [number('dose_mgL', 1, 1000), whole('contact_s', 0, 172800)],
  },
  headWorks: {
    group: 'well',
    hands: 2,
    time_s: DURATION_s.headWorks,
    fields: [number('apron_m', 0, 4), number('drain_m', 0, 20), yesNo('cap'), word('lift', WELL_PUMP_NAMES)],
  },
  record: { group: 'well', hands: 0, time_s: 0, fields: [word('field', RECORD_FIELDS), text('text', 160)] },
  handOver: { group: 'well', hands: 0, time_s: 0, fields: [] },
  abandon: { group: 'well', hands: 0, time_s: 0, fields: [{ name: 'move', type: 'boolean', optional: true }] },
  relieveCrew: { group: 'book', hands: 0, time_s: 0, fields: [] },
  leaveToCrew: { group: 'book', hands: 0, time_s: 0, fields: [] },
  readCaution: { group: 'book', hands: 0, time_s: 0, fields: [text('caution', 60)] },
  useHint: { group: 'book', hands: 0, time_s: 0, fields: [text('hint', 60), whole('level', 1, 3)] },
  goBack: { group: 'book', hands: 0, time_s: 0, fields: [whole('fromTick', 0, 10000000)] },
  fault: {
    group: 'book',
    hands: 0,
    time_s: 0,
    fields: [
      word('fault', FAULT_NAMES),
      ifGiven('share_frac', 0.05, 0.9),
      ifGiven('rain_mmh', 1, 200),
      { name: 'time_s', type: 'number', min: 1, max: 36000, whole: true, optional: true },
    ],
  },
  takeSeat: { group: 'book', hands: 0, time_s: 0, fields: [word('seat', SEAT_WORDS), text('who', 60)] },
};
