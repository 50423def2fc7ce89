// What a lesson and a seed make together: the ground of that seed, the kit, the opening.

import { buildGround, DEFAULT_KIT, ground as groundOf, type Ground, type Kit, type Scenario } from '$sim';
import { faultsOf, groundWithFaults } from './faults';
import type { Lesson } from './schema';

function groundFor(lesson: Lesson, seed: number): Ground {
  if (lesson.ground.by === 'setting') return groundOf(lesson.ground.setting, seed);
  const { recipes } = lesson.ground;
  return buildGround({ ...recipes[seed % recipes.length]!, name: lesson.id }, seed);
}

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

/** Practice allows going back; a pass does not. Throws when the lesson names a part of the kit that is not there. */
export function scenarioOf(lesson: Lesson, seed: number, practice = true): Scenario {
  const kit: Kit = { ...DEFAULT_KIT, ...chambersOf(lesson) };
  for (const [name, value] of Object.entries(lesson.kit)) {
    if (typeof kit[name as keyof Kit] !== 'number') throw new RangeError(`The kit has no number "${name}".`);
    (kit as unknown as Record<string, number>)[name] = value;
  }
  const grounds = groundsFor(lesson, seed, lesson.holes ?? 1);
  grounds[0] = groundWithFaults(lesson, seed, grounds[0]!);
  const faults = faultsOf(lesson, seed);
  return {
    id: lesson.id,
    version: lesson.version,
    seed,
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
  };
}
