// Reads a run file named on the command line. A file that is too large is not even opened.

import { readRunFile, RUN_FILE_LIMIT, tooLarge, type RunFile } from '$lessons';
import { Complaint } from './arguments';
import type { IO } from './io';

function textOf(io: IO, path: string): string {
  try {
    return io.read(path);
  } catch {
    throw new Complaint('cli.cannotRead', { file: path });
  }
}

export function readFile(io: IO, path: string): RunFile {
  const size = io.sizeOf(path);
  if (size === null) throw new Complaint('cli.cannotRead', { file: path });
  if (size > RUN_FILE_LIMIT) {
    const { problem, data } = tooLarge(size);
    throw new Complaint(problem, data);
  }
  const read = readRunFile(textOf(io, path));
  if (!read.ok) throw new Complaint(read.problem, read.data);
  return read.file;
}
