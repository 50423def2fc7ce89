// A run that is brought back shows its flow before it has taken a second, and goes on as if it had never been away.
import { expect, it } from 'vitest';
import { hashRun, restoreRun, restoreToLookAt, snapshotOf, step } from '../../../sim';
import { halfWayRun } from '../../halfWay';

it('has the jets and the rise of the run as it was left', () => {
  const run = halfWayRun();
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
