// The verb trace: the series of a run, played again from its file.

import { format, replayFile } from '$lessons';
import { SIZE_CLASSES, TRACE_COLUMNS, type Trace } from '$sim';
import { readArguments } from './arguments';
import { EXIT_DONE, EXIT_NOT_REPRODUCED, type IO } from './io';
import { readFile } from './readFile';

function seriesOf(trace: Trace): Record<string, number[]> {
  const series: Record<string, number[]> = {};
  for (const name of TRACE_COLUMNS) series[name] = Array.from(trace.columns[name].subarray(0, trace.length));
  SIZE_CLASSES.forEach(({ id }, k) => {
    series[`mouth_${id}_frac`] = Array.from(trace.mouth_frac[k]!.subarray(0, trace.length));
  });
  return series;
}

export function traceVerb(words: readonly string[], io: IO): number {
  const given = readArguments(words, { verb: 'trace', needed: [], optional: [], file: true });
  const file = readFile(io, given.file);
  const { reproduced, run, problem } = replayFile(file);
  const about = { lesson: file.lesson, seed: file.seed, ticks: file.ticks, reproduced };
  io.out(JSON.stringify({ ...about, series: run === null ? {} : seriesOf(run.record.trace) }));
  if (reproduced) return EXIT_DONE;
  io.err(
    problem === null
      ? format('cli.notReproduced')
      : `${format('cli.notReproduced')} ${format(problem.problem, problem.data)}`,
  );
  return EXIT_NOT_REPRODUCED;
}
