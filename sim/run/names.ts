// The closed vocabularies of a run: what can be done, what can happen, why an act is refused, how a grain is named.

import type { ColourWord } from '../ground/layer';
import type { FeelWord } from '../fluid/feel';

export type { ColourWord, FeelWord };

export const ACTION_NAMES = [
  'fillPit',
  'prime',
  'setThrottle',
  'setTurning',
  'setFeed',
  'lift',
  'lower',
  'addRod',
  'removeRod',
  'workStem',
  'catchSample',
  'nameSample',
  'addAdditive',
  'stir',
  'feelFluid',
  'readStick',
  'funnelTest',
  'addWater',
  'digOutPit',
  'clearStrainer',
  'setStrainer',
  'note',
  'logLayer',
  'waitFor',
  'stopDrilling',
  'abandon',
  'readCaution',
  'useHint',
  'goBack',
] as const;
export type ActionName = (typeof ACTION_NAMES)[number];

/** What a crew calls the ground it sees in the tray. */
export const KIND_WORDS = [
  'topsoil',
  'clay',
  'silt',
  'siltySand',
  'fineSand',
  'mediumSand',
  'coarseSand',
  'gravel',
  'peat',
  'unknown',
] as const;
export type KindWord = (typeof KIND_WORDS)[number];

export type ActionGroup = 'stem' | 'pump' | 'pit' | 'fluid' | 'tray' | 'well' | 'book';

export const REFUSAL_KEYS = [
  'handsBusy',
  'pumpDry',
  'pumpRunning',
  'alreadyPrimed',
  'flowOn',
  'turningOn',
  'noMoreRods',
  'onlyOneRod',
  'rodNotDown',
  'stemStuck',
  'driveHot',
  'stemMoving',
  'atTop',
  'atBottom',
  'noReturns',
  'noWater',
  'noPowder',
  'noBentonite',
  'noClay',
  'noChlorine',
  'noPetrol',
  'noSuchSample',
  'pitFull',
  'nothingToDig',
  'badInterval',
  'practiceOnly',
  'ended',
] as const;
export type RefusalKey = (typeof REFUSAL_KEYS)[number];

export const EVENT_NAMES = [
  'primed',
  'primeLost',
  'primeFailed',
  'pumpGulps',
  'pumpWorn',
  'sealBurnt',
  'strainerBlocked',
  'pitLow',
  'flowStarted',
  'flowStopped',
  'rodDown',
  'rodAdded',
  'rodRemoved',
  'buried',
  'tight',
  'stuck',
  'freed',
  'stemOut',
  'sloughing',
  'holeClosed',
  'balled',
  'unballed',
  'bitRefused',
  'driveHot',
  'driveCool',
  'stalled',
  'restarted',
  'clear',
  'soaked',
  'returnsLost',
  'returnsBack',
  'layerChanged',
  'sampleCaught',
  'refused',
  'drillingStopped',
  'taskDone',
  'ended',
] as const;
export type EventName = (typeof EVENT_NAMES)[number];

/** Events that a crew cannot notice; they serve the instructor and the debrief only. */
export const HIDDEN_EVENTS: readonly EventName[] = ['layerChanged', 'sloughing', 'holeClosed'];
