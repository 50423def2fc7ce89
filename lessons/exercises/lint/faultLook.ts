// The faults of an exercise on one ground: did each come on the careful crew's way, and could it be noticed?

import { createRun, groundOf, type Run } from '$sim';
import type { LessonFault } from '../../faultSchema';
import { runAtMark } from '../../hindsight/index';
import { scenarioOf } from '../../scenario';
import type { Lesson } from '../../schema';
import { besideTwin, type Meeting, type Pair, type Showing } from './twin';
import { pastOf, type Strike, type Way } from './way';

/** never: the run was over before. noRoom: the ground has no place for it. before: it came while another crew still worked. */
export type FaultLook = Showing | 'never' | 'noRoom' | 'before';

/** Deeper than any hole, m: what waits for that depth never comes. */
const NEVER_m = 1e9;
/** The bit stands on the bottom when it is this near to it, m. */
const NEAR_m = 0.02;

const liesInGround = ({ id }: LessonFault): boolean => id === 'cobbles' || id === 'saltyLayer';

/** The lesson without its i-th fault; all others come as they would. */
function without(lesson: Lesson, i: number): Lesson {
  const none: Partial<LessonFault> = { from: { depth_m: NEVER_m }, to: { depth_m: NEVER_m } };
  return {
    ...lesson,
    faults: lesson.faults.map((fault, k) => (k === i ? ({ ...fault, ...none } as LessonFault) : fault)),
  };
}

/** Number of a fault of the lesson among those that the scenario holds. */
const scheduledIndex = ({ faults }: Lesson, i: number): number =>
  faults.slice(0, i).filter((fault) => !liesInGround(fault)).length;

const turnsOnBottom = ({ state }: Run): boolean =>
  state.stem.turning && state.stem.bit_m >= state.hole.depth_m - NEAR_m;

/** The tick after which nothing is drilled any more. */
const drilledUntil = ({ run }: Way): number =>
  run.record.events.find(({ name }) => name === 'drillingStopped')?.tick ?? run.state.tick;

function* lookAtStrike(way: Way, fault: LessonFault, i: number, strike: Strike): Generator<null, FaultLook> {
  const { lesson, seed } = way.begun;
  const past = pastOf(way);
  const twinScenario = scenarioOf(without(lesson, i), seed, false);
  const pair: Pair = {
    run: runAtMark(past, strike.mark),
    twin: runAtMark({ ...past, scenario: twinScenario }, strike.mark),
    log: past.log,
    next: strike.mark.entries,
  };
  const struck = ({ state }: Run): boolean => state.tick >= strike.tick;
  const ofTheHole = fault.id === 'lostTool' || fault.id === 'weakPowder';
  const meeting: Meeting = {
    met: fault.id === 'lostTool' ? (run) => struck(run) && turnsOnBottom(run) : struck,
    byTrial: fault.id === 'weakPowder',
    last_tick: ofTheHole ? Math.max(strike.tick + 1, drilledUntil(way)) : way.run.state.tick,
  };
  return yield* besideTwin(pair, lesson, meeting);
}

/** Depth at which two grounds begin to differ, m; null where they do not. */
function partsAt_m({ run }: Way, twin: Run): number | null {
  const [here, there] = [run.scenario.ground, twin.scenario.ground];
  const starts_m = [...here.layers, ...there.layers].map(({ top_m }) => top_m);
  const at = (ground: typeof here, depth_m: number) => ground.layers.findLast(({ top_m }) => top_m <= depth_m)?.kind;
  const parts_m = starts_m.filter((depth_m) => at(here, depth_m) !== at(there, depth_m));
  const saltAt = (ground: typeof here, depth_m: number) =>
    ground.salinity.findLast(({ from_m }) => from_m <= depth_m)?.salt_gL;
  const salts_m = [...here.salinity, ...there.salinity].map(({ from_m }) => from_m);
  parts_m.push(...salts_m.filter((depth_m) => saltAt(here, depth_m) !== saltAt(there, depth_m)));
  return parts_m.length > 0 ? Math.min(...parts_m) : null;
}

function* lookInGround(way: Way, fault: LessonFault, i: number): Generator<null, FaultLook> {
  const { lesson, seed } = way.begun;
  const { run } = way;
  const twin = createRun(scenarioOf(without(lesson, i), seed, false));
  const bed_m = partsAt_m(way, twin);
  if (bed_m === null) return 'noRoom';
  if ((run.state.relief?.depth_m ?? 0) >= bed_m) return 'before';
  const byTrial = fault.id === 'saltyLayer';
  const cuts = (here: Run): boolean => groundOf(here).layers[here.state.stem.layerIndex]!.top_m >= bed_m;
  const deep = (here: Run): boolean => here.state.hole.depth_m >= bed_m;
  const showing = yield* besideTwin({ run: createRun(run.scenario), twin, log: run.log, next: 0 }, lesson, {
    met: (here) => here.state.holeNumber === 1 && (byTrial ? deep(here) : cuts(here)),
    byTrial,
    last_tick: drilledUntil(way),
  });
  return showing === 'unmet' ? 'never' : showing;
}

/** Looks at the i-th fault of the lesson on one way of the careful crew. Yields now and then. */
export function* lookAtFault(way: Way, i: number): Generator<null, FaultLook> {
  const { lesson } = way.begun;
  const fault = lesson.faults[i]!;
  if (liesInGround(fault)) return yield* lookInGround(way, fault, i);
  const index = scheduledIndex(lesson, i);
  const strike = way.strikes.find((one) => one.index === index);
  if (strike) return yield* lookAtStrike(way, fault, i, strike);
  return way.before.includes(index) ? 'before' : 'never';
}
