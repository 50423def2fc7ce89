// The careful crew goes on with what a green crew or chance began, in a whole well and in two drills: it ends the job itself, asks for nothing for ever, and nothing is lost.

import { describe, expect, test } from 'vitest';
import {
  createCrew,
  crewActs,
  isOver,
  jobFor,
  lessonById,
  outcomeOf,
  playOn,
  scenarioOf,
  takeOver,
  type Lesson,
} from '$lessons';
import { createRun, ledgerOf, restoreRun, snapshotOf, step, type Run } from '$sim';

/** What a crew left, at each of these seconds. */
function leftAt(lesson: Lesson, crew: string, seed: number, moments_s: readonly number[]): Run[] {
  const run = createRun(scenarioOf(lesson, seed));
  const player = createCrew(crew, jobFor(run, lesson));
  const left: Run[] = [];
  while (left.length < moments_s.length) {
    expect([lesson.id, crew, run.state.tick, isOver(run, lesson)]).toEqual([lesson.id, crew, run.state.tick, false]);
    if (run.state.wait === null) crewActs(run, player);
    step(run);
    if (run.state.tick < moments_s[left.length]!) continue;
    const copy = restoreRun(run.scenario, snapshotOf(run), structuredClone(run.record));
    copy.log.push(...run.log);
    left.push(copy);
  }
  return left;
}

/** Acts by which a crew ends a job. */
const ENDS = ['stopDrilling', 'abandon', 'handOver'];
const ENDED = ['outcome.reached', 'outcome.stoppedShort', 'outcome.givenUp', 'outcome.handedOver'];
/** An act that is not to be had is asked for no oftener than this. */
const ASKED = 12;
/** Relative, as everywhere. */
const LOST = 1e-9;

/** Moments: of the open well a hole drilled too deep, and the casing standing; the bare site with the stem already turning, and late in the day. */
describe.each([
  ['open-well', 'green', 5, [16000, 40000]],
  ['open-well', 'random', 5, [700, 4000]],
  ['falling-pit', 'green', 5, [900, 3500]],
  ['falling-pit', 'random', 5, [900, 3500]],
  ['full-pit', 'green', 4, [900, 1800]],
  ['full-pit', 'random', 4, [900, 3500]],
] as const)('%s, begun by %s on seed %i', (id, other, seed, moments_s) => {
  const lesson = lessonById(id)!;

  test('is brought to an end', () => {
    for (const run of leftAt(lesson, other, seed, moments_s)) {
      const from_s = run.state.tick;
      const told = run.record.events.length;
      const acts = run.log.length;
      playOn(run, lesson, takeOver('careful', jobFor(run, lesson), run));
      expect([from_s, run.log.length > acts]).toEqual([from_s, true]);
      expect(ENDS).toContain(run.log.at(-1)![1]);
      expect(ENDED).toContain(outcomeOf(run, lesson).key);
      // What a green crew has half begun the careful crew makes a well of.
      if (lesson.well && other === 'green') expect(outcomeOf(run, lesson).key).toBe('outcome.handedOver');

      const asked = new Map<string, number>();
      for (const { name, data } of run.record.events.slice(told)) {
        if (name !== 'refused') continue;
        const what = `${data.action}: ${data.reason}`;
        asked.set(what, (asked.get(what) ?? 0) + 1);
      }
      expect([from_s, [...asked].filter(([, times]) => times > ASKED)]).toEqual([from_s, []]);

      for (const [store, share] of Object.entries(ledgerOf(run)))
        expect([from_s, store, Math.abs(share) <= LOST]).toEqual([from_s, store, true]);
    }
  }, 240_000);
});
