// Whole holes by every crew in every setting: all end by an act, nothing is lost, the run file makes each again.
import { DEPTH_LIMITS_m } from '$lessons';
import { deepAndShallow, drilled, type Drilled, type Hole } from '../lessons/openHole';
import type { Claim, Sweep } from './sweep';

const HOLES = 200;
const MOST_LOST = 1e-9;

const sweep: Sweep<Hole, Drilled> = {
  title: `the crews drill ${HOLES} whole holes of ${DEPTH_LIMITS_m.least} to ${DEPTH_LIMITS_m.most} m`,

  tasks: () => deepAndShallow(HOLES),

  run: drilled,

  judge(done): Claim[] {
    const ended = done.filter(({ result }) => result.byAct).length;
    const same = done.filter(({ result }) => result.reproduced).length;
    const back = done.filter(({ result }) => result.restored).length;
    const worst = Math.max(...done.map(({ result }) => result.lost));
    const short = done.filter(
      ({ task, result }) => result.outcome === 'outcome.depthReached' && result.depth_m < task.asked.depth_m,
    ).length;
    return [
      { text: `${ended} of ${HOLES} end by an act of the crew (wanted: all)`, holds: ended === HOLES },
      { text: `${same} of ${HOLES} are reproduced from their run file (wanted: all)`, holds: same === HOLES },
      {
        text: `${back} of ${HOLES} come to the same end from a snapshot at a tick of chance (wanted: all)`,
        holds: back === HOLES,
      },
      {
        text: `of water, grains and polymer at most ${worst.toExponential(1)} is lost (allowed: ${MOST_LOST})`,
        holds: worst <= MOST_LOST,
      },
      {
        text: `mishaps a hole, stuck, buried, prime lost: careful ${mishaps(done, 'careful').toFixed(2)}, steady ${mishaps(done, 'steady').toFixed(2)}, green ${mishaps(done, 'green').toFixed(2)} (wanted: green most, and twice careful)`,
        holds:
          mishaps(done, 'steady') < mishaps(done, 'green') && 2 * mishaps(done, 'careful') < mishaps(done, 'green'),
      },
      {
        text: `the wall drops ${fallen_L(done, 'careful').toFixed(1)} L a hole with careful, ${fallen_L(done, 'green').toFixed(1)} L with green (wanted: less)`,
        holds: fallen_L(done, 'careful') < fallen_L(done, 'green'),
      },
      { text: `${short} holes count as deep enough and are not (wanted: none); ${reached(done)}`, holds: short === 0 },
    ];
  },
};
export default sweep;

type Done = readonly { readonly task: Hole; readonly result: Drilled }[];

function mean(done: Done, crew: string, of: (result: Drilled) => number): number {
  const own = done.filter(({ task }) => task.crew === crew);
  return own.reduce((sum, { result }) => sum + of(result), 0) / own.length;
}
const mishaps = (done: Done, crew: string): number =>
  mean(done, crew, ({ stuck, buried, primeLost }) => stuck + buried + primeLost);
const fallen_L = (done: Done, crew: string): number => mean(done, crew, (result) => result.fallen_L);

/** How many reach the asked depth, by crew. */
function reached(done: Done): string {
  const crews = [...new Set(done.map(({ task }) => task.crew))];
  const shares = crews.map((crew) => {
    const own = done.filter(({ task }) => task.crew === crew);
    const deep = own.filter(({ result }) => result.outcome === 'outcome.depthReached').length;
    return `${crew} ${deep} of ${own.length}`;
  });
  return `the asked depth is reached by ${shares.join(', ')}`;
}
