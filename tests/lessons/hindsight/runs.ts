// Finished runs to look back on, with their moments and marks.
import {
  createCrew,
  lessonById,
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
import type { Run } from '$sim';

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
  const marks = [...marksAlong(scenario, log, moments)].filter((mark) => mark !== null);
  return { run, past, moments, marks };
}
