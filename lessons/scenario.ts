// What a lesson and a seed make together: the ground of that seed, the kit, the opening.

import { buildGround, DEFAULT_KIT, ground as groundOf, type Ground, type Kit, type Scenario } from '$sim';
import { faultsOf, groundWithFaults } from './faults';
import type { Lesson } from './schema';
import { dryGround, groundWithSite } from './surroundings';

function drawnGround(lesson: Lesson, seed: number): Ground {
  if (lesson.ground.by === 'setting') return groundOf(lesson.ground.setting, seed);
  const { recipes } = lesson.ground;
  return buildGround({ ...recipes[seed % recipes.length]!, name: lesson.id }, seed);
}

function groundFor(lesson: Lesson, seed: number): Ground {
  const drawn = drawnGround(lesson, seed);
  const sited = lesson.site ? groundWithSite(drawn, lesson.site) : drawn;
  return lesson.season === 'dry' ? dryGround(sited) : sited;
}

/** The number that the ground is drawn by: the run's own, or the one that all share. */
const groundSeed = ({ ground }: Lesson, seed: number): number =>
  ground.by === 'recipe' && ground.seed !== undefined ? ground.seed : seed;

/** Spread of the seeds of one lesson's grounds: a large odd number, so that neighbours in the list of seeds do not meet. */
const SEED_STEP = 0x9e3779b1;

/** The ground of each hole from the same recipe; the first has the seed itself. */
function groundsFor(lesson: Lesson, seed: number, holes: number): Ground[] {
  const grounds: Ground[] = [];
  for (let n = 0; n < holes; n++) grounds.push(groundFor(lesson, (seed + Math.imul(n, SEED_STEP)) >>> 0));
  return grounds;
}

/** The chambers of the pit, where the lesson has its own. */
function chambersOf({ pit }: Lesson): Partial<Pick<Kit, 'settling' | 'suction'>> {
  if (!pit) return {};
  const { settling_m2, suction_m2, depth_m } = pit;
  return { settling: { area_m2: settling_m2, depth_m }, suction: { area_m2: suction_m2, depth_m } };
}

/**
 * Practice allows going back; a pass does not. `noise`: another course of chance on the same ground, for judging a ground; no file holds one.
 * Throws when the lesson names a part of the kit that is not there.
 */
export function scenarioOf(lesson: Lesson, seed: number, practice = true, noise?: number): Scenario {
  const kit: Kit = { ...DEFAULT_KIT, ...chambersOf(lesson) };
  for (const [name, value] of Object.entries(lesson.kit)) {
    if (typeof kit[name as keyof Kit] !== 'number') throw new RangeError(`The kit has no number "${name}".`);
    (kit as unknown as Record<string, number>)[name] = value;
  }
  const ofGround = groundSeed(lesson, seed);
  const grounds = groundsFor(lesson, ofGround, lesson.holes ?? 1);
  grounds[0] = groundWithFaults(lesson, ofGround, grounds[0]!);
  const faults = faultsOf(lesson, seed);
  return {
    id: lesson.id,
    version: lesson.version,
    seed,
    ...(noise === undefined ? {} : { noise }),
    practice,
    ground: grounds[0]!,
    ...(grounds.length > 1 ? { grounds } : {}),
    ...(lesson.weather ? { weather: lesson.weather } : {}),
    ...(lesson.day ? { day: lesson.day } : {}),
    kit,
    ...(lesson.well ? { well: lesson.well } : {}),
    ...(lesson.well && lesson.end.at === 'stopped' ? { endsAtStop: true } : {}),
    ...(lesson.prologue ? { relieves: true } : {}),
    ...(lesson.leaves ? { leavesFrom: lesson.leaves.from } : {}),
    opening: { ...lesson.opening },
    ...(faults.length > 0 ? { faults } : {}),
    ...(lesson.live ? { live: true } : {}),
  };
}
