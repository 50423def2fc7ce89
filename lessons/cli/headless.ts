// The headless command without the machine round it: arguments in, exit code out.

import { Complaint } from './arguments';
import { groundVerb } from './ground';
import { EXIT_BAD_INPUT, type IO } from './io';
import { lessonsVerb } from './lessons';
import { lintVerb } from './lint';
import { playVerb } from './play';
import { replayVerb } from './replay';
import { traceVerb } from './trace';

const VERBS: Readonly<Record<string, (words: readonly string[], io: IO) => number>> = {
  ground: groundVerb,
  lessons: lessonsVerb,
  lint: lintVerb,
  play: playVerb,
  replay: replayVerb,
  trace: traceVerb,
};

export function headless(args: readonly string[], io: IO): number {
  const [verb, ...words] = args;
  try {
    if (verb === undefined) throw new Complaint('cli.usage');
    const run = Object.hasOwn(VERBS, verb) ? VERBS[verb] : undefined;
    if (run === undefined) throw new Complaint('cli.unknownVerb', { verb });
    return run(words, io);
  } catch (error) {
    if (!(error instanceof Complaint)) throw error;
    io.err(error.message);
    return EXIT_BAD_INPUT;
  }
}
