// Jobs for random crews: grounds of every setting and of every soil, kits and stocks good and poor, holes fresh and deep. All drawn from the number of the job.
import {
  buildGround,
  CASING_NAMES,
  CLOTH_NAMES,
  createStream,
  DEFAULT_KIT,
  EVENT_NAMES,
  FAULT_NAMES,
  ground,
  PACK_NAMES,
  SEAL_NAMES,
  SETTINGS,
  SOIL_KINDS,
  WELL_PUMP_NAMES,
  type Ground,
  type Kit,
  type FaultMoment,
  type Opening,
  type ScheduledFault,
  type Scenario,
  type SoilKind,
  type Stream,
  type WellKit,
} from '../../../sim';
import { between, chance, pick } from './draws';

const whole = (stream: Stream, low: number, high: number): number => Math.floor(between(stream, low, high + 1));

/** From this number on every job is a well with a string that asks for trouble: lowered shut and empty, or thin and pulled about. */
export const POOR_STRINGS_FROM = 5000;
export const hasPoorString = (n: number): boolean => n >= POOR_STRINGS_FROM;

/** One job in so many stands in clay that squeezes. */
const CLAY_EVERY = 23;
const inClay = (n: number): boolean => n < POOR_STRINGS_FROM && n % CLAY_EVERY === CLAY_EVERY - 1;
const CLAY_RODS = 14;

/** One job in so many is meant for a run of hours: its stocks last. */
export const LONG_EVERY = 25;

/** One job in so many goes on from a hole that is there already to a well, and takes its time, s. The first jobs, which every test run plays, have fewer. */
const WELL_EVERY = 8;
const FIRST_JOBS = 300;
const FIRST_WELL_EVERY = 30;
const isWell = (n: number): boolean => {
  if (hasPoorString(n)) return true;
  const wanted = n < FIRST_JOBS ? n % FIRST_WELL_EVERY === 11 : n % WELL_EVERY === 3;
  return wanted && !inClay(n) && n % LONG_EVERY !== LONG_EVERY - 1;
};
const WELL_TICKS = 43_200;

/** Half of the jobs stand in a setting; of the others each soil in turn makes up most of the ground. */
function anyGround(n: number, stream: Stream): Ground {
  const seed = whole(stream, 0, 4294967295);
  const bed = (kind: SoilKind, least: number, most: number) => ({
    kind,
    thickness_m: [least, most] as [number, number],
  });
  // Ground in which a hole for a well stands for a while, with water near.
  if (isWell(n)) {
    const layers = [
      bed('firmClay', 1, 5),
      bed(pick(stream, ['mediumSand', 'coarseSand', 'siltySand', 'firmClay']), 40, 40),
    ];
    return buildGround({ layers, waterTable_m: [0.3, 1.5] }, seed);
  }
  // Clay that holds a full hole and closes a deep empty one, with water far below.
  if (inClay(n)) return buildGround({ layers: [bed('firmClay', 40, 40)], waterTable_m: [24, 30] }, seed);
  if (n % 2 === 0) return ground(SETTINGS[(n / 2) % SETTINGS.length], seed);
  const main = SOIL_KINDS[((n - 1) / 2) % SOIL_KINDS.length];
  const wet_m = between(stream, 0.3, 6);
  return buildGround(
    {
      layers: [
        bed('topsoil', 0.2, 0.6),
        bed(pick(stream, SOIL_KINDS), 0.2, 2),
        bed(main, 2, 12),
        bed(pick(stream, SOIL_KINDS), 0.2, 2),
        bed(main, 40, 40),
      ],
      waterTable_m: [wet_m, wet_m],
    },
    seed,
  );
}

function anyKit(stream: Stream): Partial<Kit> {
  if (chance(stream, 0.4)) return {};
  return {
    bit_m: pick(stream, [0.075, 0.1, 0.125, 0.15]),
    nozzle_m: pick(stream, [0.008, 0.01, 0.012]),
    shutOff_m: between(stream, 15, 40),
    free_m3s: between(stream, 0.003, 0.009),
    pumpAbovePit_m: chance(stream, 0.2) ? between(stream, 2, 6) : between(stream, 0.2, 1.5),
    stallTorque_Nm: between(stream, 25, 60),
    pullLimit_N: between(stream, 600, 1800),
    crew: whole(stream, 2, 4),
    settling: { area_m2: between(stream, 0.2, 0.9), depth_m: between(stream, 0.4, 1) },
    suction: { area_m2: between(stream, 0.2, 0.9), depth_m: between(stream, 0.4, 1) },
    altitude_m: pick(stream, [0, 0, 500, 1500, 3000]),
    temperature_C: between(stream, 8, 38),
  };
}

