// The words of the trade: where each belongs, and the small drawing that shows it. A drawing is a ground plan of things
// (the base) in ink, and on it what the word means, in the accent colour. The field is 72 by 54.
import { glossary } from '../words/en/glossary';
import { addMessages } from '../words';

addMessages(glossary);

export const PLACES = ['kit', 'fluid', 'hole', 'ground', 'well'] as const;
type PlaceName = (typeof PLACES)[number];

export interface Term {
  readonly place: PlaceName;
  readonly base: string;
  readonly shows: string;
  /** The accent fills its shape instead of drawing its line. */
  readonly solid?: true;
}

const HOLE = 'M2 12h26v38h16V12h26';
const STEM = `${HOLE}M34 2v42h4V2`;
const TIP = 'M30 44h12l-3 6h-6z';
const PIT = 'M2 16h6v26h28V22h2v20h26V16h6';
const PUMP = 'M8 8h18v16H8zM17 12a4 4 0 1 0 .01 0M26 16h10v18';
const WELL = 'M2 12h20v40h28V12h20M32 4v46h8V4';
const LAYERS = 'M2 6h68v42H2zM2 20h68M2 34h68';
/** A well with its water at a depth, as a box. */
const water = (y: number): string => `M32 ${y}h8v${50 - y}h-8z`;
/** Dots for grains at the given places. */
const dots = (places: readonly (readonly [number, number])[], r: number): string =>
  places.map(([x, y]) => `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`).join('');
const GRID = [
  [14, 14],
  [30, 12],
  [46, 15],
  [60, 12],
  [20, 27],
  [38, 26],
  [54, 28],
  [12, 40],
  [28, 41],
  [46, 40],
  [61, 41],
] as const;

