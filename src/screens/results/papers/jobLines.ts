// What the job is, line by line: in the instructor's words where there are any, else as the lesson tells it. The first is the job itself.
import type { Lesson } from '$lessons';
import { say, type SlotData } from '../../../words';

export function jobLines(lesson: Lesson): string[] {
  const own = lesson.exercise?.briefing.filter((line) => line.trim() !== '') ?? [];
  if (own.length > 0) return own;
  const figures = Object.fromEntries(Object.entries(lesson.opening).filter(([, value]) => typeof value === 'number'));
  const data = { ...figures, depth_m: lesson.end.depth_m } as SlotData;
  return lesson.briefing.map((line) => say(line, data));
}
