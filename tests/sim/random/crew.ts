// A random crew plays a run: bursts of acts by chance, drilling between them, and the bad habits of its own.
import {
  act,
  createRun,
  createStream,
  jobOver,
  step,
  type LogEntry,
  type Run,
  type Scenario,
  type Stream,
} from '../../../sim';
import { darkAt } from '../../../sim/run/daylight';
import { chance, nextAct, pick } from './draws';
import { HABITS, HABIT_NAMES, type Move } from './habits';
import { hasPoorString } from './jobs';
import { bringsItDown, forcesItDown, makesAWell, WELL_HABITS, WELL_HABIT_NAMES } from './wellHabits';

export interface Played {
  readonly run: Run;
  /** Acts drawn by chance, and how many of them were done. Those of habits are not counted. */
  readonly tried: number;
  readonly taken: number;
}

/** Habits of one crew; drilling and rods belong to every crew. */
const OWN_HABITS = 7;
const EVERYBODYS: readonly string[] = [
  'drillsOn',
  'drillsOn',
  'drillsOn',
  'addsARod',
  'addsARodAfterClearing',
  'pullsFast',
];
/** How often a free second brings a habit, or one act by chance. */
const HABIT_frac = 0.06;
const ACT_frac = 0.05;
/** Seconds that an ended run is still played: nothing may go wrong then either. */
const AFTER_END_s = 60;

/** Late in a long run some crews give the hole up and begin another. */
const LATE_s = 5000;
const GIVES_UP_frac = 0.6;

const cased = (run: Run): boolean => run.state.completion.casing.shoe_m > 0;

/** What the crew does next of itself, or nothing. */
function nextMoves(run: Run, stream: Stream, habits: readonly string[]): Move[] {
  const { scenario, state } = run;
  if (!scenario.well) return HABITS[pick(stream, habits)](run, stream);
  if (darkAt(scenario, state.tick)) return HABITS.sleeps(run, stream);
  if (cased(run)) return WELL_HABITS[pick(stream, WELL_HABIT_NAMES)](run, stream);
  // A hole that does not let the casing in is given up at last.
  if (state.tick > LATE_s) return HABITS.endsTheJob(run, stream);
  if (state.machine.stem === 'stuck') return HABITS.worksItFree(run, stream);
  if (state.completion.plan === null) return makesAWell(run, stream);
  if (hasPoorString(scenario.seed)) return forcesItDown(run, stream);
  return chance(stream, 0.9) ? bringsItDown(run, stream) : HABITS.endsTheJob(run, stream);
}

/** How the crew begins: with the pit where there is none, with the well where one is wanted of the hole that is there. */
function firstMoves(run: Run, stream: Stream): Move[] {
  if (run.scenario.well) return makesAWell(run, stream);
  const first = run.state.site.pitDug ? [] : HABITS.digsThePit(run, stream);
  // Without petrol there is nothing to drill with: such a crew draws the stem.
  if (run.state.stocks.petrol_L <= 0) first.push(...HABITS.pullsEverything(run, stream));
  return [...first, ...HABITS.primesAgain(run, stream), ...HABITS.drillsOn(run, stream)];
}

/** Plays until so many ticks have passed, and calls watch after each of them. */
export function playRandom(scenario: Scenario, seedText: string, ticks: number, watch: (run: Run) => void): Played {
  const stream: Stream = createStream(seedText);
  const run = createRun(scenario);
  const habits = [...EVERYBODYS, ...Array.from({ length: OWN_HABITS }, () => pick(stream, HABIT_NAMES))];
  const script = firstMoves(run, stream);
  let idle_s = 0;
  let tried = 0;
  let taken = 0;
  let left = ticks;
  while (run.state.tick < ticks && left > 0) {
    while (script.length > 0 && idle_s >= script[0].after_s) {
      const { action, payload } = script.shift()!;
      act(run, action, payload);
      idle_s = 0;
    }
    if (run.state.tick === LATE_s && !scenario.well && chance(stream, GIVES_UP_frac))
      script.splice(0, script.length, ...HABITS.movesOn(run, stream));
    if (script.length === 0 && !scenario.well && !run.state.pump.primed && chance(stream, HABIT_frac))
      script.push(...HABITS.primesAgain(run, stream));
    if (script.length === 0 && chance(stream, 4 * HABIT_frac)) script.push(...HABITS.worksItFree(run, stream));
    if (script.length === 0 && chance(stream, HABIT_frac)) script.push(...nextMoves(run, stream, habits));
    // What stands is soon spoilt: a crew with a well to make keeps to its script more.
    const calm = scenario.well && !cased(run) ? 20 : 1;
    if (chance(stream, (script.length === 0 ? ACT_frac : ACT_frac / 5) / calm)) {
      const { action, payload } = nextAct(run, stream);
      tried++;
      if (act(run, action, payload).kind === 'done') taken++;
    }
    step(run);
    idle_s++;
    if (jobOver(run)) left = Math.min(left, AFTER_END_s) - 1;
    watch(run);
  }
  return { run, tried, taken };
}

/** Plays what is left of a log on a run that stands in the middle of it. */
export function playOn(run: Run, log: readonly LogEntry[], ticks: number): void {
  for (const [tick, action, payload] of log) {
    while (run.state.tick < tick) step(run);
    act(run, action, payload);
  }
  while (run.state.tick < ticks) step(run);
}
