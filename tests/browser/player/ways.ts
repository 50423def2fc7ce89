// From each act to the presses that do it on the screen: which hand, what is asked, in the words that a person reads.
import type { ActionName, Payload } from '../../../sim';
import { chooseSite, planWell, waitFor, writeRecord } from './papers';
import type { Hand, Hands } from './hands';

/** A choice by the words for its values, or an amount; `shown` is what one unit of the payload counts on the screen. */
export type Answer =
  | { readonly field: string; readonly choose: string; readonly words: Readonly<Record<string, string>> }
  | { readonly field: string; readonly amount: string; readonly shown?: number }
  | { readonly field: string; readonly write: string };

export type Way =
  /** One press does it, or opens a question that is answered and confirmed. */
  | { readonly hand: Hand; readonly answers?: readonly Answer[]; readonly confirm?: string }
  /** A thing that is on or off. */
  | { readonly toggle: Hand; readonly field: string }
  /** Less and more, a step at a time; all off may have a hand of its own. */
  | {
      readonly stepper: string;
      readonly field: string;
      readonly steps: number;
      readonly less: Hand;
      readonly more: Hand;
      readonly off?: Hand;
    }
  /** A paper of its own, or the clock. */
  | { readonly paper: (hands: Hands, payload: Payload) => Promise<void> }
  /** No hand at the hole does it; where it comes from instead. */
  | { readonly noHand: string };

const at =
  (tab: string) =>
  (name: string, key?: string): Hand => ({ tab, name, ...(key === undefined ? {} : { key }) });
const stem = at('Stem');
const pump = at('Pump');
const pit = at('Pit');
const fluid = at('Fluid');
const tray = at('Tray');
const book = at('Book');
const well = at('Well');
const fill = at('Fill');
const water = at('Water');
const finish = at('Finish');

const speed: Answer = {
  field: 'speed_ms',
  choose: 'Speed',
  words: { '0.05': 'slow', '0.1': 'steady', '0.3': 'fast' },
};
const yesNo = (field: string, choose: string): Answer => ({ field, choose, words: { true: 'yes', false: 'no' } });
const amount = (field: string, words = 'Amount', shown = 1): Answer => ({ field, amount: words, shown });
const KINDS = {
  topsoil: 'topsoil',
  clay: 'clay',
  silt: 'silt',
  siltySand: 'silty sand',
  fineSand: 'fine sand',
  mediumSand: 'medium sand',
  coarseSand: 'coarse sand',
  gravel: 'gravel',
  peat: 'peat',
  unknown: 'I cannot tell',
};
const COLOURS = { brown: 'brown', grey: 'grey', yellow: 'yellow', red: 'red', black: 'black', pale: 'pale' };
const FEELS = { gritty: 'gritty', smooth: 'smooth', sticky: 'sticky', loose: 'loose' };
const PACKS = {
  pack04: '0.4 to 0.8 mm',
  pack07: '0.7 to 1.2 mm',
  pack1: '1 to 2 mm',
  pack2: '2 to 4 mm',
  pack4: '4 to 8 mm',
};
const SEALS = {
  bentoniteGranules: 'bentonite granules',
  bentonitePellets: 'bentonite pellets',
  cement: 'cement',
  clay: 'clay of the site',
  cuttings: 'cuttings',
};
const LIFTS = { suction: 'suction pump', deepPiston: 'deep piston pump', submersible: 'submersible' };
const ADDITIVES = { polymer: 'polymer', bentonite: 'bentonite', nativeClay: 'clay', chlorine: 'chlorine' };
const DEVELOP = { bail: 'bail', surge: 'surge', overPump: 'pump hard', backWash: 'back-wash' };

