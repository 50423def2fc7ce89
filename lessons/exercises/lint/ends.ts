// The ways that a run of an exercise can end, and whether somebody comes to each. What a lesson offers follows from lessons/over.ts.

import type { Run } from '$sim';
import type { Crew } from '../../crews/crew';
import { endsAtStop } from '../../over';
import type { Lesson } from '../../schema';
import type { WordKey } from '../../words/index';
import type { Begun } from './begun';
import type { Finding, LintKey } from './finding';
import { createHasty, createIdle, createQuitter } from './hasty';
import { mapped } from './mapped';
import { goingOn, type Way } from './way';

/** Passed is no outcome of its own, but the end that every learner is after. */
const PASS: LintKey = 'lint.end.pass';

const WORDS: Partial<Record<WordKey, LintKey>> = {
  'outcome.reached': 'lint.end.reached',
  'outcome.drilled': 'lint.end.drilled',
  'outcome.handedOver': 'lint.end.handedOver',
  'outcome.stoppedShort': 'lint.end.stoppedShort',
  'outcome.givenUp': 'lint.end.givenUp',
  'outcome.timeUp': 'lint.end.timeUp',
  'outcome.noWell': 'lint.end.noWell',
};

/** The outcomes that a run of the lesson can have: those of a hole, of a hole whose depth the crew decides, of a whole well. */
export function endsOf(lesson: Lesson): WordKey[] {
  if (!endsAtStop(lesson)) return ['outcome.handedOver', 'outcome.givenUp', 'outcome.noWell'];
  if (lesson.well) return ['outcome.drilled', 'outcome.givenUp', 'outcome.timeUp'];
  return ['outcome.reached', 'outcome.stoppedShort', 'outcome.givenUp', 'outcome.timeUp'];
}

export interface Seekers {
  readonly hasty: Way;
  readonly quitter: Way;
  readonly idle: Way;
}

/** Nothing but an act ends a run before its time is up: who waits for so long stands for who waits for days, s. */
const WAITS_s = 21600;

function waiting(begun: Begun): Begun {
  const { lesson } = begun;
  const cap_s = Math.min(WAITS_s, lesson.end.cap_s);
  return { ...begun, lesson: { ...lesson, end: { ...lesson.end, cap_s } } };
}

/** Those who look for the other ends play one ground. Yields the share done now and then. */
export function* seeking(begun: Begun): Generator<number, Seekers> {
  const going = (make: () => Crew, done: number, on = begun): Generator<number, Way> =>
    mapped(
      goingOn(on, (_run: Run) => make()),
      (share_frac) => (done + share_frac) / 3,
    );
  const hasty = yield* going(createHasty, 0);
  const quitter = yield* going(createQuitter, 1);
  return { hasty, quitter, idle: yield* going(createIdle, 2, waiting(begun)) };
}

/** `ways`: all that were played. */
export function endsReached(lesson: Lesson, ways: readonly Way[]): Finding[] {
  const wanted = endsOf(lesson);
  const seen = new Set<WordKey>(ways.map(({ grade }) => grade.outcome.key));
  const missing = wanted.filter((key) => !seen.has(key)).map((key) => WORDS[key]!);
  if (!ways.some(({ grade }) => grade.passed)) missing.unshift(PASS);
  if (missing.length === 0) return [{ level: 'good', key: 'lint.end.all', data: { n: wanted.length + 1 } }];
  return missing.map((end): Finding => ({ level: 'wrong', key: 'lint.end.missing', data: { end } }));
}
