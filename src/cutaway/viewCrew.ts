// Who of the crew works where and with what: from what turns, what is fed, and the tasks under way.

import { handsThere, type Run, type Task } from '$sim';
import type { Post, ShownCrew, ShownWorker, Tool } from './shown';

type Place = readonly [post: Post, tool: Tool];

/** Where each work is done; who helps stands beyond. */
const PLACES: Readonly<Partial<Record<Task['action'], Place>>> = {
  setOut: ['settling', 'shovel'],
  fillPit: ['settling', 'bucket'],
  prime: ['pump', 'none'],
  lift: ['winch', 'none'],
  lower: ['winch', 'none'],
  workStem: ['winch', 'none'],
  catchSample: ['channel', 'sieve'],
  addAdditive: ['suction', 'sack'],
  stir: ['suction', 'pole'],
  feelFluid: ['suction', 'none'],
  readStick: ['stick', 'none'],
  funnelTest: ['bank', 'funnel'],
  addWater: ['suction', 'bucket'],
  topUp: ['mouth', 'bucket'],
  clearStrainer: ['strainer', 'none'],
  setStrainer: ['strainer', 'none'],
  pullOut: ['winch', 'none'],
  runCasing: ['mouth', 'none'],
  workCasing: ['mouth', 'none'],
  pourPack: ['mouth', 'bucket'],
  placeSeal: ['mouth', 'bucket'],
  backfill: ['mouth', 'bucket'],
  sound: ['mouth', 'tape'],
  dipWell: ['mouth', 'tape'],
  breakPolymer: ['mouth', 'bucket'],
  disinfect: ['mouth', 'bucket'],
};

/** What is not told above is done at the mouth of the hole. */
const AT_THE_MOUTH: Place = ['mouth', 'none'];

function placeOfTask({ action, word }: Task): Place {
  if (action === 'mend')
    return word === 'engine' ? ['pump', 'none'] : word === 'ditch' ? ['bank', 'shovel'] : AT_THE_MOUTH;
  if (action === 'digOutPit') return [word === 'suction' ? 'suction' : 'settling', 'shovel'];
  return PLACES[action] ?? AT_THE_MOUTH;
}

/** Puts one at the place, or beside it where somebody stands already. */
function put(workers: ShownWorker[], [post, tool]: Place): void {
  const taken = (one: Post): boolean => workers.some((worker) => worker.post === one);
  if (!taken(post)) workers.push({ post, tool });
  else workers.push({ post: taken('mouthBeyond') ? 'idle' : 'mouthBeyond', tool: 'none' });
}

export function fillCrew(shown: ShownCrew, run: Run): void {
  const { stem, tasks } = run.state;
  const there = handsThere(run);
  const { workers } = shown;
  workers.length = 0;
  if (stem.turning) put(workers, ['handle', 'none']);
  if (stem.feed_frac > 0) put(workers, ['winch', 'none']);
  for (const task of tasks) for (let i = 0; i < task.hands; i++) put(workers, placeOfTask(task));
  if (workers.length > there) workers.length = there;
  while (workers.length < there) workers.push({ post: 'idle', tool: 'none' });
  shown.away = Math.max(0, run.kit.crew - there);
}
