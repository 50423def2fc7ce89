// Three crews make whole wells on a hundred grounds: all finish, nothing is lost, each run file makes its well again, and care shows in the water.
import { made, middleOf, type Made } from '../lessons/openWell';
import type { Claim, Sweep } from './sweep';

const SEEDS = 100;
const CREWS = ['careful', 'steady', 'green'] as const;
const MOST_LOST = 1e-9;
/** Provisional bounds, as for the other lessons. */
const GOOD_SCORE = 85;
const LEAST_GOOD = 90;
const STEADY = [60, 85] as const;
const GREEN_MOST = 45;

interface Task {
  readonly crew: (typeof CREWS)[number];
  readonly seed: number;
}
type Done = readonly { readonly task: Task; readonly result: Made }[];

const of = (done: Done, crew: string): Made[] =>
  done.filter(({ task }) => task.crew === crew).map(({ result }) => result);

const sweep: Sweep<Task, Made> = {
  title: `the crews green, steady and careful make whole wells on ${SEEDS} grounds`,

  tasks: () => CREWS.flatMap((crew) => Array.from({ length: SEEDS }, (_, index) => ({ crew, seed: index + 1 }))),

  run: ({ crew, seed }) => made(crew, seed, true),

  judge(done): Claim[] {
    const ended = done.filter(({ result }) =>
      ['outcome.handedOver', 'outcome.givenUp'].includes(result.outcome),
    ).length;
    const same = done.filter(({ result }) => result.reproduced).length;
    const worst = Math.max(...done.map(({ result }) => result.lost));
    const over = (crew: string): number =>
      of(done, crew).filter(({ outcome }) => outcome === 'outcome.handedOver').length;
    const [careful, steady, green] = CREWS.map((crew) => middleOf(of(done, crew)));
    const good = of(done, 'careful').filter(({ score }) => score >= GOOD_SCORE).length;
    const lowest = Math.min(...of(done, 'careful').map(({ score }) => score));
    return [
      { text: `${ended} of ${done.length} end by an act of the crew (wanted: all)`, holds: ended === done.length },
      {
        text: `careful hands over ${over('careful')} of ${SEEDS} (wanted: all), steady ${over('steady')}, green ${over('green')}`,
        holds: over('careful') === SEEDS,
      },
      {
        text: `${same} of ${done.length} are reproduced from their run file (wanted: all)`,
        holds: same === done.length,
      },
      {
        text: `of water, grains, polymer and additives at most ${worst.toExponential(1)} is lost (allowed: ${MOST_LOST})`,
        holds: worst <= MOST_LOST,
      },
      {
        text: `middle yield in the driest month: careful ${careful.yield_Lmin.toFixed(0)} L/min, steady ${steady.yield_Lmin.toFixed(0)}, green ${green.yield_Lmin.toFixed(0)} (wanted: careful more than green)`,
        holds: careful.yield_Lmin > green.yield_Lmin,
      },
      {
        text: `middle time of a leak along the casing: careful ${careful.leak_d.toFixed(0)} days, steady ${steady.leak_d.toFixed(0)}, green ${green.leak_d.toFixed(1)} (wanted: careful longer than green)`,
        holds: careful.leak_d > green.leak_d,
      },
      {
        text: `middle sand of the wells that give water: careful ${careful.sand_mgL.toFixed(1)} mg/L, steady ${steady.sand_mgL.toFixed(1)}, green ${green.sand_mgL.toFixed(0)} (wanted: careful less than green)`,
        holds: careful.sand_mgL < green.sand_mgL,
      },
      {
        text: `${good} of ${SEEDS} careful runs score ${GOOD_SCORE} or more (wanted: ${LEAST_GOOD}); lowest ${lowest}`,
        holds: good >= LEAST_GOOD,
      },
      {
        text: `middle scores: careful ${careful.score}, steady ${steady.score} (wanted: ${STEADY[0]} to ${STEADY[1]}), green ${green.score} (wanted: at most ${GREEN_MOST})`,
        holds: steady.score >= STEADY[0] && steady.score <= STEADY[1] && green.score <= GREEN_MOST,
      },
    ];
  },

  notes(done): string[] {
    return CREWS.map((crew) => {
      const own = of(done, crew);
      const hours = own.reduce((sum, { ticks }) => sum + ticks / 3600, 0) / own.length;
      const passed = own.filter((well) => well.passed).length;
      return `${crew}: ${passed} of ${own.length} pass, ${hours.toFixed(1)} job hours a well.`;
    });
  },
};
export default sweep;
