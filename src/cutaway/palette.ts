// The drawing's own colours, three sets: paper, night, sun. Told apart by lightness first, so that they hold for
// colour-blind readers and in print; kinds of ground differ by pattern as well (charts/patterns.ts).

export interface Palette {
  ink: string;
  quiet: string;
  accent: string;
  accentText: string;
  paper: string;
  skyTop: string;
  skyLow: string;
  grass: string;
  grassDark: string;
  closed: string;
  hatch: string;
  humus: string;
  cut: string;
  notLogged: string;
  rule: string;
  steel: string;
  steelLight: string;
  steelDark: string;
  wood: string;
  woodDark: string;
  hose: string;
  hoseLight: string;
  body: string;
  bodyDark: string;
  tank: string;
  rope: string;
  water: string;
  waterText: string;
  waterBand: string;
  polymer: string;
  mud: Record<string, string>;
  mudThin: string;
  air: string;
  jet: string;
  streak: string;
  heap: string;
  /** The skin that the fluid leaves on the wall, and ground that falls from it. */
  cake: string;
  clod: string;
  /** Plastic pipe, cloth over its slots, concrete; and what is filled round the pipe, by name ('pack' for any pack). */
  casing: string;
  cloth: string;
  apron: string;
  fills: Readonly<Record<string, string>>;
  grainFills: string[];
  /** Washed quartz of the pack: grey and white, so that it is not taken for the sand of the ground. */
  packGrains: readonly string[];
  grainLine: string;
  /** Thickness of outlines, px. */
  line_px: number;
}

const MUDS = {
  brown: '#9b7446',
  grey: '#88837a',
  yellow: '#b48e3c',
  red: '#a05c3c',
  black: '#574a3f',
  pale: '#c9b891',
};

const PAPER: Palette = {
  ink: '#22303a',
  quiet: '#474a42',
  accent: '#8c3413',
  accentText: '#7a250c',
  paper: '#f7f1e3',
  skyTop: '#dbe7ea',
  skyLow: '#f4efdf',
  grass: '#7f8a46',
  grassDark: '#56602b',
  closed: '#ddd2b9',
  hatch: '#c9bb9b',
  humus: '#8a7550',
  cut: '#cdbb95',
  notLogged: '#f1e9d6',
  rule: '#b3a688',
  steel: '#97a1a5',
  steelLight: '#cdd4d5',
  steelDark: '#55616a',
  wood: '#97744a',
  woodDark: '#5d452a',
  hose: '#37434a',
  hoseLight: '#74838a',
  body: '#c4ccca',
  bodyDark: '#6c787c',
  tank: '#a8492a',
  rope: '#6b5a3a',
  water: '#a4c8d3',
  waterText: '#134b66',
  waterBand: '#5f9cb4',
  polymer: '#c6d1b2',
  mud: MUDS,
  mudThin: '#c6b189',
  air: '#5a4c3b',
  jet: '#e9f4f7',
  streak: '#f6fbfb',
  heap: '#d9bb76',
  cake: '#5d5a26',
  clod: '#b98b4e',
  casing: '#e4e6e4',
  cloth: '#f3d9c0',
  apron: '#c7c3b8',
  fills: {
    pack: '#cfd3cf',
    bentoniteGranules: '#5c6b52',
    bentonitePellets: '#5c6b52',
    cement: '#b4b3ad',
    clay: '#7d5a3c',
    cuttings: '#b79a68',
    ground: '#b79a68',
  },
  grainFills: ['#fbeec4', '#f0cd78', '#d9cdb8', '#fffaf0', '#d99a55'],
  packGrains: ['#fdfdfa', '#dfe4e3', '#b3bbbc', '#f1f1ea', '#98a2a5'],
  grainLine: '#2b2722',
  line_px: 1.4,
};

