// The faults of a lesson and a seed: when each comes and how bad it is, and the ground with its cobbles and its salt.

import { createStream, variedLayer, type FaultMoment, type Ground, type ScheduledFault, type Stream } from '$sim';
import type { LessonFault, Moment } from './faultSchema';
import type { Lesson } from './schema';

type InGround = Extract<LessonFault, { id: 'cobbles' | 'saltyLayer' }>;
type InTime = Exclude<LessonFault, InGround>;

const isInGround = (fault: LessonFault): fault is InGround => fault.id === 'cobbles' || fault.id === 'saltyLayer';

/** Each fault has a stream of its own, so that one more in the list leaves the others where they were. */
const streamOf = (lesson: Lesson, seed: number, i: number): Stream =>
  createStream(`${lesson.id}/fault/${i}/${lesson.faults[i]!.id}/${seed}`);

const within = (stream: Stream, low: number, high: number): number => low + (high - low) * stream.uniform();
const hundredths = (value: number): number => Math.round(value * 100) / 100;

function momentOf(stream: Stream, from: Moment, to: Moment): FaultMoment {
  if ('time_s' in from && 'time_s' in to) return { tick: Math.round(within(stream, from.time_s, to.time_s)) };
  if ('depth_m' in from && 'depth_m' in to) return { depth_m: hundredths(within(stream, from.depth_m, to.depth_m)) };
  if ('event' in from && 'event' in to)
    return { after: from.event, delay_s: Math.round(within(stream, from.delay_s, to.delay_s)) };
  throw new RangeError('The two moments of a fault are of different sorts.');
}

function scheduled(stream: Stream, fault: InTime): ScheduledFault {
  const at = momentOf(stream, fault.from, fault.to);
  const drawn = (range?: readonly [number, number]): number => hundredths(within(stream, ...range!));
  return {
    fault: fault.id,
    at,
    ...('share_frac' in fault && fault.share_frac ? { share_frac: drawn(fault.share_frac) } : {}),
    ...('rain_mmh' in fault && fault.rain_mmh ? { rain_mmh: drawn(fault.rain_mmh) } : {}),
    ...('time_s' in fault && fault.time_s ? { time_s: Math.round(within(stream, ...fault.time_s)) } : {}),
  };
}

/** What goes wrong on the way, by the seed. */
export function faultsOf(lesson: Lesson, seed: number): ScheduledFault[] {
  return lesson.faults.flatMap((fault, i) => (isInGround(fault) ? [] : [scheduled(streamOf(lesson, seed, i), fault)]));
}

/** A thin bed of cobbles in place of what lay there. */
function withCobbles(ground: Ground, top_m: number, bottom_m: number, stream: Stream): Ground {
  const bed = variedLayer('cobbles', top_m, bottom_m, bottom_m < ground.lowestWater_m, null, stream);
  const layers = ground.layers.flatMap((layer) => {
    const above = { ...layer, bottom_m: Math.min(layer.bottom_m, top_m) };
    const below = { ...layer, top_m: Math.max(layer.top_m, bottom_m) };
    return [above, below].filter((part) => part.bottom_m > part.top_m);
  });
  return { ...ground, layers: [...layers, bed].sort((a, b) => a.top_m - b.top_m) };
}

/** Salt in the water between two depths; above and below it stays as it was. */
function withSalt(ground: Ground, top_m: number, bottom_m: number, salt_gL: number): Ground {
  const after_gL = ground.salinity.findLast(({ from_m }) => from_m <= bottom_m)?.salt_gL ?? 0;
  const kept = ground.salinity.filter(({ from_m }) => from_m < top_m || from_m > bottom_m);
  const salinity = [...kept, { from_m: top_m, salt_gL }, { from_m: bottom_m, salt_gL: after_gL }];
  return { ...ground, salinity: salinity.sort((a, b) => a.from_m - b.from_m) };
}

/** The ground with what the lesson hides in it. Only the first hole meets it: a few metres on the ground is as it was. */
export function groundWithFaults(lesson: Lesson, seed: number, ground: Ground): Ground {
  let changed = ground;
  lesson.faults.forEach((fault, i) => {
    if (!isInGround(fault)) return;
    const stream = streamOf(lesson, seed, i);
    const top_m = hundredths(within(stream, fault.from.depth_m, fault.to.depth_m));
    const bottom_m = Math.min(ground.depth_m, hundredths(top_m + within(stream, ...fault.thickness_m)));
    if (!(bottom_m > top_m)) return;
    changed =
      fault.id === 'cobbles'
        ? withCobbles(changed, top_m, bottom_m, stream)
        : withSalt(changed, top_m, bottom_m, hundredths(within(stream, ...fault.salt_gL)));
  });
  return changed;
}
