// Three crews on fifty grounds: all finish, the careful one scores well, the steady one in between, the green one clearly worse, nothing is lost.
import { grade, lessonById, playCrew } from '$lessons';
import { ledgerOf } from '$sim';
import type { Claim, Sweep } from './sweep';

const SEEDS = 50;
/** Provisional bounds, to be set anew when all lessons stand. */
const GOOD_SCORE = 80;
const LEAST_GOOD = 45;
const LEAST_GAP = 25;
const STEADY = [60, 85] as const;
const MOST_LOST = 1e-9;

interface Task {
  readonly crew: 'careful' | 'steady' | 'green';
  readonly seed: number;
}
interface Result {
  readonly score: number;
  readonly outcome: string;
  readonly ticks: number;
  readonly lost: number;
}

const sweep: Sweep<Task, Result> = {
  title: `the crews green, steady and careful play first-rods on ${SEEDS} grounds`,

  tasks: () =>
    (['careful', 'steady', 'green'] as const).flatMap((crew) =>
      Array.from({ length: SEEDS }, (_, index) => ({ crew, seed: index + 1 })),
    ),

  run({ crew, seed }) {
    const lesson = lessonById('first-rods')!;
    const run = playCrew(lesson, crew, seed);
    const { score, outcome } = grade(run, lesson);
    const { water, solids, polymer } = ledgerOf(run);
    const lost = Math.max(Math.abs(water), Math.abs(solids), Math.abs(polymer));
    return { score, outcome: outcome.key, ticks: run.state.tick, lost };
  },

  judge(done): Claim[] {
    const scores = (crew: Task['crew']): number[] =>
      done
        .filter(({ task }) => task.crew === crew)
        .map(({ result }) => result.score)
        .sort((a, b) => a - b);
    const careful = scores('careful');
    const steady = scores('steady');
    const green = scores('green');
    const good = careful.filter((score) => score >= GOOD_SCORE).length;
    const gap = median(careful) - median(green);
    const worst = Math.max(...done.map(({ result }) => result.lost));
    const ends = (crew: Task['crew'], outcome: string): number =>
      done.filter(({ task, result }) => task.crew === crew && result.outcome === outcome).length;
    const reached = ends('careful', 'outcome.reached');
    const running = done.filter(({ result }) => result.outcome === 'outcome.running').length;
    return [
      {
        text: `${reached} of ${careful.length} careful runs reach the goal (wanted: all)`,
        holds: reached === careful.length && careful.length === SEEDS,
      },
      {
        text: `no run of any crew is left without an end; of green, ${ends('green', 'outcome.reached')} reach the goal`,
        holds: running === 0,
      },
      {
        text: `${good} of ${careful.length} careful runs score ${GOOD_SCORE} or more (wanted: ${LEAST_GOOD}); lowest ${careful[0]}`,
        holds: good >= LEAST_GOOD,
      },
      {
        text: `the middle score of green (${median(green)}) lies ${gap.toFixed(1)} below that of careful (${median(careful)}) (wanted: ${LEAST_GAP})`,
        holds: gap >= LEAST_GAP,
      },
      {
        text: `the middle score of steady (${median(steady)}) lies between those of green and careful (wanted: that, and ${STEADY[0]} to ${STEADY[1]})`,
        holds:
          median(green) < median(steady) &&
          median(steady) < median(careful) &&
          median(steady) >= STEADY[0] &&
          median(steady) <= STEADY[1],
      },
      {
        text: `of water, grains and polymer at most ${worst.toExponential(1)} is lost (allowed: ${MOST_LOST})`,
        holds: worst <= MOST_LOST,
      },
    ];
  },
};
export default sweep;

function median(sorted: readonly number[]): number {
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}
