// What lies round a spot of the site, as a crew can pace it out: how far, in which direction, how high.
import type { Contamination, Ground, NeighbourWell, Place, Spot } from '$sim';

export const DIRECTIONS = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const;
export type Direction = (typeof DIRECTIONS)[number];

export const distance_m = (from: Place, to: Place): number =>
  Math.hypot(to.east_m - from.east_m, to.north_m - from.north_m);

/** One of eight directions, north up. */
export function directionTo(from: Place, to: Place): Direction {
  const turn = Math.atan2(to.east_m - from.east_m, to.north_m - from.north_m) / (Math.PI / 4);
  return DIRECTIONS[(Math.round(turn) + 8) % 8]!;
}

/** The nearest place of a straight line between two places. */
export function nearestOn(line: { from: Place; to: Place }, place: Place): Place {
  const east_m = line.to.east_m - line.from.east_m;
  const north_m = line.to.north_m - line.from.north_m;
  const length2_m2 = east_m * east_m + north_m * north_m;
  const along = (place.east_m - line.from.east_m) * east_m + (place.north_m - line.from.north_m) * north_m;
  const share = length2_m2 > 0 ? Math.min(1, Math.max(0, along / length2_m2)) : 0;
  return { east_m: line.from.east_m + share * east_m, north_m: line.from.north_m + share * north_m };
}

export interface Near {
  readonly distance_m: number;
  readonly direction: Direction;
}

const near = (from: Place, to: Place): Near => ({ distance_m: distance_m(from, to), direction: directionTo(from, to) });

export interface Around {
  readonly spot: Spot;
  /** Ground here above the highest remembered flood; negative: under it. */
  readonly aboveFlood_m: number;
  readonly sources: readonly (Near & {
    readonly source: Contamination['source'];
    readonly bottom_m: number;
    readonly place: Place;
  })[];
  readonly line: (Near & { readonly height_m: number }) | null;
}

/** All that can foul the well or hurt the crew, the nearest of each kind first. */
export function aroundSpot({ site, contamination }: Ground, spot: Spot): Around {
  const sources = contamination
    .map((one) => ({ source: one.source, bottom_m: one.bottom_m, place: one, ...near(spot, one) }))
    .sort((a, b) => a.distance_m - b.distance_m);
  const { overheadLine } = site;
  return {
    spot,
    aboveFlood_m: spot.rise_m - site.floodLine_m,
    sources,
    line: overheadLine && { ...near(spot, nearestOn(overheadLine, spot)), height_m: overheadLine.height_m },
  };
}

/** The neighbours' wells seen from the middle of the plan, the nearest first. */
export function neighboursOf({ site }: Ground): readonly (Near & { readonly well: NeighbourWell })[] {
  const middle = { east_m: site.width_m / 2, north_m: site.breadth_m / 2 };
  return site.wells.map((well) => ({ well, ...near(middle, well) })).sort((a, b) => a.distance_m - b.distance_m);
}
