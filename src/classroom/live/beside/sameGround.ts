// Which of the runs on this device can be laid beside each other: those of one lesson or exercise on the same ground.
import { exerciseHash, lessonOf, readRunFile, type Lesson, type RunFile } from '$lessons';
import { hashOf } from '$sim';
import type { SavedRun } from '../../../app/records';

/** A run that can be played again here. */
export interface Candidate {
  readonly saved: SavedRun;
  readonly file: RunFile;
  readonly lesson: Lesson;
  /** The same for runs on the same ground and with the same job. */
  readonly ground: string;
}

/** What has to be the same: the job as it was set, and the ground itself, whatever number it was drawn by. */
function groundOf({ lesson, lessonVersion, asked, exercise, ground }: RunFile): string {
  const job = exercise ? exerciseHash(exercise) : `${lesson} ${lessonVersion}`;
  return `${job} ${JSON.stringify(asked ?? null)} ${hashOf(ground)}`;
}

/** The runs that can be played again, in the order given. Runs of another version are left out. Stops after each, so that a page stays alive. */
export function* candidatesOf(runs: readonly SavedRun[]): Generator<null, Candidate[]> {
  const found: Candidate[] = [];
  for (const saved of runs) {
    const read = readRunFile(saved.file);
    if (read.ok && !read.otherVersion)
      found.push({ saved, file: read.file, lesson: lessonOf(read.file)!, ground: groundOf(read.file) });
    yield null;
  }
  return found;
}

/** The runs that can lie beside one: the others on the same ground. */
export const besides = (one: Candidate, all: readonly Candidate[]): Candidate[] =>
  all.filter(({ saved, ground }) => ground === one.ground && saved.id !== one.saved.id);

/** A careful crew on the same ground shows what the ground is like: only where it may be known. */
export const carefulMay = ({ saved }: Candidate): boolean => saved.finished;
