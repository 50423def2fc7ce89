// What a random crew does once its hole is to become a well: plans good and foolish, casing run well or badly, pours, washes, tests, the end.
import {
  CASING_NAMES,
  CLOTH_NAMES,
  PACK_NAMES,
  RECORD_FIELDS,
  SEAL_NAMES,
  WELL_PUMP_NAMES,
  type Run,
  type Stream,
  type WellPlan,
} from '../../../sim';
import { between, chance, pick } from './draws';
import type { Habit, Move } from './habits';
import { hasPoorString } from './jobs';

const move = (after_s: number, action: Move['action'], payload: Move['payload'] = {}): Move => ({
  after_s,
  action,
  payload,
});
const whole = (stream: Stream, low: number, high: number): number => Math.round(between(stream, low, high));

const pause = (time_s: number): Move => move(time_s, 'note', { text: 'looked on' });

/** Rods at rest, and nothing fed. */
const STOP: readonly Move[] = [
  move(0, 'setFeed', { feed_frac: 0 }),
  move(0, 'setTurning', { on: false }),
  move(0, 'setThrottle', { throttle_frac: 0 }),
];

/** A thin string that three rows of long slots leave hardly whole. */
const WEAK = { casing: 'pvc63thin', slotRows: 3, slotArc_mm: 49, slotSpacing_mm: 6 } as const;
/** A closed string with few slots and close cloth: what is lowered fast without filling floats. */
const CLOSED = { casing: 'pvc63', slotRows: 1, slotSpacing_mm: 60, cloth: 'fine', cap: true } as const;
/** No slots at all. */
const SHUT = { ...CLOSED, slotRows: 0 } as const;

/** A plan that fits the hole; one in four of its figures is foolish. */
function anyPlan(run: Run, stream: Stream): WellPlan {
  const depth_m = run.state.hole.depth_m;
  const screen_m = between(stream, 0.5, Math.min(4, depth_m / 2));
  const to_m = chance(stream, 0.7) ? depth_m - between(stream, 0.1, 0.6) : between(stream, screen_m + 0.2, depth_m);
  const from_m = Math.max(0.1, to_m - screen_m);
  const packTop_m = Math.max(0.1, from_m - between(stream, -0.5, 1.5));
  const manner = pick<Partial<WellPlan>>(
    stream,
    hasPoorString(run.scenario.seed) ? [WEAK, SHUT] : [{}, {}, {}, WEAK, WEAK, CLOSED],
  );
  return {
    casing: pick(stream, CASING_NAMES.slice(0, 3)),
    screenFrom_m: from_m,
    screenTo_m: Math.max(from_m + 0.1, to_m - 0.3),
    sump_m: pick(stream, [0, 0.2]),
    slotWidth_mm: pick(stream, [0.3, 0.5, 1, 2]),
    slotRows: pick(stream, [0, 1, 2]),
    slotArc_mm: 40,
    slotSpacing_mm: whole(stream, 5, 60),
    cloth: pick(stream, ['none', 'none', ...CLOTH_NAMES]),
    cap: chance(stream, 0.7),
    centralisers: pick(stream, [0, 0, 2]),
    pack: pick(stream, ['none', ...PACK_NAMES]),
    packTop_m,
    seal: pick(stream, ['none', ...SEAL_NAMES]),
    sealFrom_m: 0,
    sealTo_m: Math.max(0.2, Math.min(packTop_m, between(stream, 0.5, 5))),
    stickUp_m: between(stream, 0, 0.6),
    ...manner,
  };
}

const seal = (stream: Stream): Move =>
  move(5, 'placeSeal', {
    seal: pick(stream, SEAL_NAMES),
    volume_L: between(stream, 1, 20),
    rate_Lmin: between(stream, 1, 40),
  });

const pack = (stream: Stream): Move =>
  move(5, 'pourPack', {
    pack: pick(stream, PACK_NAMES),
    volume_L: between(stream, 1, 30),
    rate_Lmin: between(stream, 1, 40),
  });

/** From the hole to the casing in it. Acts that come too early are refused and come again. */
export const makesAWell: Habit = (run, stream) => {
  const { well } = run.scenario;
  if (!well || run.state.completion.plan !== null) return [];
  const plan = anyPlan(run, stream);
  const pieces = Math.ceil((plan.screenTo_m + plan.sump_m + plan.stickUp_m) / 3);
  const joins = Array.from({ length: pieces }, () => move(305, 'joinCasing'));
  const joinsFirst = chance(stream, 0.6);
  return [
    move(0, 'chooseSite', { spot: pick(stream, ['A', 'B', 'C', 'D', 'E']) }),
    ...STOP,
    move(1, 'planWell', { ...plan }),
    ...(joinsFirst ? joins : []),
    move(310, 'stopDrilling'),
    move(1, 'pullOut', { speed_ms: between(stream, 0.05, 0.5), topUp: chance(stream, 0.6) }),
    move(run.state.stem.rods * 95 + 60, 'note', { text: 'rods out' }),
    ...(joinsFirst ? [] : joins),
  ];
};

