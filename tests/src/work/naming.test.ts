// The notebook's own arithmetic: rods, names, rows of the record, what was known at a past moment.
import { describe, expect, it } from 'vitest';
import type { TraySample } from '$sim';
import { namingOf, nextTop_m, recordRows, rodOf } from '../../../src/notebook/naming';
import { rowAt } from '../../../src/notebook/readings';
import { addMessages, hasMessage } from '../../../src/words';
import { laterMessages } from '../../../src/words/later';

addMessages(laterMessages);

const sample = (number: number, label_m: number, named: TraySample['named'] = null): TraySample => ({
  sample: number,
  time_s: 0,
  label_m,
  shares: [0, 0, 1, 0, 0, 0, 0, 0],
  colour: 'brown',
  named,
});

describe('rods and depths', () => {
  it('counts rods from one; the end of a rod belongs to it', () => {
    expect([0, 0.1, 1.5, 1.6, 3, 4.4].map((depth_m) => rodOf(depth_m, 1.5))).toEqual([1, 1, 1, 2, 2, 3]);
  });
});

describe('the name of a sample', () => {
  it('says kind, second kind and colour as far as they were given', () => {
    expect(namingOf(null).key).toBe('work.tray.unnamed');
    const named = { main: 'fineSand', secondary: 'silt', colour: 'grey', feel: null } as const;
    for (const secondary of [null, named.secondary])
      for (const colour of [null, named.colour])
        expect(hasMessage(namingOf({ ...named, secondary, colour }).key)).toBe(true);
    expect(namingOf(named)).toEqual({
      key: 'work.naming.twoColour',
      data: { main: 'work.kind.fineSand', secondary: 'work.kind.silt', colour: 'work.colour.grey' },
    });
  });
});

describe('the driller’s record', () => {
  it('puts each sample into the layer that holds its label', () => {
    const layers = [
      { from_m: 0, to_m: 1.2, kind: 'silt' },
      { from_m: 1.2, to_m: 4.5, kind: 'fineSand' },
    ] as const;
    const grey = { main: 'silt', secondary: null, colour: 'grey', feel: null } as const;
    const rows = recordRows(layers, [sample(1, 1.2, grey), sample(2, 1.3), sample(3, 4.4)], 1.5);
    expect(rows.map((row) => row.samples)).toEqual([[1], [2, 3]]);
    expect(rows[0]).toMatchObject({ fromRod: 1, toRod: 1, colours: ['grey'] });
    expect(rows[1]).toMatchObject({ fromRod: 1, toRod: 3, colours: [] });
    expect(nextTop_m(layers)).toBe(4.5);
    expect(nextTop_m([])).toBe(0);
  });
});

describe('a row of the trace at a time', () => {
  it('is the last one that is not later', () => {
    const times_s = [0, 5, 10, 15];
    expect([-1, 0, 4, 5, 12, 99].map((time_s) => rowAt(times_s, 4, time_s))).toEqual([-1, 0, 0, 1, 2, 3]);
  });
});
