// The verb ground: the profile of a setting and a seed.

import { ground, SETTINGS } from '$sim';
import { Complaint, readArguments, readSeed } from './arguments';
import { EXIT_DONE, type IO } from './io';

export function groundVerb(words: readonly string[], io: IO): number {
  const { options } = readArguments(words, { verb: 'ground', needed: ['setting', 'seed'], optional: [], file: false });
  const seed = readSeed(options.seed!);
  const setting = SETTINGS.find((known) => known === options.setting);
  if (setting === undefined)
    throw new Complaint('cli.unknownSetting', { setting: options.setting!, settings: SETTINGS.join(', ') });
  const { layers, ...rest } = ground(setting, seed);
  const described = layers.map(({ kind, top_m, bottom_m, ...parameters }) => ({ kind, top_m, bottom_m, parameters }));
  io.out(JSON.stringify({ ...rest, layers: described }));
  return EXIT_DONE;
}