const NIGHT: Palette = {
  ink: '#e6decb',
  quiet: '#c3bba8',
  accent: '#e08a5e',
  accentText: '#f0a47c',
  paper: '#14191b',
  skyTop: '#11181d',
  skyLow: '#1f2a2f',
  grass: '#56632f',
  grassDark: '#39431f',
  closed: '#2c2a25',
  hatch: '#3a3730',
  humus: '#4a3f2c',
  cut: '#453d2f',
  notLogged: '#201f1c',
  rule: '#6b6656',
  steel: '#79848a',
  steelLight: '#aab4b8',
  steelDark: '#3c464c',
  wood: '#80633f',
  woodDark: '#b08d5f',
  hose: '#8c989d',
  hoseLight: '#c0c9cc',
  body: '#5f6b6e',
  bodyDark: '#3a4446',
  tank: '#b4583a',
  rope: '#b09a6c',
  water: '#34596a',
  waterText: '#9fd3ea',
  waterBand: '#3c7a92',
  polymer: '#55644a',
  mud: { brown: '#6f5231', grey: '#5d5a54', yellow: '#80662c', red: '#71412b', black: '#38302a', pale: '#8c8063' },
  mudThin: '#574e3b',
  air: '#0c0d0d',
  jet: '#cfe8f0',
  streak: '#dcebf0',
  heap: '#8f7642',
  cake: '#b9b36a',
  clod: '#a9783f',
  casing: '#8f989b',
  cloth: '#8a6f55',
  apron: '#6a675f',
  fills: {
    pack: '#5f6664',
    bentoniteGranules: '#3c4a36',
    bentonitePellets: '#3c4a36',
    cement: '#77766f',
    clay: '#543b27',
    cuttings: '#6e5b3a',
    ground: '#6e5b3a',
  },
  grainFills: ['#e9d9a9', '#d3ad55', '#9d8a75', '#f1ead6', '#bd8049'],
  packGrains: ['#eceeec', '#c3cac9', '#929c9d', '#dadfdd', '#7c8789'],
  grainLine: '#0d0d0c',
  line_px: 1.4,
};

const SUN: Palette = {
  ...PAPER,
  ink: '#000000',
  quiet: '#262626',
  accent: '#6b1a00',
  accentText: '#6b1a00',
  paper: '#ffffff',
  skyTop: '#ffffff',
  skyLow: '#ffffff',
  grass: '#4d5a1d',
  grassDark: '#2c350c',
  closed: '#efebe0',
  hatch: '#c2b795',
  humus: '#57431e',
  cut: '#d5c49b',
  notLogged: '#ffffff',
  rule: '#5c5440',
  steelDark: '#2f393f',
  hose: '#11181c',
  hoseLight: '#5d6c73',
  waterText: '#00395a',
  waterBand: '#2f7d9c',
  streak: '#ffffff',
  grainLine: '#000000',
  line_px: 2,
};

export type ThemeName = 'paper' | 'night' | 'sun';

const THEMES: Record<ThemeName, Palette> = { paper: PAPER, night: NIGHT, sun: SUN };

export function paletteFor(theme: string | null | undefined): Palette {
  return theme === 'night' || theme === 'sun' ? THEMES[theme] : PAPER;
}

/** Colour between two, share 0 to 1 of the second, as a number that the renderer takes. */
export function blend(from: string, to: string, share_frac: number): number {
  const a = Number.parseInt(from.slice(1), 16);
  const b = Number.parseInt(to.slice(1), 16);
  const s = Math.max(0, Math.min(1, share_frac));
  const mix = (shift: number): number => {
    const low = (a >> shift) & 255;
    return Math.round(low + (((b >> shift) & 255) - low) * s);
  };
  return (mix(16) << 16) | (mix(8) << 8) | mix(0);
}

const hex = (colour: number): string => `#${colour.toString(16).padStart(6, '0')}`;

/** Steps of cloudiness that are told apart; neighbouring cells of one step are drawn as one. */
export const CLOUD_STEPS = 24;

/** Share of the way from clear to thick that silt and clay colour the fluid: half at 1 % by volume, full near 8 %. */
export function cloudiness(fines_frac: number): number {
  const f = Math.max(0, fines_frac);
  return Math.min(1, (1.12 * f) / (f + 0.009));
}

/** Polymer makes muddy fluid milkier too, but less than clear water. */
const MILK_IN_MUD = 0.35;

/** Colour of a fluid: clear water, milkier with polymer, clouded by silt and clay in the colour of the returns. */
export function fluidColour(look: Palette, fines_frac: number, polymer_gL: number, colourWord: string): number {
  const milk = Math.min(1, polymer_gL / 2);
  const clear = hex(blend(look.water, look.polymer, milk));
  const step = Math.round(cloudiness(fines_frac) * CLOUD_STEPS) / CLOUD_STEPS;
  const mud = look.mud[colourWord] ?? look.mud['brown'] ?? look.mudThin;
  const thick = hex(blend(mud, look.polymer, MILK_IN_MUD * milk));
  const middle = hex(blend(look.mudThin, thick, 0.25));
  return step < 0.5 ? blend(clear, middle, step * 2) : blend(middle, thick, step * 2 - 1);
}
