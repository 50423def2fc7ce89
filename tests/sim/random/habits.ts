// Clumsy habits: short scripts of what crews do wrong, or do at all, that pure chance would hardly ever string together.
import { ACTION_SPECS, type ActionName, type Payload, type Run, type Stream } from '../../../sim';
import { between, chance, pick } from './draws';

/** An act and how long the crew lets pass before it, s. Refusals are taken as they come. */
export interface Move {
  readonly after_s: number;
  readonly action: ActionName;
  readonly payload: Payload;
}
export type Habit = (run: Run, stream: Stream) => Move[];

const move = (after_s: number, action: ActionName, payload: Payload = {}): Move => ({ after_s, action, payload });
/** Time to look on, which ends any wait. */
const pause = (time_s: number): Move => move(time_s, 'readStick');

const start = (feed_frac: number, throttle_frac = 1): Move[] => [
  move(0, 'setThrottle', { throttle_frac }),
  move(1, 'setTurning', { on: true }),
  move(1, 'setFeed', { feed_frac }),
];
const stop: readonly Move[] = [
  move(0, 'setFeed', { feed_frac: 0 }),
  move(0, 'setTurning', { on: false }),
  move(0, 'setThrottle', { throttle_frac: 0 }),
];

const wordsOf = (action: ActionName, field: string): readonly string[] => {
  const spec = ACTION_SPECS[action].fields.find(({ name }) => name === field);
  return spec?.type === 'word' ? spec.words : [];
};

const seconds = (stream: Stream, low: number, high: number): number => Math.round(between(stream, low, high));

/** Pours a powder in. */
const powder = (stream: Stream, mass_g: number, manner: 'sprinkled' | 'dumped'): Move =>
  move(0, 'addAdditive', { additive: pick(stream, wordsOf('addAdditive', 'additive')), mass_g, manner });

