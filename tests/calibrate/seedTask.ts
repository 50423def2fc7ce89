// What a thread of the calibration is sent: a lesson and a seed, for all crews.
import { lessonById } from '$lessons';
import { crewRuns, type CrewRun } from './crewRuns';

export interface SeedTask {
  readonly lesson: string;
  readonly seed: number;
  /** Plays the run files once more. */
  readonly again: boolean;
}

export const tasksFor = (lessons: readonly string[], seeds: number, againEvery: number): SeedTask[] =>
  lessons.flatMap((lesson) =>
    Array.from({ length: seeds }, (_, i) => ({ lesson, seed: i + 1, again: (i + 1) % againEvery === 0 })),
  );

const seedTask = {
  run: ({ lesson, seed, again }: SeedTask): CrewRun[] => crewRuns(lessonById(lesson)!, seed, again),
};
export default seedTask;
