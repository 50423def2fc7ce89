// The form of a lesson file. A lesson is data only; whatever it names (words, rubric items, hazards, soils) must exist.

import * as v from 'valibot';
import {
  ACTION_NAMES,
  CASING_NAMES,
  CLOTH_NAMES,
  DRILLING_PUMP_NAMES,
  PACK_NAMES,
  SEAL_NAMES,
  SETTINGS,
  SOIL_KINDS,
  WELL_PUMP_NAMES,
} from '$sim';
import { isWordKey, type WordKey } from './words/index';
import { HAZARD_IDS } from './hazards';
import { FaultSchema } from './faultSchema';
import { NOTICED_EVENTS } from './noticed';
import { GAUGE_IDS, HAND_GROUPS, SENSE_IDS, VIEW_LEVELS } from './levels';
import { ITEM_IDS } from './rubric/ids';
import { SiteSchema } from './siteSchema';
import type { Exercise } from './exercises/exerciseSchema';

const Id = v.pipe(
  v.string(),
  v.regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'an id of small letters, digits and hyphens'),
  v.maxLength(40),
);
const Word = v.custom<WordKey>(isWordKey, 'a key of the message files');
const Count = (min: number, max: number) => v.pipe(v.number(), v.integer(), v.minValue(min), v.maxValue(max));
const Between = (min: number, max: number) => v.pipe(v.number(), v.finite(), v.minValue(min), v.maxValue(max));

/** Smallest and largest value; the seed chooses between them. */
const Range = (min: number, max: number) =>
  v.pipe(
    v.tuple([Between(min, max), Between(min, max)]),
    v.check(([low, high]) => low <= high, 'the smaller number first'),
  );

/** Crews that may have worked before. */
const CREW_NAMES = ['careful', 'steady', 'green'] as const;

const Recipe = v.strictObject({
  layers: v.pipe(
    v.array(v.strictObject({ kind: v.picklist(SOIL_KINDS), thickness_m: Range(0.05, 60) })),
    v.minLength(1),
    v.maxLength(40),
  ),
  waterTable_m: Range(0, 60),
  /** How much lower the water falls in the driest season, how far confined water rises, how high floods come, salt below. */
  swing_m: v.exactOptional(Range(0, 20)),
  confinedRise_m: v.exactOptional(Range(-10, 10)),
  perched_frac: v.exactOptional(Between(0, 1)),
  floodLine_m: v.exactOptional(Range(-20, 10)),
  salt: v.exactOptional(
    v.strictObject({
      brackish_m: Range(0, 60),
      brackish_gL: Range(0, 40),
      salt_m: Range(0, 60),
      salt_gL: Range(0, 40),
    }),
  ),
});

const Ground = v.variant('by', [
  /** One of the recipes, chosen by the seed, so that learners cannot tell each other the order of the layers. */
  v.strictObject({
    by: v.literal('recipe'),
    recipes: v.pipe(v.array(Recipe), v.minLength(1), v.maxLength(12)),
    /** The number of the ground where all stand on the same one; left out: each run's own. */
    seed: v.exactOptional(Count(0, 4294967295)),
  }),
  v.strictObject({ by: v.literal('setting'), setting: v.picklist(SETTINGS) }),
]);

const Opening = v.strictObject({
  rods: Count(1, 40),
  rodsInAll: Count(1, 60),
  starter_m: Between(0.05, 3),
  pit_L: Between(0, 3000),
  primed: v.boolean(),
  water_L: Between(0, 20000),
  powder_kg: Between(0, 50),
  bentonite_kg: v.exactOptional(Between(0, 500)),
  clay_kg: v.exactOptional(Between(0, 2000)),
  chlorine_kg: v.exactOptional(Between(0, 50)),
  petrol_L: Between(0, 50),
  setOut: v.optional(v.boolean()),
  unlinedPit: v.optional(v.boolean()),
  pumpWorn_frac: v.optional(Between(0, 0.5)),
  maxDepth_m: Between(1, 60),
});