export const WAYS: Readonly<Record<ActionName, Way>> = {
  chooseSite: { paper: chooseSite },
  setOut: {
    hand: pit('Dig the pit', ','),
    answers: [
      { field: 'bit_mm', choose: 'Bit', words: { 75: '75 mm', 100: '100 mm', 125: '125 mm', 150: '150 mm' } },
      { field: 'pump', choose: 'Drilling pump', words: { small: 'small', middle: 'middle', large: 'large' } },
      amount('settling_m3', 'Settling chamber', 1000),
      amount('suction_m3', 'Suction chamber', 1000),
      amount('channel_m', 'Channel from the hole'),
    ],
    confirm: 'Dig it',
  },
  fillPit: { hand: pit('Fill the pit', '.'), answers: [amount('water_L')], confirm: 'Fill it' },
  prime: { hand: pump('Prime', 'o') },
  setThrottle: {
    stepper: 'Throttle',
    field: 'throttle_frac',
    steps: 4,
    less: pump('Close the throttle a little', 'b'),
    more: pump('Open the throttle', 'g'),
    off: pump('Stop pump', 'q'),
  },
  setTurning: { toggle: stem('Turn', 't'), field: 'on' },
  setFeed: {
    stepper: 'Feed',
    field: 'feed_frac',
    steps: 10,
    less: stem('Less feed', 'd'),
    more: stem('More feed', 'f'),
  },
  lift: { hand: stem('Lift by another length'), answers: [amount('distance_m'), speed], confirm: 'Lift' },
  lower: { hand: stem('Lower by another length'), answers: [amount('distance_m'), speed], confirm: 'Lower' },
  addRod: { hand: stem('Add rod', 'a') },
  removeRod: { hand: stem('Remove rod', 'r'), answers: [speed], confirm: 'Remove rod' },
  workStem: { hand: stem('Work stem', 'x'), answers: [amount('time_s')], confirm: 'Work it' },
  catchSample: {
    hand: tray('Catch sample', 'c'),
    answers: [amount('label_m', 'Depth on the label')],
    confirm: 'Catch it',
  },
  nameSample: {
    hand: tray('Name sample', 'n'),
    answers: [
      { field: 'main', choose: 'Mostly', words: KINDS },
      { field: 'secondary', choose: 'With some', words: KINDS },
      { field: 'colour', choose: 'Colour', words: COLOURS },
      { field: 'feel', choose: 'Feel between fingers', words: FEELS },
    ],
    confirm: 'Write it down',
  },
  addAdditive: {
    hand: fluid('Add powder', 'm'),
    answers: [
      { field: 'additive', choose: 'What', words: ADDITIVES },
      { field: 'manner', choose: 'How', words: { sprinkled: 'sprinkle slowly', dumped: 'tip it in' } },
      amount('mass_g'),
    ],
    confirm: 'Put it in',
  },
  stir: { hand: fluid('Stir', 'y'), answers: [amount('time_s')], confirm: 'Stir' },
  feelFluid: { hand: fluid('Feel', 'v') },
  readStick: { hand: pit('Read stick', '5') },
  funnelTest: { hand: fluid('Funnel', 'z') },
  addWater: { hand: pit('Add water', '6'), answers: [amount('water_L')], confirm: 'Pour it in' },
  topUp: { hand: { ...pit('Top up', ';'), laterTab: 'Fill' }, answers: [amount('fluid_L')], confirm: 'Pour it in' },
  digOutPit: {
    hand: pit('Dig out', '7'),
    answers: [
      { field: 'chamber', choose: 'Chamber', words: { settling: 'settling', suction: 'suction' } },
      amount('spoil_L'),
    ],
    confirm: 'Dig it out',
  },
  clearStrainer: { hand: pit('Clear strainer', '8') },
  setStrainer: { hand: pit('Set strainer', '9'), answers: [amount('height_m')], confirm: 'Hang it there' },
  note: { hand: book('Write a note', 'h'), answers: [{ field: 'text', write: 'Note' }], confirm: 'Keep it' },
  logLayer: {
    hand: book('Log a layer', 'l'),
    answers: [amount('from_m', 'From'), amount('to_m', 'To'), { field: 'kind', choose: 'What it is', words: KINDS }],
    confirm: 'Log it',
  },
  waitFor: { paper: waitFor },
  mend: { noHand: 'a hand of its own for each thing that breaks; no drill breaks any' },
  stopDrilling: { hand: { ...stem('Stop drilling', 'e'), movesToWell: true }, confirm: 'Stop drilling' },
  planWell: { paper: planWell },
  pullOut: {
    hand: well('Pull out rods', '-'),
    answers: [speed, yesNo('topUp', 'Top the hole up meanwhile')],
    confirm: 'Pull them out',
  },
  joinCasing: { hand: well('Join casing', "'") },
  runCasing: {
    hand: well('Run casing in', 'r'),
    answers: [yesNo('fill', 'Fill it with water as it goes down'), speed],
    confirm: 'Lower it',
  },
  workCasing: { hand: well('Work casing', 'x'), answers: [amount('time_s')], confirm: 'Work it' },
  pourPack: {
    hand: fill('Pour pack', 'f'),
    answers: [{ field: 'pack', choose: 'Grain', words: PACKS }, amount('volume_L'), amount('rate_Lmin', 'How fast')],
    confirm: 'Pour it',
  },
  sound: { hand: fill('Sound', 'd') },
  placeSeal: {
    hand: fill('Place seal', 'b'),
    answers: [{ field: 'seal', choose: 'Seal', words: SEALS }, amount('volume_L'), amount('rate_Lmin', 'How fast')],
    confirm: 'Place it',
  },
  backfill: {
    hand: fill('Backfill', 'k'),
    answers: [{ field: 'material', choose: 'With what', words: SEALS }, amount('volume_L')],
    confirm: 'Fill it in',
  },
  develop: {
    hand: water('Wash the well', 'v'),
    answers: [
      { field: 'method', choose: 'How', words: DEVELOP },
      amount('time_s', 'How long'),
      amount('strokes_min', 'Strokes'),
      amount('rate_Lmin', 'How fast'),
    ],
    confirm: 'Wash it',
  },
  breakPolymer: {
    hand: water('Break polymer', 'm'),
    answers: [amount('dose_mgL', 'Chlorine in the water of the well'), amount('contact_s', 'Time to let it work')],
    confirm: 'Pour it in',
  },
  dipWell: { hand: water('Dip', 'u') },
  yieldTest: {
    hand: water('Yield test', 't'),
    answers: [
      { field: 'lift', choose: 'Pump', words: LIFTS },
      amount('rate1_Lmin', 'First rate'),
      amount('step_s', 'Time at each rate'),
      amount('recovery_s', 'Watch it rise again for'),
    ],
    confirm: 'Begin the test',
  },
  disinfect: {
    hand: finish('Disinfect', 'i'),
    answers: [amount('dose_mgL', 'Chlorine in the water of the well'), amount('contact_s', 'Time to let it work')],
    confirm: 'Pour it in',
  },
  headWorks: {
    hand: finish('Apron, pump', 'a'),
    answers: [
      { field: 'lift', choose: 'Pump', words: LIFTS },
      yesNo('cap', 'Cap on the casing'),
      amount('apron_m', 'Apron, from pipe to rim'),
      amount('drain_m', 'Drain, away from the well'),
    ],
    confirm: 'Build it',
  },
  record: { paper: writeRecord },
  handOver: { hand: finish('Hand over', 'e'), confirm: 'Hand over' },
  leaveToCrew: { hand: well('Leave it to the crew') },
  abandon: { noHand: 'in the menu; no careful run gives up' },
  relieveCrew: { noHand: 'comes with the start of the lesson' },
  readCaution: { noHand: 'tapped through in the briefing' },
  useHint: { noHand: 'beside the coach; no careful run asks' },
  goBack: { noHand: 'chosen in the debrief' },
  fault: { noHand: 'nobody does it' },
  takeSeat: { noHand: 'one learner plays alone' },
};
