// What must hold of a lesson for its score to be believed.
import type { Lesson } from '$lessons';
import type { Claim } from '../sweep/sweep';
import type { CrewRun } from './crewRuns';

export const BOUNDS = {
  /** Careful earns so much on so many of the grounds, and passes on all. */
  careful: 85,
  careful_frac: 0.9,
  /** The middle of other lies so near to that of careful. */
  other: 10,
  steady: [60, 85],
  green: 45,
  random: 30,
  /** Share of what is done by chance that is accepted. */
  accepted_frac: 0.5,
  /** Water, grains, substances, relative. */
  lost: 1e-9,
} as const;

const OWN_ENDS = [
  'outcome.reached',
  'outcome.handedOver',
  'outcome.drilled',
  'outcome.stoppedShort',
  'outcome.givenUp',
];

/** The value at a share of the way from the least to the most; NaN of none. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  if (sorted.length === 0) return NaN;
  const at = share * (sorted.length - 1);
  const low = sorted[Math.floor(at)]!;
  return low + (sorted[Math.ceil(at)]! - low) * (at - Math.floor(at));
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);

export const ofCrew = (runs: readonly CrewRun[], crew: string): CrewRun[] => runs.filter((run) => run.crew === crew);
const scoresOf = (runs: readonly CrewRun[], crew: string): number[] => ofCrew(runs, crew).map(({ score }) => score);
const seedsOf = (runs: readonly CrewRun[]): string => runs.map(({ seed }) => seed).join(', ');
const shown = (value: number): string => String(Math.round(value * 10) / 10);

function scoreClaims(runs: readonly CrewRun[]): Claim[] {
  const careful = ofCrew(runs, 'careful');
  const low = careful.filter(({ score }) => score < BOUNDS.careful);
  const failed = careful.filter(({ passed }) => !passed);
  const [best, other, steady, green, random] = ['careful', 'other', 'steady', 'green', 'random'].map((crew) =>
    median(scoresOf(runs, crew)),
  ) as [number, number, number, number, number];
  const [least, most] = BOUNDS.steady;
  return [
    {
      text: `careful has ${BOUNDS.careful} and more on ${careful.length - low.length} of ${careful.length} (wanted: ${Math.ceil(BOUNDS.careful_frac * careful.length)})${low.length > 0 ? `; below on ${seedsOf(low)}` : ''}`,
      holds: careful.length > 0 && careful.length - low.length >= BOUNDS.careful_frac * careful.length,
    },
    {
      text: `careful passes on ${careful.length - failed.length} of ${careful.length} (wanted: all)${failed.length > 0 ? `; not on ${seedsOf(failed)}` : ''}`,
      holds: careful.length > 0 && failed.length === 0,
    },
    {
      text: `other's middle ${shown(other)} lies within ${BOUNDS.other} of careful's ${shown(best)}`,
      holds: Math.abs(best - other) <= BOUNDS.other,
    },
    {
      text: `steady's middle ${shown(steady)} lies between ${least} and ${most}`,
      holds: steady >= least && steady <= most,
    },
    { text: `green's middle ${shown(green)} is at most ${BOUNDS.green}`, holds: green <= BOUNDS.green },
    { text: `random's middle ${shown(random)} is at most ${BOUNDS.random}`, holds: random <= BOUNDS.random },
  ];
}

function soundClaims(runs: readonly CrewRun[]): Claim[] {
  const unended = runs.filter(({ outcome }) => !OWN_ENDS.includes(outcome));
  const chance = ofCrew(runs, 'random');
  const acts = chance.reduce((sum, run) => sum + run.acts, 0);
  const refused = chance.reduce((sum, run) => sum + run.refused, 0);
  const worst = Math.max(...runs.map(({ lost }) => lost));
  const again = runs.filter(({ reproduced }) => reproduced !== null);
  const same = again.filter(({ reproduced }) => reproduced).length;
  const passed = [...ofCrew(runs, 'green'), ...chance].filter((run) => run.passed);
  return [
    {
      text: `${runs.length - unended.length} of ${runs.length} end by an act of the crew (wanted: all)${unended.length > 0 ? `; not ${unended.map(({ crew, seed }) => `${crew} ${seed}`).join(', ')}` : ''}`,
      holds: unended.length === 0,
    },
    {
      text: `neither green nor random passes${passed.length > 0 ? `; but ${passed.map(({ crew, seed }) => `${crew} ${seed}`).join(', ')}` : ''}`,
      holds: passed.length === 0,
    },
    {
      text: `of ${acts} acts of chance ${acts - refused} are accepted (wanted: half)`,
      holds: acts - refused >= BOUNDS.accepted_frac * acts,
    },
    {
      text: `${same} of ${again.length} are reproduced from their run file (wanted: all)`,
      holds: again.length > 0 && same === again.length,
    },
    {
      text: `at most ${worst.toExponential(1)} of anything is lost (allowed: ${BOUNDS.lost})`,
      holds: worst <= BOUNDS.lost,
    },
  ];
}

/** Care shows in the water: careful hands every well over, and its middle well is better than green's. */
function wellClaims(runs: readonly CrewRun[]): Claim[] {
  const careful = ofCrew(runs, 'careful');
  const green = ofCrew(runs, 'green');
  const over = careful.filter(({ outcome }) => outcome === 'outcome.handedOver').length;
  const middle = (own: readonly CrewRun[], figure: (run: CrewRun) => number): number => median(own.map(figure));
  const sandOf = (own: readonly CrewRun[]): number =>
    median(own.map(({ sand_mgL }) => sand_mgL).filter((sand_mgL) => sand_mgL !== null));
  const [good_Lmin, bad_Lmin] = [careful, green].map((own) => middle(own, ({ yield_Lmin }) => yield_Lmin)) as [
    number,
    number,
  ];
  const [good_d, bad_d] = [careful, green].map((own) => middle(own, ({ leak_d }) => leak_d)) as [number, number];
  const [good_mgL, bad_mgL] = [sandOf(careful), sandOf(green)];
  return [
    { text: `careful hands over ${over} of ${careful.length} wells (wanted: all)`, holds: over === careful.length },
    {
      text: `middle yield in the driest month: careful ${shown(good_Lmin)} L/min, green ${shown(bad_Lmin)} (wanted: more)`,
      holds: good_Lmin > bad_Lmin,
    },
    {
      text: `middle time of a leak along the casing: careful ${shown(good_d)} days, green ${shown(bad_d)} (wanted: longer)`,
      holds: good_d > bad_d,
    },
    {
      text: `middle sand of the wells that give water: careful ${shown(good_mgL)} mg/L, green ${shown(bad_mgL)} (wanted: less, or no well of green's gives any)`,
      holds: Number.isNaN(bad_mgL) ? good_mgL >= 0 : good_mgL < bad_mgL,
    },
  ];
}

/** All that is wanted of a lesson; of a whole well also that care shows in its water. */
export function claimsOf(lesson: Lesson, runs: readonly CrewRun[]): Claim[] {
  const claims = [...scoreClaims(runs), ...soundClaims(runs)];
  return isWholeWell(lesson) ? [...claims, ...wellClaims(runs)] : claims;
}

/** From the first rod to the hand-over, all of it the learner's. */
export const isWholeWell = (lesson: Lesson): boolean =>
  lesson.well !== undefined &&
  lesson.prologue === undefined &&
  lesson.leaves === undefined &&
  lesson.end.at === undefined;
