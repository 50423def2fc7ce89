// The traces: the run's own rows in people's units, and the row nearest to a moment.
import { describe, expect, it } from 'vitest';
import { marksOf, rowAt, tracesOf } from '../../../src/charts/tracesOf';
import { hasMessage, addMessages } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';
import { crewRun } from '../cutaway/crewRun';

addMessages(laterMessages);

describe('traces', () => {
  const run = crewRun(1600);
  const columns = tracesOf(run);

  it('are as long as the record, in minutes, centimetres and litres a minute', () => {
    const { trace } = run.record;
    expect(columns.time_min).toHaveLength(trace.length);
    const last = trace.length - 1;
    expect(columns.time_min[last] * 60).toBeCloseTo(trace.columns.time_s[last], 9);
    expect(columns.flow_Lmin[last] / 60000).toBeCloseTo(trace.columns.flow_m3s[last], 12);
    expect(columns.suction_cm[last] / 100).toBeCloseTo(trace.columns.suctionLevel_m[last], 12);
    expect(columns.holeLevel_m[last]).toBe(trace.columns.holeLevel_m[last]);
    expect(columns.hole_m[last]).toBe(trace.columns.depth_m[last]);
  });

  it('find the row nearest to a moment', () => {
    const times = Float64Array.from([0, 1, 2, 3]);
    expect([-5, 0.4, 0.6, 2, 2.9, 99].map((time) => rowAt(times, time))).toEqual([0, 0, 1, 2, 3, 3]);
  });

  it('mark events that have a word, at their minute', () => {
    const marks = marksOf(run.record.events);
    expect(marks.some((mark) => mark.name === 'rodAdded')).toBe(true);
    for (const mark of marks) expect(hasMessage(`charts.event.${mark.name}`), mark.name).toBe(true);
    const added = run.record.events.find((event) => event.name === 'rodAdded')!;
    expect(marks.find((mark) => mark.name === 'rodAdded')!.time_min * 60).toBeCloseTo(added.tick, 9);
    expect(marks.some((mark) => mark.name === 'layerChanged')).toBe(false);
  });
});
