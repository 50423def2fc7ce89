// The form of an exercise: what an instructor changes about one of the lessons. Whatever is left out is as in the lesson.

import * as v from 'valibot';
import { SETTINGS, SOIL_KINDS } from '$sim';
import { LESSON_ORDER } from '../contents';
import { FaultSchema } from '../faultSchema';
import { GAUGE_IDS, SENSE_IDS, VIEW_LEVELS } from '../levels';
import { ITEM_IDS } from '../rubric/ids';
import { SiteSchema } from '../siteSchema';

export const EXERCISE_FORMAT = 'hand-jetting-exercise';
export const EXERCISE_FORMAT_VERSION = 1;
/** Longest exercise that is read, bytes of its file. */
export const EXERCISE_LIMIT = 64 * 1024;
/** Most grounds that one exercise holds: a class of thirty has six attempts each. */
export const MOST_SEEDS = 200;

const Count = (min: number, max: number) => v.pipe(v.number(), v.integer(), v.minValue(min), v.maxValue(max));
const Between = (min: number, max: number) => v.pipe(v.number(), v.finite(), v.minValue(min), v.maxValue(max));
const Seed = Count(0, 4294967295);
/** One line that is shown as it is written. Control signs would break lists and tables. */
const Line = (most: number) =>
  v.pipe(v.string(), v.maxLength(most), v.regex(/^[^\u0000-\u001f\u007f]*$/, 'one line without control signs'));

const Layer = v.strictObject({ kind: v.picklist(SOIL_KINDS), thickness_m: Between(0.1, 60) });

const ExerciseGround = v.variant('by', [
  /** The lesson's own grounds. */
  v.strictObject({ by: v.literal('lesson') }),
  /** One of the landscapes; each learner another ground. */
  v.strictObject({ by: v.literal('setting'), setting: v.picklist(SETTINGS) }),
  /** Laid out by hand from the top down, the same for everybody; the last layer goes on to the bottom. */
  v.strictObject({
    by: v.literal('layers'),
    layers: v.pipe(v.array(Layer), v.minLength(1), v.maxLength(40)),
    /** Depth of the water now, how much lower it falls by the end of the dry season, how far confined water stands above it. */
    waterTable_m: Between(0, 60),
    swing_m: Between(0, 20),
    confinedRise_m: Between(-10, 10),
    /** Water stands on tight layers above the table. */
    perched: v.boolean(),
    /** Salt from this depth down; null: fresh everywhere. */
    salt: v.nullable(v.strictObject({ from_m: Between(0, 60), salt_gL: Between(1, 40) })),
    /** Varies what no layer says: the grains within their kind, the plan where none is laid out. */
    seed: Seed,
  }),
]);

/** What is on hand at the start; left out: as in the lesson. */
const Stocks = v.strictObject({
  water_L: v.exactOptional(Between(0, 20000)),
  powder_kg: v.exactOptional(Between(0, 50)),
  bentonite_kg: v.exactOptional(Between(0, 500)),
  clay_kg: v.exactOptional(Between(0, 2000)),
  chlorine_kg: v.exactOptional(Between(0, 50)),
  petrol_L: v.exactOptional(Between(0, 50)),
  pit_L: v.exactOptional(Between(0, 3000)),
  pumpWorn_frac: v.exactOptional(Between(0, 0.5)),
});

const Bands = v.record(v.string(), Between(0, 1e6));

export const ExerciseSchema = v.strictObject({
  format: v.literal(EXERCISE_FORMAT),
  version: v.literal(EXERCISE_FORMAT_VERSION),
  /** Version of the physics it was made with. */
  sim: v.pipe(v.string(), v.maxLength(20)),
  /** Stays when the exercise is edited, so that its grounds stay; the edition grows with each change that is given out. */
  id: v.pipe(v.string(), v.regex(/^exercise-[a-z0-9]{4,20}$/, 'exercise- and 4 to 20 small letters or digits')),
  edition: Count(1, 9999),
  title: v.pipe(
    Line(80),
    v.check((text) => text.trim() !== '', 'a title'),
  ),
  briefing: v.pipe(v.array(Line(300)), v.maxLength(10)),
  lesson: v.picklist(LESSON_ORDER),
  ground: ExerciseGround,
  /** The year is at its driest. Left out: as the ground is drawn. */
  season: v.exactOptional(v.literal('dry')),
  site: v.exactOptional(SiteSchema),
  /** How deep the hole is to go, m; of a whole well, how deep there are rods for. Left out: as in the lesson. */
  depth_m: v.exactOptional(Between(1.5, 45)),
  stocks: Stocks,
  /** What the job may cost, marks; left out: nobody counts. */
  budget_marks: v.exactOptional(Between(1, 100000)),
  view: v.picklist(VIEW_LEVELS),
  senses: v.array(v.picklist(SENSE_IDS)),
  gauges: v.pipe(v.array(v.picklist(GAUGE_IDS)), v.maxLength(7)),
  /** Highest level of hint there is, 0: none. */
  hints: v.picklist([0, 1, 2, 3]),
  /** Coaching cards as the work goes on. */
  coached: v.boolean(),
  faults: v.pipe(v.array(FaultSchema), v.maxLength(12)),
  /** The instructor may let things go wrong by hand. */
  live: v.boolean(),
  /** Job seconds that the learner has. */
  cap_s: Count(300, 345600),
  pass_points: Count(1, 100),
  /** Points of each item of the lesson's rubric, 1 and more; they sum to 100. Left out or 0: not judged. */
  weights: v.record(v.picklist(ITEM_IDS), v.union([v.literal(0), Between(1, 100)])),
  /** Figures by which an item judges, where they are not the lesson's. */
  bands: v.exactOptional(v.record(v.picklist(ITEM_IDS), Bands)),
  /** Grounds found to be equally hard, by their numbers, and how far apart they are in points. Left out: any ground. */
  pool: v.exactOptional(
    v.strictObject({
      sim: v.pipe(v.string(), v.maxLength(20)),
      seeds: v.pipe(
        v.array(Seed),
        v.minLength(1),
        v.maxLength(MOST_SEEDS),
        v.check((seeds) => new Set(seeds).size === seeds.length, 'each ground once'),
      ),
      spread_points: Between(0, 100),
    }),
  ),
});

export type Exercise = v.InferOutput<typeof ExerciseSchema>;
export type ExerciseLayer = v.InferOutput<typeof Layer>;
