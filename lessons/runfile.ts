// The run file: one versioned JSON object that holds a run as scenario, seed and log. The headless command writes it and the app saves it.
// Its fields are documented in lessons/README.md. Reading never throws: whatever is wrong comes back as a problem with its data.

import * as v from 'valibot';
import { hashRun, malformedIn, SIM_VERSION, type LogEntry, type Run } from '$sim';
import { brokenOff } from './brokenOff';
import { checkExercise } from './exercises/checkExercise';
import { ExerciseSchema } from './exercises/exerciseSchema';
import { lessonOfExercise } from './exercises/lessonOfExercise';
import { CLASS_CODE } from './exercises/variant';
import { scoreOf } from './grade';
import { isOver } from './over';
import { startTick } from './own';
import { lessonById } from './catalogue/index';
import { AskedSchema } from './practices/asked';
import { askedOf, isScored, practiceFor } from './practices/index';
import type { Lesson } from './schema';
import type { WordData, WordKey } from './words/index';

export const RUN_FORMAT = 'hand-jetting-run';
export const RUN_FORMAT_VERSION = 1;

/** Longest run file that is read, characters; a whole day's log takes a hundredth of it. */
export const RUN_FILE_LIMIT = 8 * 1024 * 1024;

/** Four days of job time, up to three of a crew before, and an act every few seconds: beyond that a file is no run. */
export const MOST_TICKS = 604800;
export const MOST_ACTS = 50000;
const MOST_LAYERS = 400;

export const Whole = (most: number) => v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(most));
export const Text = (most: number) => v.pipe(v.string(), v.maxLength(most));
const Figure = v.pipe(v.number(), v.finite());
/** The hash of a state. */
export const HashText = v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/));
/** null for a practice: it has no score. */
export const ClaimedSchema = v.strictObject({ score: v.nullable(v.pipe(Figure, v.minValue(0), v.maxValue(100))) });

const Ground = v.looseObject({
  version: Figure,
  seed: Whole(4294967295),
  depth_m: Figure,
  layers: v.pipe(
    v.array(v.looseObject({ kind: Text(40), top_m: Figure, bottom_m: Figure })),
    v.minLength(1),
    v.maxLength(MOST_LAYERS),
  ),
});

const Answer = v.union([Text(2000), v.pipe(v.array(Text(200)), v.maxLength(40))]);
export const AnswersSchema = v.record(Text(80), Answer);

export const SittingSchema = v.strictObject({
  classCode: v.pipe(v.string(), v.regex(CLASS_CODE)),
  attempt: v.pipe(Whole(9999), v.minValue(1)),
  /** Time at the screen so far, as the device counted it. */
  spent_s: v.exactOptional(Whole(8640000)),
});
export type Sitting = v.InferOutput<typeof SittingSchema>;

const RunFileSchema = v.strictObject({
  format: v.literal(RUN_FORMAT),
  version: v.literal(RUN_FORMAT_VERSION),
  sim: Text(20),
  lesson: Text(40),
  lessonVersion: Whole(9999),
  seed: Whole(4294967295),
  practice: v.boolean(),
  /** What was asked of a practice; a lesson has none. */
  asked: v.optional(AskedSchema),
  /** The exercise that the lesson was made from, whole; a lesson and a practice have none. */
  exercise: v.optional(ExerciseSchema),
  /** Where it was played for a class: which, and the how manieth time. */
  sitting: v.optional(SittingSchema),
  ground: Ground,
  who: Text(60),
  name: Text(80),
  log: v.pipe(
    v.array(v.strictTuple([Whole(MOST_TICKS), Text(40), v.record(v.string(), v.unknown())])),
    v.maxLength(MOST_ACTS),
  ),
  /** Where the learner took over from the crew before; a lesson without one has none. */
  start_tick: v.optional(Whole(MOST_TICKS)),
  ticks: Whole(MOST_TICKS),
  hash: HashText,
  claimed: ClaimedSchema,
  finished: v.boolean(),
  answers: v.optional(AnswersSchema),
});

type Read = v.InferOutput<typeof RunFileSchema>;
export type RunFile = Omit<Read, 'log'> & { readonly log: LogEntry[] };

export type ProblemKey = Extract<WordKey, `problem.file.${string}`>;
export interface Problem {
  readonly ok: false;
  readonly problem: ProblemKey;
  readonly data: WordData;
}
/** A file of another version of the physics or the lesson can be read as data, but not played again to the same end. */
export type ReadRunFile = { readonly ok: true; readonly file: RunFile; readonly otherVersion: boolean } | Problem;

export interface About {
  readonly who?: string;
  readonly name?: string;
  readonly answers?: RunFile['answers'];
  readonly sitting?: Sitting | null;
}

