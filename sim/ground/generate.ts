// Makes a ground from a seed: layers drawn down a chain of beds, or laid down by a lesson's recipe, then water and site.
import { exp } from '../numeric/functions';
import { clamp } from '../numeric/curve';
import { createStream, type Stream } from '../numeric/stream';
import type { SoilKind } from '../materials/soils';
import { headsOf } from './aquifers';
import { nextState, sharesOf } from './chain';
import { GROUND_VERSION, type Ground, type Salinity } from './ground';
import { SETTING, SETTINGS, type Setting, type SettingId } from './settings';
import { drawSite } from './site';
import { FLAT_GROUND, type Range, type SaltRange, type Surroundings } from './surroundings';
import { variedLayer } from './vary';

/** A profile is drawn to at least this depth and cut off at most there, m: deeper than any hand-jetted hole. */
const LEAST_DEPTH_m = 45;
const MOST_DEPTH_m = 60;
/** No bed is thinner than this, m, and none farther from the median than so many spreads. */
const LEAST_BED_m = 0.1;
const MOST_SPREADS = 2;
const LARGEST_SEED = 4294967295;

/** A lesson's own ground: its layers from the top down; the seed picks within the ranges and varies each layer. */
export interface GroundRecipe extends Partial<Surroundings> {
  readonly layers: readonly { readonly kind: SoilKind; readonly thickness_m: Range }[];
  readonly waterTable_m: Range;
  /** Stands in the ground's `setting`; 'recipe' when left out. */
  readonly name?: string;
}

interface Bed {
  kind: SoilKind;
  thickness_m: number;
}

const centimetres = (length_m: number): number => Math.round(length_m * 100) / 100;
const within = (stream: Stream, [least, most]: Range): number => least + (most - least) * stream.uniform();

function checkSeed(seed: number): void {
  if (!Number.isInteger(seed) || seed < 0 || seed > LARGEST_SEED) {
    throw new RangeError(`The seed must be a whole number from 0 to ${LARGEST_SEED}.`);
  }
}

/** The kinds a setting uses, and its chain over them. */
export function chainOf(setting: Setting): { kinds: SoilKind[]; shares: number[][] } {
  const kinds = Object.keys(setting.beds) as SoilKind[];
  const weights = kinds.map((from) => kinds.map((to) => setting.beds[from]!.under[to] ?? 0));
  return { kinds, shares: sharesOf(weights) };
}

/** Beds from the top down until the profile is deep enough. */
function drawBeds(setting: Setting, stream: Stream): Bed[] {
  const { kinds, shares } = chainOf(setting);
  const beds: Bed[] = [];
  let state = kinds.indexOf(setting.first);
  for (let depth_m = 0; depth_m < LEAST_DEPTH_m;) {
    const kind = kinds[state];
    const [median_m, spread] = setting.beds[kind]!.thick;
    const drawn_m = median_m * exp(spread * clamp(stream.normal(), -MOST_SPREADS, MOST_SPREADS));
    const thickness_m = Math.min(MOST_DEPTH_m - depth_m, Math.max(LEAST_BED_m, drawn_m));
    beds.push({ kind, thickness_m });
    depth_m += thickness_m;
    state = nextState(shares, state, stream.uniform());
  }
  return beds;
}

/** Salt in the ground water from the top down: fresh everywhere, or brackish and salt under fresh. */
function drawSalinity(salt: SaltRange | null, stream: Stream): Salinity[] {
  const fresh = { from_m: 0, salt_gL: centimetres(within(stream, [0.1, 0.5])) };
  if (salt === null) return [fresh];
  const brackish_m = centimetres(within(stream, salt.brackish_m));
  return [
    fresh,
    { from_m: brackish_m, salt_gL: centimetres(within(stream, salt.brackish_gL)) },
    {
      from_m: centimetres(brackish_m + within(stream, salt.salt_m)),
      salt_gL: centimetres(within(stream, salt.salt_gL)),
    },
  ];
}

/** Layers, water and site round a list of beds. Each part has a stream of its own, so that a change in one leaves the others. */
function assemble(setting: string, seed: number, beds: readonly Bed[], around: Surroundings): Ground {
  const stream = (part: string): Stream => createStream(`ground/${setting}/${seed}/${part}`);
  const water = stream('water');
  const waterTable_m = centimetres(within(water, around.waterTable_m));
  const lowestWater_m = centimetres(waterTable_m + within(water, around.swing_m));
  const own = stream('layers');
  let bottom_m = 0;
  const layers = beds.map(({ kind, thickness_m }) => {
    const top_m = bottom_m;
    bottom_m = centimetres(top_m + Math.max(LEAST_BED_m, thickness_m));
    return variedLayer(kind, top_m, bottom_m, (top_m + bottom_m) / 2 < lowestWater_m, around.tint, own);
  });
  const heads = headsOf(layers, waterTable_m, around, stream('heads'));
  const salinity = drawSalinity(around.salt, stream('salt'));
  const { site, contamination } = drawSite(stream('site'), waterTable_m, lowestWater_m, around.floodLine_m);
  return {
    version: GROUND_VERSION,
    setting,
    seed,
    depth_m: bottom_m,
    layers,
    waterTable_m,
    lowestWater_m,
    heads,
    salinity,
    contamination,
    site,
  };
}

const isSetting = (name: string): name is SettingId => (SETTINGS as readonly string[]).includes(name);

/**
 * The ground of a setting and a seed; always the same for both.
 * Throws RangeError for an unknown setting, or a seed that is no whole number from 0 to 2^32 - 1.
 */
export function ground(setting: string, seed: number): Ground {
  if (!isSetting(setting)) {
    throw new RangeError(`There is no setting '${setting}'. Choose one of: ${SETTINGS.join(', ')}.`);
  }
  checkSeed(seed);
  const beds = drawBeds(SETTING[setting], createStream(`ground/${setting}/${seed}/beds`));
  return assemble(setting, seed, beds, SETTING[setting]);
}

/**
 * The ground of a recipe and a seed; always the same for both. It is as deep as its layers.
 * Throws RangeError for a recipe without layers, or a seed that is no whole number from 0 to 2^32 - 1.
 */
export function buildGround(recipe: GroundRecipe, seed: number): Ground {
  checkSeed(seed);
  if (recipe.layers.length === 0) throw new RangeError('The recipe has no layers.');
  const { layers, name = 'recipe', ...around } = recipe;
  const stream = createStream(`ground/${name}/${seed}/beds`);
  const beds = layers.map(({ kind, thickness_m }) => ({ kind, thickness_m: within(stream, thickness_m) }));
  return assemble(name, seed, beds, { ...FLAT_GROUND, ...around });
}
