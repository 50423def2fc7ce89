// A run played again from its file, or a careful crew on the same ground, with marks on the way to go back to. In parts, so that a page stays alive.
import {
  crewFor,
  isOver,
  markOf,
  openStart,
  playing,
  scenarioOf,
  type Lesson,
  type Mark,
  type Past,
  type RunFile,
} from '$lessons';
import { createRun, hashRun, playLog, type Run } from '$sim';

/** A run as far as it was played, with marks to take it up at. */
export interface Played {
  readonly run: Run;
  readonly past: Past;
  readonly marks: readonly Mark[];
}

/** Job seconds played between two looks at the clock, and the least time between two marks. */
const SLICE_s = 60;
const MARK_s = 120;
/** Of a long run marks lie farther apart: there are no more than so many. */
const MOST_MARKS = 150;

const played = (run: Run, lesson: Lesson, marks: readonly Mark[]): Played => ({
  run,
  marks,
  past: { lesson, scenario: run.scenario, log: run.log, record: run.record },
});

/** Yields the share that is done. Null where the run does not come out as its file says: then it is not that run. */
export function* playedAgain(file: RunFile, lesson: Lesson): Generator<number, Played | null> {
  const run = createRun(scenarioOf(lesson, file.seed, file.practice));
  const apart_s = Math.max(MARK_s, file.ticks / MOST_MARKS);
  const marks: Mark[] = [];
  let due_s = apart_s;
  try {
    while (run.state.tick < file.ticks) {
      playLog(run, file.log, run.log.length, Math.min(file.ticks, run.state.tick + SLICE_s));
      if (run.state.tick >= due_s) {
        marks.push(markOf(run));
        due_s = run.state.tick + apart_s;
      }
      yield run.state.tick / file.ticks;
    }
    playLog(run, file.log, run.log.length, file.ticks);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
  return hashRun(run) === file.hash ? played(run, lesson, marks) : null;
}

/** A careful crew on the ground of a file, from where the learner found it. How long it takes is guessed from the learner's own time. */
export function* carefullyPlayed(file: RunFile, lesson: Lesson): Generator<number, Played> {
  const start = openStart(lesson, file.seed, file.practice);
  const share = (tick: number): number => Math.min(0.99, tick / Math.max(1, file.ticks));
  while (!start.advance(SLICE_s)) yield share(start.run.state.tick);
  const { run } = start;
  const marks: Mark[] = [];
  let due_s = run.state.tick + MARK_s;
  const work = playing(run, lesson, crewFor(run, lesson, 'careful'), SLICE_s);
  while (!isOver(run, lesson)) {
    if (work.next().done) break;
    if (run.state.tick >= due_s) {
      marks.push(markOf(run));
      due_s = run.state.tick + Math.max(MARK_s, run.state.tick / MOST_MARKS);
    }
    yield share(run.state.tick);
  }
  return played(run, lesson, marks);
}