export const HABITS: Readonly<Record<string, Habit>> = {
  drillsOn: (_run, stream) => [...start(between(stream, 0.3, 1)), pause(seconds(stream, 30, 300))],
  drillsWithoutFlow: (_run, stream) => [...start(1, pick(stream, [0, 0.1, 0.3])), pause(seconds(stream, 30, 240))],
  addsARod: () => [...stop, move(3, 'addRod'), ...start(0.7).map((m) => ({ ...m, after_s: m.after_s + 45 }))],
  addsARodAfterClearing: (_run, stream) => [
    move(0, 'setFeed', { feed_frac: 0 }),
    move(0, 'lift', { distance_m: 0.2, speed_ms: 0.1 }),
    ...stop.map((m, i) => (i === 0 ? { ...m, after_s: seconds(stream, 20, 90) } : m)),
    move(3, 'addRod'),
  ],
  stopsLong: (_run, stream) => [...stop, pause(seconds(stream, 60, 600))],
  stopsOnTheSpotThenPulls: (_run, stream) => [
    ...stop,
    move(seconds(stream, 30, 400), 'lift', { distance_m: 1.2, speed_ms: 0.3 }),
    move(8, 'workStem', { time_s: seconds(stream, 30, 90) }),
    move(95, 'workStem', { time_s: 60 }),
    move(65, 'setThrottle', { throttle_frac: 1 }),
    move(1, 'workStem', { time_s: 120 }),
    move(125, 'lift', { distance_m: 0.5, speed_ms: 0.1 }),
  ],
  drillsFastAndStopsDead: (_run, stream) => [
    ...start(1),
    ...stop.map((m, i) => (i === 0 ? { ...m, after_s: seconds(stream, 60, 300) } : m)),
    move(seconds(stream, 60, 400), 'setTurning', { on: true }),
    move(0, 'setFeed', { feed_frac: 1 }),
    move(seconds(stream, 5, 60), 'setThrottle', { throttle_frac: 1 }),
    pause(30),
    move(5, 'setFeed', { feed_frac: 0 }),
    move(0, 'setTurning', { on: false }),
    move(0, 'lift', { distance_m: 1, speed_ms: 0.2 }),
    move(30, 'workStem', { time_s: 120 }),
    move(125, 'workStem', { time_s: 300 }),
    pause(305),
  ],
  turnsOnThroughAStall: (_run, stream) => [
    move(0, 'setThrottle', { throttle_frac: 0 }),
    move(seconds(stream, 60, 300), 'setTurning', { on: true }),
    move(0, 'setFeed', { feed_frac: 1 }),
    pause(seconds(stream, 60, 400)),
    move(0, 'setTurning', { on: false }),
    move(seconds(stream, 60, 300), 'setThrottle', { throttle_frac: 1 }),
    move(5, 'setTurning', { on: true }),
  ],
  turnsInTheFill: (_run, stream) => [
    ...stop,
    move(seconds(stream, 60, 300), 'setTurning', { on: true }),
    move(0, 'setFeed', { feed_frac: 1 }),
    pause(60),
  ],
  worksItFree: (run) =>
    run.state.machine.stem !== 'stuck'
      ? []
      : [
          move(0, 'setFeed', { feed_frac: 0 }),
          move(0, 'setTurning', { on: false }),
          move(0, 'setThrottle', { throttle_frac: 1 }),
          ...[5, 125, 125, 125, 125, 125].map((after_s) => move(after_s, 'workStem', { time_s: 120 })),
          pause(125),
        ],
  pullsFast: (_run, stream) => [
    ...stop,
    move(3, 'lift', { distance_m: between(stream, 0.5, 3), speed_ms: 0.5 }),
    move(8, 'removeRod', { speed_ms: between(stream, 0.2, 0.5) }),
    move(70, 'removeRod', { speed_ms: 0.5 }),
    move(70, 'lower', { distance_m: 3, speed_ms: 0.5 }),
    move(20, 'addRod'),
  ],
  pullsEverything: (run, stream) => [
    ...stop,
    move(0, 'lift', { distance_m: 3, speed_ms: between(stream, 0.1, 0.5) }),
    move(35, 'removeRod', { speed_ms: 0.3 }),
    ...Array.from({ length: Math.min(8, run.state.stem.rods) }, () =>
      move(80, 'removeRod', { speed_ms: between(stream, 0.1, 0.5) }),
    ),
  ],
  lowersWithAThump: (_run, stream) => [
    move(0, 'setFeed', { feed_frac: 0 }),
    move(0, 'lift', { distance_m: 2, speed_ms: 0.5 }),
    move(6, 'lower', { distance_m: 3, speed_ms: between(stream, 0.2, 0.5) }),
    pause(10),
  ],
  dumpsPowder: (_run, stream) => [powder(stream, seconds(stream, 300, 5000), 'dumped'), pause(40)],
  usesUpThePowder: (run) => {
    const mass_g = run.state.stocks.powder_kg * 1000;
    return mass_g < 10 || mass_g > 25000
      ? []
      : [move(0, 'addAdditive', { additive: 'polymer', mass_g, manner: 'dumped' }), pause(60)];
  },
  sprinklesAndWaits: (_run, stream) => [
    powder(stream, seconds(stream, 200, 1500), 'sprinkled'),
    move(300, 'stir', { time_s: 120 }),
    move(130, 'waitFor', { until: 'soaked', cap_s: 900 }),
    pause(seconds(stream, 60, 700)),
    move(6, 'feelFluid'),
  ],
  emptiesTheBag: (run) => {
    const left_g = Math.min(5000, Math.floor(run.state.stocks.powder_kg * 1000));
    return left_g < 10
      ? []
      : [move(0, 'addAdditive', { additive: 'polymer', mass_g: left_g, manner: 'dumped' }), pause(40)];
  },
  thinsWithWater: (_run, stream) => [move(0, 'addWater', { water_L: seconds(stream, 50, 400) }), pause(60)],
  topsUp: (_run, stream) => [move(0, 'addWater', { water_L: seconds(stream, 10, 60) })],
  emptiesThePit: (_run, stream) => [
    move(0, 'setStrainer', { height_m: between(stream, 0.4, 0.9) }),
    ...start(0.4).map((m) => ({ ...m, after_s: m.after_s + 6 })),
    pause(90),
    move(5, 'setStrainer', { height_m: 0.2 }),
    ...stop,
    move(15, 'prime'),
    pause(185),
  ],
  sucksTheFloor: (_run, stream) => [
    move(0, 'setStrainer', { height_m: 0 }),
    ...start(1).map((m) => ({ ...m, after_s: m.after_s + 6 })),
    pause(seconds(stream, 120, 500)),
  ],
  cleansTheStrainerRunning: () => [move(0, 'clearStrainer'), ...stop, move(45, 'prime'), pause(185)],
  // Something goes wrong by hand, and some time later somebody mends what there is to mend.
  hasBadLuck: (_run, stream) => [
    move(0, 'fault', { fault: pick(stream, wordsOf('fault', 'fault')) }),
    move(seconds(stream, 20, 200), 'setThrottle', { throttle_frac: 0 }),
    move(1, 'setFeed', { feed_frac: 0 }),
    move(0, 'setTurning', { on: false }),
    move(1, 'mend', { what: pick(stream, wordsOf('mend', 'what')) }),
    pause(seconds(stream, 60, 650)),
  ],
  primesAgain: (run, stream) =>
    run.state.pump.primed
      ? []
      : [
          ...stop,
          move(1, 'setStrainer', { height_m: 0.15 }),
          move(11, 'addWater', { water_L: 150 }),
          move(seconds(stream, 100, 305), 'prime'),
          pause(185),
          ...start(between(stream, 0.3, 1)),
        ],
  digs: (_run, stream) => [
    move(0, 'digOutPit', {
      chamber: pick(stream, wordsOf('digOutPit', 'chamber')),
      spoil_L: seconds(stream, 5, 60),
    }),
    pause(240),
  ],
  catchesAndNames: (run, stream) => [
    move(0, 'setFeed', { feed_frac: 0 }),
    move(0, 'setThrottle', { throttle_frac: 1 }),
    move(0, 'setTurning', { on: false }),
    move(seconds(stream, 1, 60), 'catchSample', { label_m: run.state.stem.bit_m }),
    move(22, 'nameSample', {
      sample: Math.max(1, run.state.samples.length),
      main: pick(stream, wordsOf('nameSample', 'main')),
    }),
    ...start(0.6),
  ],
  flushesClean: (_run, stream) => [
    move(0, 'setFeed', { feed_frac: 0 }),
    move(0, 'setThrottle', { throttle_frac: 1 }),
    move(1, 'setTurning', { on: true }),
    move(0, 'lift', { distance_m: 0.4, speed_ms: 0.1 }),
    pause(seconds(stream, 60, 300)),
  ],
  overfills: (_run, stream) => [
    move(0, 'fillPit', { water_L: seconds(stream, 200, 2000) }),
    move(seconds(stream, 100, 300), 'setThrottle', { throttle_frac: 0 }),
    move(0, 'addWater', { water_L: 200 }),
    move(0, 'setThrottle', { throttle_frac: 1 }),
  ],
  thickensWithBentonite: (_run, stream) => [
    move(0, 'addAdditive', { additive: 'bentonite', mass_g: seconds(stream, 2000, 25000), manner: 'sprinkled' }),
    move(305, 'stir', { time_s: 300 }),
    pause(seconds(stream, 300, 900)),
  ],
  goesHome: (_run, stream) => [...stop, move(0, 'waitFor', { time_s: seconds(stream, 200, 14400) }), pause(300)],
  digsThePit: (run, stream) =>
    run.state.site.pitDug
      ? []
      : [
          move(0, 'setOut', { settling_m3: between(stream, 0.2, 0.5), suction_m3: 0.2, channel_m: 1 }),
          move(2600, 'fillPit', { water_L: 400 }),
          move(210, 'prime'),
        ],
  movesOn: (run, stream) =>
    run.state.tick < 600
      ? []
      : [...stop, move(between(stream, 3, 60), 'abandon', { move: true }), move(4300, 'note', { text: 'new hole' })],
  sleeps: () => [...stop, move(1, 'waitFor', { until: 'morning' }), pause(60)],
  endsTheJob: (run, stream) =>
    run.state.tick < 900
      ? []
      : [...stop, move(1, chance(stream, 0.6) ? 'stopDrilling' : 'abandon'), move(20, 'abandon'), move(1, 'prime')],
};

export const HABIT_NAMES = Object.keys(HABITS);