/** The hole is left to fall in before the casing comes; it is lowered fast and empty, and worked as hard as hands can. */
export const forcesItDown: Habit = (_run, stream) => [
  ...STOP,
  move(1, 'stopDrilling'),
  move(1, 'pullOut', { speed_ms: 0.5, topUp: false }),
  move(1800, 'joinCasing'),
  ...Array.from({ length: 4 }, () => move(305, 'joinCasing')),
  move(whole(stream, 305, 7200), 'runCasing', { fill: false, speed_ms: 0.5 }),
  move(200, 'workCasing', { time_s: 600 }),
  move(605, 'workCasing', { time_s: 600 }),
];

/** Once more what is still wanting: rods out, joints, the casing down, worked where it hangs. */
export const bringsItDown: Habit = (run, stream) => [
  ...STOP,
  move(1, 'stopDrilling'),
  move(1, 'pullOut', { speed_ms: between(stream, 0.05, 0.5), topUp: chance(stream, 0.6) }),
  move(run.state.stem.rods * 95 + 60, 'joinCasing'),
  ...Array.from({ length: 4 }, () => move(305, 'joinCasing')),
  move(305, 'runCasing', { fill: chance(stream, 0.5), speed_ms: between(stream, 0.05, 0.5) }),
  move(400, 'workCasing', { time_s: whole(stream, 60, 600) }),
  move(605, 'runCasing', { fill: true, speed_ms: 0.1 }),
];

/** What is done to a casing that stands in the hole. */
export const WELL_HABITS: Readonly<Record<string, Habit>> = {
  goesOnDown: (_run, stream) => [
    move(5, 'workCasing', { time_s: whole(stream, 60, 600) }),
    move(605, 'runCasing', { fill: true, speed_ms: 0.2 }),
    pause(200),
  ],
  packs: (_run, stream) => [pack(stream), move(900, 'sound'), move(65, 'dipWell')],
  packsByTheBarrow: () => [
    move(5, 'pourPack', { pack: 'pack2', volume_L: 40, rate_Lmin: 60 }),
    move(60, 'sound'),
    move(65, 'note', { text: 'full already' }),
  ],
  seals: (_run, stream) => [seal(stream), move(900, 'sound'), move(65, 'waitFor', { until: 'set', cap_s: 4000 })],
  sealsQuickly: () => [
    move(5, 'placeSeal', { seal: 'bentoniteGranules', volume_L: 3, rate_Lmin: 1 }),
    move(200, 'waitFor', { until: 'set', cap_s: 4000 }),
    move(10, 'note', { text: 'swollen' }),
  ],
  backfills: (_run, stream) => [
    move(5, 'backfill', { material: pick(stream, [...SEAL_NAMES, ...PACK_NAMES]), volume_L: between(stream, 1, 40) }),
    move(90, 'sound'),
  ],
  washes: (_run, stream) => [
    move(5, 'develop', {
      method: pick(stream, ['bail', 'surge', 'overPump', 'backWash']),
      time_s: whole(stream, 60, 3600),
      rate_Lmin: between(stream, 1, 60),
      strokes_min: between(stream, 1, 60),
    }),
    move(3605, 'dipWell'),
  ],
  breaksThePowder: (_run, stream) => [
    move(5, 'breakPolymer', { dose_mgL: between(stream, 100, 5000), contact_s: whole(stream, 0, 3600) }),
    move(3605, 'develop', { method: 'surge', time_s: 900, strokes_min: 30 }),
    move(905, 'dipWell'),
  ],
  tests: (_run, stream) => [
    move(5, 'yieldTest', {
      lift: pick(stream, WELL_PUMP_NAMES.slice(0, 2)),
      rate1_Lmin: between(stream, 1, 30),
      ...(chance(stream, 0.4) ? { rate2_Lmin: between(stream, 1, 60) } : {}),
      step_s: whole(stream, 60, 1800),
      recovery_s: whole(stream, 0, 1800),
    }),
    move(3700, 'waitFor', { until: 'recovered', cap_s: 1800 }),
  ],
  disinfects: (_run, stream) => [
    move(5, 'disinfect', { dose_mgL: between(stream, 10, 200), contact_s: whole(stream, 0, 3600) }),
    move(3605, 'develop', { method: 'overPump', time_s: 900, rate_Lmin: 15 }),
  ],
  finishes: (run, stream) =>
    run.state.tick < LATE_s
      ? []
      : [
          move(5, 'headWorks', {
            apron_m: between(stream, 0, 3),
            drain_m: between(stream, 0, 8),
            cap: chance(stream, 0.6),
            lift: pick(stream, WELL_PUMP_NAMES),
          }),
          move(14500, 'record', { field: pick(stream, RECORD_FIELDS), text: 'as seen' }),
          move(1, chance(stream, 0.9) ? 'handOver' : 'abandon'),
        ],
};
export const WELL_HABIT_NAMES = Object.keys(WELL_HABITS);

/** Before this the well is not finished, s. */
const LATE_s = 18_000;