const Cue = v.variant('on', [
  v.strictObject({ on: v.literal('start') }),
  v.strictObject({ on: v.literal('event'), event: v.picklist(NOTICED_EVENTS) }),
  v.strictObject({ on: v.literal('action'), action: v.picklist(ACTION_NAMES) }),
  v.strictObject({ on: v.literal('depth'), depth_m: Between(0, 60) }),
]);

/** What there is to make a well of, by the ids of the simulator. */
const WellKit = v.strictObject({
  casings: v.pipe(v.array(v.picklist(CASING_NAMES)), v.minLength(1)),
  cloths: v.array(v.picklist(CLOTH_NAMES)),
  packs: v.array(v.picklist(PACK_NAMES)),
  seals: v.array(v.picklist(SEAL_NAMES)),
  lifts: v.pipe(v.array(v.picklist(WELL_PUMP_NAMES)), v.minLength(1)),
  bits_mm: v.array(Count(75, 150)),
  pumps: v.array(v.picklist(DRILLING_PUMP_NAMES)),
  /** People who will drink from the well. */
  people: Count(1, 2000),
});

const Item = v.strictObject({
  item: v.picklist(ITEM_IDS),
  weight: Between(1, 100),
  /** Who earns less than half of it has not passed. */
  essential: v.exactOptional(v.literal(true)),
  /** It earns in the measure of this other item of the lesson: what is right about a thing in the wrong place. */
  inMeasureOf: v.exactOptional(v.picklist(ITEM_IDS)),
  /** The figures the item judges by, by name, units in the names. */
  bands: v.record(v.string(), v.pipe(v.number(), v.finite())),
});

/**
 * Another crew has worked before, on the very ground of the seed: up to this event, to this depth, or to before it would do this act. Its acts
 * stand in the log. `seal`: it was told to leave the seal to whoever comes after.
 */
const Prologue = v.strictObject({
  crew: v.picklist(CREW_NAMES),
  until: v.union([
    v.strictObject({ event: v.picklist(NOTICED_EVENTS) }),
    v.strictObject({ depth_m: Between(0.5, 60) }),
    v.strictObject({ before: v.picklist(ACTION_NAMES) }),
  ]),
  seal: v.exactOptional(v.literal('left')),
});

/** From this event on the rest of the work may be left to a crew. */
const Leaves = v.strictObject({ crew: v.picklist(['careful', 'steady']), from: v.picklist(NOTICED_EVENTS) });

/** What the debrief asks before it shows anything, with answers to tap; several may fit. */
const Question = v.strictObject({ ask: Word, answers: v.pipe(v.array(Word), v.minLength(2), v.maxLength(8)) });

