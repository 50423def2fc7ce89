// What goes wrong on the way: new ones, the sort of moment at which each comes, its figures, and the line on which all are drawn.
import type { Exercise, FaultId, LessonFault } from '$lessons';
import { baseOf } from '$lessons';
import { FAULT } from '$sim';

export const FAULT_IDS = [
  'pumpStops',
  'hoseBursts',
  'rainFills',
  'lostTool',
  'weakPowder',
  'helperAway',
  'cobbles',
  'saltyLayer',
] as const satisfies readonly FaultId[];

export const WHENS = ['depth', 'time', 'event'] as const;
export type When = (typeof WHENS)[number];
type Moment = LessonFault['from'];
export type AfterEvent = Extract<Moment, { event: string }>['event'];

/** What a fault may come after: a few plain moments of every job, in their order. */
export const AFTER_EVENTS = [
  'primed',
  'soaked',
  'flowStarted',
  'sampleCaught',
  'rodDown',
  'rodAdded',
  'returnsLost',
  'stuck',
  'drillingStopped',
  'wellPlanned',
  'stemPulled',
  'casingLanded',
  'packPoured',
  'sealPlaced',
  'wellClear',
  'testDone',
] as const satisfies readonly AfterEvent[];

/** The words of such a moment; one that came with a file and is not offered is told as the run tells it. */
export const afterKey = (event: AfterEvent): string =>
  (AFTER_EVENTS as readonly string[]).includes(event) ? `editor.after.${event}` : `event.${event}`;

/** Cobbles and salt lie in the ground from the start: they have a depth and no other moment. */
export const liesInGround = (id: FaultId): boolean => id === 'cobbles' || id === 'saltyLayer';

export interface FaultFigure {
  readonly name: 'share_frac' | 'rain_mmh' | 'time_s' | 'thickness_m' | 'salt_gL';
  /** What it is where nothing is said. */
  readonly usual: number;
  /** It may be left to what is usual. */
  readonly free: boolean;
}

const FIGURES_OF: Readonly<Record<FaultId, readonly FaultFigure[]>> = {
  pumpStops: [],
  hoseBursts: [{ name: 'share_frac', usual: FAULT.hose_frac, free: true }],
  rainFills: [
    { name: 'rain_mmh', usual: FAULT.rain_mmh, free: true },
    { name: 'time_s', usual: FAULT.rain_s, free: true },
  ],
  lostTool: [],
  weakPowder: [{ name: 'share_frac', usual: FAULT.powder_frac, free: true }],
  helperAway: [{ name: 'time_s', usual: FAULT.away_s, free: true }],
  cobbles: [{ name: 'thickness_m', usual: 0.3, free: false }],
  saltyLayer: [
    { name: 'thickness_m', usual: 2, free: false },
    { name: 'salt_gL', usual: 5, free: false },
  ],
};
export const figuresOf = (id: FaultId): readonly FaultFigure[] => FIGURES_OF[id];

const MOST_FAULTS = 12;
export const faultsFull = ({ faults }: Exercise): boolean => faults.length >= MOST_FAULTS;

const tenths = (value: number): number => Math.round(value * 10) / 10;

/** Half way down, or half way through the day, or after the first rod: somewhere in the middle of the job. */
function momentsFor(when: When, exercise: Exercise): { from: Moment; to: Moment } {
  const { end } = baseOf(exercise);
  const depth_m = exercise.depth_m ?? end.depth_m;
  if (when === 'depth') return { from: { depth_m: tenths(depth_m * 0.4) }, to: { depth_m: tenths(depth_m * 0.6) } };
  if (when === 'event') return { from: { event: 'rodDown', delay_s: 60 }, to: { event: 'rodDown', delay_s: 300 } };
  // Whoever is quick is done long before the time is up.
  const sooner_s = Math.round((exercise.cap_s * 0.1) / 60) * 60;
  return { from: { time_s: sooner_s }, to: { time_s: 2 * sooner_s } };
}

export const whenOf = ({ from }: LessonFault): When =>
  'time_s' in from ? 'time' : 'event' in from ? 'event' : 'depth';

export function addFault(exercise: Exercise, id: FaultId): Exercise {
  const figures = FIGURES_OF[id].filter(({ free }) => !free).map(({ name, usual }) => [name, [usual, usual]]);
  const fault = { id, ...momentsFor('depth', exercise), ...Object.fromEntries(figures) } as LessonFault;
  return { ...exercise, faults: [...exercise.faults, fault] };
}

export const removeFault = (exercise: Exercise, i: number): Exercise => ({
  ...exercise,
  faults: exercise.faults.toSpliced(i, 1),
});

export function setWhen(exercise: Exercise, i: number, when: When): Exercise {
  const fault = exercise.faults[i]!;
  if (whenOf(fault) === when) return exercise;
  return { ...exercise, faults: exercise.faults.with(i, { ...fault, ...momentsFor(when, exercise) } as LessonFault) };
}

export function setEvent(exercise: Exercise, i: number, event: AfterEvent): Exercise {
  const fault = exercise.faults[i]!;
  const on = (moment: Moment): Moment => ('event' in moment ? { ...moment, event } : moment);
  return {
    ...exercise,
    faults: exercise.faults.with(i, { ...fault, from: on(fault.from), to: on(fault.to) } as LessonFault),
  };
}

/** The last word of a moment's path. */
export const momentField = (when: When): 'depth_m' | 'time_s' | 'delay_s' =>
  when === 'depth' ? 'depth_m' : when === 'time' ? 'time_s' : 'delay_s';

export interface Marked {
  /** Number of the fault in the list. */
  readonly index: number;
  readonly from: number;
  readonly to: number;
}
export interface FaultLines {
  /** By depth, m, and by the clock, s; each with how far its line goes. */
  readonly depth: { readonly most: number; readonly marks: readonly Marked[] };
  readonly time: { readonly most: number; readonly marks: readonly Marked[] };
  /** Numbers of those that come after something. */
  readonly after: readonly number[];
}

const marks = (exercise: Exercise, when: When): Marked[] =>
  exercise.faults.flatMap((fault, index) => {
    if (whenOf(fault) !== when) return [];
    const value = (moment: Moment): number =>
      'time_s' in moment ? moment.time_s : 'depth_m' in moment ? moment.depth_m : 0;
    const [from, to] = [value(fault.from), value(fault.to)];
    return Number.isFinite(from) && Number.isFinite(to) ? [{ index, from, to }] : [];
  });

/** All faults on their lines: down the hole, along the day. */
export function linesOf(exercise: Exercise): FaultLines {
  const [depth, time] = [marks(exercise, 'depth'), marks(exercise, 'time')];
  const goal_m = exercise.depth_m ?? baseOf(exercise).end.depth_m;
  return {
    depth: { most: Math.max(goal_m, ...depth.map(({ to }) => to)), marks: depth },
    time: { most: Math.max(exercise.cap_s, ...time.map(({ to }) => to)), marks: time },
    after: exercise.faults.flatMap((fault, index) => (whenOf(fault) === 'event' ? [index] : [])),
  };
}
