// Other grounds that the same crew could have stood on: all that it has met so far is the same, what lies deeper is drawn anew from the lesson.

import { createStream, groundOf, type Ground, type Head, type Layer, type Run, type Scenario } from '$sim';
import { scenarioOf } from '../scenario';
import type { Lesson } from '../schema';

/** Seeds that are tried for one ground before it is given up. */
const TRIES = 40;
/** Water of a confined layer stays at least this far below ground, m: as where grounds are made. */
const LEAST_HEAD_m = 0.3;

const centimetres = (depth_m: number): number => Math.round(depth_m * 100) / 100;
const indexAt = (layers: readonly Layer[], depth_m: number): number =>
  layers.findIndex(({ bottom_m }) => depth_m < bottom_m);
const around = (heads: readonly Head[], depth_m: number): Head | undefined =>
  heads.find(({ top_m, bottom_m }) => depth_m >= top_m && depth_m < bottom_m);

/** The layers met, the last of them as thick as in the other ground, then those of the other ground; null where the two do not join. */
function joinedLayers(met: Ground, other: Ground, edge_m: number): Layer[] | null {
  const last = indexAt(met.layers, edge_m);
  const next = indexAt(other.layers, edge_m);
  if (last < 0 || next < 0 || met.layers[last]!.kind !== other.layers[next]!.kind) return null;
  const { bottom_m } = other.layers[next]!;
  return [...met.layers.slice(0, last), { ...met.layers[last]!, bottom_m }, ...other.layers.slice(next + 1)];
}

/**
 * Heads met stay. In tight ground the pressure already leans towards the next water below, so the head of that water is the one on the same
 * line; null where no such water can be.
 */
function joinedHeads(met: Ground, other: Ground, edge_m: number): Head[] | null {
  const inside = around(met.heads, edge_m);
  const deeper = other.heads.filter(({ top_m }) => top_m > edge_m);
  const above = met.heads.filter(({ top_m }) => top_m <= edge_m);
  if (inside) {
    const otherInside = around(other.heads, edge_m);
    if (!otherInside) return null;
    const kept = above.map((head) => (head === inside ? { ...head, bottom_m: otherInside.bottom_m } : head));
    return [...kept, ...deeper];
  }
  if (around(other.heads, edge_m)) return null;
  const over = above.at(-1);
  const leans = over !== undefined && over.bottom_m >= met.waterTable_m;
  const [first, ...rest] = deeper;
  if (!leans || !first) return leans && met.heads.length > above.length ? null : [...above, ...deeper];
  const below = met.heads.find(({ top_m }) => top_m > edge_m);
  const slope = below ? (below.head_m - over.head_m) / (below.top_m - over.bottom_m) : 0;
  const head_m = over.head_m + slope * (first.top_m - over.bottom_m);
  if (head_m < LEAST_HEAD_m || head_m > first.top_m) return null;
  return [...above, { ...first, head_m }, ...rest];
}

/** What was met of one ground, on what lies deeper in another; null where the two do not join. */
export function joinedGround(met: Ground, other: Ground, edge_m: number): Ground | null {
  const layers = joinedLayers(met, other, edge_m);
  const heads = layers && joinedHeads(met, other, edge_m);
  if (!layers || !heads) return null;
  const salinity = [
    ...met.salinity.filter(({ from_m }) => from_m <= edge_m),
    ...other.salinity.filter(({ from_m }) => from_m > edge_m),
  ];
  return { ...met, depth_m: layers.at(-1)!.bottom_m, layers, heads, salinity };
}

/** Where all learners share one ground, the others that it could have been are those of other numbers. */
function everyGround(lesson: Lesson): Lesson {
  if (lesson.ground.by !== 'recipe' || lesson.ground.seed === undefined) return lesson;
  return { ...lesson, ground: { by: 'recipe', recipes: lesson.ground.recipes } };
}

function withGround(scenario: Scenario, hole: number, ground: Ground): Scenario {
  const first = hole === 1 ? { ground } : {};
  if (!scenario.grounds) return { ...scenario, ...first };
  return { ...scenario, ...first, grounds: scenario.grounds.map((one, i) => (i === hole - 1 ? ground : one)) };
}

/**
 * The scenario of a run with another ground below all that was met, the n-th of as many as are wanted; always the same for the same run.
 * Null where too few of the lesson's grounds look like this one so far.
 */
export function elsewhere(lesson: Lesson, run: Run, n: number): Scenario | null {
  const { scenario, state } = run;
  const met = groundOf(run);
  // The cell that the bit stands in reaches a little deeper than the bit.
  const edge_m = centimetres(state.hole.depth_m + state.hole.dz_m);
  const seeds = createStream(`elsewhere/${scenario.id}/${scenario.seed}/${n}`);
  for (let tried = 0; tried < TRIES; tried++) {
    const seed = Math.floor(seeds.uniform() * 4294967295);
    const joined = joinedGround(met, scenarioOf(everyGround(lesson), seed).ground, edge_m);
    if (joined) return withGround(scenario, state.holeNumber, joined);
  }
  return null;
}
