// The form of a site plan laid out by hand: where a hole could go, the neighbours' wells, what fouls water. Places are from the south-west corner.

import * as v from 'valibot';

const Between = (min: number, max: number) => v.pipe(v.number(), v.finite(), v.minValue(min), v.maxValue(max));

/** Size of every plan, m: that of the plans which a seed draws. */
export const PLAN_m = { width: 80, breadth: 60 } as const;
/** Hamlets of the Marrow Plain, an invented place. */
export const HAMLETS = ['Reedbank', 'Low Ferry', 'Old Kiln', 'Three Carts', 'Salt Gate', 'Stonefall'] as const;
export const SOURCES = ['latrine', 'animalPen', 'refusePit'] as const;
export const SPOT_IDS = ['A', 'B', 'C', 'D'] as const;

const onPlan = { east_m: Between(0, PLAN_m.width), north_m: Between(0, PLAN_m.breadth) };

const Spot = v.strictObject({ id: v.picklist(SPOT_IDS), ...onPlan, rise_m: Between(0, 10) });
const Well = v.pipe(
  v.strictObject({
    hamlet: v.picklist(HAMLETS),
    east_m: Between(-2000, 2000),
    north_m: Between(-2000, 2000),
    depth_m: Between(1, 60),
    level_m: Between(0.2, 60),
    dryLevel_m: Between(0.2, 60),
  }),
  v.check(({ level_m, dryLevel_m }) => level_m <= dryLevel_m, 'water that falls in the dry season'),
);
const Source = v.strictObject({ source: v.picklist(SOURCES), ...onPlan, bottom_m: Between(0, 10) });

const differ =
  <T>(key: (one: T) => string) =>
  (list: T[]) =>
    new Set(list.map(key)).size === list.length;

export const SiteSchema = v.strictObject({
  spots: v.pipe(
    v.array(Spot),
    v.minLength(1),
    v.maxLength(SPOT_IDS.length),
    v.check(
      differ((spot) => spot.id),
      'each spot once',
    ),
  ),
  wells: v.pipe(
    v.array(Well),
    v.maxLength(HAMLETS.length),
    v.check(
      differ((well) => well.hamlet),
      'each hamlet once',
    ),
  ),
  sources: v.pipe(v.array(Source), v.maxLength(6)),
  /** Height of the highest remembered flood above the lowest spot; negative: below it. */
  floodLine_m: Between(-20, 10),
  overheadLine: v.nullable(
    v.strictObject({
      from_m: Between(0, PLAN_m.breadth),
      to_m: Between(0, PLAN_m.breadth),
      height_m: Between(3, 30),
    }),
  ),
});
export type SitePlan = v.InferOutput<typeof SiteSchema>;
