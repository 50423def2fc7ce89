// Three seeds of a lesson, all crews: every bound holds. Each lesson has a test file of its own, so that the threads share them.
import { expect, test } from 'vitest';
import { lessonById } from '$lessons';
import { claimsOf } from '../../calibrate/bounds';
import { crewRuns } from '../../calibrate/crewRuns';

const SEEDS = 3;
/** One run file in so many is played again. */
const AGAIN_EVERY = 3;

export function calibrated(id: string): void {
  test(`${id} is fair over three seeds: careful, other, steady, green and random score as they should, all end, nothing is lost`, () => {
    const lesson = lessonById(id)!;
    const runs = Array.from({ length: SEEDS }, (_, i) => crewRuns(lesson, i + 1, (i + 1) % AGAIN_EVERY === 0)).flat();
    const failing = claimsOf(lesson, runs).filter(({ holds }) => !holds);
    expect(failing.map(({ text }) => text)).toEqual([]);
  }, 900_000);
}
