// Opens a run from outside: a file, a pasted text, a dropped file. Whatever is wrong comes back as a sentence's key,
// and nothing of the present run is touched.
import { grade, lessonOf, readRunFile, replaying, RUN_FILE_LIMIT, scoreOf, tooLarge, type RunFile } from '$lessons';
import type { Run } from '$sim';
import { newId } from './chance';
import { inParts, LOOK_s } from './parts';
import { device } from './device.svelte';
import { hasSeen } from './progress';
import type { SavedRun } from './records';
import type { KeyedMessage } from '../words';

export type Opened =
  { readonly ok: true; readonly saved: SavedRun } | { readonly ok: false; readonly problem: KeyedMessage };

/** Refuses a file by its size before it is read: 100 MB would stop a phone. */
export async function checkFile(file: Blob): Promise<Opened> {
  if (file.size > RUN_FILE_LIMIT) return refused(tooLarge(file.size));
  let text: string;
  try {
    text = await file.text();
  } catch {
    return { ok: false, problem: { key: 'file.unreadable' } };
  }
  return openText(text);
}

/** Checks the text, plays the run again, and puts it in the list. A score is never taken from the file. */
export async function openText(text: string): Promise<Opened> {
  const read = readRunFile(text);
  if (!read.ok) return refused(read);
  const replayed = await inParts(replaying(read.file, lessonOf(read.file), LOOK_s));
  if (!replayed.reproduced) return refused(replayed.problem!);
  const saved = savedRun(read.file, replayed.run!);
  await device.putRun(saved);
  return { ok: true, saved };
}

function refused(problem: { problem: string; data: KeyedMessage['data'] }): Opened {
  return { ok: false, problem: { key: problem.problem, data: problem.data } };
}

function savedRun(file: RunFile, run: Run): SavedRun {
  const lesson = lessonOf(file)!;
  const score = file.finished ? scoreOf(run, lesson) : null;
  const owner = device.learners.find((one) => one.id === file.who) ?? null;
  const knownGround = !file.finished && hasSeen(owner, file.lesson, file.seed);
  return {
    id: newId(),
    who: file.who,
    lesson: file.lesson,
    ...(file.exercise ? { title: file.exercise.title } : {}),
    name: file.name || (file.exercise?.title ?? file.lesson),
    started_ms: Date.now(),
    saved_ms: Date.now(),
    depth_m: run.state.hole.depth_m,
    time_s: file.ticks,
    score,
    passed: score !== null && grade(run, lesson).passed,
    ...(knownGround ? { knownGround } : {}),
    finished: file.finished,
    ...(file.sitting ? { sitting: file.sitting } : {}),
    asked: file.answers !== undefined,
    file: JSON.stringify(file),
  };
}
