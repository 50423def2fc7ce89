// The short names of the acts in a packed log. They never change their meaning: results that were packed before are read by them.

import { ACTION_NAMES, type ActionName } from '$sim';

/**
 * Frequent acts have a small letter, the others a capital and a small letter: no code begins with another one.
 * A closed record, so that the compiler asks for each new act; a new one takes a code that none has had.
 */
export const ACTION_CODES: Readonly<Record<ActionName, string>> = {
  setFeed: 'f',
  setTurning: 't',
  setThrottle: 'p',
  lift: 'l',
  lower: 'd',
  addRod: 'a',
  catchSample: 'c',
  nameSample: 'n',
  addAdditive: 'm',
  topUp: 'u',
  waitFor: 'w',
  readCaution: 'r',
  sound: 's',
  logLayer: 'y',
  record: 'b',
  workStem: 'k',
  chooseSite: 'Cs',
  setOut: 'So',
  fillPit: 'Fp',
  prime: 'Pr',
  removeRod: 'Rr',
  stir: 'St',
  feelFluid: 'Ff',
  readStick: 'Rs',
  funnelTest: 'Ft',
  addWater: 'Aw',
  digOutPit: 'Dp',
  clearStrainer: 'Cl',
  setStrainer: 'Se',
  note: 'No',
  mend: 'Me',
  stopDrilling: 'Sd',
  planWell: 'Pw',
  pullOut: 'Po',
  joinCasing: 'Jc',
  runCasing: 'Rc',
  workCasing: 'Wc',
  pourPack: 'Pp',
  placeSeal: 'Ps',
  backfill: 'Bf',
  develop: 'De',
  breakPolymer: 'Bp',
  dipWell: 'Dw',
  yieldTest: 'Yt',
  disinfect: 'Di',
  headWorks: 'Hw',
  handOver: 'Ho',
  abandon: 'Ab',
  relieveCrew: 'Re',
  leaveToCrew: 'Le',
  useHint: 'Uh',
  goBack: 'Gb',
  fault: 'Fa',
  takeSeat: 'Ts',
};

export const ACTION_OF_CODE: ReadonlyMap<string, ActionName> = new Map(
  ACTION_NAMES.map((action) => [ACTION_CODES[action], action]),
);
