// Any exercise that the form allows: every field at its limits and between them, what hangs together made to fit.
import fc, { type Arbitrary } from 'fast-check';
import { SETTINGS, SOIL_KINDS } from '$sim';
import {
  baseOf,
  EXERCISE_FORMAT,
  EXERCISE_FORMAT_VERSION,
  GAUGE_IDS,
  HAMLETS,
  LESSON_ORDER,
  PLAN_m,
  SENSE_IDS,
  SOURCES,
  SPOT_IDS,
  VIEW_LEVELS,
  type Exercise,
  type ItemId,
  type LessonFault,
} from '$lessons';
import { NOTICED_EVENTS } from '../../../lessons/noticed';

type Of<Key extends keyof Exercise> = NonNullable<Exercise[Key]>;

/** Mostly what somebody would set, now and then the odd numbers that lie between. */
const between = (min: number, max: number): Arbitrary<number> =>
  fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min: 0, max: 1000 }).map((part) => min + ((max - min) * part) / 1000) },
    { weight: 1, arbitrary: fc.double({ min, max, noNaN: true }) },
  );
const count = (min: number, max: number): Arbitrary<number> => fc.integer({ min, max });
const maybe = <T>(one: Arbitrary<T>): Arbitrary<T | undefined> => fc.option(one, { nil: undefined });
const some = <T>(of: readonly T[]): Arbitrary<T[]> => fc.subarray([...of]);
const ordered = (min: number, max: number): Arbitrary<[number, number]> =>
  fc.tuple(between(min, max), between(min, max)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)]);

/** A field that is left out where it is undefined, as in a file. */
function bare<T extends object>(whole: T): { [Key in keyof T]: Exclude<T[Key], undefined> } {
  return Object.fromEntries(Object.entries(whole).filter(([, value]) => value !== undefined)) as never;
}

const line = (most: number): Arbitrary<string> =>
  fc
    .string({ maxLength: most, unit: 'grapheme' })
    .map((text) => text.replace(/[\u0000-\u001f\u007f]/g, '').slice(0, most));

const layers: Arbitrary<Of<'ground'>> = fc
  .record({
    layers: fc.array(fc.record({ kind: fc.constantFrom(...SOIL_KINDS), thickness_m: between(0.1, 60) }), {
      minLength: 1,
      maxLength: 40,
    }),
    waterTable_m: between(0, 60),
    swing_m: between(0, 20),
    confinedRise_m: between(-10, 10),
    perched: fc.boolean(),
    salt: fc.option(fc.record({ from_m: between(0.01, 60), salt_gL: between(1, 40) })),
    seed: count(0, 4294967295),
  })
  .map((ground) => ({ by: 'layers', ...ground }));

const ground: Arbitrary<Of<'ground'>> = fc.oneof(
  fc.constant({ by: 'lesson' } as const),
  fc.constantFrom(...SETTINGS).map((setting) => ({ by: 'setting', setting }) as const),
  layers,
);

const place = { east_m: between(0, PLAN_m.width), north_m: between(0, PLAN_m.breadth) };
const site: Arbitrary<Of<'site'>> = fc.record({
  spots: fc
    .tuple(
      fc.subarray([...SPOT_IDS], { minLength: 1 }),
      fc.array(fc.record({ ...place, rise_m: between(0, 10) }), { minLength: 4, maxLength: 4 }),
    )
    .map(([ids, places]) => ids.map((id, i) => ({ id, ...places[i]! }))),
  wells: fc
    .tuple(
      some(HAMLETS),
      fc.array(
        fc.tuple(
          fc.record({ east_m: between(-2000, 2000), north_m: between(-2000, 2000), depth_m: between(1, 60) }),
          ordered(0.2, 60),
        ),
        { minLength: HAMLETS.length, maxLength: HAMLETS.length },
      ),
    )
    .map(([hamlets, wells]) =>
      hamlets.map((hamlet, i) => {
        const [about, [level_m, dryLevel_m]] = wells[i]!;
        return { hamlet, ...about, level_m, dryLevel_m };
      }),
    ),
  sources: fc.array(fc.record({ source: fc.constantFrom(...SOURCES), ...place, bottom_m: between(0, 10) }), {
    maxLength: 6,
  }),
  floodLine_m: between(-20, 10),
  overheadLine: fc.option(
    fc.record({ from_m: between(0, PLAN_m.breadth), to_m: between(0, PLAN_m.breadth), height_m: between(3, 30) }),
  ),
});

