// The form of a fault in a lesson file: what goes wrong, and between which moments the seed lets it come. Cobbles and salt lie in the ground from the start.

import * as v from 'valibot';
import { NOTICED_EVENTS } from './noticed';

const Between = (min: number, max: number) => v.pipe(v.number(), v.finite(), v.minValue(min), v.maxValue(max));
const Count = (min: number, max: number) => v.pipe(v.number(), v.integer(), v.minValue(min), v.maxValue(max));
/** Smallest and largest value; the seed chooses between them. */
const Range = (min: number, max: number) =>
  v.pipe(
    v.tuple([Between(min, max), Between(min, max)]),
    v.check(([low, high]) => low <= high, 'the smaller number first'),
  );

const Depth = v.strictObject({ depth_m: Between(0, 60) });
/** A job second from the start of the run; a depth of the hole; so long after something has first happened. */
const Moment = v.union([
  v.strictObject({ time_s: Count(0, 345600) }),
  Depth,
  v.strictObject({ event: v.picklist(NOTICED_EVENTS), delay_s: Count(0, 86400) }),
]);
export type Moment = v.InferOutput<typeof Moment>;

/** The number of a moment, and what it is the number of. */
const figureOf = (moment: Moment): number =>
  'time_s' in moment ? moment.time_s : 'depth_m' in moment ? moment.depth_m : moment.delay_s;
const sortOf = (moment: Moment): string =>
  'event' in moment ? `after ${moment.event}` : 'time_s' in moment ? 'time' : 'depth';

const inTime = { from: Moment, to: Moment };
const inDepth = { from: Depth, to: Depth };

export const FaultSchema = v.pipe(
  v.variant('id', [
    v.strictObject({ id: v.literal('pumpStops'), ...inTime }),
    v.strictObject({ id: v.literal('hoseBursts'), ...inTime, share_frac: v.exactOptional(Range(0.05, 0.9)) }),
    v.strictObject({
      id: v.literal('rainFills'),
      ...inTime,
      rain_mmh: v.exactOptional(Range(1, 200)),
      time_s: v.exactOptional(Range(1, 36000)),
    }),
    v.strictObject({ id: v.literal('lostTool'), ...inTime }),
    v.strictObject({ id: v.literal('weakPowder'), ...inTime, share_frac: v.exactOptional(Range(0.05, 0.9)) }),
    v.strictObject({ id: v.literal('helperAway'), ...inTime, time_s: v.exactOptional(Range(1, 36000)) }),
    v.strictObject({ id: v.literal('cobbles'), ...inDepth, thickness_m: Range(0.05, 3) }),
    v.strictObject({ id: v.literal('saltyLayer'), ...inDepth, thickness_m: Range(0.25, 20), salt_gL: Range(1, 40) }),
  ]),
  v.check(
    ({ from, to }) => sortOf(from) === sortOf(to) && figureOf(from) <= figureOf(to),
    'two moments of one sort, the earlier first',
  ),
);
export type LessonFault = v.InferOutput<typeof FaultSchema>;
export type FaultId = LessonFault['id'];
