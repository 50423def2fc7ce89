// How high a pump can suck, and what a test shows.
import { expect, it } from 'vitest';
import { act, canAct, ledgerOf, sensesOf, verdictOf, type Run } from '../../sim';
import { packedAndSealed, seconds, setWell, type SetWell } from '../setWell';

const TEST = { lift: 'suction', rate1_Lmin: 15, step_s: 1800, recovery_s: 600 };
const well = (options: SetWell = {}): Run => setWell({ fill: packedAndSealed(), ...options });

it('water below the suction limit refuses the surface pump and says why; a deep pump draws it', () => {
  const run = well({ waterTable_m: 7.5 });
  expect(act(run, 'yieldTest', TEST)).toEqual({ kind: 'refused', reason: 'tooDeepToLift' });
  expect(run.state.lastRefusal).toMatchObject({ action: 'yieldTest', reason: 'tooDeepToLift' });
  expect(canAct(run, 'develop', { method: 'overPump', time_s: 600 })).toMatchObject({ reason: 'tooDeepToLift' });
  expect(canAct(run, 'develop', { method: 'bail', time_s: 600 }).kind).toBe('done');
  expect(act(run, 'yieldTest', { ...TEST, lift: 'deepPiston' }).kind).toBe('done');
  const { lifts } = verdictOf(run)!;
  expect(lifts.map(({ lift, reaches }) => [lift, reaches])).toEqual([
    ['suction', false],
    ['deepPiston', true],
    ['submersible', false],
  ]);
});

it('the air is thinner at 2000 m: what could be sucked on the coast cannot there', () => {
  expect(act(well({ waterTable_m: 5.5 }), 'yieldTest', TEST).kind).toBe('done');
  expect(act(well({ waterTable_m: 5.5, altitude_m: 2000 }), 'yieldTest', TEST)).toMatchObject({
    reason: 'tooDeepToLift',
  });
});

it('a level that sinks below the limit while pumping breaks the test off', () => {
  const run = well({
    layers: [{ kind: 'siltySand', thickness_m: [40, 40] }],
    waterTable_m: 5.5,
    depth_m: 15,
  });
  act(run, 'yieldTest', TEST);
  seconds(run, 4000);
  const { test } = sensesOf(run).well!;
  expect(test!.refusal).toBe('tooDeep');
  expect(test!.over).toBe(true);
  expect(test!.lowest_m).toBeGreaterThan(6.4);
  expect(run.state.tasks).toHaveLength(0);
});

it('a well that gives less than the pump runs dry', () => {
  const run = well({ layers: [{ kind: 'firmClay', thickness_m: [40, 40] }], waterTable_m: 4 });
  act(run, 'yieldTest', { ...TEST, lift: 'deepPiston', rate1_Lmin: 14 });
  seconds(run, 4000);
  expect(sensesOf(run).well!.test!.refusal).toBe('ranDry');
  expect(canAct(run, 'develop', { method: 'bail', time_s: 60 })).toMatchObject({ reason: 'wellDry' });
});

it('a pump too wide for the casing is not fitted', () => {
  const run = well();
  expect(act(run, 'yieldTest', { ...TEST, lift: 'submersible' })).toMatchObject({ reason: 'notOffered' });
});

it('three steps draw down further each time, the recovery comes back to rest, and the balance holds', () => {
  const run = well({ layers: [{ kind: 'fineSand', thickness_m: [40, 40] }] });
  act(run, 'yieldTest', { ...TEST, rate1_Lmin: 5, rate2_Lmin: 10, rate3_Lmin: 15, step_s: 3600, recovery_s: 3600 });
  seconds(run, 4 * 3600 + 40);
  const { test } = sensesOf(run).well!;
  // The last reading of each step; the step ends where the next one begins.
  const at = (time_s: number): number => [...test!.rows].reverse().find((row) => row.time_s <= time_s)!.level_m;
  const falls = [3600, 7200, 10800].map((time_s) => at(time_s) - test!.static_m);
  expect(falls[1]).toBeGreaterThan(1.7 * falls[0]);
  expect(falls[2]).toBeGreaterThan(1.3 * falls[1]);
  expect(Math.abs(test!.recovered_m! - test!.static_m)).toBeLessThan(0.05);
  expect(test).toMatchObject({ refusal: null, over: true });
  const { water, solids } = ledgerOf(run);
  expect(Math.max(water, solids)).toBeLessThanOrEqual(1e-9);
});
