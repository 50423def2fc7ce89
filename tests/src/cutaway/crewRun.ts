// A careful crew's first rods, stopped at a moment: what the tests of the view look at.
import { createCrew, isOver, lessonById, scenarioOf } from '$lessons';
import { act, createRun, sensesOf, step, type Run } from '$sim';

export function crewRun(tick: number, seed = 3): Run {
  const lesson = lessonById('first-rods')!;
  const run = createRun(scenarioOf(lesson, seed));
  const crew = createCrew('careful');
  while (run.state.tick < tick && !isOver(run, lesson)) {
    const deed = crew.decide(sensesOf(run));
    if (deed) act(run, deed.action, deed.payload);
    step(run);
  }
  return run;
}

/** The first moment after `from` at which the pump runs and the bit turns. */
export function drillingRun(from: number): Run {
  const run = crewRun(from);
  for (let tick = from; tick < from + 900; tick += 20) {
    const later = crewRun(tick);
    if (later.state.pump.flow_m3s > 0 && later.state.stem.turning) return later;
  }
  return run;
}
