// What stood in the careful crew's way on a ground where it did not come to a good end, in words that help to set the exercise right.

import { groundOf, type EventName, type Ground, type Run, type RunEvent } from '$sim';
import type { Lesson } from '../../schema';
import { ownEvents, startTick } from '../../own';
import type { WordData } from '../../words/index';
import type { Exercise } from '../exerciseSchema';
import { twoDecimals, type LintKey } from './finding';
import type { Way } from './way';

export interface Hindrance {
  readonly key: LintKey;
  readonly data: WordData;
  readonly field?: string;
}

/** A crew goes home so long before its time is over, s; who ended nearer to it than this ended for want of time. */
const NEAR_END_s = 900;
/** Less than this in so long, drilled with weight on, is no way to get on, m and s: 0.6 m an hour, two thirds of a slow pace in clay. ASSUMED. */
const CREEPS_m = 0.3;
const CREEPS_s = 1800;
/** What was told this near to the bottom was told of it, m. */
const HERE_m = 0.3;
/** Less powder than this is none, kg. */
const LAST_kg = 0.01;
/** A screen wants at least so much ground that lets water through, m, of grains no finer than this, mm: medium sand, by ISO 14688-1. */
const SCREEN_m = 1.5;
const MEDIUM_SAND_mm = 0.2;

/** The deepest that the run came, m. */
function deepest_m({ state, record }: Run): number {
  const { depth_m } = record.trace.columns;
  let deepest = state.hole.depth_m;
  for (let row = 0; row < record.trace.length; row++) deepest = Math.max(deepest, depth_m[row]!);
  return deepest;
}

/** Does it stand on the bottom in ground that it hardly gets into? Looks at the last rows of the trace in which it was fed. */
function creeps({ record }: Run, deep_m: number): boolean {
  const { depth_m, turning, feed_frac, time_s } = record.trace.columns;
  let fed_s = 0;
  for (let row = record.trace.length - 1; row > 0 && depth_m[row]! > deep_m - CREEPS_m; row--)
    if (turning[row]! > 0 && feed_frac[row]! > 0) fed_s += time_s[row]! - time_s[row - 1]!;
  return fed_s >= CREEPS_s;
}

/** Longest stretch for a screen between the lowest water and a depth, m. */
function stretch_m({ layers, lowestWater_m }: Ground, deep_m: number): number {
  let longest = 0;
  let here = 0;
  for (const { top_m, bottom_m, d50_mm, su_kPa } of layers) {
    const inside_m = Math.min(bottom_m, deep_m) - Math.max(top_m, lowestWater_m);
    here = d50_mm >= MEDIUM_SAND_mm && su_kPa === null ? here + Math.max(0, inside_m) : 0;
    longest = Math.max(longest, here);
  }
  return longest;
}

/** Path of the layer that an exercise has at a depth; of other grounds none. */
function layerField({ ground }: Exercise, depth_m: number): string {
  if (ground.by !== 'layers') return 'ground';
  let bottom_m = 0;
  const found = ground.layers.findIndex(({ thickness_m }) => (bottom_m += thickness_m) > depth_m + 0.01);
  return `ground.layers.${found < 0 ? ground.layers.length - 1 : found}`;
}

/** Index of the fault that can have laid cobbles at a depth; -1 where none. */
const cobblesAt = (faults: Lesson['faults'], depth_m: number): number =>
  faults.findIndex(
    (one) =>
      one.id === 'cobbles' && depth_m > one.from.depth_m - HERE_m && depth_m < one.to.depth_m + one.thickness_m[1],
  );

/** What can be read off the end of a run, gathered once. */
interface End {
  readonly run: Run;
  readonly exercise: Exercise;
  readonly faults: Lesson['faults'];
  readonly deep_m: number;
  readonly events: readonly RunEvent[];
  readonly whole: boolean;
  /** How deep the hole is to go, or may. */
  readonly goal_m: number;
  /** An ending that the lesson takes for none. */
  readonly badly: boolean;
}

const had = ({ events }: End, name: EventName): boolean => events.some((event) => event.name === name);
const depthOf = ({ deep_m }: End): { depth_m: number } => ({ depth_m: twoDecimals(deep_m) });

function pump(end: End): Hindrance | null {
  const { run } = end;
  const { opening } = run.scenario;
  const drew = opening.primed || run.state.pump.running_s > 0;
  if (drew) return null;
  const lift = end.events.some(({ name, data }) => name === 'primeFailed' && data.cause === 'lift');
  if (lift) return { key: 'lint.way.worn', data: {}, field: 'stocks.pumpWorn_frac' };
  const pit_L = twoDecimals(opening.pit_L);
  const water_L = twoDecimals(opening.water_L);
  if (opening.setOut) return { key: 'lint.way.noPit', data: { water_L }, field: 'stocks.water_L' };
  return { key: 'lint.way.noPrime', data: { pit_L, water_L }, field: 'stocks.pit_L' };
}

