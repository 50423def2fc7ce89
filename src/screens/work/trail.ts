// The run's own trace for looking back: bit depth against time as a line, and the stick readings as marks.
import type { Run, RunEvent } from '$sim';
import type { KeyedMessage } from '../../words';
import { rowAt, stickReadings, type StickReading } from '../../notebook/readings';

export const TRAIL = { width: 300, height: 60 } as const;
/** So many points are enough for a line of this width. */
const MOST_POINTS = 150;
const LEAST_DEPTH_m = 1.5;
const LEAST_TIME_s = 60;

export interface Trail {
  readonly end_s: number;
  readonly deepest_m: number;
  /** Points of the line in the picture, "x,y x,y". */
  readonly points: string;
  readonly sticks: readonly (StickReading & { x: number; y: number })[];
  /** Heights of the ends of the rods in the picture. */
  readonly rodEnds: readonly number[];
  readonly milestones: readonly Milestone[];
}

/** Something that parts the work, and where it stands on the time line, 0 to 1. */
export interface Milestone {
  readonly at_frac: number;
  readonly words: KeyedMessage;
}

const round = (value: number): number => Math.round(value * 10) / 10;

export function trailOf(run: Run, deepestPit_m: number): Trail {
  const { trace } = run.record;
  const { time_s, bit_m } = trace.columns;
  const end_s = Math.max(LEAST_TIME_s, run.state.tick);
  let deepest_m = LEAST_DEPTH_m;
  for (let row = 0; row < trace.length; row++) deepest_m = Math.max(deepest_m, bit_m[row]!);
  const x = (at_s: number): number => round((at_s / end_s) * TRAIL.width);
  const y = (share: number): number => round(4 + share * (TRAIL.height - 8));
  const stride = Math.max(1, Math.ceil(trace.length / MOST_POINTS));
  const points: string[] = [];
  for (let row = 0; row < trace.length; row += stride)
    points.push(`${x(time_s[row]!)},${y(Math.max(0, bit_m[row]!) / deepest_m)}`);
  points.push(`${x(run.state.tick)},${y(Math.max(0, run.state.stem.bit_m) / deepest_m)}`);
  return {
    end_s,
    deepest_m,
    points: points.join(' '),
    rodEnds: rodEnds(deepest_m, run.scenario.kit.rodLength_m).map((depth_m) => y(depth_m / deepest_m)),
    milestones: milestonesOf(run.record.events, end_s),
    sticks: stickReadings(run).map((reading) => ({
      ...reading,
      x: x(reading.time_s),
      y: y(Math.min(1, reading.level_m / deepestPit_m)),
    })),
  };
}

function rodEnds(deepest_m: number, rodLength_m: number): number[] {
  const ends: number[] = [];
  for (let rod = 1; rod * rodLength_m < deepest_m; rod++) ends.push(rod * rodLength_m);
  return ends;
}

/** Words closer together than this share of the line would lie on each other; the later one is left out. */
const APART_frac = 0.09;

export function milestonesOf(events: readonly Pick<RunEvent, 'tick' | 'name' | 'data'>[], end_s: number): Milestone[] {
  const milestones: Milestone[] = [];
  for (const event of events) {
    const words = milestoneWords(event);
    const at_frac = event.tick / end_s;
    const last = milestones.at(-1);
    if (words && (!last || at_frac - last.at_frac >= APART_frac)) milestones.push({ at_frac, words });
  }
  return milestones;
}

function milestoneWords({ name, data }: Pick<RunEvent, 'name' | 'data'>): KeyedMessage | null {
  if (name === 'primed') return { key: 'work.back.primed' };
  if (name === 'rodAdded') return { key: 'work.back.rod', data: { rod: data['rods'] ?? 0 } };
  return name === 'taskDone' && data['action'] === 'addAdditive' ? { key: 'work.back.powder' } : null;
}

export interface Glance {
  readonly time_s: number;
  readonly bit_m: number;
  /** The stick reading last seen at that time, or null. */
  readonly stick: StickReading | null;
}

/** What was known at a moment that has passed. */
export function glanceBack(run: Run, time_s: number): Glance {
  const { trace } = run.record;
  const row = rowAt(trace.columns.time_s, trace.length, time_s);
  const past = stickReadings(run).filter((reading) => reading.time_s <= time_s);
  return { time_s, bit_m: row < 0 ? 0 : Math.max(0, trace.columns.bit_m[row]!), stick: past.at(-1) ?? null };
}
