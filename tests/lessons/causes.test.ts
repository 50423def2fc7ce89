// Whatever can go wrong in the model goes wrong somewhere in the lessons: in a crew's run that the calibration counted, or in a play kept here.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { act, sensesOf, step, type ActionName, type Run } from '$sim';
import { createCrew, isOver, jobFor, lessonById, practiceFor, startRun, type Deed, type Lesson } from '$lessons';
import { happenedIn } from '../calibrate/crewRuns';
import { FAILURES } from '../calibrate/failures';
import { FAILED } from '../calibrate/report';
import { playRandom } from '../sim/random/crew';
import { randomJob, ticksFor } from '../sim/random/jobs';

const REPORT = new URL('../../lessons/CALIBRATION.md', import.meta.url);

/** By the report: what failed in any run of any crew. */
function counted(): Set<string> {
  const lines = readFileSync(REPORT, 'utf8').split('\n');
  return new Set(
    lines.flatMap((line) => (line.startsWith(FAILED) ? line.slice(FAILED.length).replace(/\.$/, '').split(', ') : [])),
  );
}

/** Does one act again and again until it is refused for good, then lets some time pass. */
function doing(lesson: Lesson, action: ActionName, payload: Record<string, unknown>, most_s = 7200): Run {
  const run = startRun(lesson, 1);
  for (let s = 0; s < most_s; s++) {
    if (s % 60 === 0) act(run, action, payload);
    step(run);
  }
  return run;
}

type Change = (deed: Deed) => Record<string, unknown>;

/** A crew plays until it has happened; what its deeds say may be changed. */
function playedTo(cause: string, lesson: Lesson, seed: number, crewName: string, change: Change = () => ({})): Run {
  const run = startRun(lesson, seed);
  const crew = createCrew(crewName, jobFor(run, lesson));
  while (!isOver(run, lesson) && run.record.events.at(-1)?.name !== cause) {
    const deed = crew.decide(sensesOf(run));
    if (deed) act(run, deed.action, { ...deed.payload, ...change(deed) });
    step(run);
  }
  return run;
}

/** A closed string with few slots and close cloth, lowered fast and empty. */
const CLOSED = { casing: 'pvc63', slotRows: 1, slotSpacing_mm: 60, cloth: 'fine', cap: true };
const EMPTY = { fill: false, speed_ms: 0.5 };
const emptyCasing: Change = ({ action }) => (action === 'planWell' ? CLOSED : action === 'runCasing' ? EMPTY : {});

/** Nobody looks at the clock on a bare site. */
function untilDark(): Run {
  const run = startRun(practiceFor('open-hole', { depth_m: 10, setting: 'delta', bare: true })!, 1);
  while (run.state.tick < 11 * 3600 + 60) step(run);
  return run;
}

/** The pump goes round and round until its tank is empty. */
function untilDry(): Run {
  const run = startRun(lessonById('round-the-loop')!, 1);
  for (let s = 0; s < 8 * 3600 && run.record.events.at(-1)?.name !== 'petrolOut'; s++) {
    if (s % 300 === 0) act(run, 'prime', {});
    if (s % 300 === 150) act(run, 'setThrottle', { throttle_frac: 1 });
    step(run);
  }
  return run;
}

const hole = (setting: 'laterite-upland' | 'delta' | 'terrace', depth_m: number): Lesson =>
  practiceFor('open-hole', { depth_m, setting })!;

/** What crews do not do in the scored lessons, once each. */
const PLAYED: Readonly<Record<string, () => Run>> = {
  waterOut: () => playedTo('waterOut', hole('terrace', 10), 1, 'steady'),
  powderOut: () =>
    doing(lessonById('first-rods')!, 'addAdditive', { additive: 'polymer', mass_g: 1000, manner: 'sprinkled' }),
  petrolOut: untilDry,
  casingFloats: () => playedTo('casingFloats', lessonById('open-well')!, 3, 'careful', emptyCasing),
  nightfall: untilDark,
  bitRefused: () => playedTo('bitRefused', hole('laterite-upland', 10), 2, 'green'),
  'wallFails.gap': () => playedTo('wallFails.gap', hole('terrace', 5), 12, 'green'),
};

/**
 * What no ground of the lessons brings about, by the number of the random job that does: firm clay that closes an empty hole more than twenty metres deep.
 * Soft clay, which the lessons have, is stronger the deeper it lies: it narrows a hole with water in it, and does not close it.
 */
const BEYOND: Readonly<Record<string, number>> = { holeClosed: 68 };
const TICKS = 1200;

describe('what can go wrong', { timeout: 60_000 }, () => {
  it.each(Object.keys(PLAYED))('%s comes about in a play of its own', (cause) => {
    expect(FAILURES).toContain(cause);
    expect(happenedIn(PLAYED[cause]!())).toContain(cause);
  });

  it.each(Object.entries(BEYOND))('%s comes about beyond the lessons, in random job %i', (cause, job) => {
    const { run } = playRandom(randomJob(job), `random ${job}`, ticksFor(job, TICKS), () => undefined);
    expect(happenedIn(run)).toContain(cause);
  });

  it('is met in some lesson or in the practice, every cause of the list', () => {
    const met = counted();
    expect(FAILURES.filter((cause) => !met.has(cause) && !(cause in PLAYED) && !(cause in BEYOND))).toEqual([]);
  });
});
