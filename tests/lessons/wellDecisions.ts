// What goes wrong with a whole well, a decision at a time: the same in the open and in the blind one.

import { withPayload, type Decision, type Spoil } from './decisions';

/** The bit goes hardly deeper than the water falls in the driest month. */
const shallow: Spoil = (deed, _senses, memory) => {
  memory.goal_m = memory.well!.lowest_m + 1.2;
  return deed;
};

/** So long the pipes lie beside the open hole, s. */
const LATE_s = 10800;

/** The rods are out, and the crew goes for a meal before the casing. */
function late(): Spoil {
  let from_s = -1;
  return (deed, { time_s }, memory) => {
    if (deed?.action !== 'runCasing') return deed;
    if (from_s < 0) from_s = time_s;
    if (time_s >= from_s + LATE_s) return deed;
    // What was put off is no try.
    memory.well!.runs = 0;
    return null;
  };
}

/** The powder is not broken, nor is the well washed. */
const unwashed: Spoil = (deed, _senses, memory) => {
  memory.well!.rounds = 99;
  memory.well!.broken = true;
  return deed;
};

const withoutChlorine: Spoil = (deed, _senses, memory) => {
  memory.well!.disinfected = true;
  return deed;
};

/** So many times the powder that the crew would take: it stays in the ring and in the ground. */
export const powderTimes = (times: number): Spoil =>
  withPayload('addAdditive', ({ mass_g }) => ({ mass_g: (mass_g as number) * times }));

/** The hole is made at a spot that the plan warns of. */
export const atSpot = (spot: string): Decision => ({
  name: 'wrong-spot',
  item: 'siteChosen',
  reason: 'reason.siteChosen.line',
  spoil: withPayload('chooseSite', () => ({ spot })),
});

export const WELL_DECISIONS: readonly Decision[] = [
  { name: 'too-shallow', item: 'screenPlace', reason: 'reason.screenPlace.fine', spoil: shallow },
  {
    name: 'wide-slots',
    item: 'slotFits',
    reason: 'reason.slotFits.wide',
    spoil: withPayload('planWell', () => ({ slotWidth_mm: 3, pack: 'none', cloth: 'none' })),
  },
  { name: 'casing-late', item: 'casingSoon', reason: 'reason.casingSoon.lost', spoil: late() },
  {
    name: 'sealed-with-cuttings',
    item: 'sealMade',
    reason: 'reason.sealMade.none',
    spoil: withPayload('planWell', () => ({ seal: 'cuttings' })),
  },
  { name: 'not-washed', item: 'developed', reason: 'reason.developed.cloudy', spoil: unwashed },
  {
    name: 'not-disinfected',
    item: 'disinfected',
    reason: 'reason.disinfected.none',
    spoil: withoutChlorine,
    essential: true,
  },
];