const inDepth = ordered(0, 60).map(([from, to]) => ({ from: { depth_m: from }, to: { depth_m: to } }));
const inTime = fc.oneof(
  inDepth,
  fc.tuple(count(0, 345600), count(0, 345600)).map(([a, b]) => ({
    from: { time_s: Math.min(a, b) },
    to: { time_s: Math.max(a, b) },
  })),
  // Soon, so that it comes while somebody looks.
  count(0, 600).map((time_s) => ({ from: { time_s }, to: { time_s } })),
  fc.tuple(fc.constantFrom(...NOTICED_EVENTS), count(0, 86400), count(0, 86400)).map(([event, a, b]) => ({
    from: { event, delay_s: Math.min(a, b) },
    to: { event, delay_s: Math.max(a, b) },
  })),
);
const shareRange = maybe(ordered(0.05, 0.9));
const timeRange = maybe(ordered(1, 36000));

const fault: Arbitrary<LessonFault> = fc.oneof(
  inTime.map((when) => ({ id: 'pumpStops', ...when })),
  inTime.map((when) => ({ id: 'lostTool', ...when })),
  fc.tuple(inTime, shareRange).map(([when, share_frac]) => bare({ id: 'hoseBursts', ...when, share_frac })),
  fc.tuple(inTime, shareRange).map(([when, share_frac]) => bare({ id: 'weakPowder', ...when, share_frac })),
  fc.tuple(inTime, timeRange).map(([when, time_s]) => bare({ id: 'helperAway', ...when, time_s })),
  fc
    .tuple(inTime, maybe(ordered(1, 200)), timeRange)
    .map(([when, rain_mmh, time_s]) => bare({ id: 'rainFills', ...when, rain_mmh, time_s })),
  fc.tuple(inDepth, ordered(0.05, 3)).map(([when, thickness_m]) => ({ id: 'cobbles', ...when, thickness_m })),
  fc
    .tuple(inDepth, ordered(0.25, 20), ordered(1, 40))
    .map(([when, thickness_m, salt_gL]) => ({ id: 'saltyLayer', ...when, thickness_m, salt_gL })),
) as Arbitrary<LessonFault>;

const stocks: Arbitrary<Of<'stocks'>> = fc
  .record({
    water_L: maybe(between(0, 20000)),
    powder_kg: maybe(between(0, 50)),
    bentonite_kg: maybe(between(0, 500)),
    clay_kg: maybe(between(0, 2000)),
    chlorine_kg: maybe(between(0, 50)),
    petrol_L: maybe(between(0, 50)),
    pit_L: maybe(between(0, 3000)),
    pumpWorn_frac: maybe(between(0, 0.5)),
  })
  .map(bare);

/** Points for some of the items, at least one each, that sum to 100. */
function weightsOf(items: readonly ItemId[]): Arbitrary<Of<'weights'>> {
  return fc.subarray([...items], { minLength: 1 }).chain((judged) =>
    fc.array(between(0.001, 1), { minLength: judged.length, maxLength: judged.length }).map((parts) => {
      const all = parts.reduce((sum, part) => sum + part, 0);
      const weights = parts.map((part) => 1 + Math.floor(((100 - judged.length) * 100 * part) / all) / 100);
      const others = weights.slice(1).reduce((sum, weight) => sum + weight, 0);
      weights[0] = 100 - others;
      const left = items.filter((item) => !judged.includes(item)).slice(0, 1);
      return Object.fromEntries([...judged.map((item, i) => [item, weights[i]!]), ...left.map((item) => [item, 0])]);
    }),
  );
}

