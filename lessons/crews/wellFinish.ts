// How a crew washes, tests, disinfects and hands the well over.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { mayTry, type Patience } from './patience';
import { tryAgain } from './wellCasing';
import type { WellMemory } from './wellMemory';
import { STYLES } from './wellStyle';

/** A surface pump is fitted where the lowest water stands no deeper than this, drawdown still to come, m; else a deep one. Rule of thumb of 7 m. */
const SUCTION_m = 5.5;
/** What a hand pump gives, L/min: a test is run at that. */
const HAND_PUMP_Lmin = 14;
/** Chlorine is pumped out in goes of so long, s, at most so many. */
const RINSE_s = 1800;
const RINSES = 12;
const SET_CAP_s = 172800;

const liftFor = (memory: WellMemory): string => (memory.lowest_m <= SUCTION_m ? 'suction' : 'deepPiston');

/** Clean enough to stop washing: a clear jar without sand. */
function clean({ well }: Senses): boolean {
  const water = well!.water;
  return water !== null && water.jar === 'clear' && (water.sand === 'none' || water.sand === 'few');
}

/** To the centimetre, as a tape is read. */
const read_m = (depth_m: number): string => `${Math.round(depth_m * 100) / 100} m`;

/** What is written into a field of the record: what was seen, or at least that it was thought of. */
function text(field: string, senses: Senses): string {
  const { dip, test, water } = senses.well!;
  switch (field) {
    case 'waterMet':
      return dip === null ? 'not dipped' : `stands at ${read_m(dip.level_m)}`;
    case 'waterLook':
      return water === null ? 'not seen' : `${water.jar}, sand: ${water.sand}`;
    case 'drilling':
      return `${read_m(senses.stem.bottom_m)} with the hand kit`;
    case 'laboratory':
      return 'sample to be taken before anybody drinks';
    case 'remarks':
      return test === null ? 'not tested' : `lowest level of the test ${read_m(test.lowest_m)}`;
    default:
      return `${field}: asked and noted`;
  }
}

/** Breaking the powder and washing. */
export function washDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | null | undefined {
  const style = STYLES[memory.style];
  if (style.breaks && !memory.broken) {
    if (!mayTry(patience, senses, 'breakPolymer')) return null;
    memory.broken = true;
    return does('breakPolymer', { ...style.breaks });
  }
  // Each method once at least, then over again until the water is clean.
  if (memory.rounds >= style.rounds || (memory.rounds >= style.washes.length && clean(senses))) return undefined;
  if (!mayTry(patience, senses, 'develop')) return null;
  return does('develop', style.washes[memory.rounds++ % style.washes.length]!);
}

function test(memory: WellMemory, patience: Patience, senses: Senses): Deed | null | undefined {
  const style = STYLES[memory.style];
  if (!style.test) return undefined;
  if (!memory.dipped) {
    memory.dipped = true;
    return does('dipWell');
  }
  if (memory.tests > 0) return undefined;
  if (!mayTry(patience, senses, 'yieldTest')) return null;
  memory.tests++;
  return does('yieldTest', { lift: liftFor(memory), rate1_Lmin: HAND_PUMP_Lmin, ...style.test });
}

function disinfect(memory: WellMemory, patience: Patience, senses: Senses): Deed | null | undefined {
  const style = STYLES[memory.style];
  if (style.disinfect && !memory.disinfected) {
    if (!mayTry(patience, senses, 'disinfect')) return null;
    memory.disinfected = true;
    return does('disinfect', { ...style.disinfect });
  }
  const smells = senses.well!.smellsOfChlorine && memory.style !== 'green';
  if (!smells || memory.rinses >= RINSES) return undefined;
  if (!mayTry(patience, senses, 'develop')) return null;
  memory.rinses++;
  return does('develop', { method: 'overPump', time_s: RINSE_s, rate_Lmin: HAND_PUMP_Lmin });
}

/** A crew that knows lets its seal swell or set before anything is done to the well. */
export function setDeed(memory: WellMemory, _patience: Patience, senses: Senses): Deed | undefined {
  const waits = memory.style !== 'green' && senses.well!.seals.some((seal) => !seal.set);
  return waits && tryAgain(memory, 'set') ? does('waitFor', { until: 'set', cap_s: SET_CAP_s }) : undefined;
}

/** From the washed well to the hand-over. */
export function finishDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | null {
  const style = STYLES[memory.style];
  for (const step of [test, disinfect]) {
    const deed = step(memory, patience, senses);
    if (deed !== undefined) return deed;
  }
  const { headWorks } = senses.well!;
  if (!memory.headed && headWorks === null) {
    if (!mayTry(patience, senses, 'headWorks')) return null;
    memory.headed = !tryAgain(memory, 'headWorks');
    return does('headWorks', { ...style.headWorks, lift: liftFor(memory) });
  }
  const field = style.record[memory.recorded];
  if (field !== undefined) {
    memory.recorded++;
    return does('record', { field, text: text(field, senses) });
  }
  if (!mayTry(patience, senses, 'handOver')) return null;
  return tryAgain(memory, 'handOver') ? does('handOver') : does('abandon');
}
