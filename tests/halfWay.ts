// A careful crew's run of the first lesson in the middle of its work: the pump runs, grains are on their way up.
import { createCrew, jobFor, lessonById, startRun } from '../lessons';
import { act, sensesOf, step, type Run } from '../sim';

const lesson = lessonById('first-rods')!;

export function halfWayRun(): Run {
  const run = startRun(lesson, 7);
  const crew = createCrew('careful', jobFor(run, lesson));
  while (run.state.tick < 1500 || run.state.signs.returns_frac < 0.5) {
    const deed = crew.decide(sensesOf(run));
    if (deed) act(run, deed.action, deed.payload);
    step(run);
  }
  return run;
}
