// The trouble of a run, gathered for a debrief without points.
import { expect, it } from 'vitest';
import { addMessages } from '../../../src/words/messages';
import { laterMessages } from '../../../src/words/later';
import { troublesOf } from '../../../src/screens/debrief/troubles';

addMessages(laterMessages);

it('gathers each kind under its own sentence, with the first three times and a count of the rest', () => {
  const stuck = [60, 120, 180, 240, 300].map((tick) => ({ tick, name: 'stuck' as const, data: {} }));
  expect(troublesOf([...stuck, { tick: 400, name: 'balled', data: {} }])).toEqual([
    { key: 'event.stuck', times_s: [60, 120, 180], more: 2 },
    { key: 'event.balled', times_s: [400], more: 0 },
  ]);
});

it('leaves out what is no trouble, and what no crew can notice', () => {
  const events = (['primed', 'rodDown', 'layerChanged', 'refused', 'ended'] as const).map((name, tick) => ({
    tick,
    name,
    data: {},
  }));
  expect(troublesOf(events)).toEqual([]);
});
