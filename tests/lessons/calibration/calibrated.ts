// Ten seeds of a lesson: every bound holds. Each lesson has a test file of its own, so that the threads share them.
import { expect, test } from 'vitest';
import { CREWS, lessonById } from '$lessons';
import { claimsOf } from '../../calibrate/bounds';
import { crewRuns } from '../../calibrate/crewRuns';

const SEEDS = 10;
/** All crews play the first of them. */
const SEEDS_OF_ALL = 3;
/** Beyond these seeds only the three crews play whose runs are compared with each other. */
const COMPARED = ['green', 'steady', 'careful'];
/** One run file in so many is played again. */
const AGAIN_EVERY = 3;

export function calibrated(id: string): void {
  test(`${id} is fair over ${SEEDS} seeds: careful, other, steady, green and random score as they should, all end, nothing is lost`, () => {
    const lesson = lessonById(id)!;
    const crews = (seed: number): readonly string[] => (seed <= SEEDS_OF_ALL ? CREWS : COMPARED);
    const runs = Array.from({ length: SEEDS }, (_, i) =>
      crewRuns(lesson, i + 1, (i + 1) % AGAIN_EVERY === 0, crews(i + 1)),
    ).flat();
    const failing = claimsOf(lesson, runs).filter(({ holds }) => !holds);
    expect(failing.map(({ text }) => text)).toEqual([]);
  }, 900_000);
}
