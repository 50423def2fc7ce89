// The plan of the site: where a hole could go, the neighbours' wells and their levels, what could foul the water.
import type { Stream } from '../numeric/stream';
import type { Contamination, NeighbourWell, Place, Site, Spot } from './ground';
import type { Range } from './surroundings';

/** Hamlets of the Marrow Plain, an invented place. */
const HAMLETS = ['Reedbank', 'Low Ferry', 'Old Kiln', 'Three Carts', 'Salt Gate', 'Stonefall'] as const;
const SPOT_NAMES = ['A', 'B', 'C', 'D'] as const;

/** Size of the plan, m, and how far off the neighbours' wells lie. All of this file is ASSUMED. */
const WIDTH_m = 80;
const BREADTH_m = 60;
const NEAREST_WELL_m = 150;
const FARTHEST_WELL_m = 900;
/** Ground and answers differ a little from well to well. */
const LEVEL_SCATTER_m = 0.3;
const LINE_frac = 0.4;

const within = (stream: Stream, least: number, most: number): number => least + (most - least) * stream.uniform();
/** Adding 0 turns -0, which JSON cannot hold, into 0. */
const decimetres = (length_m: number): number => Math.round(length_m * 10) / 10 + 0;

const placeOnPlan = (stream: Stream): Place => ({
  east_m: decimetres(within(stream, 5, WIDTH_m - 5)),
  north_m: decimetres(within(stream, 5, BREADTH_m - 5)),
});

/** One spot in each quarter of the plan, so that they differ in what lies near. */
function drawSpots(stream: Stream): Spot[] {
  const spots = SPOT_NAMES.map((id, i) => ({
    id,
    east_m: decimetres(within(stream, 5, WIDTH_m / 2 - 5) + (i % 2) * (WIDTH_m / 2)),
    north_m: decimetres(within(stream, 5, BREADTH_m / 2 - 5) + Math.floor(i / 2) * (BREADTH_m / 2)),
    rise_m: decimetres(within(stream, 0, 1.5)),
  }));
  const lowest_m = Math.min(...spots.map((spot) => spot.rise_m));
  for (const spot of spots) spot.rise_m = decimetres(spot.rise_m - lowest_m);
  return spots;
}

/** Three neighbours' wells, each at a hamlet of its own, in any of eight directions. */
function drawWells(stream: Stream, waterTable_m: number, lowestWater_m: number): NeighbourWell[] {
  const left = [...HAMLETS];
  const wells: NeighbourWell[] = [];
  for (let i = 0; i < 3; i++) {
    const [hamlet] = left.splice(Math.floor(stream.uniform() * left.length), 1);
    const away_m = within(stream, NEAREST_WELL_m, FARTHEST_WELL_m);
    const aside_m = within(stream, -away_m, away_m);
    const turn = Math.floor(stream.uniform() * 4);
    const sign = turn < 2 ? 1 : -1;
    const east = turn % 2 === 0 ? sign * away_m : aside_m;
    const north = turn % 2 === 0 ? aside_m : sign * away_m;
    const scatter_m = within(stream, -LEVEL_SCATTER_m, LEVEL_SCATTER_m);
    const level_m = decimetres(Math.max(0.2, waterTable_m + scatter_m));
    const dryLevel_m = decimetres(Math.max(level_m, lowestWater_m + scatter_m));
    wells.push({
      hamlet,
      east_m: Math.round(WIDTH_m / 2 + east) + 0,
      north_m: Math.round(BREADTH_m / 2 + north) + 0,
      depth_m: Math.round(dryLevel_m + within(stream, 2, 10)),
      level_m,
      dryLevel_m,
    });
  }
  return wells;
}

/** A latrine always, a pen and a refuse pit by chance. */
function drawContamination(stream: Stream): Contamination[] {
  const list: Contamination[] = [
    { source: 'latrine', ...placeOnPlan(stream), bottom_m: decimetres(within(stream, 1.5, 3.5)) },
  ];
  if (stream.uniform() < 0.6) list.push({ source: 'animalPen', ...placeOnPlan(stream), bottom_m: 0 });
  if (stream.uniform() < 0.3)
    list.push({ source: 'refusePit', ...placeOnPlan(stream), bottom_m: decimetres(within(stream, 0.8, 2)) });
  return list;
}

/** The whole plan. */
export function drawSite(
  stream: Stream,
  waterTable_m: number,
  lowestWater_m: number,
  floodLine_m: Range,
): { site: Site; contamination: Contamination[] } {
  const spots = drawSpots(stream);
  const wells = drawWells(stream, waterTable_m, lowestWater_m);
  const contamination = drawContamination(stream);
  const flood_m = decimetres(within(stream, floodLine_m[0], floodLine_m[1]));
  const hasLine = stream.uniform() < LINE_frac;
  const north_m = decimetres(within(stream, 0, BREADTH_m));
  const slant_m = decimetres(within(stream, 0, BREADTH_m));
  const height_m = decimetres(within(stream, 5, 8));
  const overheadLine = hasLine
    ? { from: { east_m: 0, north_m }, to: { east_m: WIDTH_m, north_m: slant_m }, height_m }
    : null;
  return {
    site: { width_m: WIDTH_m, breadth_m: BREADTH_m, spots, wells, floodLine_m: flood_m, overheadLine },
    contamination,
  };
}
