// The options depth and setting of the verb play: only a practice takes them.

import { askedOf, DEPTH_LIMITS_m, practiceFor, type Asked, type Lesson } from '$lessons';
import { SETTINGS } from '$sim';
import { Complaint, type Given } from './arguments';

function readDepth(text: string): number {
  const depth_m = /^\d{1,3}(\.\d{1,2})?$/.test(text) ? Number(text) : -1;
  const { least, most } = DEPTH_LIMITS_m;
  if (depth_m < least || depth_m > most)
    throw new Complaint('cli.badDepth', { depth: text, least_m: least, most_m: most });
  return depth_m;
}

function readSetting(text: string): Asked['setting'] {
  const setting = SETTINGS.find((known) => known === text);
  if (setting === undefined)
    throw new Complaint('cli.unknownSetting', { setting: text, settings: SETTINGS.join(', ') });
  return setting;
}

/** The lesson as the options ask for it. */
export function asAsked(lesson: Lesson, options: Given['options']): Lesson {
  const usual = askedOf(lesson);
  if (usual === null) {
    for (const name of ['depth', 'setting'])
      if (options[name] !== undefined)
        throw new Complaint('cli.practiceOnly', { lesson: lesson.id, option: `--${name}` });
    return lesson;
  }
  const depth_m = options.depth === undefined ? usual.depth_m : readDepth(options.depth);
  const setting = options.setting === undefined ? usual.setting : readSetting(options.setting);
  return practiceFor(lesson.id, { depth_m, setting })!;
}
