// Exercises that the tests of the editor start from: one with something of everything in it.
import { checkExercise, newExercise, type Exercise } from '../../../../lessons/index';

export const fresh = (lesson: Exercise['lesson'] = 'first-rods'): Exercise =>
  newExercise(lesson, 'exercise-edited', 'Sand by the river');

export const full: Exercise = {
  ...fresh('open-well'),
  briefing: ['Make a well.', 'Mind the latrine.'],
  ground: {
    by: 'layers',
    layers: [
      { kind: 'topsoil', thickness_m: 0.5 },
      { kind: 'firmClay', thickness_m: 3 },
      { kind: 'mediumSand', thickness_m: 5 },
    ],
    waterTable_m: 3,
    swing_m: 1.5,
    confinedRise_m: 0,
    perched: false,
    salt: { from_m: 14, salt_gL: 5 },
    seed: 7,
  },
  site: {
    spots: [
      { id: 'A', east_m: 10, north_m: 10, rise_m: 0 },
      { id: 'B', east_m: 60, north_m: 40, rise_m: 0.5 },
    ],
    wells: [{ hamlet: 'Old Kiln', east_m: 200, north_m: 30, depth_m: 12, level_m: 4, dryLevel_m: 6 }],
    sources: [{ source: 'latrine', east_m: 40, north_m: 10, bottom_m: 2 }],
    floodLine_m: -0.2,
    overheadLine: { from_m: 5, to_m: 50, height_m: 6 },
  },
  depth_m: 15,
  stocks: { water_L: 6000, pumpWorn_frac: 0.1 },
  budget_marks: 500,
  faults: [
    { id: 'hoseBursts', from: { depth_m: 4 }, to: { depth_m: 6 }, share_frac: [0.4, 0.7] },
    { id: 'rainFills', from: { time_s: 600 }, to: { time_s: 1200 }, rain_mmh: [30, 60], time_s: [900, 1800] },
    {
      id: 'helperAway',
      from: { event: 'rodDown', delay_s: 60 },
      to: { event: 'rodDown', delay_s: 300 },
      time_s: [600, 600],
    },
    { id: 'saltyLayer', from: { depth_m: 9 }, to: { depth_m: 9 }, thickness_m: [1, 2], salt_gL: [5, 9] },
  ],
};

/** The fields that checkExercise names; empty where it takes it. */
export function wrongFields(exercise: Exercise): string[] {
  const checked = checkExercise(exercise);
  return checked.ok ? [] : checked.problems.map(({ field }) => field);
}
