// A crew's run of a lesson up to a second, as the text of a run file.
import { createCrew, isOver, jobFor, lessonById, startRun, writeRunFile } from '$lessons';
import { act, sensesOf, step } from '$sim';

export function runUpTo(id: string, crewName: string, seed: number, tick: number): string {
  const lesson = lessonById(id)!;
  const run = startRun(lesson, seed);
  const crew = createCrew(crewName, jobFor(run, lesson));
  while (run.state.tick < tick && !isOver(run, lesson)) {
    const deed = crew.decide(sensesOf(run));
    if (deed) act(run, deed.action, deed.payload);
    step(run);
  }
  return writeRunFile(run, lesson, { who: 'T-01', name: 'Under way' });
}
