// Acts that measure the well: dipping the level, the yield test with its steps and its recovery.

import { DURATION_s } from '../../materials/durations';
import { WELL_PUMPS, type WellPumpName } from '../../materials/wellPumps';
import type { TestStop, WellTest } from '../../well/wellTest';
import type { Payload } from '../check';
import { closeIn } from '../closeIn';
import { send } from '../modes';
import type { RefusalKey } from '../names';
import { NOISE } from '../noise';
import type { Run } from '../run';
import type { Task } from '../state';
import { tell } from '../tell';
import { casingRefusal, isDry, tooDeep, waterRefusal } from '../wellReach';
import { draw, QUIET, refreshWell, standingNow } from '../wellTick';
import type { Deeds } from './deed';

const LMIN_PER_M3S = 60000;

/** A dipper is read to a centimetre and is off by so much, m. ASSUMED. */
const DIPPER_m = 0.01;
const DIPPER_SCATTER_m = 0.004;
/** The pump no longer gives what it is worked for below this share. ASSUMED. */
const RAN_DRY_frac = 0.5;
/** Readings: every so many seconds up to so long after the start of a step, as in handbooks (from memory): close together first. */
const READ_EVERY_s = [30, 60, 300, 900] as const;
const READ_UP_TO_s = [300, 900, 3600, Infinity] as const;

/** The level as the dipper shows it now. */
function dipped_m(run: Run): number {
  const { well, noise } = run.state;
  const read_m = well!.level_m + DIPPER_SCATTER_m * noise[NOISE.sound];
  return Math.round(read_m / DIPPER_m) * DIPPER_m;
}

function isReading(time_s: number): boolean {
  let i = 0;
  while (time_s > READ_UP_TO_s[i]) i++;
  return time_s % READ_EVERY_s[i] === 0;
}

const ratesOf = (payload: Payload): number[] =>
  [payload.rate1_Lmin, payload.rate2_Lmin, payload.rate3_Lmin].filter(
    (rate): rate is number => typeof rate === 'number',
  );

/** A lift gives no more than it can. */
const given_Lmin = (lift: WellPumpName, rate_Lmin: number): number =>
  Math.min(rate_Lmin, WELL_PUMPS[lift].flow_m3s * LMIN_PER_M3S);

function testRefusal(run: Run, payload: Payload): RefusalKey | null {
  const without = waterRefusal(run);
  if (without) return without;
  const lift = payload.lift as WellPumpName;
  if (!run.scenario.well!.lifts.includes(lift)) return 'notOffered';
  if (tooDeep(run, lift)) return 'tooDeepToLift';
  if (!run.state.well) return null;
  return WELL_PUMPS[lift].leastBore_m > boreOf_m(run) ? 'notOffered' : isDry(run) ? 'wellDry' : null;
}

function boreOf_m(run: Run): number {
  const { outside_m, wall_m } = standingNow(run).pipe;
  return outside_m - 2 * wall_m;
}

/** Breaks the test off: the pump stands, the task ends with the next second. */
function breakOff(run: Run, task: Task, test: WellTest, why: TestStop): void {
  test.refusal = why;
  task.endTick = run.state.tick + 1;
}

function pumpOn(run: Run, task: Task, test: WellTest, time_s: number): void {
  const { well } = run.state;
  const rate_Lmin = test.rates_Lmin[Math.floor(time_s / test.step_s)];
  // A dry casing at the first second is refused; later it shows in what the pump gives.
  const short = time_s > 0 && well!.drawn_m3s * LMIN_PER_M3S < RAN_DRY_frac * rate_Lmin;
  if (tooDeep(run, test.lift)) breakOff(run, task, test, 'tooDeep');
  else if (short && isDry(run)) breakOff(run, task, test, 'ranDry');
  else draw(run, rate_Lmin / LMIN_PER_M3S, QUIET);
  const inStep_s = time_s % test.step_s;
  if (test.refusal === null && !(inStep_s > 0 && isReading(inStep_s))) return;
  const level_m = dipped_m(run);
  test.lowest_m = Math.max(test.lowest_m, level_m);
  if (time_s > 0) test.rows.push({ time_s, rate_Lmin, level_m });
}

export const testDeeds: Deeds = {
  dipWell: {
    refusal: casingRefusal,
    begin: closeIn,
    end: (run) => {
      if (!run.state.well) return;
      const level_m = dipped_m(run);
      run.state.well.dip = { level_m, tick: run.state.tick };
      tell(run, 'dipped', { level_m });
    },
  },
  yieldTest: {
    refusal: testRefusal,
    time_s: (_run, payload) =>
      ratesOf(payload).length * (payload.step_s as number) + (payload.recovery_s as number) + DURATION_s.dipWell,
    begin: (run, payload) => {
      closeIn(run);
      send(run, 'testBegins');
      refreshWell(run);
      const { well, tick } = run.state;
      const lift = payload.lift as WellPumpName;
      const static_m = dipped_m(run);
      well!.test = {
        lift,
        tick: tick + DURATION_s.dipWell,
        rates_Lmin: ratesOf(payload).map((rate_Lmin) => given_Lmin(lift, rate_Lmin)),
        step_s: payload.step_s as number,
        recovery_s: payload.recovery_s as number,
        rows: [],
        static_m,
        lowest_m: static_m,
        recovered_m: null,
        refusal: null,
        over: false,
      };
    },
    during: (run, task) => {
      const test = run.state.well?.test;
      const time_s = run.state.tick - (test?.tick ?? 0);
      if (!test || time_s < 0 || test.refusal) return;
      const pumped_s = test.rates_Lmin.length * test.step_s;
      if (time_s < pumped_s) pumpOn(run, task, test, time_s);
      else if (time_s === pumped_s) {
        const level_m = dipped_m(run);
        test.lowest_m = Math.max(test.lowest_m, level_m);
        test.rows.push({ time_s, rate_Lmin: test.rates_Lmin[test.rates_Lmin.length - 1], level_m });
      } else if (isReading(time_s - pumped_s)) test.rows.push({ time_s, rate_Lmin: 0, level_m: dipped_m(run) });
    },
    end: (run) => {
      const test = run.state.well?.test;
      if (!test) return;
      const pumped_s = test.rates_Lmin.length * test.step_s;
      if (test.refusal === null && test.recovery_s > 0) {
        test.recovered_m = dipped_m(run);
        test.rows.push({ time_s: pumped_s + test.recovery_s, rate_Lmin: 0, level_m: test.recovered_m });
      }
      test.over = true;
      tell(run, 'testDone', { lift: test.lift, lowest_m: test.lowest_m, refusal: test.refusal ?? '' });
    },
  },
};
