// Every arrow of the machine, every refusal and every event is met in a real run; caves and closings are set by hand.
import { describe, expect, it } from 'vitest';
import { buildGround, drillingMachine, EVENT_NAMES, REFUSAL_KEYS, type Payload } from '../../../sim';
import { oneSoil, type RigOptions } from '../../rig';
import { refused, told, walked, walkOn } from './walk';
import { walksOfTheFaults } from './faultWalks';
import { walksOfTheWell } from './wellWalks';

const OPEN = { throttle_frac: 1 };
const SHUT = { throttle_frac: 0 };
const TURN = { on: true };
const STILL = { on: false };
/** A deep hole whose wall stands and drinks nothing. */
const DEEP: RigOptions = { rods: 3, starter_m: 4, layers: oneSoil('weatheredRock') };

const grounds = [1, 2].map((seed) =>
  buildGround({ layers: [{ kind: 'silt', thickness_m: [40, 40] }], waterTable_m: [1, 1] }, seed),
);

describe('walks', () => {
  it('the job, from digging the pit to moving on and giving up', () => {
    const walk = walkOn({ setOut: true, pit_L: 0 }, {}, { ground: grounds[0]!, grounds });
    walk.refuses('fillPit', { water_L: 100 }, 'noPit');
    walk.do('setOut', { settling_m3: 0.3, suction_m3: 0.3, channel_m: 1 }).idle();
    walk.refuses('setOut', { settling_m3: 0.3, suction_m3: 0.3, channel_m: 1 }, 'alreadySetOut');
    walk.do('fillPit', { water_L: 500 }).idle().do('prime').idle();
    walk.do('setTurning', TURN).go().do('setTurning', STILL).go();
    walk.do('abandon', { move: true }).idle().refuses('abandon', { move: true }, 'noMoreGround');
    walk.do('setTurning', TURN).go().do('setTurning', STILL).go();
    walk.do('stopDrilling').refuses('lift', { distance_m: 1, speed_ms: 0.1 }, 'ended').do('abandon');
    walkOn().do('stopDrilling');
    walkOn().do('abandon');
    walkOn().do('setTurning', TURN).go().do('abandon');
  });

  it('the pump, blocked, starved, primed again', () => {
    const walk = walkOn({ primed: false });
    walk.refuses('setThrottle', OPEN, 'pumpDry').do('prime').idle().refuses('prime', {}, 'alreadyPrimed');
    walk.do('setThrottle', OPEN).go(60).do('setThrottle', SHUT).go(5).do('setThrottle', OPEN).go(20);
    walk.do('setStrainer', { height_m: 0 }).mode('pump', 'blocked');
    walk.do('setThrottle', SHUT).go(2).do('setThrottle', OPEN).mode('pump', 'blocked');
    walk.do('clearStrainer').mode('pump', 'starved').refuses('prime', {}, 'pumpRunning').go(150);
    walk.do('setThrottle', SHUT).do('setStrainer', { height_m: 0.8 }).idle().do('prime').idle();
    walk.do('setStrainer', { height_m: 0.3 }).idle().do('prime').idle().do('setThrottle', OPEN).go(20);
    walk.do('setStrainer', { height_m: 0.8 }).mode('pump', 'starved').do('setThrottle', SHUT).do('prime').go(2);
    walkOn({}, { kit: { pumpAbovePit_m: 6.4 } })
      .do('setThrottle', OPEN)
      .go(30);
    const worn = walkOn();
    worn.run.state.pump.worn_frac = 0.1 - 1e-9;
    worn.run.state.pit.suction.solids_m3[3] = 0.02;
    worn.run.state.boundary.solidsIn_m3[3] += 0.02;
    worn.do('setThrottle', OPEN).go(30);
  });

  it('the returns, that swell, sink and end', () => {
    const walk = walkOn({}, DEEP).do('setThrottle', OPEN).mode('returns', 'full');
    walk.do('setThrottle', SHUT).go(10).do('setThrottle', { throttle_frac: 0.5 }).mode('returns', 'full');
    walk.do('lift', { distance_m: 2, speed_ms: 0.5 }).mode('returns', 'partial').do('setThrottle', SHUT).go(5);
    // Down into gravel far above the water table: it drinks all there is.
    const layers: RigOptions['layers'] = [
      { kind: 'firmClay', thickness_m: [4.05, 4.05] },
      { kind: 'fineGravel', thickness_m: [40, 40] },
    ];
    const thirsty = walkOn({}, { rods: 4, starter_m: 4, layers, waterTable_m: 8 }).do('setThrottle', OPEN);
    thirsty.mode('returns', 'full').do('setTurning', TURN).do('setFeed', { feed_frac: 1 }).mode('returns', 'none');
  });

  it('the stem, hung, turning, drawn out and let down', () => {
    const walk = walkOn().refuses('lower', { distance_m: 1, speed_ms: 0.1 }, 'atBottom');
    walk.do('setTurning', TURN).go(2).refuses('addRod', {}, 'turningOn').do('setTurning', STILL).go(2);
    walk.do('setTurning', TURN).go(2).do('lift', { distance_m: 0.3, speed_ms: 0.5 }).mode('stem', 'out').idle();
    walk.refuses('lift', { distance_m: 0.3, speed_ms: 0.1 }, 'atTop');
    walk.do('lower', { distance_m: 0.3, speed_ms: 0.5 }).mode('stem', 'onBottom').idle();
    walk.do('lift', { distance_m: 0.1, speed_ms: 0.1 }).mode('stem', 'turning').idle().do('setTurning', STILL).go(2);
    walk.do('setTurning', TURN).mode('stem', 'turning').do('lower', { distance_m: 0.1, speed_ms: 0.1 }).go(3);
    walk.do('lift', { distance_m: 0.1, speed_ms: 0.1 }).idle();
    walk.do('lift', { distance_m: 0.3, speed_ms: 0.05 }).mode('stem', 'out').idle();
    walk.do('lower', { distance_m: 0.1, speed_ms: 0.1 }).mode('stem', 'turning').idle();
    walk.do('setTurning', STILL).go(2).do('lift', { distance_m: 0.3, speed_ms: 0.1 }).mode('stem', 'out').idle();
    walk.do('lower', { distance_m: 0.1, speed_ms: 0.05 }).mode('stem', 'hanging');
    walk.refuses('lift', { distance_m: 0.1, speed_ms: 0.1 }, 'stemMoving').idle();
  });

  it('the stem, tight and stuck, washed free and worked free', () => {
    const washed = walkOn({}, DEEP).do('setThrottle', OPEN).go(60);
    washed.cave(0.7, 3).mode('stem', 'tight').mode('stem', 'hanging');
    washed.cave(1, 3).mode('stem', 'stuck').refuses('setTurning', TURN, 'stemStuck').mode('stem', 'hanging').go(60);
    const turning = walkOn({}, DEEP).do('setThrottle', OPEN).go(60).do('setTurning', TURN).go(2);
    turning.cave(0.65, 3).mode('stem', 'tight').mode('stem', 'onBottom');
    turning.do('lift', { distance_m: 0.4, speed_ms: 0.2 }).idle().go(20).mode('stem', 'turning');
    turning.cave(1.05, 3).mode('stem', 'tight').mode('stem', 'turning');
    for (let seed = 1; seed < 40 && !told.has('freed'); seed++) {
      const walk = walkOn({}, { ...DEEP, seed })
        .do('setThrottle', OPEN)
        .go(60)
        .cave(0.9)
        .mode('stem', 'stuck');
      for (let tries = 0; tries < 3 && walk.run.state.machine.stem === 'stuck'; tries++)
        walk.do('workStem', { time_s: 300 }).idle();
    }
  });

  it('the drive, stalled, hot, cool; the bit, refused and balled', () => {
    const hot = walkOn({}, DEEP)
      .do('setTurning', TURN)
      .cave(0.82)
      .until(({ state }) => state.stem.driveTripped);
    hot.refuses('setTurning', TURN, 'driveHot').until(({ state }) => !state.stem.driveTripped);
    const stalled = walkOn({}, DEEP).do('setThrottle', OPEN).go(30).do('setTurning', TURN).cave(0.82, 3).go(30);
    expect(stalled.run.state.stem.stalled).toBe(false);
    walkOn({}, { layers: oneSoil('cobbles') })
      .do('setTurning', TURN)
      .do('setFeed', { feed_frac: 1 })
      .go(20);
    const clay = walkOn({}, { rods: 9, starter_m: 13, layers: oneSoil('softClay') })
      .do('setThrottle', { throttle_frac: 0.12 })
      .go(60);
    clay
      .do('setTurning', TURN)
      .do('setFeed', { feed_frac: 1 })
      .until(({ state }) => state.stem.balledTold);
    clay.do('setFeed', { feed_frac: 0 }).do('setThrottle', OPEN).do('lift', { distance_m: 0.3, speed_ms: 0.1 });
    clay.until(({ state }) => !state.stem.balledTold);
  });

  it('the hole, whose wall falls in, closes and stands again', () => {
    const walk = walkOn({}, { rods: 3, starter_m: 4, layers: oneSoil('firmClay') }).go(20);
    const { hole } = walk.run.state;
    for (const [sloughing, holeClosed] of [
      [true, false],
      [false, false],
      [false, true],
      [true, false],
      [true, true],
      [false, false],
    ] as const) {
      // A cell whose turn to be looked at is not now.
      const i = (800 - walk.run.state.tick + 4) % 8;
      hole.wall.sloughing.fill(0);
      hole.wall.sloughing[i] = sloughing ? 1 : 0;
      const radius_m = hole.radius_m[i];
      if (holeClosed) hole.radius_m[i] = 0;
      walk.go();
      hole.radius_m[i] = radius_m;
    }
  });

  it('the fluid, soaking, ready, thin, spent', () => {
    const powder = (mass_g: number): Payload => ({ additive: 'polymer', mass_g, manner: 'sprinkled' });
    const chlorine = { additive: 'chlorine', mass_g: 500, manner: 'sprinkled' };
    // Just enough to be ready: a bucket thins it; more powder bit by bit thickens it again without a change to 'soaking'.
    const walk = walkOn({ pit_L: 700 }).do('addAdditive', powder(190)).idle().mode('fluid', 'ready');
    walk.do('addWater', { water_L: 100 }).mode('fluid', 'thin').idle();
    for (let n = 0; n < 40 && walk.run.state.machine.fluid === 'thin'; n++)
      walk.do('addAdditive', powder(10)).idle().go(900);
    expect(walk.run.state.machine.fluid).toBe('ready');
    walk.do('addAdditive', powder(400)).mode('fluid', 'soaking').mode('fluid', 'ready');
    // Thin from the start, then more of it.
    const thin = walkOn({}).do('addAdditive', powder(50)).mode('fluid', 'thin').do('addAdditive', powder(200));
    thin.mode('fluid', 'soaking');
    // Broken by chlorine: a thick fluid from ready, a common one by way of thin; fresh powder soaks and goes the same way.
    const opening = { chlorine_kg: 10 };
    const thick = walkOn(opening).do('addAdditive', powder(3000)).idle().mode('fluid', 'ready');
    thick.do('addAdditive', chlorine).idle().do('addAdditive', chlorine).idle().mode('fluid', 'spent');
    thick.do('addAdditive', powder(100)).mode('fluid', 'soaking').mode('fluid', 'spent');
    const common = walkOn(opening).do('addAdditive', powder(400)).idle().mode('fluid', 'ready');
    common.do('addAdditive', chlorine).idle().mode('fluid', 'thin').do('addAdditive', chlorine).idle();
    common.mode('fluid', 'spent');
  });

  it('hands, stocks, tray and book', () => {
    const walk = walkOn({ water_L: 40, powder_kg: 0.1, petrol_L: 0.06, pit_L: 700 });
    walk.refuses('catchSample', { label_m: 1 }, 'noReturns');
    walk.refuses('nameSample', { sample: 1, main: 'clay' }, 'noSuchSample');
    walk.refuses('logLayer', { from_m: 2, to_m: 1, kind: 'clay' }, 'badInterval');
    walk.refuses('removeRod', { speed_ms: 0.1 }, 'onlyOneRod').refuses('addRod', {}, 'rodNotDown');
    walk.refuses('digOutPit', { chamber: 'settling', spoil_L: 10 }, 'nothingToDig');
    walk.refuses('addAdditive', { additive: 'polymer', mass_g: 4000, manner: 'dumped' }, 'noPowder');
    walk.refuses('addAdditive', { additive: 'bentonite', mass_g: 4000, manner: 'dumped' }, 'noBentonite');
    walk.refuses('addAdditive', { additive: 'nativeClay', mass_g: 4000, manner: 'dumped' }, 'noClay');
    walk.refuses('addAdditive', { additive: 'chlorine', mass_g: 4000, manner: 'dumped' }, 'noChlorine');
    walk.refuses('waitFor', { until: 'morning' }, 'notDark');
    walk.do('addAdditive', { additive: 'polymer', mass_g: 100, manner: 'dumped' });
    walk.do('stir', { time_s: 30 }).refuses('readStick', {}, 'handsBusy').idle();
    walk.do('addWater', { water_L: 40 }).idle().refuses('addWater', { water_L: 5 }, 'noWater');
    walk.do('setThrottle', OPEN).go(30).refuses('addRod', {}, 'flowOn');
    walk.until(({ state }) => state.machine.pump === 'stopped').refuses('setThrottle', OPEN, 'noPetrol');
    walkOn({ pit_L: 0 }).refuses('topUp', { fluid_L: 10 }, 'pitEmpty');
    walkOn({}, { practice: false }).refuses('goBack', { fromTick: 0 }, 'practiceOnly');
    walkOn({ rodsInAll: 1 }, { starter_m: 1.2 }).refuses('addRod', {}, 'noMoreRods');
    const drilled = walkOn({}, { rods: 1, starter_m: 1.2, layers: oneSoil('fineSand') });
    drilled.do('setThrottle', OPEN).do('setTurning', TURN).do('setFeed', { feed_frac: 0.6 });
    drilled.until(({ state }) => state.stem.rodDownTold).do('setFeed', { feed_frac: 0 });
    drilled.do('setTurning', STILL).do('catchSample', { label_m: 1.4 }).idle();
    drilled.until(({ record }) => record.events.some((e) => e.name === 'clear'), 3600);
    drilled.do('setThrottle', SHUT).go(2).do('addRod').idle().go(2).do('removeRod', { speed_ms: 0.2 }).idle();
    const layers: RigOptions['layers'] = [
      { kind: 'silt', thickness_m: [0.4, 0.4] },
      { kind: 'mediumSand', thickness_m: [40, 40] },
    ];
    const deeper = walkOn({}, { layers }).do('setThrottle', OPEN).do('setTurning', TURN);
    deeper.do('setFeed', { feed_frac: 1 }).until(({ state }) => state.hole.depth_m > 0.5);
  });

  it('a pit that falls and runs over, and the night', () => {
    const low = walkOn({ pit_L: 880 });
    for (let i = 0; i < 20; i++) {
      for (const chamber of ['settling', 'suction'] as const) {
        low.run.state.pit[chamber].water_m3 -= 0.015;
        low.run.state.boundary.waterOut_m3 += 0.015;
      }
      low.go();
    }
    const weather = { evaporation_mmDay: 5, showers: [{ from_s: 0, to_s: 3600, rain_mmh: 60 }] };
    const night = walkOn({ pit_L: 955 }, {}, { weather, day: { start_h: 7, light_h: 1 } });
    night.refuses('fillPit', { water_L: 100 }, 'pitFull').go(3605).refuses('readStick', {}, 'dark');
    night.run.state.tick = 86395;
    night.go(10);
  });

  it('crews that follow each other', () => {
    const walk = walkOn({}, {}, { relieves: true, leavesFrom: 'flowStarted' });
    walk.do('setThrottle', OPEN).go(5).do('relieveCrew').refuses('relieveCrew', {}, 'notOffered');
    // What the crew before did offers nothing yet.
    walk.refuses('leaveToCrew', {}, 'tooSoonToLeave').do('setThrottle', SHUT).go(5).do('setThrottle', OPEN).go(5);
    walk.do('leaveToCrew').refuses('leaveToCrew', {}, 'notOffered');
    walkOn().refuses('leaveToCrew', {}, 'notOffered');
  });
});

walksOfTheFaults();
walksOfTheWell();

describe('all of them together', () => {
  const arrows: string[] = [];
  const states = drillingMachine.config.states as Record<
    string,
    { states?: Record<string, { on?: Record<string, string> }> }
  >;
  for (const [region, { states: modes }] of Object.entries(states))
    for (const [from, { on }] of Object.entries(modes ?? {}))
      for (const to of Object.values(on ?? {})) arrows.push(`${region}: ${from} -> ${to}`);

  it('walk every arrow of the machine, and no other way', () => {
    expect(arrows.filter((arrow) => !walked.has(arrow))).toEqual([]);
    expect([...walked].filter((way) => !arrows.includes(way))).toEqual([]);
  });
  it('meet every refusal', () => expect(REFUSAL_KEYS.filter((key) => !refused.has(key))).toEqual([]));
  it('tell every event', () => expect(EVENT_NAMES.filter((name) => !told.has(name))).toEqual([]));
});
