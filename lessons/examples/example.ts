// A worked example under way: the careful crew plays, each reason is told once with the clock stopped, and the last part may be left open.

import type { Run, Senses } from '$sim';
import type { Crew, Deed } from '../crews/crew';
import { createCrew } from '../crews/index';
import { jobFor } from '../job';
import type { Lesson } from '../schema';
import { watcher } from '../start';
import type { WordKey } from '../words/index';
import { lastPartFrom } from './lastPart';
import { whyOf } from './why';

export type PartShown = 'all' | 'toLastPart';

export interface Example {
  readonly crew: Crew;
  /** What is said of a deed, and whether it is said for the first time; null where an act explains itself. */
  tell(deed: Deed, senses: Senses): { readonly why: WordKey; readonly first: boolean } | null;
  /** What is to be shown has been shown: the learner's turn. */
  over(): boolean;
}

/** An example from where the run stands now. */
export function openExample(run: Run, lesson: Lesson, shown: PartShown): Example {
  const told = new Set<WordKey>();
  const until = shown === 'all' ? null : lastPartFrom(lesson);
  return {
    crew: createCrew('careful', jobFor(run, lesson)),
    tell(deed, senses) {
      const why = whyOf(deed, senses);
      if (why === null) return null;
      const first = !told.has(why);
      told.add(why);
      return { why, first };
    },
    over: until ? watcher(run, until) : () => false,
  };
}
