// Sixty results of a class, as they come in: most are good, some altered in one byte, cut off, of another version, or there already.
import {
  crewFor,
  lessonOfExercise,
  newExercise,
  packResult,
  playOn,
  resultOf,
  startRun,
  variantSeed,
  writeResult,
  type Exercise,
  type Result,
} from '$lessons';

/** The first rods, with grounds enough for a class. */
export const EXERCISE: Exercise = {
  ...newExercise('first-rods', 'exercise-sixty', 'First rods at the ferry'),
  pool: { sim: '', seeds: Array.from({ length: 60 }, (_, i) => 1000 + i), spread_points: 5 },
};
export const CODE = 'WELL';
const CREWS = ['careful', 'green', 'steady', 'other', 'random'];

export type Wanted = 'reproduced' | 'altered' | 'refused' | 'otherVersion' | 'again';
export interface Handed {
  readonly from: string;
  readonly text: string;
  readonly wanted: Wanted;
}

/** A learner's run by one of the crews; numbers from 1 on, the same attempt of the same learner always the same. */
export function handedIn(number: number, attempt = 1, exercise: Exercise = EXERCISE): Result {
  const lesson = lessonOfExercise(exercise);
  const run = startRun(lesson, variantSeed(exercise, CODE, { number }, attempt), false);
  playOn(run, lesson, crewFor(run, lesson, CREWS[(number + attempt) % CREWS.length]!));
  const who = `T-${String(number).padStart(2, '0')}`;
  return resultOf(run, lesson, {
    who,
    sitting: { classCode: CODE, attempt, spent_s: 200 + 7 * number },
    answers: { 'firstRods.ask.stop': ['a'], 'firstRods.ask.next': 'slower' },
  });
}

/** The text with the byte at that place changed into another one that can stand in a file. */
export function byteChanged(text: string, at: number): string {
  const code = text.charCodeAt(at);
  const other = code === 0x37 ? 0x38 : code < 0x30 || code > 0x7a ? 0x7a : code ^ 1;
  return text.slice(0, at) + String.fromCharCode(other) + text.slice(at + 1);
}

/** Ten places in a file: in what is played, in what is claimed, in whose it is, in what was answered, in the packed log, in the check. */
const PLACES = [
  '"seed": ',
  '"ticks": ',
  '"hash": "',
  '"score": ',
  '"who": "T-',
  '"attempt": ',
  'slow',
  '"log": "',
  '"check": "',
  '"sim": "',
];

export interface Counts {
  readonly good: number;
  readonly altered: number;
  readonly cut: number;
  readonly older: number;
  readonly again: number;
}
export const SIXTY: Counts = { good: 35, altered: 10, cut: 5, older: 5, again: 5 };

const counted = <One>(count: number, make: (i: number) => One): One[] =>
  Array.from({ length: count }, (_, i) => make(i));

/** What a class hands in. Of the good ones the first 25 are first attempts, the others second ones of the same learners. */
export function aClass({ good, altered, cut, older, again }: Counts = SIXTY): Handed[] {
  const results = counted(good, (i) => handedIn(1 + (i % 25), i < 25 ? 1 : 2));
  return [
    ...results.map((result, i): Handed => {
      const text = i % 4 === 3 ? packResult(result) : writeResult(result);
      return { from: `${result.who}-${result.attempt}.json`, text, wanted: 'reproduced' };
    }),
    ...counted(altered, (i): Handed => {
      const text = writeResult(handedIn(26 + i));
      const place = PLACES[i % PLACES.length]!;
      return {
        from: `altered-${i}.json`,
        text: byteChanged(text, text.indexOf(place) + place.length),
        wanted: 'altered',
      };
    }),
    ...counted(cut, (i): Handed => {
      const result = handedIn(36 + i);
      const text = i % 2 === 0 ? writeResult(result) : packResult(result);
      return { from: `cut-${i}.json`, text: text.slice(0, Math.floor((text.length * (i + 2)) / 7)), wanted: 'refused' };
    }),
    ...counted(older, (i): Handed => {
      const result = handedIn(41 + i);
      const other =
        i % 2 === 0 ? { ...result, sim: `0.0.${i}` } : { ...result, exercise: '0123456789abcdef', edition: 2 };
      return { from: `older-${i}.json`, text: writeResult(other), wanted: 'otherVersion' };
    }),
    ...counted(again, (i): Handed => ({
      from: `again-${i}.json`,
      text: writeResult(results[(i * 3) % results.length]!),
      wanted: 'again',
    })),
  ];
}
