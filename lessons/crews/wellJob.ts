// What a crew is told before it makes a well: the site plan, what the neighbours say, and which spot it takes.

import type { Contamination, Site } from '$sim';

export interface WellJob {
  readonly site: Site;
  readonly contamination: readonly Contamination[];
  /** The job ends with the hole: nothing is planned or glued. */
  readonly holeOnly?: true;
  /** The seal is left to whoever comes after. */
  readonly seal?: 'left';
}

/** The deepest that water fell in any neighbour's well, m. */
export const lowestTold_m = ({ site }: WellJob): number =>
  site.wells.reduce((lowest_m, { dryLevel_m }) => Math.max(lowest_m, dryLevel_m), 0);

interface Place {
  readonly east_m: number;
  readonly north_m: number;
}

function away_m(a: Place, b: Place): number {
  const east_m = a.east_m - b.east_m;
  const north_m = a.north_m - b.north_m;
  return Math.sqrt(east_m * east_m + north_m * north_m);
}

/** Metres from a spot to the overhead line, paced off along it. */
function toLine_m(spot: Place, { from, to }: NonNullable<Site['overheadLine']>): number {
  const PACES = 40;
  let nearest_m = Infinity;
  for (let i = 0; i <= PACES; i++) {
    const east_m = from.east_m + ((to.east_m - from.east_m) * i) / PACES;
    const north_m = from.north_m + ((to.north_m - from.north_m) * i) / PACES;
    nearest_m = Math.min(nearest_m, away_m(spot, { east_m, north_m }));
  }
  return nearest_m;
}

/** Farther than this from dirt is far enough, m; a line is kept so far away, m. */
const FAR_m = 30;
const LINE_m = 10;

/** The spot farthest from dirt; one under the flood or under a line only where no other is left. */
export function bestSpot({ site, contamination }: WellJob): string {
  let best = '';
  let most = -Infinity;
  for (const spot of site.spots) {
    let dirt_m = FAR_m;
    for (const source of contamination) dirt_m = Math.min(dirt_m, away_m(spot, source));
    const wet = spot.rise_m < site.floodLine_m;
    const wired = site.overheadLine !== null && toLine_m(spot, site.overheadLine) < LINE_m;
    const worth = dirt_m - (wet ? FAR_m / 2 : 0) - (wired ? FAR_m / 2 : 0);
    if (worth > most) {
      most = worth;
      best = spot.id;
    }
  }
  return best;
}
