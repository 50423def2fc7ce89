// The careful crew that takes a run over, wherever it stands. A crew that saw every caution read does not read them again.

import type { Run } from '$sim';
import { createCareful } from '../crews/careful';
import type { Crew } from '../crews/crew';
import { takeOver } from '../crews/takeOver';
import { HAZARD_IDS } from '../hazards';
import { jobFor } from '../job';
import type { Lesson } from '../schema';

export function heirOf(run: Run, lesson: Lesson): Crew {
  const crew = createCareful(jobFor(run, lesson));
  if (run.state.cautions.length >= HAZARD_IDS.length) crew.memory.cautionsRead = HAZARD_IDS.length;
  return takeOver(crew, run);
}