export const LessonSchema = v.strictObject({
  id: Id,
  version: Count(1, 9999),
  title: Word,
  outcomes: v.pipe(v.array(Word), v.minLength(1), v.maxLength(5)),
  briefing: v.pipe(v.array(Word), v.minLength(1), v.maxLength(10)),
  ground: Ground,
  /** The year is at its driest: water stands now where it falls to. */
  season: v.exactOptional(v.literal('dry')),
  /** A plan laid out by hand; left out: the seed draws one. */
  site: v.exactOptional(SiteSchema),
  /** Differences from the demo kit, by name. */
  /** Holes that can be begun one after the other, each in its own ground; left out: one. */
  holes: v.optional(Count(1, 5)),
  /** Left out: dry and still. */
  weather: v.optional(
    v.strictObject({
      evaporation_mmDay: Between(0, 20),
      showers: v.array(v.strictObject({ from_s: Count(0, 604800), to_s: Count(0, 604800), rain_mmh: Between(0, 200) })),
    }),
  ),
  /** Left out: always light. */
  day: v.optional(
    v.strictObject({ start_h: Between(0, 12), light_h: Between(1, 16), from_h: v.optional(Between(0, 24)) }),
  ),
  kit: v.record(v.string(), v.pipe(v.number(), v.finite())),
  /** Areas of the two chambers and the depth of both; left out: the usual pit. */
  pit: v.exactOptional(
    v.strictObject({ settling_m2: Between(0.1, 3), suction_m2: Between(0.1, 3), depth_m: Between(0.3, 1.5) }),
  ),
  view: v.picklist(VIEW_LEVELS),
  senses: v.array(v.picklist(SENSE_IDS)),
  gauges: v.pipe(v.array(v.picklist(GAUGE_IDS)), v.maxLength(7)),
  hands: v.pipe(v.array(v.picklist(HAND_GROUPS)), v.minLength(1)),
  opening: Opening,
  /** With it the job goes on from the hole to the finished well, and ends when that is handed over (or as `end.at` says). */
  well: v.exactOptional(WellKit),
  /** With a well, rods and depth are the most there is room for: the crew decides how deep it goes. */
  end: v.strictObject({
    rods: Count(1, 60),
    depth_m: Between(0.5, 60),
    /** Counts from where the learner takes over. */
    cap_s: Count(60, 345600),
    /** Left out: handed over where there is a well kit, else when drilling is stopped. */
    at: v.exactOptional(v.picklist(['stopped', 'handedOver'])),
  }),
  prologue: v.exactOptional(Prologue),
  leaves: v.exactOptional(Leaves),
  /** What goes wrong, and between which moments the seed lets it come. */
  faults: v.pipe(v.array(FaultSchema), v.maxLength(12)),
  /** An instructor may let things go wrong by hand. */
  live: v.exactOptional(v.literal(true)),
  pass_points: Count(1, 100),
  rubric: v.pipe(
    v.array(Item),
    v.minLength(1),
    v.check(
      (items) => Math.abs(items.reduce((sum, item) => sum + item.weight, 0) - 100) < 1e-9,
      'weights that sum to 100',
    ),
    v.check((items) => new Set(items.map((item) => item.item)).size === items.length, 'each item once'),
  ),
  hints: v.array(v.strictObject({ id: Id, ask: Word, levels: v.tuple([Word, Word, Word]) })),
  /** Hints go to this level only; left out: to the third. */
  hintLevels: v.exactOptional(v.picklist([1, 2])),
  cards: v.array(
    v.strictObject({
      id: Id,
      cue: Cue,
      text: Word,
      /** The act that the sentence speaks of: its hand is marked until it is done. */
      hand: v.exactOptional(v.picklist(ACTION_NAMES)),
    }),
  ),
  hazards: v.pipe(v.array(v.picklist(HAZARD_IDS)), v.minLength(1)),
  questions: v.pipe(v.array(Question), v.minLength(1), v.maxLength(5)),
});

/** A practice has the form of a lesson, but nothing to be judged by. */
export const PracticeSchema = v.strictObject({
  ...LessonSchema.entries,
  rubric: v.pipe(v.array(Item), v.maxLength(0)),
});

/** A lesson; where an instructor made it, with the exercise that it comes from. */
export type Lesson = v.InferOutput<typeof LessonSchema> & { readonly exercise?: Exercise };
export type LessonItem = Lesson['rubric'][number];

export type LessonCheck =
  | { readonly ok: true; readonly lesson: Lesson }
  | { readonly ok: false; readonly problems: readonly { readonly field: string; readonly problem: string }[] };

/** Checks a lesson from outside. Each problem names its field, as in rubric.3.weight; never throws. */
export function checkLesson(value: unknown): LessonCheck {
  const result = v.safeParse(LessonSchema, value);
  if (result.success) return { ok: true, lesson: result.output };
  return {
    ok: false,
    problems: result.issues.map((issue) => ({ field: v.getDotPath(issue) ?? 'lesson', problem: issue.message })),
  };
}
