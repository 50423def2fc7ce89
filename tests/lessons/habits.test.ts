// Leaving out only a habit of safety or of the log never raises a score: the same acts without reading cautions, naming, catching, trying, booking or keeping the record.

import { expect, test } from 'vitest';
import { playLog, restoreRun, snapshotOf, type ActionName, type LogEntry, type Run } from '$sim';
import { crewFor, grade, lessonById, ownEntries, playOn, startRun, type Grade, type Lesson } from '$lessons';

interface Played {
  readonly lesson: Lesson;
  /** The learner's own acts; those of a crew before stay as they are. */
  readonly own: readonly LogEntry[];
  readonly graded: Grade;
  /** The same acts at the same seconds, those of the habit left out. */
  without(habit: readonly ActionName[]): Grade;
}

function played(id: string, crew: string, seed: number): Played {
  const lesson = lessonById(id)!;
  const run = startRun(lesson, seed);
  const start = snapshotOf(run);
  const record = structuredClone(run.record);
  const before = run.log.length;
  playOn(run, lesson, crewFor(run, lesson, crew));
  const again = (log: readonly LogEntry[]): Run => {
    const other = restoreRun(run.scenario, start, structuredClone(record));
    other.log.push(...run.log.slice(0, before));
    playLog(other, [...run.log.slice(0, before), ...log], before, run.state.tick);
    return other;
  };
  const own = ownEntries(run);
  return {
    lesson,
    own,
    graded: grade(run, lesson),
    without: (habit) => grade(again(run.log.slice(before).filter(([, action]) => !habit.includes(action))), lesson),
  };
}

/** They take no time and no hand: nothing but the book changes. Each has items of its own, so that leaving all out at once shows each. */
const AT_ONCE: readonly ActionName[] = ['readCaution', 'nameSample', 'note', 'logLayer', 'record'];
/** They take hands and seconds. */
const TAKE_TIME: readonly ActionName[] = ['catchSample', 'nameSample', 'feelFluid', 'funnelTest'];

/** One drill a subject whose job has such habits, and a whole well; by a crew that leaves something to be raised. */
test.each([
  ['round-the-loop', 'steady', 4],
  ['slick-fluid', 'steady', 4],
  ['reading-the-tray', 'steady', 4],
  ['standing-sand', 'steady', 4],
  ['falling-pit', 'other', 4],
  ['stiff-clay', 'steady', 4],
  ['full-pit', 'steady', 4],
  ['deep-enough', 'steady', 4],
  ['the-seal', 'steady', 4],
  ['clear-water', 'steady', 4],
  ['open-well', 'steady', 4],
])(
  '%s: %s on seed %i scores no more without its habits',
  (id, crew, seed) => {
    const { own, graded, without } = played(id, crew, seed);
    expect(graded.score).toBeLessThan(100);
    const does = (habit: readonly ActionName[]): boolean => own.some(([, action]) => habit.includes(action));
    expect(does(AT_ONCE)).toBe(true);
    // With nothing left out it comes out the same, after the work of a crew before too.
    if (id === 'the-seal') expect(without([])).toEqual(graded);
    const bare = without(AT_ONCE).items.map(({ id: item, points }) => [item, points] as const);
    const raised = bare.filter(([, points], i) => points > graded.items[i]!.points);
    expect(raised).toEqual([]);
    if (!does(['catchSample', 'feelFluid', 'funnelTest'])) return;
    const { score } = without(TAKE_TIME);
    expect([score <= graded.score, score, graded.score]).toEqual([true, score, graded.score]);
  },
  120_000,
);

const HABITS: readonly (readonly ActionName[])[] = [
  ['readCaution'],
  ['nameSample'],
  ['catchSample', 'nameSample'],
  ['feelFluid'],
];

test.each([
  ['careful', 4],
  ['steady', 5],
  ['green', 7],
])(
  'first-rods: %s on seed %i scores no more without any one habit',
  (crew, seed) => {
    const { own, graded, without } = played('first-rods', crew, seed);
    if (crew === 'careful') expect(without([])).toEqual(graded);
    for (const habit of HABITS) {
      if (!own.some(([, action]) => habit.includes(action))) continue;
      const { score } = without(habit);
      expect([habit, score <= graded.score, score, graded.score]).toEqual([habit, true, score, graded.score]);
      if (crew === 'careful' && habit[0] === 'readCaution') expect(score).toBeLessThan(graded.score);
    }
  },
  120_000,
);
