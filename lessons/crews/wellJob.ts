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

/** Far enough from dirt (row Q-01), and far too near, m. This and what follows are the crews' rules of thumb, ASSUMED. */
const FAR_m = 30;
const NEAR_m = 10;
/** A line is kept so far away, and is over one's head so near, m. */
const CLEAR_m = 10;
const UNDER_m = 5;
/** A spot so far below the flood is lost in the first wet season, m. */
const DROWNED_m = 0.5;

/** How good a spot is in one respect: 1 from `good_m` on, 0 and less from `bad_m` on. */
const worth = (value_m: number, good_m: number, bad_m: number): number =>
  Math.min(1, (value_m - bad_m) / (good_m - bad_m));

/** The spot whose worst side is the least bad: dirt, flood, overhead line. */
export function bestSpot({ site, contamination }: WellJob): string {
  let best = '';
  let most = -Infinity;
  for (const spot of site.spots) {
    let dirt_m = Infinity;
    for (const source of contamination) dirt_m = Math.min(dirt_m, away_m(spot, source));
    const line_m = site.overheadLine === null ? Infinity : toLine_m(spot, site.overheadLine);
    const own = Math.min(
      worth(dirt_m, FAR_m, NEAR_m),
      worth(spot.rise_m, site.floodLine_m, site.floodLine_m - DROWNED_m),
      worth(line_m, CLEAR_m, UNDER_m),
    );
    if (own > most) {
      most = own;
      best = spot.id;
    }
  }
  return best;
}
