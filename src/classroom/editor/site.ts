// A plan of the site laid out by hand, and what can be done to it. Places are from the south-west corner of the plan.
import type { SOURCES } from '$lessons';
import { HAMLETS, PLAN_m, SPOT_IDS, type SitePlan } from '$lessons';
import type { Contamination, Ground, Place } from '$sim';

type Source = Contamination['source'];
export type Line = NonNullable<SitePlan['overheadLine']>;

/** Something that is placed by a tap on the plan. */
export interface Thing {
  readonly list: 'spots' | 'sources';
  readonly index: number;
}

const MOST_SOURCES = 6;
/** Wells lie round the middle of the plan, no farther than this, m. */
const MIDDLE: Place = { east_m: PLAN_m.width / 2, north_m: PLAN_m.breadth / 2 };
export const WELL_AWAY_m = { min: 20, max: 1900 } as const;

/** Half metres are what a crew can pace. */
const halves = (length_m: number): number => Math.round(length_m * 2) / 2 + 0;
const onPlan = ({ east_m, north_m }: Place): Place => ({
  east_m: Math.min(PLAN_m.width, Math.max(0, halves(east_m))),
  north_m: Math.min(PLAN_m.breadth, Math.max(0, halves(north_m))),
});

/** A plan drawn by a number, as a plan to lay out. */
export function siteFrom({ site, contamination }: Ground): SitePlan {
  const line = site.overheadLine;
  return {
    spots: site.spots.map((spot) => ({ ...spot })),
    wells: site.wells.map((well) => ({ ...well })),
    sources: contamination.map((one) => ({ ...one })),
    floodLine_m: site.floodLine_m,
    overheadLine: line && { from_m: line.from.north_m, to_m: line.to.north_m, height_m: line.height_m },
  } as SitePlan;
}

const isPlace = ({ east_m, north_m }: Place): boolean => Number.isFinite(east_m) && Number.isFinite(north_m);

/** The plan as it is being laid out, for the drawing: a thing whose figure is just being typed is not in it. */
export function drawnSite(plan: SitePlan): Pick<Ground, 'site' | 'contamination'> {
  const drawn = plan.overheadLine;
  const line = drawn && [drawn.from_m, drawn.to_m, drawn.height_m].every(Number.isFinite) ? drawn : null;
  return {
    contamination: plan.sources.filter(isPlace),
    site: {
      width_m: PLAN_m.width,
      breadth_m: PLAN_m.breadth,
      spots: plan.spots.filter((spot) => isPlace(spot) && Number.isFinite(spot.rise_m)),
      wells: plan.wells.filter(isPlace),
      floodLine_m: plan.floodLine_m,
      overheadLine: line && {
        from: { east_m: 0, north_m: line.from_m },
        to: { east_m: PLAN_m.width, north_m: line.to_m },
        height_m: line.height_m,
      },
    },
  };
}

export function moved(plan: SitePlan, { list, index }: Thing, place: Place): SitePlan {
  const to = onPlan(place);
  return list === 'spots'
    ? { ...plan, spots: plan.spots.with(index, { ...plan.spots[index]!, ...to }) }
    : { ...plan, sources: plan.sources.with(index, { ...plan.sources[index]!, ...to }) };
}

/** The thing nearest to a place, within reach. */
export function thingAt(plan: SitePlan, place: Place, reach_m: number): Thing | null {
  const all = (['spots', 'sources'] as const).flatMap((list) =>
    plan[list].map((one, index) => ({
      thing: { list, index },
      off_m: Math.hypot(one.east_m - place.east_m, one.north_m - place.north_m),
    })),
  );
  const near = all.filter(({ off_m }) => off_m <= reach_m).sort((a, b) => a.off_m - b.off_m);
  return near[0]?.thing ?? null;
}

/** The farthest from all that is there already, of a few places, so that what comes new can be seen. */
function freePlace(plan: SitePlan): Place {
  const taken = [...plan.spots, ...plan.sources];
  const tries = [10, 25, 40, 55, 70].flatMap((east_m) => [10, 30, 50].map((north_m) => ({ east_m, north_m })));
  const room = (place: Place): number =>
    Math.min(...taken.map((one) => Math.hypot(one.east_m - place.east_m, one.north_m - place.north_m)), 1000);
  return tries.reduce((best, one) => (room(one) > room(best) ? one : best));
}

export const freeSpot = (plan: SitePlan): SitePlan['spots'][number]['id'] | undefined =>
  SPOT_IDS.find((id) => plan.spots.every((spot) => spot.id !== id));
export const freeHamlet = (plan: SitePlan): SitePlan['wells'][number]['hamlet'] | undefined =>
  HAMLETS.find((hamlet) => plan.wells.every((well) => well.hamlet !== hamlet));
export const sourcesFull = (plan: SitePlan): boolean => plan.sources.length >= MOST_SOURCES;

export function addSpot(plan: SitePlan): SitePlan {
  const id = freeSpot(plan);
  if (!id) return plan;
  const spots = [...plan.spots, { id, ...freePlace(plan), rise_m: 0 }];
  return { ...plan, spots: spots.sort((a, b) => a.id.localeCompare(b.id)) };
}

/** How deep its floor usually lies, m. */
const FLOOR_m: Readonly<Record<Source, number>> = { latrine: 2.5, animalPen: 0, refusePit: 1.5 };

export const addSource = (plan: SitePlan, source: (typeof SOURCES)[number]): SitePlan =>
  sourcesFull(plan)
    ? plan
    : { ...plan, sources: [...plan.sources, { source, ...freePlace(plan), bottom_m: FLOOR_m[source] }] };

/** A neighbour's well to the east, its water where the others' is. */
export function addWell(plan: SitePlan): SitePlan {
  const hamlet = freeHamlet(plan);
  if (!hamlet) return plan;
  const { level_m, dryLevel_m, depth_m } = plan.wells[0] ?? { level_m: 3, dryLevel_m: 5, depth_m: 12 };
  const well = { hamlet, ...wellPlace(250, 'e'), depth_m, level_m, dryLevel_m };
  return { ...plan, wells: [...plan.wells, well] };
}

export const removed = (plan: SitePlan, list: 'spots' | 'sources' | 'wells', index: number): SitePlan => ({
  ...plan,
  [list]: plan[list].toSpliced(index, 1),
});

const TURNS = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const;
export type Direction = (typeof TURNS)[number];

/** A place so far from the middle of the plan, in one of eight directions, to the metre. */
export function wellPlace(distance_m: number, direction: Direction): Place {
  const angle = (TURNS.indexOf(direction) * Math.PI) / 4;
  return {
    east_m: Math.round(MIDDLE.east_m + distance_m * Math.sin(angle)) + 0,
    north_m: Math.round(MIDDLE.north_m + distance_m * Math.cos(angle)) + 0,
  };
}

/** How far a well lies from the middle, and in which of eight directions. */
export function wellFrom({ east_m, north_m }: Place): { distance_m: number; direction: Direction } {
  const [east, north] = [east_m - MIDDLE.east_m, north_m - MIDDLE.north_m];
  const turn = Math.round(Math.atan2(east, north) / (Math.PI / 4));
  return { distance_m: Math.round(Math.hypot(east, north)), direction: TURNS[(turn + 8) % 8]! };
}

/** A line across the middle, as high as such lines hang. */
export const NEW_LINE: Line = { from_m: 20, to_m: 40, height_m: 6 };
