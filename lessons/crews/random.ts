// The random crew: acts that look possible, drawn by chance, until it has had enough. Nobody plays worse on purpose; a rubric that rewards it rewards nothing.

import type { Senses } from '$sim';
import { between, createChance, draw, type Chance } from './chance';
import { does, THREE_RODS, type Crew, type Deed, type Job } from './crew';
import { createPatience, mayTry, noticeRefusal, remember, type Patience } from './patience';
import { RANDOM_ACTS } from './randomActs';

export interface RandomMemory {
  patience: Patience;
  chance: Chance;
  /** Job second at which its day ends, and job second at which it has had enough; -1 before its first look. */
  day_s: number;
  enough_s: number;
}

/** It acts once in so many seconds on average, and has had enough after a time between these, s, well before the day is over. */
const ACTS_EVERY_s = 12;
const ENOUGH_s = [1500, 5400] as const;
const DAY_frac = 0.6;
/** Once it has had enough it ends the job where it stands, or gives it up after so many seconds. */
const LEAVE_AFTER_s = 60;

export function createRandom(job: Job = THREE_RODS): Crew & { readonly memory: RandomMemory } {
  const memory: RandomMemory = {
    patience: createPatience(),
    chance: createChance(job.chance ?? 0),
    day_s: job.time_s,
    enough_s: -1,
  };
  return { name: 'random', memory, decide: (senses) => remember(memory.patience, senses, decide(memory, senses)) };
}

function decide(memory: RandomMemory, senses: Senses): Deed | null {
  if (senses.ended) return null;
  noticeRefusal(memory.patience, senses);
  const { chance } = memory;
  if (memory.enough_s < 0)
    memory.enough_s = senses.time_s + Math.min(between(chance, ...ENOUGH_s), DAY_frac * (memory.day_s - senses.time_s));
  if (senses.time_s >= memory.enough_s) return leave(memory, senses);
  if (draw(chance) > 1 / ACTS_EVERY_s) return null;
  const possible = RANDOM_ACTS.filter((act) => act.looksPossible(senses));
  let left = draw(chance) * possible.reduce((sum, { weight }) => sum + weight, 0);
  for (const act of possible) {
    left -= act.weight;
    if (left >= 0) continue;
    const deed = act.deed(chance, senses);
    return mayTry(memory.patience, senses, deed.action) ? deed : null;
  }
  return null;
}

/** It goes home: with everything off the drilling is stopped; what cannot be ended so is given up. */
function leave(memory: RandomMemory, senses: Senses): Deed | null {
  const { stem, pump, well } = senses;
  if (senses.time_s > memory.enough_s + LEAVE_AFTER_s || well !== null) return does('abandon');
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (stem.turning) return does('setTurning', { on: false });
  if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  return mayTry(memory.patience, senses, 'stopDrilling') ? does('stopDrilling') : null;
}
