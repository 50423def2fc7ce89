// Every crew plays every lesson on two hundred grounds: each lesson must be fair, and each run file make its run again.
import { LESSONS, lessonById } from '$lessons';
import { claimsOf } from '../calibrate/bounds';
import type { CrewRun } from '../calibrate/crewRuns';
import seedTask, { tasksFor, type SeedTask } from '../calibrate/seedTask';
import type { Claim, Sweep } from './sweep';

const SEEDS = 200;
/** Every second run file is played again. */
const AGAIN_EVERY = 2;
const IDS = LESSONS.map(({ id }) => id);

const sweep: Sweep<SeedTask, CrewRun[]> = {
  title: `every crew plays every lesson on ${SEEDS} grounds`,
  tasks: () => tasksFor(IDS, SEEDS, AGAIN_EVERY),
  run: (task) => seedTask.run(task),
  judge: (done): Claim[] =>
    IDS.flatMap((id) => {
      const runs = done.filter(({ task }) => task.lesson === id).flatMap(({ result }) => result);
      return claimsOf(lessonById(id)!, runs).map(({ text, holds }) => ({ text: `${id}: ${text}`, holds }));
    }),
};
export default sweep;
