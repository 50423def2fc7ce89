// Finished runs to look back on, with their moments and marks.
import {
  createCrew,
  lessonById,
  MarkBook,
  marksAlong,
  momentsOf,
  playOn,
  startRun,
  jobFor,
  type Crew,
  type Mark,
  type Moment,
  type Past,
} from '$lessons';
import { act, createRun, step, type Run } from '$sim';

export interface LookedBack {
  readonly run: Run;
  readonly past: Past;
  readonly moments: readonly Moment[];
  readonly marks: readonly Mark[];
}

export function finished(lessonId: string, crewName: string | Crew, seed: number): Run {
  const lesson = lessonById(lessonId)!;
  const run = startRun(lesson, seed);
  const crew = typeof crewName === 'string' ? createCrew(crewName, jobFor(run, lesson)) : crewName;
  return playOn(run, lesson, crew);
}

export function lookedBack(run: Run, most: number): LookedBack {
  const { scenario, log, record } = run;
  const past: Past = { lesson: lessonById(scenario.id)!, scenario, log, record };
  const moments = momentsOf(run, most);
  const marks = [...marksAlong(past, moments)].filter((mark) => mark !== null);
  return { run, past, moments, marks };
}

/** A finished run played once more with a book at its side, as the page keeps it. */
export function bookOf({ scenario, log, state }: Run): MarkBook {
  const run = createRun(scenario);
  const book = new MarkBook();
  const playTo = (tick: number): void => {
    while (run.state.tick < tick) {
      step(run);
      book.passed(run);
    }
  };
  book.take(run);
  for (const [tick, action, payload] of log) {
    playTo(tick);
    book.beforeAct(run);
    if (act(run, action, payload).kind === 'done') book.acted(tick);
  }
  playTo(state.tick);
  return book;
}
