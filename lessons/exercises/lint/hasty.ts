// Crews that look for the other ways in which a run can end: at once, by giving up, by doing nothing until the time is over.

import type { Senses } from '$sim';
import { does, type Crew, type Deed } from '../../crews/crew';
import { endHere } from '../../crews/ending';
import { pastDrilling } from '../../crews/wellWork';
import { createPatience, mayTry, noticeRefusal, remember, type Patience } from '../../crews/patience';

/** Who cannot end the job by then gives it up, s. */
const TRIES_s = 600;

interface Memory {
  readonly patience: Patience;
  begun_s: number;
}

function endsNow(memory: Memory, senses: Senses): Deed | null {
  if (senses.ended) return null;
  const { patience } = memory;
  noticeRefusal(patience, senses);
  if (memory.begun_s < 0) memory.begun_s = senses.time_s;
  if (senses.time_s - memory.begun_s > TRIES_s) return does('abandon');
  // Once the casing is set the well is handed over as it stands.
  if (pastDrilling(senses)) return mayTry(patience, senses, 'handOver') ? does('handOver') : null;
  return endHere(patience, senses);
}

/** Ends the job at once, as done. */
export function createHasty(): Crew {
  const memory: Memory = { patience: createPatience(), begun_s: -1 };
  return { name: 'hasty', memory, decide: (senses) => remember(memory.patience, senses, endsNow(memory, senses)) };
}

/** Gives the hole up at once. */
export const createQuitter = (): Crew => ({
  name: 'quitter',
  memory: {},
  decide: (senses) => (senses.ended ? null : does('abandon')),
});

/** Does nothing. */
export const createIdle = (): Crew => ({ name: 'idle', memory: {}, decide: () => null });