const COUNTED = ['rods', 'times', 'none', 'fields'];
function figure(name: string): Arbitrary<number> {
  if (COUNTED.includes(name)) return count(1, 1000);
  if (name.endsWith('_frac')) return between(0, 1);
  return name === 'rod_m' ? between(0.5, 3) : fc.oneof(between(0, 10), between(0, 1e6));
}

/** Other figures for some of the items that the lesson judges. */
function bandsOf(named: readonly (readonly [ItemId, readonly string[]])[]): Arbitrary<Of<'bands'>> {
  return fc
    .subarray([...named])
    .chain((items) =>
      fc.tuple(
        ...items.map(([item, names]) =>
          fc
            .subarray([...names])
            .chain((chosen) =>
              fc
                .tuple(...chosen.map(figure))
                .map((values): [ItemId, Record<string, number>] => [
                  item,
                  Object.fromEntries(chosen.map((name, i) => [name, values[i]!])),
                ]),
            ),
        ),
      ),
    )
    .map((entries) => Object.fromEntries(entries));
}

const pool: Arbitrary<Of<'pool'>> = fc.record({
  sim: line(20),
  seeds: fc.uniqueArray(count(0, 4294967295), { minLength: 1, maxLength: 200 }),
  spread_points: between(0, 100),
});

function ofLesson(lesson: Exercise['lesson'], most_cap_s: number): Arbitrary<Exercise> {
  const { prologue, rubric } = baseOf({ lesson });
  const budget = prologue ? fc.constant(undefined) : maybe(between(1, 100000));
  return budget.chain((budget_marks) => {
    const named = rubric.map(({ item, bands }) => [item, Object.keys(bands)] as const);
    const judged =
      budget_marks === undefined ? named : [...named, ['withinBudget', ['full_marks', 'none_marks']] as const];
    return fc
      .record({
        format: fc.constant(EXERCISE_FORMAT),
        version: fc.constant(EXERCISE_FORMAT_VERSION),
        sim: fc.oneof(fc.constant('0.4.0'), line(20)),
        id: fc.stringMatching(/^exercise-[a-z0-9]{4,20}$/),
        edition: count(1, 9999),
        title: line(80).map((text) => (text.trim() === '' ? 'T' : text)),
        briefing: fc.array(line(300), { maxLength: 10 }),
        lesson: fc.constant(lesson),
        ground,
        season: maybe(fc.constant('dry' as const)),
        site: maybe(site),
        depth_m: prologue ? fc.constant(undefined) : maybe(between(1.5, 45)),
        stocks,
        budget_marks: fc.constant(budget_marks),
        view: fc.constantFrom(...VIEW_LEVELS),
        senses: some(SENSE_IDS),
        gauges: some(GAUGE_IDS),
        hints: fc.constantFrom(0 as const, 1 as const, 2 as const, 3 as const),
        coached: fc.boolean(),
        faults: fc.array(fault, { maxLength: 12 }),
        live: fc.boolean(),
        cap_s: count(300, most_cap_s),
        pass_points: count(1, 100),
        weights: weightsOf(judged.map(([item]) => item)),
        bands: maybe(bandsOf(judged)),
        pool: maybe(pool),
      })
      .map((exercise) => bare(exercise) as Exercise);
  });
}

/** `lessons`: those that it may be based on; `most_cap_s`: longest time that the learner has. */
export const anyExercise = (
  lessons: readonly Exercise['lesson'][] = LESSON_ORDER,
  most_cap_s = 345600,
): Arbitrary<Exercise> => fc.constantFrom(...lessons).chain((lesson) => ofLesson(lesson, most_cap_s));