export const TERMS = {
  rod: { place: 'kit', base: 'M10 50h52', shows: 'M33 10h6v34h-6zM31 6h10v6H31zM34 44h4v5h-4z' },
  stem: { place: 'kit', base: HOLE, shows: `M34 2v42h4V2M32 16h8M32 30h8${TIP}` },
  bit: {
    place: 'kit',
    base: 'M33 2h6v22h-6z',
    shows: 'M24 24h24l-4 16h-16zM30 40l-3 8M36 40v9M42 40l3 8',
    solid: true,
  },
  swivel: { place: 'kit', base: 'M33 26h6v26h-6zM2 14h24', shows: 'M26 8h20v18H26zM30 30c0 4 12 4 12 0' },
  strainer: { place: 'kit', base: 'M36 2v20M4 50h64', shows: 'M26 22h20v20H26zM26 29h20M26 36h20M33 22v20M39 22v20' },
  valve: { place: 'kit', base: 'M28 2v48M44 2v48', shows: 'M28 34l14-10M28 34h16M36 20V6M32 10l4-5 4 5' },
  prime: { place: 'kit', base: PUMP, shows: 'M9 15h16v8H9zM34 20h4v14h-4zM14 2h6v5', solid: true },

  pit: { place: 'fluid', base: 'M2 16h6M64 16h6', shows: 'M8 16v26h28V22h2v20h26V16M10 22h24M40 22h22' },
  settling: { place: 'fluid', base: PIT, shows: 'M38 24h26v18H38zM44 42c4-9 14-9 18 0', solid: true },
  suction: { place: 'fluid', base: PIT, shows: 'M8 24h28v18H8z', solid: true },
  circulate: {
    place: 'fluid',
    base: 'M2 18h14v20h22V18h10v32h14V18h8',
    shows: 'M24 30V6h30v34M51 36l3 5 3-5M60 40V22M57 26l3-5 3 5M46 20h-8M41 17l-4 3 4 3',
  },
  returns: {
    place: 'fluid',
    base: STEM,
    shows: 'M31 44V16M28 20l3-5 3 5M41 44V16M38 20l3-5 3 5M28 10H10M14 7l-5 3 5 3',
  },
  cuttings: {
    place: 'fluid',
    base: STEM,
    shows: dots(
      [
        [31, 40],
        [41, 36],
        [31, 28],
        [41, 22],
        [31, 16],
        [18, 9],
        [10, 9],
      ],
      2,
    ),
    solid: true,
  },
  polymer: {
    place: 'fluid',
    base: PIT,
    shows:
      dots(
        [
          [22, 4],
          [28, 8],
          [18, 10],
          [24, 13],
        ],
        1.5,
      ) + 'M10 28c5-4 8 4 13 0s8 4 11 0M10 35c5-4 8 4 13 0s8 4 11 0',
  },
  bentonite: {
    place: 'fluid',
    base: 'M6 50h60',
    shows: 'M12 26h12v14H12zM32 33h2M30 33h8M35 30l4 3-4 3M44 16h20v24H44z',
  },
  funnel: { place: 'fluid', base: 'M24 50h24', shows: 'M20 4h32L40 28v10h-8V28zM36 42v5' },

  lost: { place: 'hole', base: STEM, shows: 'M28 34H14M18 31l-5 3 5 3M44 40h14M54 37l5 3-5 3M28 22h-8M44 26h8' },
  sloughing: {
    place: 'hole',
    base: STEM,
    shows: dots(
      [
        [26, 20],
        [30, 26],
        [42, 30],
        [46, 18],
        [31, 44],
        [41, 46],
        [36, 48],
      ],
      2.2,
    ),
    solid: true,
  },
  washout: {
    place: 'hole',
    base: 'M2 12h26M44 12h26M28 50h16M34 2v42h4V2',
    shows: 'M28 12v6c-14 4-14 22 0 24v8M44 12v6c14 4 14 22 0 24v8',
  },
  swelling: {
    place: 'hole',
    base: STEM,
    shows: 'M28 22c6 2 6 14 0 16M44 22c-6 2-6 14 0 16M16 30h8M21 27l4 3-4 3M56 30h-8M51 27l-4 3 4 3',
  },
  balling: {
    place: 'hole',
    base: 'M2 12h22v40h24V12h22M34 2v28h4V2',
    shows: 'M36 26c-12 0-12 20 0 20s12-20 0-20z',
    solid: true,
  },
  tight: { place: 'hole', base: STEM, shows: 'M20 28h8M25 25l4 3-4 3M52 28h-8M47 25l-4 3 4 3' },
  stuck: { place: 'hole', base: STEM, shows: 'M28 24h6v26h-6zM38 24h6v26h-6z', solid: true },
  annulus: { place: 'hole', base: STEM, shows: 'M28 12h6v32h-6zM38 12h6v32h-6z', solid: true },

  clay: {
    place: 'ground',
    base: 'M4 4h64v46H4z',
    shows: 'M10 12h14M32 12h14M54 12h8M18 22h14M40 22h14M10 32h14M32 32h14M54 32h8M18 42h14M40 42h14',
  },
  silt: {
    place: 'ground',
    base: 'M4 4h64v46H4z',
    shows:
      'M10 12h8M26 12h1M34 12h8M50 12h1M14 22h1M22 22h8M38 22h1M46 22h8M10 32h8M26 32h1M34 32h8M50 32h1M22 42h8M46 42h8',
  },
  sand: { place: 'ground', base: 'M4 4h64v46H4z', shows: dots(GRID, 1.6), solid: true },
  gravel: { place: 'ground', base: 'M4 4h64v46H4z', shows: dots(GRID, 4.5) },
  aquifer: { place: 'ground', base: LAYERS, shows: 'M2 34h68v14H2z', solid: true },
  aquitard: { place: 'ground', base: LAYERS, shows: 'M2 20h68v14H2z', solid: true },
  table: { place: 'ground', base: 'M2 10h68M2 50h68', shows: 'M2 28h68M32 20h8l-4 6zM8 34h10M28 38h10M48 34h10' },
  static: { place: 'ground', base: WELL, shows: water(26), solid: true },

  casing: { place: 'well', base: 'M2 12h20v40h28V12h20', shows: 'M32 4v46h8V4M32 20h8' },
  screen: { place: 'well', base: WELL, shows: 'M32 34h8M32 37h8M32 40h8M32 43h8M32 46h8' },
  slot: { place: 'well', base: 'M22 2v50M50 2v50', shows: 'M24 18h24v3H24zM24 34h24v3H24z', solid: true },
  sump: { place: 'well', base: `${WELL}M32 30h8M32 33h8M32 36h8`, shows: 'M32 40h8v10h-8z', solid: true },
  cap: { place: 'well', base: 'M2 12h20v40h28V12h20M32 4v40h8V4', shows: 'M30 42h12v8H30z', solid: true },
  centraliser: { place: 'well', base: WELL, shows: 'M32 24c-10 3-10 9 0 12M40 24c10 3 10 9 0 12' },
  pack: {
    place: 'well',
    base: WELL,
    shows: dots(
      [
        [27, 32],
        [26, 40],
        [27, 48],
        [45, 32],
        [46, 40],
        [45, 48],
        [24, 36],
        [48, 36],
        [24, 45],
        [48, 45],
      ],
      2,
    ),
    solid: true,
  },
  seal: { place: 'well', base: WELL, shows: 'M22 12h10v14H22zM40 12h10v14H40z', solid: true },
  apron: { place: 'well', base: 'M2 18h68M32 4v46h8V4', shows: 'M12 14h20v5H12zM40 14h20v5H40z', solid: true },
  development: {
    place: 'well',
    base: WELL,
    shows: `M22 40h8M27 37l4 3-4 3M50 40h-8M45 37l-4 3 4 3M36 34V8M32 13l4-5 4 5`,
  },
  surging: {
    place: 'well',
    base: WELL,
    shows: 'M32 24h8M36 8v12M33 12l3-4 3 4M33 17l3 4 3-4M22 40h8M27 37l4 3-4 3M42 46h8M45 43l-4 3 4 3',
  },
  overPumping: { place: 'well', base: WELL, shows: 'M36 44V2h20v8M53 7l3 5 3-5M26 46h5M46 46h-5' },
  drawdown: { place: 'well', base: WELL, shows: 'M2 18c18 2 26 8 30 20M70 18c-18 2-26 8-30 20M36 20v16M33 32l3 5 3-5' },
  recovery: { place: 'well', base: WELL, shows: 'M32 40h8M36 38V20M33 25l3-5 3 5M2 18h30M40 18h30' },
  capacity: { place: 'well', base: 'M10 4v44h56', shows: 'M10 10L60 40M46 44v-12M30 44V22' },
  turbidity: {
    place: 'well',
    base: 'M24 6h24v42H24z',
    shows: dots(
      [
        [30, 16],
        [40, 20],
        [33, 27],
        [43, 32],
        [29, 36],
        [38, 41],
      ],
      1.8,
    ),
  },
  record: { place: 'well', base: 'M18 4h36v46H18z', shows: 'M24 12h24M24 20h24M24 28h10v16H24zM40 30h8M40 38h8' },
} as const satisfies Record<string, Term>;

export type TermName = keyof typeof TERMS;
export const TERM_NAMES = Object.keys(TERMS) as TermName[];