function anyOpening(stream: Stream, kit: Kit, long: boolean, clay: boolean): Opening {
  const poor = !long && chance(stream, 0.25);
  const deep = clay || chance(stream, 0.5);
  const rods = clay ? CLAY_RODS : deep ? whole(stream, 2, 12) : 1;
  // The bit hangs just above the bottom of the hole there is; some of the last rod still stands out.
  const starter_m = deep ? rods * kit.rodLength_m - between(stream, 0.05, 1.3) : between(stream, 0.25, 1.2);
  const pit_L = 1000 * (kit.settling.area_m2 * kit.settling.depth_m + kit.suction.area_m2 * kit.suction.depth_m);
  return {
    rods,
    rodsInAll: rods + whole(stream, 1, 8),
    starter_m,
    pit_L: pit_L * between(stream, poor ? 0.2 : 0.7, chance(stream, 0.2) ? 1 : 0.93),
    primed: chance(stream, 0.8),
    water_L: poor ? between(stream, 0, 150) : between(stream, 500, 4000),
    powder_kg: poor ? between(stream, 0, 0.5) : between(stream, 2, 20),
    // Without an engine the hole stays as empty as it was dug.
    petrol_L: clay && chance(stream, 0.9) ? 0 : poor ? between(stream, 0, 0.15) : 20,
    bentonite_kg: poor ? 0 : between(stream, 0, 150),
    clay_kg: poor ? 0 : between(stream, 0, 300),
    chlorine_kg: poor ? 0 : between(stream, 0, 30),
    // Digging takes an hour or more: a short run would hardly see anything else.
    setOut: chance(stream, long ? 0.2 : 0.02),
    unlinedPit: chance(stream, 0.4),
    maxDepth_m: Math.ceil(starter_m + 6),
    pumpWorn_frac: chance(stream, 0.2) ? between(stream, 0.09, 0.11) : 0,
  };
}

/** Rain that comes soon, a day that is nearly over or not yet begun, more ground to move on to: each in some of the jobs. */
function anySky(stream: Stream, n: number, long: boolean): Partial<Scenario> {
  const sky: { -readonly [K in keyof Scenario]?: Scenario[K] } = {};
  if (chance(stream, 0.3)) {
    const from_s = whole(stream, 0, 600);
    const shower = { from_s, to_s: from_s + whole(stream, 60, 1800), rain_mmh: between(stream, 1, 400) };
    sky.weather = { evaporation_mmDay: between(stream, 0, 12), showers: [shower] };
  }
  // Light from 7 to 17 o'clock.
  if (chance(stream, 0.12))
    sky.day = { start_h: 7, light_h: 10, from_h: pick(stream, [6.9, 16.3, 16.8]) + between(stream, -0.05, 0.05) };
  if (long || chance(stream, 0.7))
    sky.grounds = [anyGround(n, stream), anyGround(n + 1, stream), anyGround(n + 2, stream)];
  return sky;
}

/** Share of the jobs in which things go wrong, and how late at most, s. */
const TROUBLED_frac = 0.35;
const LATEST_s = 1000;

function anyMoment(stream: Stream, starter_m: number): FaultMoment {
  const tick = whole(stream, 0, LATEST_s);
  const depth_m = starter_m + between(stream, 0, 2);
  const after = pick(stream, EVENT_NAMES);
  return pick<FaultMoment>(stream, [{ tick }, { tick }, { depth_m }, { after, delay_s: whole(stream, 0, 120) }]);
}

function anyFaults(n: number, starter_m: number): readonly ScheduledFault[] {
  const stream = createStream(`random faults ${n}`);
  if (!chance(stream, TROUBLED_frac)) return [];
  return Array.from({ length: whole(stream, 1, 4) }, () => ({
    fault: pick(stream, FAULT_NAMES),
    at: anyMoment(stream, starter_m),
    ...(chance(stream, 0.5) ? { share_frac: between(stream, 0.05, 0.9) } : {}),
    ...(chance(stream, 0.5) ? { time_s: whole(stream, 1, 600) } : {}),
    ...(chance(stream, 0.5) ? { rain_mmh: between(stream, 1, 200) } : {}),
  }));
}

/** The hole that a well is made of. */
function deepened(stream: Stream, opening: Opening, kit: Kit): Opening {
  const rods = whole(stream, 3, 9);
  const starter_m = rods * kit.rodLength_m - between(stream, 0.05, 1.3);
  return { ...opening, rods, rodsInAll: rods + 2, starter_m, setOut: false, maxDepth_m: Math.ceil(starter_m + 4) };
}

/** How long a job is played: most of them as long as is asked. */
export const ticksFor = (n: number, ticks: number): number => (isWell(n) ? WELL_TICKS : ticks);

const WELL: WellKit = {
  casings: CASING_NAMES,
  cloths: CLOTH_NAMES,
  packs: PACK_NAMES,
  seals: SEAL_NAMES,
  lifts: WELL_PUMP_NAMES,
  bits_mm: [75, 100, 125, 150],
  pumps: ['small', 'middle'],
  people: 200,
};

/** Job number n; the same number always gives the same job. */
export function randomJob(n: number): Scenario {
  const stream = createStream(`random job ${n}`);
  const kit = { ...DEFAULT_KIT, ...anyKit(stream) };
  const long = n % LONG_EVERY === LONG_EVERY - 1;
  const usual = anyOpening(stream, kit, long || isWell(n), inClay(n));
  const opening = isWell(n) ? deepened(stream, usual, kit) : usual;
  const ground = anyGround(n, stream);
  const sky = anySky(stream, n, long);
  return {
    id: 'random',
    version: 1,
    seed: n,
    practice: n % 3 !== 0,
    ground: sky.grounds?.[0] ?? ground,
    kit,
    opening,
    ...(isWell(n) ? { well: WELL } : {}),
    ...sky,
    faults: anyFaults(n, opening.starter_m),
    live: n % 2 === 0,
  };
}
