// What a lesson may change about a drawn ground: the season, and the plan of the site.

import type { Ground } from '$sim';
import { PLAN_m, type SitePlan } from './siteSchema';

const centimetres = (depth_m: number): number => Math.round(depth_m * 100) / 100;

/** The ground at the end of the driest season: every level has fallen as far as the table does, what that empties is dry, and neighbours find their dry levels. */
export function dryGround(ground: Ground): Ground {
  const fall_m = ground.lowestWater_m - ground.waterTable_m;
  const fallen = ground.heads.map((head) => ({ ...head, head_m: centimetres(head.head_m + fall_m) }));
  const heads = fallen.filter(({ head_m, bottom_m }) => head_m < bottom_m);
  const wells = ground.site.wells.map((well) => ({ ...well, level_m: well.dryLevel_m }));
  return { ...ground, waterTable_m: ground.lowestWater_m, heads, site: { ...ground.site, wells } };
}

/** The ground with a plan laid out by hand. */
export function groundWithSite(ground: Ground, { spots, wells, sources, floodLine_m, overheadLine }: SitePlan): Ground {
  const line = overheadLine && {
    from: { east_m: 0, north_m: overheadLine.from_m },
    to: { east_m: PLAN_m.width, north_m: overheadLine.to_m },
    height_m: overheadLine.height_m,
  };
  return {
    ...ground,
    contamination: sources.map((one) => ({ ...one })),
    site: {
      width_m: PLAN_m.width,
      breadth_m: PLAN_m.breadth,
      spots: spots.map((one) => ({ ...one })),
      wells: wells.map((one) => ({ ...one })),
      floodLine_m,
      overheadLine: line,
    },
  };
}
