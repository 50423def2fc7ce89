// The ground half of the record: layers as logged, samples as named, time for each rod, what was noticed on the way down.

import type { EventName, Run, RunEvent, Sample } from '$sim';
import { doneActs } from './done';
import type { LayerEntry, NoticedEntry, RecordSheet, RodEntry, SampleEntry } from './sheet';

/** What belongs on a record of a hole sunk by jetting: losses of fluid, refusal, a stem that ground fell on. */
const WORTH_NOTING: readonly EventName[] = [
  'returnsLost',
  'returnsBack',
  'bitRefused',
  'balled',
  'buried',
  'tight',
  'stuck',
  'freed',
];

const decimetre = (depth_m: number): number => Math.round(depth_m * 10) / 10;
const centimetre = (depth_m: number): number => Math.round(depth_m * 100) / 100;

/** Tick at which the present hole was begun, and the events since. */
function presentHole(run: Run): { start: number; events: readonly RunEvent[] } {
  const { events } = run.record;
  let first = 0;
  events.forEach((event, i) => {
    if (event.name === 'newHole') first = i;
  });
  return { start: first === 0 ? 0 : events[first].tick, events: events.slice(first) };
}

const unlike = <T>(list: readonly (T | null)[]): T[] => [...new Set(list.filter((one) => one !== null))];

function layersOf(run: Run, samples: readonly Sample[]): LayerEntry[] {
  return run.state.ownLog.map(({ from_m, to_m, kind }) => {
    const within = samples.filter(({ label_m }) => label_m > from_m && label_m <= to_m);
    const named = within.map((sample) => sample.named).filter((name) => name !== null);
    return {
      from_m: centimetre(from_m),
      to_m: centimetre(to_m),
      kind,
      secondary: unlike(named.map((name) => name.secondary)),
      colours: unlike(named.map((name) => name.colour)),
      feels: unlike(named.map((name) => name.feel)),
      samples: within.map(({ sample }) => sample),
    };
  });
}

const sampleOf = ({ sample, label_m, named }: Sample): SampleEntry => ({
  sample,
  depth_m: centimetre(label_m),
  main: named?.main ?? null,
  secondary: named?.secondary ?? null,
  colour: named?.colour ?? null,
  feel: named?.feel ?? null,
});

/** A rod takes from the moment it was screwed on until the next one is, the first from the first turn of the stem, the last until drilling stops. */
function rodsOf(run: Run, start: number, events: readonly RunEvent[]): RodEntry[] {
  const turns = doneActs(run, 'setTurning').filter(({ tick, payload }) => tick >= start && payload.on === true);
  let begun = turns.length > 0 ? turns[0].tick : start;
  const rods: RodEntry[] = [];
  for (const { name, tick, data } of events) {
    const rod =
      name === 'rodAdded' ? (data.rods as number) - 1 : name === 'drillingStopped' ? (data.rods as number) : 0;
    // Rods taken off and screwed on again go down no new ground.
    if (rod > rods.length && tick > begun)
      rods.push({ rod, to_m: centimetre(data.depth_m as number), time_s: tick - begun });
    if (rod > 0) begun = tick;
  }
  return rods;
}

function noticedIn(events: readonly RunEvent[]): NoticedEntry[] {
  let deepest_m = 0;
  const noticed: NoticedEntry[] = [];
  for (const { name, tick, data } of events) {
    if (typeof data.depth_m === 'number') deepest_m = data.depth_m;
    // Fluid comes back with every start of the pump: that is news only after it was lost.
    if (name === 'returnsBack' && noticed.at(-1)?.event !== 'returnsLost') continue;
    if (WORTH_NOTING.includes(name)) noticed.push({ time_s: tick, event: name, depth_m: decimetre(deepest_m) });
  }
  return noticed;
}

export function groundEntries(run: Run): Pick<RecordSheet, 'layers' | 'samples' | 'rods' | 'noticed'> {
  const { start, events } = presentHole(run);
  const samples = run.state.samples.filter(({ tick }) => tick >= start);
  return {
    layers: layersOf(run, samples),
    samples: samples.map(sampleOf),
    rods: rodsOf(run, start, events),
    noticed: noticedIn(events),
  };
}
