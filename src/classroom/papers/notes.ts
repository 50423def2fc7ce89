// What a learner is to note down in a lesson, by what there is to see and to do in it.
import type { Lesson } from '$lessons';

export type Note = 'rods' | 'returns' | 'sample' | 'pit' | 'fluid' | 'trouble' | 'plan' | 'test';

/** The learner comes when the hole is drilled: nothing of the drilling is left to note. */
const drilledBefore = ({ prologue }: Lesson): boolean => prologue !== undefined && !('depth_m' in prologue.until);

export function notesFor(lesson: Lesson): Note[] {
  const hands = new Set<string>(lesson.hands);
  const drills = !drilledBefore(lesson);
  const well = lesson.well !== undefined && lesson.end.at !== 'stopped';
  const notes: readonly (readonly [Note, boolean])[] = [
    ['rods', drills],
    ['returns', drills],
    ['sample', drills && hands.has('tray')],
    ['pit', drills && hands.has('pit')],
    ['fluid', drills && hands.has('fluid')],
    ['plan', well],
    ['test', well],
    ['trouble', true],
  ];
  return notes.filter(([, there]) => there).map(([note]) => note);
}
