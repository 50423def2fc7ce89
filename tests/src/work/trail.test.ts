// Looking back: the line of the bit, the milestones on it, and what was known at a past moment.
import { describe, expect, it } from 'vitest';
import { act, createRun, step, type Run } from '$sim';
import { lessonById, scenarioOf } from '$lessons';
import { stickReadings } from '../../../src/notebook/readings';
import { glanceBack, milestonesOf, TRAIL, trailOf } from '../../../src/screens/work/trail';

function startedRun(ticks: number): Run {
  const run = createRun(scenarioOf(lessonById('first-rods')!, 3));
  act(run, 'readStick', {});
  for (let i = 0; i < ticks; i++) step(run);
  return run;
}

describe('the line of the bit', () => {
  it('goes from the start to now, inside its picture', () => {
    const run = startedRun(120);
    const trail = trailOf(run, run.state.pit.suction.depth_m);
    expect(trail.end_s).toBe(120);
    const points = trail.points.split(' ').map((point) => point.split(',').map(Number) as [number, number]);
    expect(points.at(-1)?.[0]).toBe(TRAIL.width);
    for (const [x, y] of points) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(TRAIL.width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(TRAIL.height);
    }
  });

  it('stays within a few hundred points on a long run', () => {
    const run = startedRun(3600);
    expect(trailOf(run, 1).points.split(' ').length).toBeLessThan(400);
  });
});

describe('what was known at a moment', () => {
  it('holds a stick reading only from the second on in which it was read', () => {
    const run = startedRun(60);
    const [reading] = stickReadings(run);
    expect(reading?.level_m).toBe(run.state.stick?.level_m);
    expect(glanceBack(run, reading!.time_s - 1).stick).toBeNull();
    expect(glanceBack(run, reading!.time_s).stick).toEqual(reading);
    expect(glanceBack(run, 30).bit_m).toBeCloseTo(run.state.stem.bit_m, 2);
  });
});

describe('milestones', () => {
  it('are those that a crew noticed, and leave room for their words', () => {
    const found = milestonesOf(
      [
        { tick: 100, name: 'primed', data: {} },
        { tick: 110, name: 'taskDone', data: { action: 'addAdditive' } },
        { tick: 400, name: 'layerChanged', data: { kind: 'silt' } },
        { tick: 500, name: 'rodAdded', data: { rods: 2 } },
      ],
      1000,
    );
    expect(found.map((one) => one.words.key)).toEqual(['work.back.primed', 'work.back.rod']);
    expect(found[1]).toEqual({ at_frac: 0.5, words: { key: 'work.back.rod', data: { rod: 2 } } });
  });
});