/** The run as a file's content, as it stands now. */
export function runFileOf(run: Run, lesson: Lesson, about: About = {}): RunFile {
  const asked = askedOf(lesson);
  return {
    format: RUN_FORMAT,
    version: RUN_FORMAT_VERSION,
    sim: SIM_VERSION,
    lesson: lesson.id,
    lessonVersion: lesson.version,
    seed: run.scenario.seed,
    practice: run.scenario.practice,
    ...(asked === null ? {} : { asked }),
    ...(lesson.exercise ? { exercise: lesson.exercise } : {}),
    ...(about.sitting ? { sitting: about.sitting } : {}),
    ground: run.scenario.ground as unknown as RunFile['ground'],
    who: about.who ?? '',
    name: about.name ?? '',
    log: [...run.log],
    ...(lesson.prologue ? { start_tick: startTick(run) } : {}),
    ticks: run.state.tick,
    hash: hashRun(run),
    claimed: { score: scoreOf(run, lesson) },
    finished: isOver(run, lesson),
    ...(about.answers === undefined ? {} : { answers: about.answers }),
  };
}

export function writeRunFile(run: Run, lesson: Lesson, about: About = {}): string {
  return JSON.stringify(runFileOf(run, lesson, about)) + '\n';
}

const problem = (key: ProblemKey, data: WordData = {}): Problem => ({ ok: false, problem: key, data });

export function tooLarge(size: number): Problem {
  const inMB = (characters: number): number => Math.round(characters / 104857.6) / 10;
  return problem('problem.file.tooLarge', { size_MB: inMB(size), limit_MB: inMB(RUN_FILE_LIMIT) });
}

function parsed(text: string): { readonly value: unknown } | null {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return null;
  }
}

/** The lesson that a file was played in, a practice as it was asked for, an exercise as it was given out; null when it is not here. */
export function lessonOf(file: Pick<RunFile, 'lesson' | 'asked' | 'exercise'>): Lesson | null {
  const { exercise } = file;
  if (exercise !== undefined) return exercise.id === file.lesson ? lessonOfExercise(exercise) : null;
  const lesson = lessonById(file.lesson);
  return lesson !== null && file.asked !== undefined ? practiceFor(file.lesson, file.asked) : lesson;
}

/** The field that does not fit: of a practice where the file is of a lesson, or the other way round; null when all is well. */
function misfit(file: RunFile, lesson: Lesson): string | null {
  const sameLesson = file.lessonVersion === lesson.version;
  if (sameLesson && (file.start_tick !== undefined) !== (lesson.prologue !== undefined)) return 'start_tick';
  if ((file.asked !== undefined) !== (askedOf(lesson) !== null)) return 'asked';
  if (file.sitting !== undefined && file.exercise === undefined) return 'sitting';
  return (file.claimed.score !== null) === isScored(lesson) ? null : 'claimed.score';
}

/** The first entry of the log that no run can hold: out of order, after the end, or malformed. */
function badAct(file: RunFile): Problem | null {
  let last = 0;
  for (const [tick, action, payload] of file.log) {
    if (tick < last || tick > file.ticks || malformedIn(action, payload) !== null)
      return problem('problem.file.badAct', { tick });
    last = tick;
  }
  return null;
}

/** Reads a run file from outside. Whether it can be reproduced is for replayFile to find out. */
export function readRunFile(text: string): ReadRunFile {
  if (text.length > RUN_FILE_LIMIT) return tooLarge(text.length);
  const trimmed = text.trim();
  if (trimmed === '') return problem('problem.file.empty');
  const json = parsed(trimmed);
  if (json === null) return problem(brokenOff(trimmed) ? 'problem.file.truncated' : 'problem.file.notJson');
  const head = json.value as { format?: unknown; version?: unknown } | null;
  if (typeof head !== 'object' || head === null || head.format !== RUN_FORMAT)
    return problem('problem.file.wrongFormat');
  if (typeof head.version === 'number' && head.version > RUN_FORMAT_VERSION) {
    return problem('problem.file.newerFormat', { version: head.version, known: RUN_FORMAT_VERSION });
  }
  const result = v.safeParse(RunFileSchema, json.value);
  if (!result.success) return problem('problem.file.badField', { field: v.getDotPath(result.issues[0]) || 'file' });
  const file = result.output as RunFile;
  if (file.exercise !== undefined) {
    const checked = checkExercise(file.exercise);
    if (!checked.ok) return problem('problem.file.badField', { field: `exercise.${checked.problems[0]!.field}` });
  }
  // Not yet as it was asked for: what was asked of a lesson is told as a wrong field below.
  const lesson = file.exercise === undefined ? lessonById(file.lesson) : lessonOf(file);
  if (lesson === null) return problem('problem.file.unknownLesson', { lesson: file.lesson });
  const field = misfit(file, lesson);
  if (field !== null) return problem('problem.file.badField', { field });
  const otherVersion = file.sim !== SIM_VERSION || file.lessonVersion !== lesson.version;
  return (otherVersion ? null : badAct(file)) ?? { ok: true, file, otherVersion };
}
