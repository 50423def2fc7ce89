// The practice open-hole: a whole hole of the asked depth, on the ground of a setting and a seed. No score; it ends by an act or with the day.

import type { Lesson } from '../schema';
import type { Asked } from './asked';

const ROD_m = 1.5;
/** Usual height of a cell, m; a short hole has finer ones, so that some more than 40 stand over the bed at its full depth. */
const CELL_m = 0.25;
const CELLS_LEAST = 42;
/** Fourteen hours of work, s. */
const DAY_s = 50400;
/** On hand for any depth, and for each metre: plenty, so that the ground decides. ASSUMED. */
const WATER_L = 2000;
const WATER_Lm = 100;
const POWDER_kg = 4;
const POWDER_kgm = 0.1;
/** What else may go into the fluid: bentonite for a pit of good mud twice over, dug clay for one, chlorine to break the polymer. ASSUMED. */
const BENTONITE_kg = 100;
const CLAY_kg = 250;
const CHLORINE_kg = 0.5;
/** The engine burns 1.2 L an hour at most: a day's worth and a reserve. */
const PETROL_L = 20;

/** Holes that can be begun: the asked one and two more beside it. */
const HOLES = 3;

/** A bare site in the dry season: eleven hours of light, two working days and the night between, one shower on the first afternoon. ASSUMED. */
const DAY = { start_h: 7, light_h: 11 };
const BARE_DAYS_s = 86400 + 11 * 3600;
const WEATHER = { evaporation_mmDay: 6, showers: [{ from_s: 27000, to_s: 28800, rain_mmh: 20 }] };
/** The pit has to be filled from what is on hand, and it seeps. */
const BARE_WATER_L = 3000;

export function openHole({ depth_m, setting, bare }: Asked): Lesson {
  const rods = Math.ceil(depth_m / ROD_m);
  return {
    id: 'open-hole',
    version: 1,
    title: 'openHole.title',
    outcomes: ['openHole.outcome.whole', 'openHole.outcome.giveUp'],
    briefing: [
      'openHole.brief.job',
      bare ? 'openHole.brief.bare' : 'openHole.brief.kit',
      'openHole.brief.end',
      'openHole.brief.holes',
    ],
    ground: { by: 'setting', setting },
    holes: HOLES,
    ...(bare ? { day: DAY, weather: WEATHER } : {}),
    kit: { dz_m: Math.min(CELL_m, depth_m / CELLS_LEAST) },
    view: 'hole',
    senses: ['returns', 'feel', 'funnel', 'stick', 'tray', 'stem', 'pump', 'pit', 'clock'],
    gauges: [],
    hands: ['stem', 'pump', 'pit', 'fluid', 'tray', 'well', 'book'],
    opening: {
      rods: 1,
      // One rod to spare: the last one is never drilled down to its end.
      rodsInAll: rods + 1,
      starter_m: 0.3,
      pit_L: 940,
      primed: false,
      water_L: WATER_L + WATER_Lm * depth_m + (bare ? BARE_WATER_L : 0),
      powder_kg: POWDER_kg + POWDER_kgm * depth_m,
      bentonite_kg: BENTONITE_kg,
      clay_kg: CLAY_kg,
      chlorine_kg: CHLORINE_kg,
      petrol_L: PETROL_L,
      maxDepth_m: depth_m + ROD_m,
      ...(bare ? { setOut: true, unlinedPit: true } : {}),
    },
    end: { rods, depth_m, cap_s: bare ? BARE_DAYS_s : DAY_s },
    faults: [],
    pass_points: 100,
    rubric: [],
    hints: [],
    cards: [
      { id: 'begin', cue: { on: 'start' }, text: 'openHole.card.begin' },
      { id: 'back', cue: { on: 'event', event: 'returnsBack' }, text: 'openHole.card.back' },
      { id: 'stop', cue: { on: 'event', event: 'flowStopped' }, text: 'openHole.card.stop' },
      { id: 'free', cue: { on: 'event', event: 'freed' }, text: 'openHole.card.free' },
      { id: 'lost', cue: { on: 'event', event: 'returnsLost' }, text: 'openHole.card.lost' },
      { id: 'low', cue: { on: 'event', event: 'pitLow' }, text: 'openHole.card.low' },
      { id: 'buried', cue: { on: 'event', event: 'buried' }, text: 'openHole.card.buried' },
      { id: 'tight', cue: { on: 'event', event: 'tight' }, text: 'openHole.card.tight' },
      { id: 'stuck', cue: { on: 'event', event: 'stuck' }, text: 'openHole.card.stuck' },
      { id: 'hot', cue: { on: 'event', event: 'driveHot' }, text: 'openHole.card.hot' },
      { id: 'refused', cue: { on: 'event', event: 'bitRefused' }, text: 'openHole.card.refused' },
    ],
    hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'powder', 'chlorine'],
    questions: [
      { ask: 'openHole.ask.why', answers: ['openHole.ask.why.1', 'openHole.ask.why.2', 'openHole.ask.why.3'] },
    ],
  };
}
