// What a lesson and a seed make together: the ground of that seed, the kit, the opening.

import { buildGround, DEFAULT_KIT, ground as groundOf, type Ground, type Kit, type Scenario } from '$sim';
import type { Lesson } from './schema';

function groundFor(lesson: Lesson, seed: number): Ground {
  if (lesson.ground.by === 'setting') return groundOf(lesson.ground.setting, seed);
  const { recipes } = lesson.ground;
  return buildGround({ ...recipes[seed % recipes.length]!, name: lesson.id }, seed);
}

/** Practice allows going back; a pass does not. Throws when the lesson names a part of the kit that is not there. */
export function scenarioOf(lesson: Lesson, seed: number, practice = true): Scenario {
  const kit: Kit = { ...DEFAULT_KIT };
  for (const [name, value] of Object.entries(lesson.kit)) {
    if (typeof kit[name as keyof Kit] !== 'number') throw new RangeError(`The kit has no number "${name}".`);
    (kit as unknown as Record<string, number>)[name] = value;
  }
  return {
    id: lesson.id,
    version: lesson.version,
    seed,
    practice,
    ground: groundFor(lesson, seed),
    kit,
    opening: { ...lesson.opening },
  };
}
