// What the random crew may come upon: every act with the moment at which it looks possible, how often it is drawn, and figures of chance.

import type { Senses } from '$sim';
import { between, pick, whole, type Chance } from './chance';
import { does, type Deed } from './crew';
import { busyWith } from './patience';

export interface RandomAct {
  readonly weight: number;
  readonly looksPossible: (senses: Senses) => boolean;
  readonly deed: (chance: Chance, senses: Senses) => Deed;
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
const hundredth = (value: number): number => Math.round(value * 100) / 100;

const free = (senses: Senses, hands: number): boolean => senses.hands.free >= hands;
const drilling = ({ well }: Senses): boolean => well === null || well.job === 'siteSetup' || well.job === 'drilling';
const atRest = ({ stem, pump, returns }: Senses): boolean =>
  !stem.turning && pump.throttle_frac === 0 && !returns.running;
const standing = ({ well }: Senses): boolean => well !== null && ['landed', 'set'].includes(well.casing.look);
const loose = ({ stem }: Senses): boolean => stem.pull !== 'stuck' && stem.rods > 0;
const quiet = ({ hands }: Senses): boolean => hands.tasks.length === 0;

/** While there is a hole to drill. */
const DRILLS: readonly RandomAct[] = [
  {
    weight: 6,
    looksPossible: (s) =>
      drilling(s) && !s.pump.primed && s.pump.throttle_frac === 0 && free(s, 1) && !busyWith(s, 'prime'),
    deed: () => does('prime'),
  },
  {
    weight: 5,
    looksPossible: (s) => s.pump.primed && !busyWith(s, 'addRod') && !busyWith(s, 'clearStrainer'),
    deed: (chance) => does('setThrottle', { throttle_frac: pick(chance, [0, 0.4, 1, 1]) }),
  },
  {
    weight: 5,
    looksPossible: (s) => drilling(s) && loose(s) && free(s, 1) && !busyWith(s, 'addRod'),
    deed: (chance) => does('setTurning', { on: pick(chance, [true, true, false]) }),
  },
  {
    weight: 6,
    looksPossible: (s) => drilling(s) && s.stem.turning && free(s, 1),
    deed: (chance) => does('setFeed', { feed_frac: pick(chance, [0, 0.2, 0.5, 1]) }),
  },
  {
    weight: 2,
    looksPossible: (s) => drilling(s) && loose(s) && free(s, 1) && !busyWith(s, 'lift') && s.stem.bit_m > 0.5,
    deed: (chance) =>
      does('lift', {
        distance_m: hundredth(between(chance, 0.05, 0.5)),
        speed_ms: hundredth(between(chance, 0.05, 0.5)),
      }),
  },
  {
    weight: 4,
    looksPossible: (s) =>
      drilling(s) && atRest(s) && loose(s) && quiet(s) && s.stem.left_m < 0.1 && s.stem.rodsLeft > 0,
    deed: () => does('addRod'),
  },
  {
    weight: 2,
    looksPossible: (s) => s.stem.pull === 'stuck' && free(s, 2),
    deed: (chance) => does('workStem', { time_s: whole(chance, 10, 120) }),
  },
  {
    weight: 2,
    looksPossible: (s) => s.returns.running && free(s, 1) && !busyWith(s, 'catchSample'),
    deed: (chance, s) => does('catchSample', { label_m: tenth(between(chance, 0, s.stem.bottom_m + 1)) }),
  },
  {
    weight: 1,
    looksPossible: (s) => s.tray.length > 0,
    deed: (chance, s) =>
      does('nameSample', {
        sample: pick(chance, s.tray).sample,
        main: pick(chance, ['clay', 'silt', 'fineSand', 'mediumSand', 'gravel', 'peat']),
      }),
  },
];

/** The pit and what goes into it. */
const TENDS: readonly RandomAct[] = [
  {
    weight: 1,
    looksPossible: (s) => free(s, 1) && s.stock.powder_kg > 1 && !busyWith(s, 'addAdditive'),
    deed: (chance) =>
      does('addAdditive', {
        additive: 'polymer',
        mass_g: whole(chance, 50, 900),
        manner: pick(chance, ['sprinkled', 'dumped']),
      }),
  },
  { weight: 1, looksPossible: (s) => free(s, 1), deed: () => does('feelFluid') },
  { weight: 1, looksPossible: (s) => free(s, 1), deed: () => does('readStick') },
  {
    weight: 2,
    looksPossible: (s) => free(s, 1) && s.stock.water_L > 150 && s.pit.look !== 'full' && !busyWith(s, 'addWater'),
    deed: (chance) => does('addWater', { water_L: whole(chance, 10, 120) }),
  },
  {
    weight: 1,
    looksPossible: (s) =>
      free(s, 1) && (s.pit.heap === 'high' || s.pit.heap === 'brimming') && !busyWith(s, 'digOutPit'),
    deed: (chance) => does('digOutPit', { chamber: 'settling', spoil_L: whole(chance, 5, 20) }),
  },
  {
    weight: 1,
    looksPossible: (s) => free(s, 1) && s.pump.sound === 'gulping' && !busyWith(s, 'clearStrainer'),
    deed: () => does('clearStrainer'),
  },
  { weight: 1, looksPossible: () => true, deed: () => does('note', { text: 'looked on' }) },
  {
    weight: 1,
    looksPossible: (s) => s.waiting === null,
    deed: (chance) => does('waitFor', { time_s: whole(chance, 10, 300) }),
  },
];

/** Once the drilling is over. */
const WELL: readonly RandomAct[] = [
  {
    weight: 3,
    looksPossible: (s) => s.well !== null && s.well.plan === null && s.stem.bottom_m > 2,
    deed: (chance, s) => {
      const to_m = hundredth(between(chance, 1.2, s.stem.bottom_m - 0.3));
      const from_m = hundredth(Math.max(0.5, to_m - between(chance, 0.3, 3)));
      return does('planWell', {
        casing: pick(chance, ['pvc50', 'pvc63', 'pvc63thin']),
        screenFrom_m: from_m,
        screenTo_m: to_m,
        sump_m: 0,
        slotWidth_mm: pick(chance, [0.5, 1, 2, 3]),
        slotRows: pick(chance, [1, 2, 3]),
        slotArc_mm: whole(chance, 20, 48),
        slotSpacing_mm: whole(chance, 10, 60),
        cloth: pick(chance, ['none', 'fine', 'coarse']),
        cap: pick(chance, [true, false]),
        centralisers: 0,
        pack: pick(chance, ['none', 'pack07', 'pack2']),
        packTop_m: hundredth(between(chance, 0, from_m)),
        seal: 'none',
        sealFrom_m: 0,
        sealTo_m: 0,
        stickUp_m: hundredth(between(chance, 0, 0.6)),
      });
    },
  },
  {
    weight: 3,
    looksPossible: (s) =>
      s.well?.plan != null && !drilling(s) && atRest(s) && s.stem.rods > 0 && loose(s) && free(s, 2),
    deed: (chance) =>
      does('pullOut', { speed_ms: hundredth(between(chance, 0.05, 0.5)), topUp: pick(chance, [true, false]) }),
  },
  {
    weight: 4,
    looksPossible: (s) =>
      s.well?.plan != null && s.well.casing.joined < s.well.casing.pieces && free(s, 1) && !busyWith(s, 'joinCasing'),
    deed: () => does('joinCasing'),
  },
  {
    weight: 4,
    looksPossible: ({ well, stem, hands }) =>
      well !== null &&
      stem.rods === 0 &&
      well.casing.joined > 0 &&
      hands.free >= 2 &&
      !['landed', 'set', 'hung'].includes(well.casing.look),
    deed: (chance) =>
      does('runCasing', { fill: pick(chance, [true, false]), speed_ms: hundredth(between(chance, 0.05, 0.5)) }),
  },
  {
    weight: 2,
    looksPossible: (s) => s.well?.casing.look === 'hung' && free(s, 2),
    deed: (chance) => does('workCasing', { time_s: whole(chance, 60, 600) }),
  },
  {
    weight: 1,
    looksPossible: (s) => standing(s) && quiet(s),
    deed: (chance) =>
      does('develop', {
        method: pick(chance, ['bail', 'surge', 'backWash']),
        time_s: whole(chance, 60, 1800),
        strokes_min: 20,
      }),
  },
  { weight: 1, looksPossible: (s) => standing(s) && free(s, 1), deed: () => does('sound') },
  { weight: 1, looksPossible: (s) => standing(s) && free(s, 1), deed: () => does('dipWell') },
];

export const RANDOM_ACTS: readonly RandomAct[] = [...DRILLS, ...TENDS, ...WELL];
