// Six planted mistakes in the drills about them, on many grounds: the stretch with the mistake is among the three dearest.
import { lookFor, MISTAKES } from '../lessons/hindsight/planted';
import type { Claim, Sweep } from './sweep';

const GROUNDS = 34;
const STRETCHES = 30;
const WANTED_frac = 0.9;
/** A mistake that cost less than this did no harm on that ground: there is nothing to find. */
const HARM_points = 1;

interface Task {
  readonly mistake: number;
  readonly seed: number;
}
interface Result {
  readonly hit: boolean;
  readonly lost: number;
  readonly valued: number;
}

const sweep: Sweep<Task, Result> = {
  title: `${MISTAKES.length} planted mistakes on ${GROUNDS} grounds, looked back on in ${STRETCHES} stretches`,

  tasks: () =>
    MISTAKES.flatMap((_, mistake) => Array.from({ length: GROUNDS }, (_, index) => ({ mistake, seed: index + 1 }))),

  run({ mistake, seed }) {
    const { hit, start, score, valued } = lookFor(MISTAKES[mistake]!, seed, STRETCHES);
    return { hit, lost: start - score, valued };
  },

  judge(done): Claim[] {
    const harmed = done.filter(({ result }) => result.lost >= HARM_points);
    const hits = harmed.filter(({ result }) => result.hit).length;
    return [
      {
        text: `in ${hits} of ${harmed.length} runs that a mistake harmed its stretch is among the three dearest (wanted: ${WANTED_frac * 100} %)`,
        holds: hits >= WANTED_frac * harmed.length,
      },
    ];
  },

  notes: (done) =>
    MISTAKES.map(({ name }, mistake) => {
      const own = done.filter(({ task, result }) => task.mistake === mistake && result.lost >= HARM_points);
      return `${name}: found in ${own.filter(({ result }) => result.hit).length} of ${own.length} runs that it harmed`;
    }),
};
export default sweep;
