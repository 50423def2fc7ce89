// The course of a lesson with the trainer: what is done from which minute to which. The shares are our own, to be changed by whoever teaches.

export const LENGTHS_min = [30, 60, 90] as const;
export type Length_min = (typeof LENGTHS_min)[number];

export type CourseStep = 'begin' | 'seats' | 'work' | 'collect' | 'debrief' | 'reveal' | 'second' | 'change' | 'next';

/** Minutes of each step, in order; they sum to the length. */
const STEPS: Readonly<Record<Length_min, readonly (readonly [CourseStep, number])[]>> = {
  30: [
    ['begin', 5],
    ['seats', 3],
    ['work', 12],
    ['collect', 3],
    ['debrief', 5],
    ['next', 2],
  ],
  60: [
    ['begin', 8],
    ['seats', 4],
    ['work', 23],
    ['collect', 5],
    ['debrief', 9],
    ['reveal', 6],
    ['next', 5],
  ],
  90: [
    ['begin', 8],
    ['seats', 4],
    ['work', 22],
    ['collect', 4],
    ['debrief', 10],
    ['reveal', 6],
    ['second', 20],
    ['collect', 4],
    ['change', 7],
    ['next', 5],
  ],
};

export interface CourseRow {
  readonly step: CourseStep;
  readonly from_min: number;
  readonly to_min: number;
}

export function courseOf(length: Length_min): CourseRow[] {
  let at = 0;
  return STEPS[length].map(([step, minutes]) => ({ step, from_min: at, to_min: (at += minutes) }));
}

/** Minutes in which everybody works at one go. */
export const workOf_min = (length: Length_min): number => STEPS[length].find(([step]) => step === 'work')![1];
