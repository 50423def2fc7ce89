// Takes an exercise from outside onto this device: from a file, a link, a text, a picture. Whatever is wrong comes back as a sentence's key.
import { EXERCISE_LIMIT, exerciseHash, exerciseTooLarge, readExercise, type ExerciseProblem } from '$lessons';
import { device } from '../app/device.svelte';
import type { KeptExercise } from '../app/records';
import type { KeyedMessage, MessageKey } from '../words';

/** What became of it: new here, here already, in place of an older edition, or not taken since a newer or a changed one of one's own is here. */
export type News = 'new' | 'same' | 'newer' | 'older' | 'ownChanged';

export type TakenIn =
  | {
      readonly ok: true;
      readonly id: string;
      readonly title: string;
      readonly news: News;
      readonly otherVersion: boolean;
    }
  | { readonly ok: false; readonly problem: KeyedMessage };

const refused = ({ problem, data }: ExerciseProblem): TakenIn => ({ ok: false, problem: { key: problem, data } });

function newsOf(here: KeptExercise | undefined, there: KeptExercise['exercise']): News {
  if (!here) return 'new';
  const { exercise, own } = here;
  const same = exercise.edition === there.edition && exerciseHash(exercise) === exerciseHash(there);
  if (same) return 'same';
  if (there.edition > exercise.edition) return 'newer';
  if (own) return 'ownChanged';
  return there.edition < exercise.edition ? 'older' : 'newer';
}

/** The text of a file, a link, or the letters. An exercise of one's own is never written over by an older one. */
export async function takeInText(text: string): Promise<TakenIn> {
  const read = readExercise(text);
  if (!read.ok) return refused(read);
  const { exercise, classCode, otherVersion } = read;
  const here = device.exercises.find(({ id }) => id === exercise.id);
  const news = newsOf(here, exercise);
  const code = classCode ?? here?.classCode ?? null;
  const stays = here !== undefined && (news === 'older' || news === 'ownChanged' || news === 'same');
  const kept: KeptExercise = stays
    ? { ...here, classCode: code }
    : {
        id: exercise.id,
        exercise,
        saved_ms: Date.now(),
        own: here?.own ?? false,
        classCode: code,
        // Results of the editions given out before can still be judged.
        ...(here ? { earlier: [...(here.earlier ?? []), ...(here.given === undefined ? [] : [here.exercise])] } : {}),
      };
  await device.putExercise(kept);
  return { ok: true, id: exercise.id, title: kept.exercise.title, news, otherVersion };
}

/** Refuses a file by its size before it is read. */
export async function takeInFile(file: Blob): Promise<TakenIn> {
  const problem = exerciseTooLarge(file.size);
  if (problem) return refused(problem);
  try {
    return await takeInText(await file.text());
  } catch {
    return { ok: false, problem: { key: 'file.unreadable' satisfies MessageKey } };
  }
}

export { EXERCISE_LIMIT };