function supplies(end: End): (Hindrance | null)[] {
  const { opening } = end.run.scenario;
  const [petrol_L, water_L, powder_kg] = [opening.petrol_L, opening.water_L, opening.powder_kg].map(twoDecimals) as [
    number,
    number,
    number,
  ];
  const { stocks } = end.run.state;
  return [
    had(end, 'petrolOut') || stocks.petrol_L <= 0
      ? { key: 'lint.way.petrol', data: { ...depthOf(end), petrol_L }, field: 'stocks.petrol_L' }
      : null,
    had(end, 'waterOut') || stocks.water_L <= 0
      ? { key: 'lint.way.water', data: { ...depthOf(end), water_L }, field: 'stocks.water_L' }
      : null,
    // Some lessons have no powder: then the ground asks for none.
    end.exercise.stocks.powder_kg !== undefined && stocks.powder_kg < LAST_kg
      ? { key: 'lint.way.powder', data: { powder_kg }, field: 'stocks.powder_kg' }
      : null,
  ];
}

function groundInTheWay(end: End): Hindrance | null {
  const { run, deep_m, exercise } = end;
  const field = layerField(exercise, deep_m);
  const refused = end.events.some(
    ({ name, data }) => name === 'bitRefused' && Math.abs(Number(data.depth_m) - deep_m) < HERE_m,
  );
  const cobbles = cobblesAt(end.faults, deep_m);
  if (refused && cobbles >= 0) return { key: 'lint.way.cobbles', data: depthOf(end), field: `faults.${cobbles}` };
  if (refused) return { key: 'lint.way.hard', data: depthOf(end), field };
  return creeps(run, deep_m) ? { key: 'lint.way.slow', data: depthOf(end), field } : null;
}

function hole(end: End): (Hindrance | null)[] {
  const { run } = end;
  const lost = had(end, 'returnsLost') && run.state.machine.job === 'abandoned';
  return [
    groundInTheWay(end),
    run.state.machine.stem === 'stuck' ? { key: 'lint.way.stuck', data: depthOf(end), field: 'ground' } : null,
    lost ? { key: 'lint.way.lost', data: depthOf(end), field: layerField(end.exercise, end.deep_m) } : null,
  ];
}

function time(end: End, cap_s: number): Hindrance | null {
  const { run } = end;
  if (run.state.tick - startTick(run) < cap_s - NEAR_END_s) return null;
  if (end.whole && had(end, 'drillingStopped'))
    return { key: 'lint.way.timeWell', data: { time_h: Math.round(cap_s / 360) / 10 }, field: 'cap_s' };
  return { key: 'lint.way.time', data: { ...depthOf(end), time_min: Math.round(cap_s / 60) }, field: 'cap_s' };
}

function well(end: End): (Hindrance | null)[] {
  const { run, deep_m, whole, badly, goal_m } = end;
  if (!whole) return [];
  const none = stretch_m(groundOf(run), deep_m) < SCREEN_m;
  const hung = badly && (had(end, 'casingHung') || had(end, 'casingSnapped')) && !had(end, 'casingLanded');
  const deeper = deep_m > goal_m - HERE_m && stretch_m(groundOf(run), Infinity) >= SCREEN_m;
  return [
    none && deeper ? { key: 'lint.way.rods', data: { depth_m: twoDecimals(goal_m) }, field: 'depth_m' } : null,
    none && !deeper ? { key: 'lint.way.noSand', data: depthOf(end), field: 'ground' } : null,
    hung ? { key: 'lint.way.casing', data: {}, field: 'ground' } : null,
  ];
}

/** All that stood in the way, the likeliest first; empty where a run came to a good end and nothing of this can be read off it. */
export function hindrancesOf({ run, begun, grade }: Way, exercise: Exercise): Hindrance[] {
  const { lesson } = begun;
  const good = ['outcome.reached', 'outcome.drilled', 'outcome.handedOver'].includes(grade.outcome.key);
  const end: End = {
    run,
    exercise,
    faults: lesson.faults,
    deep_m: deepest_m(run),
    events: ownEvents(run),
    whole: lesson.well !== undefined,
    goal_m: lesson.end.depth_m,
    badly: !good,
  };
  const dry = well(end);
  if (good) return dry.filter((one) => one !== null);
  const first = pump(end);
  if (first) return [first];
  const found = [...supplies(end), ...hole(end), ...dry, time(end, lesson.end.cap_s)];
  const told = found.filter((one) => one !== null);
  return told.length > 0 ? told : [{ key: 'lint.way.other', data: depthOf(end) }];
}
