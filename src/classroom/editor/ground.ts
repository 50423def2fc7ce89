// A ground laid out by hand: beds with their depths, and what can be done to them. The last bed goes on to the bottom.
import type { Exercise, ExerciseLayer } from '$lessons';
import type { Ground, SoilKind } from '$sim';

export type Laid = Extract<Exercise['ground'], { by: 'layers' }>;

export interface Bed {
  readonly kind: SoilKind;
  readonly top_m: number;
  readonly bottom_m: number;
  /** It goes on below. */
  readonly last: boolean;
}

const THINNEST_m = 0.1;
const NEW_m = 1;
/** Boundaries are set to a tenth of a metre by hand, and lie above this depth. */
const HAND_m = 0.1;
const DEEPEST_m = 59.9;
const MOST_LAYERS = 40;
/** Beds that may be put in, the first that neither neighbour is. */
const FRESH: readonly SoilKind[] = ['mediumSand', 'firmClay', 'silt'];

export const hundredths = (value: number): number => Math.round(value * 100) / 100;
const onGrid = (depth_m: number): number => hundredths(Math.round(depth_m / HAND_m) * HAND_m);

/** Where each layer lies. A thickness that is no number counts as none. */
export function bedsOf({ layers }: Laid): Bed[] {
  let top_m = 0;
  return layers.map(({ kind, thickness_m }, i) => {
    const from_m = top_m;
    top_m = hundredths(top_m + (Number.isFinite(thickness_m) ? Math.max(0, thickness_m) : 0));
    return { kind, top_m: from_m, bottom_m: top_m, last: i === layers.length - 1 };
  });
}

/** A ground drawn by a number, as a ground to lay out: its beds to a depth, in tenths of a metre, and its water. */
export function laidFrom(
  { layers, waterTable_m, lowestWater_m, salinity }: Ground,
  depth_m: number,
  seed: number,
): Laid {
  const beds: ExerciseLayer[] = [];
  let top_m = 0;
  for (const layer of layers) {
    if (top_m >= depth_m && beds.length > 0) break;
    const bottom_m = onGrid(layer.bottom_m);
    const thickness_m = Math.min(60, hundredths(bottom_m - top_m));
    if (thickness_m < THINNEST_m || beds.length === MOST_LAYERS) continue;
    beds.push({ kind: layer.kind, thickness_m });
    top_m = bottom_m;
  }
  const salty = salinity.find(({ salt_gL, from_m }) => salt_gL >= 1 && from_m > 0);
  return {
    by: 'layers',
    layers: beds,
    waterTable_m: onGrid(waterTable_m),
    swing_m: onGrid(lowestWater_m - waterTable_m),
    confinedRise_m: 0,
    perched: false,
    salt: salty ? { from_m: onGrid(salty.from_m), salt_gL: Math.min(40, Math.round(salty.salt_gL)) } : null,
    seed,
  };
}

const withLayers = (ground: Laid, layers: ExerciseLayer[]): Laid => ({ ...ground, layers });

/** Whether there is room for one more. */
export const hasRoom = ({ layers }: Laid): boolean => layers.length < MOST_LAYERS;

/** One more layer under the one of that number; -1: at the top. */
export function addLayer(ground: Laid, below: number): Laid {
  const near = [ground.layers[below]?.kind, ground.layers[below + 1]?.kind];
  const kind = FRESH.find((one) => !near.includes(one))!;
  return withLayers(ground, ground.layers.toSpliced(below + 1, 0, { kind, thickness_m: NEW_m }));
}

/** One stays: ground without a layer is none. */
export const removeLayer = (ground: Laid, i: number): Laid =>
  ground.layers.length === 1 ? ground : withLayers(ground, ground.layers.toSpliced(i, 1));

/** The layer changes place with the one above (-1) or below (1). */
export function moveLayer(ground: Laid, i: number, by: -1 | 1): Laid {
  const [one, other] = [ground.layers[i], ground.layers[i + by]];
  return one && other ? withLayers(ground, ground.layers.with(i, other).with(i + by, one)) : ground;
}

export const setKind = (ground: Laid, i: number, kind: SoilKind): Laid =>
  withLayers(ground, ground.layers.with(i, { ...ground.layers[i]!, kind }));

/** What can be taken hold of in the drawn ground: the bottom of a layer by its number, the water now and in the dry season. */
export type Grip = number | 'water' | 'dry';

export function gripsOf(ground: Laid): { grip: Grip; depth_m: number }[] {
  const ends = bedsOf(ground).flatMap(({ bottom_m, last }, grip) => (last ? [] : [{ grip, depth_m: bottom_m }]));
  return [
    ...ends,
    { grip: 'water', depth_m: ground.waterTable_m },
    { grip: 'dry', depth_m: hundredths(ground.waterTable_m + ground.swing_m) },
  ];
}

/** The boundary moves between its neighbours; what lies below stays where it is. */
function movedEnd(ground: Laid, i: number, depth_m: number): Laid {
  const beds = bedsOf(ground);
  const [above, below] = [beds[i], beds[i + 1]];
  if (!above || !below) return ground;
  const least_m = above.top_m + THINNEST_m;
  const most_m = below.last ? DEEPEST_m : below.bottom_m - THINNEST_m;
  const end_m = hundredths(Math.min(Math.max(onGrid(depth_m), least_m), Math.max(least_m, most_m)));
  const layers = ground.layers.with(i, { kind: above.kind, thickness_m: hundredths(end_m - above.top_m) });
  const thickness_m = hundredths(below.bottom_m - end_m);
  return withLayers(ground, below.last ? layers : layers.with(i + 1, { kind: below.kind, thickness_m }));
}

/** The ground with a grip moved to a depth. The water of the dry season keeps its fall when the water now is moved. */
export function movedTo(ground: Laid, grip: Grip, depth_m: number): Laid {
  if (typeof grip === 'number') return movedEnd(ground, grip, depth_m);
  const here_m = Math.min(60, Math.max(0, onGrid(depth_m)));
  if (grip === 'water') return { ...ground, waterTable_m: here_m };
  return { ...ground, swing_m: Math.min(20, Math.max(0, hundredths(here_m - ground.waterTable_m))) };
}
