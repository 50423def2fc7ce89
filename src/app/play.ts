// Door of the playing part, which comes after the first screen: lessons with their words, and runs begun, gone on with, opened.
import {
  grade,
  lessonOf,
  lessonWords,
  readRunFile,
  replaying,
  runAtMark,
  scenarioOf,
  shownIn,
  type Lesson,
  type Mark,
  type PartShown,
  type Past,
  type Problem,
  type Sitting,
} from '$lessons';
import { hashRun, restoreToLookAt, type Run, type Snapshot } from '$sim';
import { cutawayView, type CutawayView } from '../cutaway/view';
import { addMessages } from '../words';
import { laterMessages } from '../words/later';
import { newId } from './chance';
import { current } from './current.svelte';
import { device } from './device.svelte';
import { Worked } from './example.svelte';
import { Keeper } from './keeper';
import { hasSeen, withRun } from './progress';
import type { Learner, SavedRun } from './records';
import { Session } from './session.svelte';
import { inParts, LOOK_s } from './parts';
import { startOf, takeStart, type Waiting } from './startOf';

// A run taken up from this device has not come through the briefing, which brings the lessons' words too.
addMessages(laterMessages);
addMessages(lessonWords);

export { checkFile, openText, type Opened } from './openFile';
export { verdictOf } from '$sim';
export { grade, isScored, outcomeOf, recordOf, writeRecordCsv, writeRecordJson, type Grade } from '$lessons';

/**
 * Begins a run of a lesson on the ground of a seed; the cautions read before enter its log. For a class (`sitting`) nobody goes back.
 * False when nobody waited for the start.
 */
export async function begin(
  lesson: Lesson,
  seed: number,
  cautions: readonly string[],
  waiting: Waiting = {},
  sitting: Sitting | null = null,
): Promise<boolean> {
  const run = await takeStart(lesson, seed, waiting, sitting === null);
  if (!run) return false;
  if (sitting && device.learner) device.sit(device.learner.id, lesson.id, sitting);
  const knownGround = hasSeen(device.learner, lesson.id, seed);
  const keeper = new Keeper({
    id: newId(),
    who: device.learner?.id ?? 'T-00',
    lesson,
    started_ms: Date.now(),
    answers: null,
    sitting,
    knownGround,
  });
  takeUp(run, lesson, keeper);
  for (const caution of cautions) current.session?.act('readCaution', { caution });
  current.session?.keep();
  return true;
}

/** In the run just begun a careful crew shows the work: all of it, or all but its last part. */
export function showExample(shown: PartShown): void {
  if (current.session) current.worked = new Worked(current.session, shown);
}

/** The lesson's start on the ground of a seed, as far as its view level shows it. */
export async function openingView(lesson: Lesson, seed: number): Promise<CutawayView> {
  return cutawayView(await startOf(lesson, seed), lesson.view);
}

/** What the record of somebody new would say after this run alone. */
export function recordAfter(run: Run, lesson: Lesson, who: string): Learner {
  const { score, passed, items } = grade(run, lesson);
  const nobody: Learner = { id: who, picture: null, number: null, made_ms: 0, best: {} };
  return withRun(nobody, { lesson: lesson.id, score, passed, shown: shownIn(items), finished_ms: 0 });
}

/** Takes up a saved run where it was left. A problem leaves the present run as it is. */
export async function goOn(saved: SavedRun): Promise<Problem | null> {
  if (current.keeper?.id === saved.id && current.session) return null;
  const read = readRunFile(saved.file);
  if (!read.ok) return read;
  const lesson = lessonOf(read.file)!;
  let run = read.otherVersion ? null : await fromState(saved, lesson, read.file);
  if (!run) {
    const replayed = await inParts(replaying(read.file, lesson, LOOK_s));
    if (!replayed.reproduced) return replayed.problem;
    run = replayed.run!;
  }
  const { answers = null, sitting = null } = read.file;
  const { id, who, started_ms, branch, turns, frozen, knownGround = false } = saved;
  const hindsight = (await device.storage.get('states', saved.id))?.hindsight;
  const about = { id, who, lesson, started_ms, answers, hindsight, branch, sitting, knownGround, turns, frozen };
  takeUp(run, lesson, new Keeper(about));
  return null;
}

/** Begins a run of its own where another stood at a mark: what came after is tried again. It counts as gone back, and so for practice only. */
export function branchAt(past: Past, mark: Mark, from: Keeper, name: string, fromTick: number): void {
  const run = runAtMark({ ...past, scenario: { ...past.scenario, practice: true } }, mark);
  const keeper = new Keeper({
    id: newId(),
    who: from.who,
    lesson: past.lesson,
    started_ms: Date.now(),
    answers: null,
    branch: { id: from.id, name, at_s: mark.tick },
    turns: from.turns,
    knownGround: true,
  });
  takeUp(run, past.lesson, keeper);
  current.session?.act('goBack', { fromTick });
}

/** The quick way: the frozen state kept beside the run, taken only if its hash is the one the run file names. */
async function fromState(
  saved: SavedRun,
  lesson: Lesson,
  file: { seed: number; practice: boolean; ticks: number; hash: string; log: Run['log'] },
): Promise<Run | null> {
  const state = await device.storage.get('states', saved.id);
  if (!state || state.ticks !== file.ticks) return null;
  try {
    const scenario = scenarioOf(lesson, file.seed, file.practice);
    const run = restoreToLookAt(scenario, state.snapshot as Snapshot, state.record as Run['record']);
    run.log.push(...file.log);
    return hashRun(run) === file.hash ? run : null;
  } catch {
    return null;
  }
}

function takeUp(run: Run, lesson: Lesson, keeper: Keeper): void {
  current.close();
  current.session = new Session({ lesson, run, save: (kept) => keeper.keep(kept) });
  current.keeper = keeper;
  // Whoever stands before it now has seen this ground, also where the run is someone else's.
  if (device.learner) device.see(device.learner.id, lesson.id, run.scenario.seed);
  device.change({ run: keeper.id });
}
