// The verb replay: plays a run file again and says whether it comes out the same.

import { format, replayFile } from '$lessons';
import { readArguments } from './arguments';
import { EXIT_DONE, EXIT_NOT_REPRODUCED, type IO } from './io';
import { readFile } from './readFile';

export function replayVerb(words: readonly string[], io: IO): number {
  const { file } = readArguments(words, { verb: 'replay', needed: [], optional: [], file: true });
  const { reproduced, hash, score, problem } = replayFile(readFile(io, file));
  io.out(JSON.stringify({ reproduced, hash, score }));
  if (reproduced) return EXIT_DONE;
  io.err(
    problem === null
      ? format('cli.notReproduced')
      : `${format('cli.notReproduced')} ${format(problem.problem, problem.data)}`,
  );
  return EXIT_NOT_REPRODUCED;
}
