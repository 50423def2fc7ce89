// A run that is brought back shows its flow before it has taken a second, and goes on as if it had never been away.
import { expect, it } from 'vitest';
import { createCrew, jobFor, lessonById, startRun } from '../../../lessons';
import { act, hashRun, restoreRun, restoreToLookAt, sensesOf, snapshotOf, step, type Run } from '../../../sim';

const lesson = lessonById('first-rods')!;

function drilling(): Run {
  const run = startRun(lesson, 7);
  const crew = createCrew('careful', jobFor(run, lesson));
  while (run.state.tick < 1500 || run.state.signs.returns_frac < 0.5) {
    const deed = crew.decide(sensesOf(run));
    if (deed) act(run, deed.action, deed.payload);
    step(run);
  }
  return run;
}

it('has the jets and the rise of the run as it was left', () => {
  const run = drilling();
  const before = run.work.flowResult.nozzleVelocity_ms;
  const snapshot = snapshotOf(run);
  const looked = restoreToLookAt(run.scenario, snapshot);
  expect(before).toBeGreaterThan(1);
  expect(restoreRun(run.scenario, snapshot).work.flowResult.nozzleVelocity_ms).toBe(0);
  expect(looked.work.flowResult.nozzleVelocity_ms / before).toBeCloseTo(1, 2);
  expect(looked.state.tick).toBe(run.state.tick);
  expect(hashRun(looked)).toBe(hashRun(run));
  for (let s = 0; s < 120; s++) for (const one of [run, looked]) step(one);
  expect(hashRun(looked)).toBe(hashRun(run));
});
